#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/sections.h"

#include <cmath>
#include <limits>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

using namespace afterbeat;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

TEST(Butterworth, FirstOrderLowPassAtAQuarterOfTheRateIsTheMeanOfTwoNeighbours) {
  // tan(pi/4) = 1: H(z) = (1 + z^-1) / 2.
  const auto sections = butterworth(1, Band::lowPass, 0, 25, 100);
  ASSERT_EQ(sections.size(), 1U);
  EXPECT_NEAR(sections[0].b0, 0.5, 1e-15);
  EXPECT_NEAR(sections[0].b1, 0.5, 1e-15);
  EXPECT_NEAR(sections[0].b2, 0, 1e-15);
  EXPECT_NEAR(sections[0].a1, 0, 1e-15);
  EXPECT_NEAR(sections[0].a2, 0, 1e-15);
}

TEST(Butterworth, SecondOrderLowPassAtAQuarterOfTheRate) {
  // s^2 + sqrt(2) s + 1 with s = (1 - z^-1) / (1 + z^-1): a0 = 2 + sqrt(2), a1 = 0, a2 = 2 -
  // sqrt(2).
  const auto sections = butterworth(2, Band::lowPass, 0, 25, 100);
  ASSERT_EQ(sections.size(), 1U);
  const double a0 = 2 + std::numbers::sqrt2;
  EXPECT_NEAR(sections[0].b0, 1 / a0, 1e-15);
  EXPECT_NEAR(sections[0].b1, 2 / a0, 1e-15);
  EXPECT_NEAR(sections[0].b2, 1 / a0, 1e-15);
  EXPECT_NEAR(sections[0].a1, 0, 1e-15);
  EXPECT_NEAR(sections[0].a2, (2 - std::numbers::sqrt2) / a0, 1e-15);
}

TEST(Butterworth, LosesThreeDecibelsAtItsEdgesAndNothingInside) {
  for (int order = 1; order <= 8; ++order) {
    const auto band = butterworth(order, Band::bandPass, 5, 15, 250);
    EXPECT_NEAR(gainAt(band, 5, 250), std::numbers::sqrt2 / 2, 1e-9) << order;
    EXPECT_NEAR(gainAt(band, 15, 250), std::numbers::sqrt2 / 2, 1e-9) << order;
    EXPECT_NEAR(gainAt(butterworth(order, Band::highPass, 0.5, 0, 250), 125, 250), 1, 1e-9);
    EXPECT_NEAR(gainAt(butterworth(order, Band::lowPass, 0, 40, 250), 0, 250), 1, 1e-9);
    EXPECT_NEAR(gainAt(butterworth(order, Band::bandStop, 45, 55, 250), 0, 250), 1, 1e-9);
  }
}

TEST(Butterworth, SaysWhatItCannotDesign) {
  EXPECT_TRUE(canDesign(2, Band::lowPass, 0, 20, 50));
  EXPECT_FALSE(canDesign(2, Band::lowPass, 0, 25, 50));
  EXPECT_FALSE(canDesign(2, Band::lowPass, 0, 0, 50));
  EXPECT_FALSE(canDesign(0, Band::lowPass, 0, 20, 50));
  EXPECT_FALSE(canDesign(13, Band::lowPass, 0, 20, 50));
  EXPECT_TRUE(canDesign(2, Band::highPass, 0.5, 0, 50));
  EXPECT_FALSE(canDesign(2, Band::bandPass, 15, 5, 250));
  EXPECT_FALSE(canDesign(2, Band::bandPass, 5, 5, 250));
  EXPECT_FALSE(canDesign(2, Band::bandStop, 5, 200, 250));
  EXPECT_FALSE(canDesign(2, Band::bandPass, 5, 15, kNaN));
}

TEST(Notch, TakesItsFrequencyOutAlone) {
  const std::vector sections{notch(50, 25, 500)};
  EXPECT_NEAR(gainAt(sections, 50, 500), 0, 1e-12);
  EXPECT_NEAR(gainAt(sections, 0, 500), 1, 1e-12);
  EXPECT_NEAR(gainAt(sections, 250, 500), 1, 1e-12);
}

TEST(Cascade, WorkedByHand) {
  // y[n] = x[n] + 2 x[n-1] + 3 x[n-2] - 0.5 y[n-1] - 0.25 y[n-2] on 1, 0, 0, 0:
  // 1; 2 - 0.5; 3 - 0.75 - 0.25; -1 - 0.375.
  Cascade filter({Section{1, 2, 3, 0.5, 0.25}});
  std::vector<double> values{1, 0, 0, 0};
  filter.run(values);
  EXPECT_THAT(values, testing::ElementsAre(1, 1.5, 2, -1.375));
}

TEST(Cascade, SettledOnAConstantStaysThere) {
  Cascade filter(butterworth(3, Band::lowPass, 0, 10, 250));
  filter.settle(80);
  for (int i = 0; i < 100; ++i) {
    EXPECT_NEAR(filter.step(80), 80, 1e-9);
  }
  Cascade high(butterworth(3, Band::highPass, 1, 0, 250));
  high.settle(80);
  EXPECT_NEAR(high.step(80), 0, 1e-9);
}

TEST(Cascade, SilenceAfterASignalEndsInExactZeros) {
  Cascade filter(butterworth(2, Band::bandPass, 5, 15, 250));
  std::vector<double> values(200000, 0.0);
  values[0] = 1;
  filter.run(values);
  EXPECT_EQ(values.back(), 0);
}

TEST(Cascade, HowASignalIsCutMakesNoDifference) {
  rc::check([] {
    const auto order = *rc::gen::inRange(1, 9);
    const auto raw = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-2000, 2000));
    std::vector<double> whole(raw.begin(), raw.end());
    auto pieces = whole;
    const auto sections = butterworth(order, Band::bandPass, 1, 40, 250);
    Cascade one(sections), many(sections);
    one.run(whole);
    auto rest = std::span(pieces);
    while (!rest.empty()) {
      const auto n = *rc::gen::inRange<std::size_t>(1, rest.size() + 1);
      if (n == 1) {
        rest[0] = many.step(rest[0]);
      } else {
        many.run(rest.first(n));
      }
      rest = rest.subspan(n);
    }
    RC_ASSERT(whole == pieces);
  });
}

TEST(FilterBothWays, MovesNothingInTime) {
  // Symmetric input stays symmetric.
  std::vector<double> values(301, 0.0);
  values[150] = 1;
  filterBothWays(butterworth(2, Band::lowPass, 0, 20, 250), values);
  for (std::size_t i = 0; i < 150; ++i) {
    EXPECT_NEAR(values[i], values[300 - i], 1e-9);
  }
  EXPECT_GT(values[150], values[149]);
}

TEST(FilterBothWays, TakesAnyLength) {
  const auto sections = butterworth(4, Band::lowPass, 0, 20, 250);
  for (std::size_t n = 0; n < 40; ++n) {
    std::vector<double> values(n, 7.0);
    filterBothWays(sections, values);
    EXPECT_THAT(values, testing::Each(testing::DoubleNear(7, 1e-9)));
  }
}

TEST(BridgeMissing, WorkedByHand) {
  std::vector<double> values{kNaN, 1, kNaN, kNaN, 4, kNaN};
  EXPECT_EQ(bridgeMissing(values), 4U);
  EXPECT_THAT(values, testing::ElementsAre(1, 1, 2, 3, 4, 4));
  std::vector<double> nothing{kNaN, kNaN};
  EXPECT_EQ(bridgeMissing(nothing), 2U);
  EXPECT_THAT(nothing, testing::ElementsAre(0, 0));
}

} // namespace
