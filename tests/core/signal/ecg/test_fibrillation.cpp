#include "core/signal/ecg/fibrillation.h"
#include "core/signal/ecg/quality.h"

#include "tests/core/signal/ecg/made_ecg.h"

#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace afterbeat;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

/// Ten seconds of a 5-Hz sine of 0.4 mV.
struct Sine {
  explicit Sine(double rateHz = 250)
      : values(madeSine(static_cast<std::size_t>(10 * rateHz), rateHz, 5, 0.4)), view{at(100),
                                                                                      rateHz,
                                                                                      values} {}
  std::vector<double> values;
  SignalView view;
};

TEST(Amsa, AFiveHertzSineOfPointFourMillivoltsMakesTwo) {
  for (const double rateHz : {97.0, 100.0, 125.0, 250.0, 500.0, 1000.0}) {
    const Sine sine(rateHz);
    const auto found = fibrillationBefore(sine.view, at(108), {}, {});
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->amsaMvHz, 2.0, 1e-9) << rateHz;
    EXPECT_NEAR(found->dominantHz, 5.0, 0.01) << rateHz;
    EXPECT_NEAR(found->amplitudeMv, 0.8, 0.03) << rateHz;
  }
}

TEST(Amsa, CountsTwoToFortyEightHertzWithBothEdges) {
  const double rateHz = 250;
  const auto amsa = [rateHz](double hz) {
    return fibrillationOf(madeSine(500, rateHz, hz, 0.1), rateHz).amsaMvHz;
  };
  EXPECT_NEAR(amsa(1.5), 0, 1e-9);
  EXPECT_NEAR(amsa(2), 0.2, 1e-9);
  EXPECT_NEAR(amsa(48), 4.8, 1e-9);
  EXPECT_NEAR(amsa(48.5), 0, 1e-9);
}

TEST(Amsa, TakesTheTwoSecondsThatEndJustBeforeTheMoment) {
  Sine sine;
  // Outside the stretch [106, 108): anything.
  std::fill(sine.values.begin(), sine.values.begin() + 1500, 7.0);
  std::fill(sine.values.begin() + 2000, sine.values.end(), -9.0);
  EXPECT_NEAR(fibrillationBefore(sine.view, at(108), {}, {})->amsaMvHz, 2.0, 1e-9);
}

TEST(Amsa, IsNotToldWhereItCannotBeKnown) {
  const Sine sine;
  const auto why = [&sine](std::vector<FaultyStretch> faults, std::vector<Interval> moved = {},
                           double end = 108) {
    return fibrillationBefore(sine.view, at(end), faults, moved).error();
  };
  const auto stretch = [](double begin, double end, SignalFault fault) {
    return std::vector<FaultyStretch>{{{at(begin), at(end)}, fault}};
  };
  EXPECT_EQ(why(stretch(107, 107.01, SignalFault::saturated)), EcgObstacle::saturated);
  EXPECT_EQ(why(stretch(107, 107.01, SignalFault::missing)), EcgObstacle::missingSamples);
  EXPECT_EQ(why(stretch(90, 120, SignalFault::off)), EcgObstacle::electrodesOff);
  EXPECT_EQ(why(stretch(107, 120, SignalFault::poorContact)), EcgObstacle::noise);
  EXPECT_EQ(why(stretch(107, 120, SignalFault::spikes)), EcgObstacle::spikes);
  EXPECT_EQ(why({}, {{at(107.9), at(109)}}), EcgObstacle::compressions);
  EXPECT_EQ(why({}, {}, 101.9), EcgObstacle::notRecorded);
  EXPECT_EQ(why({}, {}, 110.1), EcgObstacle::notRecorded);
  // What ends where the stretch begins, or begins where it ends, lies outside.
  auto beside = stretch(100, 106, SignalFault::saturated);
  beside.push_back({{at(108), at(109)}, SignalFault::saturated});
  EXPECT_TRUE(
      fibrillationBefore(sine.view, at(108), beside, std::vector<Interval>{{at(108), at(109)}}));
  EXPECT_TRUE(fibrillationBefore(sine.view, at(102), {}, {}));
  EXPECT_TRUE(fibrillationBefore(sine.view, at(110), {}, {}));
}

TEST(Amsa, IsNotToldOfASlowRecordingOrOverAHole) {
  const Sine slow(96);
  EXPECT_EQ(fibrillationBefore(slow.view, at(108), {}, {}).error(), EcgObstacle::rateTooLow);
  Sine hole;
  hole.values[1900] = kNaN;
  EXPECT_EQ(fibrillationBefore(hole.view, at(108), {}, {}).error(), EcgObstacle::missingSamples);
}

TEST(Amsa, IsNotToldOfNoise) {
  Sine sine;
  const auto noise = madeNoise(250, 0.25, 3);
  std::transform(noise.begin(), noise.end(), sine.values.begin() + 1750, sine.values.begin() + 1750,
                 std::plus<>{});
  EXPECT_EQ(fibrillationBefore(sine.view, at(108), {}, {}).error(), EcgObstacle::noise);
}

TEST(Amsa, TheShockItselfDoesNotHideWhatWasBeforeIt) {
  Sine sine;
  for (std::size_t i = 2000; i < 2500; ++i) {
    sine.values[i] = 20 * std::exp(-static_cast<double>(i - 2000) / 150);
  }
  // On a grid of seconds that does not fit the shock's moment.
  const std::span<const double> later = std::span(sine.values).subspan(75);
  const SignalView view{at(100.3), 250, later};
  const auto faults = ecgFaults(view);
  ASSERT_TRUE(hasFault(faults, {at(107.9), at(108)}, {SignalFault::noise}));
  const auto found = fibrillationBefore(view, at(108), faults, {});
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->amsaMvHz, 2, 1e-9);
}

TEST(Amsa, IsNotToldWithAShockInside) {
  Sine sine;
  // The entry comes 20 ms late.
  std::fill(sine.values.begin() + 1995, sine.values.end(), 5.0);
  EXPECT_EQ(fibrillationBefore(sine.view, at(108), {}, {}).error(), EcgObstacle::spikes);
  EXPECT_TRUE(fibrillationBefore(sine.view, at(107.9), {}, {}));
}

TEST(Fibrillation, CoarseFromPointTwoMillivoltsPeakToTrough) {
  EXPECT_TRUE(fibrillationOf(madeSine(500, 250, 5, 0.11), 250).coarse());
  EXPECT_FALSE(fibrillationOf(madeSine(500, 250, 5, 0.09), 250).coarse());
}

TEST(Fibrillation, ADriftingBaselineMakesItNoCoarser) {
  auto values = madeSine(500, 250, 5, 0.05);
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] += 0.003 * static_cast<double>(i);
  }
  EXPECT_NEAR(fibrillationOf(values, 250).amplitudeMv, 0.1, 0.01);
}

TEST(Fibrillation, ItsFrequencyIsFoundBetweenTheBins) {
  for (double hz = 2.6; hz < 9; hz += 0.13) {
    EXPECT_NEAR(fibrillationOf(madeSine(500, 250, hz, 0.3), 250).dominantHz, hz, 0.06);
  }
}

TEST(MovedByCompressions, JoinsWhatIsNear) {
  EXPECT_THAT(movedByCompressions(std::vector{at(1), at(1.5), at(2.2), at(2.8)}),
              testing::ElementsAre(Interval{at(0.7), at(1.8)}, Interval{at(1.9), at(3.1)}));
  EXPECT_THAT(movedByCompressions({}), testing::IsEmpty());
}

} // namespace
