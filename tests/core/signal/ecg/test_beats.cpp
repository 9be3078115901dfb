#include "core/signal/ecg/beats.h"

#include "tests/core/signal/ecg/made_ecg.h"
#include "tests/core/signal/ecg/matched_beats.h"

#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace afterbeat;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

std::vector<Beat> beatsIn(const std::vector<double>& values, double rateHz) {
  return findBeats({Time{}, rateHz, values});
}

struct Case {
  double rateHz, every, mv, noiseMv;
};

class Beats : public testing::TestWithParam<Case> {};

TEST_P(Beats, AreFoundOneForOneAndInPlace) {
  const auto [rateHz, every, mv, noiseMv] = GetParam();
  const auto count = static_cast<std::size_t>(120 * rateHz);
  auto ecg = madeNoise(count, noiseMv, 1);
  const auto drift = madeSine(count, rateHz, 0.2, 0.8);
  std::transform(ecg.begin(), ecg.end(), drift.begin(), ecg.begin(), std::plus<>{});
  const auto truth = madeBeats(1, 119, every, 0.05 * every);
  addBeats(ecg, rateHz, truth, mv);
  const auto found = beatsIn(ecg, rateHz);
  EXPECT_EQ(found.size(), truth.size());
  EXPECT_EQ(matchedBeats(truth, found), truth.size());
}

INSTANTIATE_TEST_SUITE_P(Signals, Beats,
                         testing::Values(Case{50, 0.8, 1, 0.02}, Case{100, 0.8, 1, 0.05},
                                         Case{125, 0.4, 1, 0.05}, Case{250, 0.8, 1, 0.05},
                                         Case{250, 0.8, -1, 0.05}, Case{250, 0.3, 1, 0.03},
                                         Case{250, 1.9, 0.3, 0.02}, Case{257.3, 0.7, 5, 0.1},
                                         Case{500, 0.6, 0.2, 0.01}, Case{1000, 1, -1, 0.05},
                                         Case{2000, 1, 1, 0.05}));

TEST(Beats, PolarityMakesNoDifference) {
  auto ecg = madeNoise(30000, 0.1, 2);
  addBeats(ecg, 250, madeBeats(1, 119, 0.75, 0.1), 0.8);
  const auto upright = beatsIn(ecg, 250);
  for (double& value : ecg) {
    value = -value;
  }
  const auto inverted = beatsIn(ecg, 250);
  ASSERT_EQ(upright.size(), inverted.size());
  for (std::size_t i = 0; i < upright.size(); ++i) {
    EXPECT_EQ(upright[i].at, inverted[i].at);
  }
}

TEST(Beats, MoveWithTheSignal) {
  auto ecg = madeNoise(30000, 0.03, 2);
  addBeats(ecg, 250, madeBeats(1, 119, 0.75, 0.1), 0.8);
  const auto whole = beatsIn(ecg, 250);
  const std::vector<double> later(ecg.begin() + 2500, ecg.end());
  const auto part = findBeats({at(10), 250, later});
  // Away from the cut the thresholds are the same.
  std::vector<Time> a, b;
  for (const Beat& beat : whole) {
    if (seconds(beat.at) > 20) {
      a.push_back(beat.at);
    }
  }
  for (const Beat& beat : part) {
    if (seconds(beat.at) > 20) {
      b.push_back(beat.at);
    }
  }
  EXPECT_GT(a.size(), 100U);
  EXPECT_EQ(a, b);
}

TEST(Beats, AShockArtefactDoesNotHideItsNeighbours) {
  std::vector<double> ecg = madeNoise(30000, 0.02, 3);
  const auto truth = madeBeats(1, 119, 0.8);
  addBeats(ecg, 250, truth, 1);
  for (std::size_t i = 15000; i < 15050; ++i) {
    ecg[i] = i % 2 == 0 ? 20 : -20;
  }
  const auto found = beatsIn(ecg, 250);
  EXPECT_GE(matchedBeats(truth, found), truth.size() - 2);
  EXPECT_LE(found.size(), truth.size() + 2);
}

TEST(Beats, NoneInMissingSamplesAndAllAroundThem) {
  std::vector<double> ecg = madeNoise(30000, 0.02, 4);
  const auto truth = madeBeats(1, 119, 0.8);
  addBeats(ecg, 250, truth, 1);
  std::fill(ecg.begin() + 10000, ecg.begin() + 15000, kNaN);
  std::size_t outside = 0;
  for (const double beat : truth) {
    outside += beat < 40 || beat > 60 ? 1 : 0;
  }
  const auto found = beatsIn(ecg, 250);
  EXPECT_EQ(found.size(), outside);
  for (const Beat& beat : found) {
    EXPECT_FALSE(seconds(beat.at) > 40 && seconds(beat.at) < 60);
  }
}

TEST(Beats, APauseStaysAPause) {
  std::vector<double> ecg = madeNoise(30000, 0.01, 4);
  const auto truth = madeBeats(1, 50, 0.8);
  addBeats(ecg, 250, truth, 1);
  const auto later = madeBeats(62, 119, 0.8);
  addBeats(ecg, 250, later, 1);
  EXPECT_EQ(beatsIn(ecg, 250).size(), truth.size() + later.size());
}

TEST(Beats, NothingInNothingOut) {
  EXPECT_THAT(beatsIn({}, 250), testing::IsEmpty());
  EXPECT_THAT(beatsIn({1.0}, 250), testing::IsEmpty());
  EXPECT_THAT(beatsIn(std::vector<double>(10000, 0.7), 250), testing::IsEmpty());
  EXPECT_THAT(beatsIn(std::vector<double>(10000, kNaN), 250), testing::IsEmpty());
  EXPECT_THAT(beatsIn(madeSine(1000, 30, 1, 1), 30), testing::IsEmpty());
}

TEST(HeartRate, IsSixtyOverTheMedianDistance) {
  // 0.8, 0.8, 2.0 and 0.6 s: the middle of 0.6 0.8 0.8 2.0 is 0.8 s.
  const std::vector<Beat> beats{{at(1), 1}, {at(1.8), 1}, {at(2.6), 1}, {at(4.6), 1}, {at(5.2), 1}};
  EXPECT_DOUBLE_EQ(*heartRate(beats, {at(0), at(10)}), 75);
  // 0.6 and 2.0: 1.3 s.
  EXPECT_DOUBLE_EQ(*heartRate(beats, {at(2.6), at(5.2)}), 60 / 1.3);
}

TEST(HeartRate, IsNothingWithoutNeighbours) {
  const std::vector<Beat> beats{{at(1), 1}, {at(1.8), 1}, {at(10), 1}, {at(20), 1}};
  EXPECT_FALSE(heartRate(beats, {at(0), at(2)}));
  EXPECT_FALSE(heartRate(beats, {at(1.8), at(20)}));
  EXPECT_FALSE(heartRate({}, {at(0), at(2)}));
}

} // namespace
