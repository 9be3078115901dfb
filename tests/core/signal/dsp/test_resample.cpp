#include "core/signal/dsp/resample.h"

#include <cmath>
#include <limits>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

using namespace afterbeat;

namespace {

TEST(RateRatio, IsExactWhereItCanBe) {
  EXPECT_EQ(rateRatio(360, 250), (RateRatio{25, 36}));
  EXPECT_EQ(rateRatio(250, 250), (RateRatio{1, 1}));
  EXPECT_EQ(rateRatio(2000, 250), (RateRatio{1, 8}));
  EXPECT_EQ(rateRatio(50, 250), (RateRatio{5, 1}));
  EXPECT_EQ(rateRatio(62.5, 250), (RateRatio{4, 1}));
}

TEST(RateRatio, IsNearEverywhereElse) {
  for (double rate = 50; rate < 2000; rate += 17.371) {
    const auto [up, down] = rateRatio(rate, 250);
    const double off = std::fabs(250 / rate - static_cast<double>(up) / static_cast<double>(down));
    for (int other = 1; other <= 1000; ++other) {
      const double parts = 250 / rate * other;
      EXPECT_LE(off, std::fabs(parts - std::round(parts)) / other + 1e-12);
    }
    EXPECT_LE(down, 1000);
  }
}

TEST(Resampler, AConstantStaysOne) {
  for (const double to : {50.0, 250.0, 360.0, 999.0}) {
    for (const double value : resampled(std::vector<double>(700, -3.5), 250, to)) {
      EXPECT_NEAR(value, -3.5, 0.01);
    }
  }
}

TEST(Resampler, ASineStaysInPlace) {
  constexpr double kFrom = 360, kTo = 250, kHz = 7;
  std::vector<double> values;
  for (int i = 0; i < 3600; ++i) {
    values.push_back(std::sin(2 * std::numbers::pi * kHz * i / kFrom));
  }
  const auto out = resampled(values, kFrom, kTo);
  ASSERT_EQ(out.size(), 2500U);
  for (std::size_t m = 50; m < 2450; ++m) {
    EXPECT_NEAR(out[m], std::sin(2 * std::numbers::pi * kHz * static_cast<double>(m) / kTo), 0.01);
  }
}

TEST(Resampler, WhatTheLowerRateCannotHoldDoesNotComeBackAsSomethingElse) {
  std::vector<double> values;
  for (int i = 0; i < 10000; ++i) {
    values.push_back(std::sin(2 * std::numbers::pi * 200 * i / 1000));
  }
  const auto out = resampled(values, 1000, 250);
  for (std::size_t m = 50; m + 50 < out.size(); ++m) {
    EXPECT_NEAR(out[m], 0, 0.01);
  }
}

TEST(Resampler, AMissingSampleSpoilsItsNeighboursAlone) {
  std::vector<double> values(1000, 1.0);
  values[500] = std::numeric_limits<double>::quiet_NaN();
  const auto out = resampled(values, 500, 250);
  for (std::size_t m = 0; m < out.size(); ++m) {
    EXPECT_EQ(std::isnan(out[m]), m >= 240 && m <= 260) << m;
  }
}

TEST(Resampler, HowASignalIsCutMakesNoDifference) {
  rc::check([] {
    const double from = *rc::gen::inRange(50, 2001);
    const auto raw = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-2000, 2000));
    const std::vector<double> values(raw.begin(), raw.end());
    const auto whole = resampled(values, from, 250);
    Resampler resampler(from, 250);
    std::vector<double> pieces;
    auto rest = std::span(values);
    while (!rest.empty()) {
      const auto n = *rc::gen::inRange<std::size_t>(1, rest.size() + 1);
      resampler.run(rest.first(n), pieces);
      rest = rest.subspan(n);
    }
    resampler.finish(pieces);
    RC_ASSERT(whole == pieces);
  });
}

TEST(Resampler, NothingInNothingOut) {
  EXPECT_THAT(resampled({}, 360, 250), testing::IsEmpty());
}

} // namespace
