#include "core/signal/ecg/quality.h"

#include "tests/core/signal/ecg/made_ecg.h"

#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace afterbeat;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kRate = 250;

/// A minute of heartbeats with a little noise, in steps of 5 uV.
std::vector<double> cleanEcg(double mv = 1) {
  auto ecg = madeNoise(15000, 0.02, 9);
  addBeats(ecg, kRate, madeBeats(0.5, 59.5, 0.8), mv);
  digitise(ecg, 0.005, -10, 10);
  return ecg;
}

std::vector<FaultyStretch> faultsOf(const std::vector<double>& ecg, SignalFault kind,
                                    double rateHz = kRate) {
  auto out = ecgFaults({Time{}, rateHz, ecg});
  std::erase_if(out, [kind](const FaultyStretch& one) { return one.fault != kind; });
  return out;
}

void fill(std::vector<double>& ecg, double from, double to, double value) {
  std::fill(ecg.begin() + std::lround(from * kRate), ecg.begin() + std::lround(to * kRate), value);
}

TEST(EcgFaults, NoneInACleanEcg) {
  for (const double mv : {0.2, 1.0, -2.0, 4.0}) {
    EXPECT_THAT(ecgFaults({Time{}, kRate, cleanEcg(mv)}), testing::IsEmpty()) << mv;
  }
}

TEST(EcgFaults, NoneInAnAsystoleThatIsConnected) {
  auto ecg = madeNoise(15000, 0.01, 9);
  digitise(ecg, 0.005, -10, 10);
  EXPECT_THAT(ecgFaults({Time{}, kRate, ecg}), testing::IsEmpty());
}

TEST(EcgFaults, NoneInFibrillation) {
  auto ecg = madeNoise(15000, 0.02, 9);
  for (const double hz : {3.7, 4.9, 5.3, 6.1}) {
    const auto wave = madeSine(15000, kRate, hz, 0.2);
    std::transform(ecg.begin(), ecg.end(), wave.begin(), ecg.begin(), std::plus<>{});
  }
  digitise(ecg, 0.005, -10, 10);
  EXPECT_THAT(ecgFaults({Time{}, kRate, ecg}), testing::IsEmpty());
}

TEST(EcgFaults, MissingSamplesAreFoundToTheSample) {
  auto ecg = cleanEcg();
  fill(ecg, 10, 12, kNaN);
  fill(ecg, 12.05, 12.5, kNaN);
  fill(ecg, 20, 20.004, kNaN);
  EXPECT_THAT(faultsOf(ecg, SignalFault::missing),
              testing::ElementsAre(FaultyStretch{{at(10), at(12.5)}, SignalFault::missing},
                                   FaultyStretch{{at(20), at(20.004)}, SignalFault::missing}));
}

TEST(EcgFaults, ClippedTopsShowWhereTheRailIs) {
  auto ecg = madeNoise(15000, 0.01, 9);
  addBeats(ecg, kRate, madeBeats(0.5, 59.5, 0.8), 3);
  digitise(ecg, 0.005, -10, 1.2);
  RailLearner learner(kRate);
  learner.add(ecg);
  ASSERT_TRUE(learner.rails().high);
  EXPECT_NEAR(*learner.rails().high, 1.2, 1e-12);
  EXPECT_FALSE(learner.rails().low);
  EXPECT_EQ(faultsOf(ecg, SignalFault::saturated).size(), madeBeats(0.5, 59.5, 0.8).size());
}

TEST(EcgFaults, ALongStayAtTheExtremeIsARailToo) {
  auto ecg = cleanEcg();
  fill(ecg, 30, 33, -5);
  EXPECT_THAT(faultsOf(ecg, SignalFault::saturated),
              testing::ElementsAre(FaultyStretch{{at(30), at(33)}, SignalFault::saturated}));
  EXPECT_THAT(faultsOf(ecg, SignalFault::off), testing::IsEmpty());
}

TEST(EcgFaults, RoundTopsAreNoRail) {
  for (const double step : {0.001, 0.005, 0.02, 0.05}) {
    for (const double rateHz : {100.0, 250.0, 1000.0}) {
      std::vector<double> ecg(static_cast<std::size_t>(60 * rateHz), 0.0);
      addBeats(ecg, rateHz, madeBeats(0.5, 59.5, 0.8), 1);
      digitise(ecg, step, -10, 10);
      RailLearner learner(rateHz);
      learner.add(ecg);
      EXPECT_FALSE(learner.rails().high) << step << " mV, " << rateHz << " Hz";
    }
  }
}

TEST(RailLearner, HowASignalIsCutMakesNoDifference) {
  auto ecg = madeNoise(15000, 0.5, 9);
  digitise(ecg, 0.005, -1, 1);
  RailLearner whole(kRate), pieces(kRate);
  whole.add(ecg);
  for (std::size_t i = 0; i < ecg.size(); i += 7) {
    pieces.add(std::span(ecg).subspan(i, std::min<std::size_t>(7, ecg.size() - i)));
  }
  ASSERT_EQ(whole.rails().high.has_value(), pieces.rails().high.has_value());
  EXPECT_EQ(whole.rails().high, pieces.rails().high);
  EXPECT_EQ(whole.rails().low, pieces.rails().low);
}

TEST(EcgFaults, AFlatLineIsOff) {
  auto ecg = cleanEcg();
  fill(ecg, 30, 33, 0.1);
  fill(ecg, 40, 40.9, 0.1);
  EXPECT_THAT(faultsOf(ecg, SignalFault::off),
              testing::ElementsAre(FaultyStretch{{at(30), at(33)}, SignalFault::off}));
}

TEST(EcgFaults, AChannelThatNeverChangesIsOffAndHasNoRails) {
  const std::vector<double> ecg(15000, 0.3);
  EXPECT_THAT(ecgFaults({Time{}, kRate, ecg}),
              testing::ElementsAre(FaultyStretch{{at(0), at(60)}, SignalFault::off}));
}

TEST(EcgFaults, PacingPulsesAreSpikes) {
  for (const double rateHz : {250.0, 500.0, 1000.0}) {
    auto ecg = madeNoise(static_cast<std::size_t>(60 * rateHz), 0.02, 9);
    const auto beats = madeBeats(20.5, 40, 0.8);
    for (const double beat : beats) {
      addBell(ecg, rateHz, beat, -1, 0.03);
      addBell(ecg, rateHz, beat + 0.25, 0.3, 0.05);
      for (auto i = std::lround((beat - 0.1) * rateHz); i <= std::lround((beat - 0.098) * rateHz);
           ++i) {
        ecg[static_cast<std::size_t>(i)] += 1.5;
      }
    }
    digitise(ecg, 0.005, -10, 10);
    const auto found = faultsOf(ecg, SignalFault::spikes, rateHz);
    ASSERT_EQ(found.size(), 1U) << rateHz;
    EXPECT_NEAR(seconds(found[0].where.begin), beats.front() - 0.1, 0.05);
    EXPECT_NEAR(seconds(found[0].where.end), beats.back() - 0.1, 0.05);
  }
}

TEST(EcgFaults, NoiseThatHidesTheRestIsFound) {
  auto ecg = cleanEcg(0.5);
  const auto noise = madeNoise(2500, 0.4, 11);
  std::transform(noise.begin(), noise.end(), ecg.begin() + 5000, ecg.begin() + 5000, std::plus<>{});
  EXPECT_THAT(faultsOf(ecg, SignalFault::noise),
              testing::ElementsAre(FaultyStretch{{at(20), at(30)}, SignalFault::noise}));
}

TEST(EcgFaults, ASwingOfTheBaselineIsNoise) {
  auto ecg = cleanEcg();
  addBell(ecg, kRate, 30, 9, 0.5);
  const auto found = faultsOf(ecg, SignalFault::noise);
  ASSERT_FALSE(found.empty());
  EXPECT_GT(seconds(found.front().where.begin), 27);
  EXPECT_LT(seconds(found.back().where.end), 33);
}

/// Faults lie inside the run, begin in order, and none is empty.
void expectOrder(const std::vector<double>& ecg, double rateHz) {
  const SignalView run{Time{}, rateHz, ecg};
  Time last{};
  for (const FaultyStretch& one : ecgFaults(run)) {
    EXPECT_LE(last, one.where.begin);
    EXPECT_LT(one.where.begin, one.where.end);
    EXPECT_LE(one.where.end, run.timeAt(static_cast<double>(ecg.size())));
    last = one.where.begin;
  }
}

TEST(EcgFaults, AnythingIsSurvived) {
  for (const double rateHz : {50.0, 99.0, 200.0, 2000.0}) {
    for (const std::size_t count : {0U, 1U, 2U, 30U, 3000U}) {
      expectOrder(std::vector<double>(count, kNaN), rateHz);
      expectOrder(std::vector<double>(count, 1e9), rateHz);
      expectOrder(madeNoise(count, 100, 3), rateHz);
      auto holes = madeNoise(count, 1, 3);
      for (std::size_t i = 0; i < count; i += 3) {
        holes[i] = kNaN;
      }
      expectOrder(holes, rateHz);
    }
  }
}

} // namespace
