// The rhythm hint against the goals set for it, on recordings whose record the model has not seen.
// The whole story: rhythm_report.

#include "../../importers/reference_recordings.h"
#include "core/signal/dsp/resample.h"
#include "core/signal/rhythm/hints.h"
#include "fit.h"
#include "importers/wfdb/read_wfdb.h"
#include "score.h"

#include <cmath>
#include <numbers>
#include <random>

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

// A database by itself: what the model learns on one holds on another, whose recorders, leads and
// labellers are others.
TEST(RhythmGoals, holdOnADatabaseTheModelHasNotSeen) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  auto signals = judged();
  crossValidate(signals, HeldOut::database);
  const auto percentOf = [&](RhythmClass scored, const char* database) {
    return percentOfDecided(scoreOf(signals, scored, {.database = database, .withDisputed = false}),
                            oughtToBeShockable(scored))
        .value_or(0);
  };
  EXPECT_GE(percentOf(RhythmClass::fibrillation, "vfdb"), 96);
  EXPECT_GE(percentOf(RhythmClass::fibrillation, "cudb"), 96);
  EXPECT_GE(percentOf(RhythmClass::fastTachycardia, "vfdb"), 97);
  EXPECT_GE(percentOf(RhythmClass::normal, "vfdb"), 99);
  EXPECT_GE(percentOf(RhythmClass::normal, "mitdb"), 99.5);
  EXPECT_GE(percentOf(RhythmClass::otherOrganised, "vfdb"), 98);
}

std::vector<RhythmKind> kindsOf(const std::vector<double>& values, double rateHz) {
  const SignalView run{Time{}, rateHz, values};
  std::vector<RhythmKind> kinds;
  for (const auto& window : hintRhythm({.runs = {&run, 1}}).windows) {
    kinds.push_back(window.is);
  }
  return kinds;
}

double percentAlike(const std::vector<RhythmKind>& a, const std::vector<RhythmKind>& b) {
  int alike = 0, all = 0;
  for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i) {
    if (a[i] != RhythmKind::unclear && b[i] != RhythmKind::unclear) {
      alike += a[i] == b[i] ? 1 : 0;
      ++all;
    }
  }
  EXPECT_GT(all, 500);
  return 100.0 * alike / std::max(all, 1);
}

// The same heart through another recorder.
TEST(RhythmGoals, doNotDependOnRatePolarityOrALittleNoise) {
  AFTERBEAT_NEEDS_REFERENCE_RECORDINGS();
  for (const auto* record : {"424.hea", "430.hea"}) {
    const auto imported = readWfdb(referenceRecordings() / "ecg" / "vfdb" / record);
    ASSERT_TRUE(imported);
    const auto& channel = imported->record.channels.at(0);
    std::vector<double> values;
    readValues(channel, channel.blocks.at(0), 0, channel.blocks.at(0).count, 1, values);
    const auto kinds = kindsOf(values, channel.rateHz);
    for (const double rateHz : {125.0, 360.0, 500.0}) {
      EXPECT_GE(percentAlike(kinds, kindsOf(resampled(values, 250, rateHz), rateHz)), 99.5)
          << record << " " << rateHz;
    }
    auto other = values;
    for (double& v : other) {
      v = 0.3 - v;
    }
    EXPECT_GE(percentAlike(kinds, kindsOf(other, 250)), 99.9) << record;
    std::mt19937 dice{4};
    for (std::size_t i = 0; i < other.size(); ++i) {
      const double even = static_cast<double>(dice()) / 4294967296.0;
      other[i] = values[i] + 0.04 * (even - 0.5) +
                 0.05 * std::sin(2 * std::numbers::pi * 50 * static_cast<double>(i) / 250);
    }
    EXPECT_GE(percentAlike(kinds, kindsOf(other, 250)), 99) << record;
  }
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
