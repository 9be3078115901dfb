#include "core/statistics/rank_test.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

/// Counts every pair; ties by their definition.
double plainRankTest(const std::vector<double>& a, const std::vector<double>& b) {
  double wins = 0, ties = 0;
  std::vector<double> all = a;
  all.insert(all.end(), b.begin(), b.end());
  for (const double x : a) {
    for (const double y : b) {
      wins += x > y ? 1 : x == y ? 0.5 : 0;
    }
  }
  for (const double x : all) {
    const auto t = static_cast<double>(std::count(all.begin(), all.end(), x));
    ties += t * t - 1; // t values of t^3 - t in all
  }
  const auto m = static_cast<double>(a.size()), n = static_cast<double>(b.size()), all_ = m + n;
  const double variance = m * n / 12 * ((all_ + 1) - ties / (all_ * (all_ - 1)));
  if (variance <= 0) {
    return 1;
  }
  const double z = (std::fabs(wins - m * n / 2) - 0.5) / std::sqrt(variance);
  return std::min(1.0, 2 * 0.5 * std::erfc(z / std::sqrt(2.0)));
}

TEST(RankTest, NothingToCompareIsNoDifference) {
  EXPECT_EQ(rankTest({}, {1, 2}), 1);
  EXPECT_EQ(rankTest({1, 1}, {1, 1, 1}), 1);
}

TEST(RankTest, EqualsCountingEveryPair) {
  EXPECT_TRUE(rc::check("rank sums give what counting pairs gives", [] {
    const auto draw = [] {
      const auto drawn =
          *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 9)));
      return std::vector<double>(drawn.begin(), drawn.end());
    };
    const auto a = draw(), b = draw();
    RC_ASSERT(std::fabs(rankTest(a, b) - plainRankTest(a, b)) < 1e-9);
    // The others of the one are the other.
    std::vector<double> all = a;
    std::vector<int> group(a.size(), 0);
    all.insert(all.end(), b.begin(), b.end());
    group.resize(all.size(), 1);
    all.push_back(99);
    group.push_back(-1);
    RC_ASSERT(rankTestAgainstOthers(all, group, 2)[0] == rankTest(a, b));
  }));
}

// 0.01 x 4, then 0.02 x 3 = 0.06, then 0.03 x 2 = 0.06, then 0.5.
TEST(Holm, WorkedExample) {
  const auto corrected = holm({0.5, 0.01, 0.03, 0.02});
  EXPECT_DOUBLE_EQ(corrected[0], 0.5);
  EXPECT_DOUBLE_EQ(corrected[1], 0.04);
  EXPECT_DOUBLE_EQ(corrected[2], 0.06);
  EXPECT_DOUBLE_EQ(corrected[3], 0.06);
}

} // namespace
} // namespace afterbeat
