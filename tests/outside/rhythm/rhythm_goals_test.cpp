// The rhythm hint against the goals set for it, on recordings whose record the model has not seen.
// The whole story: rhythm_report.

#include "../../importers/reference_recordings.h"
#include "fit.h"
#include "score.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

/// Read, measured and cross-validated once for all tests.
const std::vector<LabelledSignal>& judged() {
  static const auto signals = [] {
    auto all = labelledSignals(referenceRecordings() / "ecg");
    crossValidate(all);
    return all;
  }();
  return signals;
}

double decided(RhythmClass scored, const Selection& selection) {
  const auto score = scoreOf(judged(), scored, selection);
  EXPECT_GT(score.decided(), 400);
  return percentOfDecided(score, oughtToBeShockable(scored)).value_or(0);
}

TEST(RhythmGoals, shockableRhythms) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  EXPECT_GE(decided(RhythmClass::fibrillation, {}), 96);
  EXPECT_GE(decided(RhythmClass::fibrillation, {.withDisputed = false}), 98);
  EXPECT_GE(decided(RhythmClass::fastTachycardia, {}), 97);
}

TEST(RhythmGoals, rhythmsThatAreNotShocked) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  EXPECT_GE(decided(RhythmClass::normal, {}), 99.5);
  EXPECT_GE(decided(RhythmClass::otherOrganised, {}), 98);
  EXPECT_GE(decided(RhythmClass::normal, {.withDoubtful = true}), 93);
}

TEST(RhythmGoals, noiseIsRarelyCalledShockable) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto score = scoreOf(judged(), RhythmClass::noise, {});
  EXPECT_GT(score.all(), 1000);
  EXPECT_LE(100.0 * score.shockable / score.all(), 4);
  EXPECT_GE(decided(RhythmClass::noise, {}), 96);
}

TEST(RhythmGoals, fewWindowsAreUnclear) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  for (const auto scored : {RhythmClass::fibrillation, RhythmClass::fastTachycardia,
                            RhythmClass::normal, RhythmClass::otherOrganised}) {
    EXPECT_LE(percentUnclear(scoreOf(judged(), scored, {})), 5);
  }
}

TEST(RhythmGoals, bothSignalsTogether) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const Selection both{.firstSignalOnly = false};
  EXPECT_GE(decided(RhythmClass::fibrillation, both), 96);
  EXPECT_GE(decided(RhythmClass::fastTachycardia, both), 97);
  EXPECT_GE(decided(RhythmClass::normal, both), 99.5);
  EXPECT_GE(decided(RhythmClass::otherOrganised, both), 98);
}

TEST(RhythmGoals, belowTheAsystoleLimitNothingIsShockable) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto score = scoreOfFlat(judged());
  EXPECT_GT(score.all(), 0);
  EXPECT_EQ(score.asystole, score.all());
}

// What is shipped is what the recordings make, and nobody edited it by hand.
TEST(RhythmGoals, theShippedModelIsTheOneFittedToAllRecordings) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  const auto fitted = fitModel(examplesOf(judged(), ""));
  const auto& shipped = rhythmModel();
  EXPECT_NEAR(fitted.offset, shipped.offset, 1e-5);
  for (std::size_t i = 0; i < kRhythmFeatures; ++i) {
    EXPECT_NEAR(fitted.weights[i].weight, shipped.weights[i].weight, 1e-5) << i;
    EXPECT_NEAR(fitted.weights[i].mean, shipped.weights[i].mean, 1e-5) << i;
    EXPECT_NEAR(fitted.weights[i].deviation, shipped.weights[i].deviation, 1e-5) << i;
    EXPECT_NEAR(fitted.weights[i].limit, shipped.weights[i].limit, 1e-5) << i;
  }
}

} // namespace
} // namespace afterbeat
