#include "core/statistics/control_chart.h"

#include <gtest/gtest.h>

#include <cmath>

namespace afterbeat {
namespace {

TEST(ShareLimits, FollowTheNumberOfCasesAndStayWithinZeroAndOne) {
  const auto limits = shareLimits({1, 10}, {4, 96}, Dispersion::counts);
  EXPECT_DOUBLE_EQ(limits.centre, 0.11);
  EXPECT_DOUBLE_EQ(limits.deviation[0], std::sqrt(0.11 * 0.89 / 4));
  EXPECT_DOUBLE_EQ(limits.deviation[1], std::sqrt(0.11 * 0.89 / 96));
  EXPECT_EQ(limits.lower(0), 0);
  EXPECT_DOUBLE_EQ(limits.upper(1), 0.11 + 3 * std::sqrt(0.11 * 0.89 / 96));
  EXPECT_EQ(shareLimits({4, 3}, {4, 4}, Dispersion::counts).upper(0), 1);
}

TEST(CountLimits, FollowTheExposure) {
  const auto limits = countLimits({4, 8}, {2, 4}, Dispersion::counts);
  EXPECT_DOUBLE_EQ(limits.centre, 2);
  EXPECT_DOUBLE_EQ(limits.deviation[0], 1);
  EXPECT_DOUBLE_EQ(limits.deviation[1], std::sqrt(0.5));
  EXPECT_EQ(limits.lower(0), 0);
}

// Shares 0.4, 0.6, 0.4 of 100 each: centre 7/15, one deviation 0.04989; standardised ranges are
// 0.2 / 0.04989 = 4.009 both, so the limits become 4.009 / 1.128 = 3.554 times as wide.
TEST(ShareLimits, WidenedByTheMovingRange) {
  const auto limits = shareLimits({40, 60, 40}, {100, 100, 100}, Dispersion::widened);
  EXPECT_NEAR(limits.widened, 3.554, 0.001);
  EXPECT_NEAR(limits.deviation[0], 0.2 / 1.128, 1e-12);
}

TEST(ShareLimits, NoneAtAllHasNoWidth) {
  const auto limits = shareLimits({0, 0}, {10, 10}, Dispersion::widened);
  EXPECT_EQ(limits.centre, 0);
  EXPECT_EQ(limits.upper(0), 0);
}

TEST(IndividualsLimits, AreTheSameForEveryPoint) {
  const auto limits = individualsLimits({1, 3, 2});
  EXPECT_DOUBLE_EQ(limits.centre, 2);
  EXPECT_DOUBLE_EQ(limits.upper(2), 2 + 3 * 1.5 / 1.128);
  EXPECT_DOUBLE_EQ(limits.lower(0), 2 - 3 * 1.5 / 1.128);
}

} // namespace
} // namespace afterbeat
