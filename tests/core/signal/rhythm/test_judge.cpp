#include "core/signal/rhythm/judge.h"

#include <cmath>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

/// A model that looks at the leakage alone: above 0.5 organised, below shockable.
RhythmModel simpleModel() {
  RhythmModel model;
  model.weights[0] = {.mean = 0.5, .deviation = 0.1, .weight = -2, .limit = 0.5};
  return model;
}

RhythmWindow windowOf(double leakage, double amplitudeMv = 1) {
  RhythmWindow w;
  w.measures.features[0] = leakage;
  w.measures.amplitudeMv = amplitudeMv;
  w.measures.smallestMv = w.measures.largestMv = amplitudeMv;
  w.measures.crossingHz = 5;
  return w;
}

RhythmWindow judged(RhythmWindow w) {
  judgeWindows({&w, 1}, simpleModel());
  return w;
}

TEST(RhythmModel, addsCutOffTerms) {
  const auto model = simpleModel();
  EXPECT_NEAR(model.logOdds(windowOf(0.5).measures), 0, 1e-12);
  EXPECT_NEAR(model.logOdds(windowOf(0.4).measures), 2, 1e-12);
  EXPECT_NEAR(model.logOdds(windowOf(0.7).measures), -4, 1e-12);
  EXPECT_NEAR(model.logOdds(windowOf(-9).measures), 8, 1e-12); // four deviations and no more
  EXPECT_NEAR(model.weights[0].speaksFor(0.4), 2, 1e-12);
  EXPECT_NEAR(model.weights[0].speaksFor(0.6), -2, 1e-12);
}

TEST(RhythmModel, theShippedOneIsFilled) {
  for (const auto& weight : rhythmModel().weights) {
    EXPECT_GT(weight.deviation, 0);
    EXPECT_NE(weight.weight, 0);
    EXPECT_TRUE(std::isfinite(weight.limit));
  }
}

TEST(RhythmJudge, bySignAndSize) {
  EXPECT_EQ(judged(windowOf(0.3)).is, RhythmKind::shockable);
  EXPECT_EQ(judged(windowOf(0.7)).is, RhythmKind::organised);
  EXPECT_EQ(judged(windowOf(0.48)).is, RhythmKind::unclear); // log-odds 0.4
  EXPECT_EQ(judged(windowOf(0.48)).reason, RhythmReason::undecided);
}

TEST(RhythmJudge, byAmplitudeFirst) {
  EXPECT_EQ(judged(windowOf(0.3, 0.1199)).is, RhythmKind::asystole);
  EXPECT_EQ(judged(windowOf(0.7, 0.1199)).is, RhythmKind::asystole);
  EXPECT_EQ(judged(windowOf(0.3, 0.12)).reason, RhythmReason::betweenFibrillationAndAsystole);
  EXPECT_EQ(judged(windowOf(0.3, 0.1999)).is, RhythmKind::unclear);
  EXPECT_EQ(judged(windowOf(0.3, 0.2)).is, RhythmKind::shockable);
  EXPECT_EQ(judged(windowOf(0.7, 0.12)).is, RhythmKind::organised);
}

TEST(RhythmJudge, rareBeatsStandOutOfAFlatLine) {
  auto w = windowOf(0.3, 0.05);
  w.measures.largestMv = 1;
  w.measures.beats = 3;
  w.measures.beatRatePerMin = 24;
  w.measures.features[static_cast<std::size_t>(RhythmFeature::likeBeats)] = 0.95;
  EXPECT_EQ(judged(w).is, RhythmKind::organised);
  auto two = w;
  two.measures.beats = 2;
  EXPECT_EQ(judged(two).is, RhythmKind::asystole);
  auto burst = w;
  burst.measures.beatRatePerMin = 200;
  EXPECT_EQ(judged(burst).is, RhythmKind::asystole);
  auto unlike = w;
  unlike.measures.features[static_cast<std::size_t>(RhythmFeature::likeBeats)] = 0.5;
  EXPECT_EQ(judged(unlike).is, RhythmKind::asystole);
}

TEST(RhythmJudge, whatRestsForASecondIsNotShocked) {
  auto w = windowOf(0.3);
  w.measures.smallestMv = 0.11;
  EXPECT_EQ(judged(w).reason, RhythmReason::undecided);
  w.measures.largestMv = 0.44; // a quarter: waves that wax and wane
  w.measures.amplitudeMv = 0.3;
  EXPECT_EQ(judged(w).is, RhythmKind::shockable);
  w.measures.largestMv = 2;
  w.measures.smallestMv = 0.12;
  EXPECT_EQ(judged(w).is, RhythmKind::shockable);
}

TEST(RhythmJudge, slowRegularWavesAreWideAndFast) {
  auto w = windowOf(0.3);
  w.measures.repeat = {.correlation = 0.9, .ratePerMin = 160};
  EXPECT_EQ(judged(w).is, RhythmKind::organised);
  EXPECT_TRUE(judged(w).wideAndFast);
  w.measures.repeat.ratePerMin = 170; // beyond 180 - 150 x 0.1
  EXPECT_EQ(judged(w).is, RhythmKind::shockable);
  EXPECT_FALSE(judged(w).wideAndFast);
  w.measures.repeat = {.correlation = 0.99, .ratePerMin = 170};
  EXPECT_EQ(judged(w).is, RhythmKind::organised);
  w.measures.repeat = {.correlation = 0.79, .ratePerMin = 100};
  EXPECT_EQ(judged(w).is, RhythmKind::shockable);
}

TEST(RhythmJudge, obstaclesAndDoubts) {
  for (const auto obstacle :
       {RhythmReason::compressions, RhythmReason::electrodes, RhythmReason::saturation}) {
    auto w = windowOf(0.7);
    w.obstacle = obstacle;
    EXPECT_EQ(judged(w).is, RhythmKind::unclear);
    EXPECT_EQ(judged(w).reason, obstacle);
  }
  auto noisy = windowOf(0.3);
  noisy.doubt = RhythmReason::noise;
  EXPECT_EQ(judged(noisy).reason, RhythmReason::noise);
  noisy.measures.features[0] = 0.7;
  EXPECT_EQ(judged(noisy).reason, RhythmReason::noise);
  noisy.measures.features[static_cast<std::size_t>(RhythmFeature::likeBeats)] = 0.85;
  EXPECT_EQ(judged(noisy).is, RhythmKind::organised);
  auto paced = windowOf(0.3); // log-odds 4
  paced.doubt = RhythmReason::pacingSpikes;
  EXPECT_EQ(judged(paced).is, RhythmKind::shockable);
  for (const double leakage : {0.36, 0.7}) { // 2.8 and -4
    paced.measures.features[0] = leakage;
    EXPECT_EQ(judged(paced).reason, RhythmReason::pacingSpikes);
  }
  auto fast = windowOf(0.3);
  fast.measures.crossingHz = 12.1;
  EXPECT_EQ(judged(fast).reason, RhythmReason::noise);
}

// Neighbours are heard up to the next window that cannot be judged.
TEST(RhythmJudge, smoothsOverUsableNeighbours) {
  std::vector<RhythmWindow> windows(7, windowOf(0.3));
  windows[3] = windowOf(0.55);
  judgeWindows(windows, simpleModel());
  EXPECT_NEAR(windows[3].logOdds, -1, 1e-9);
  EXPECT_NEAR(windows[3].smoothedLogOdds, (4 * 4 - 1) / 5.0, 1e-9);
  EXPECT_EQ(windows[3].is, RhythmKind::shockable);
  windows[2].obstacle = windows[4].obstacle = RhythmReason::compressions;
  judgeWindows(windows, simpleModel());
  EXPECT_NEAR(windows[3].smoothedLogOdds, -1, 1e-9);
  EXPECT_EQ(windows[3].is, RhythmKind::organised);
  EXPECT_NEAR(windows[1].smoothedLogOdds, 4, 1e-9);
}

TEST(RhythmJudge, everyReasonHasWordsOfItsOwn) {
  std::vector<std::string_view> words;
  for (int i = 0; i <= static_cast<int>(RhythmReason::samplingRate); ++i) {
    const auto word = wordsOf(static_cast<RhythmReason>(i));
    EXPECT_EQ(word.empty(), i == 0);
    EXPECT_EQ(std::count(words.begin(), words.end(), word), 0);
    words.push_back(word);
  }
}

} // namespace
} // namespace afterbeat
