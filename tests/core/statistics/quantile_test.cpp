#include "core/statistics/quantile.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

/// The definition of type 7, word by word.
double plainQuantile(std::vector<double> values, double p) {
  std::sort(values.begin(), values.end());
  const double h = static_cast<double>(values.size() - 1) * p;
  const auto j = static_cast<std::size_t>(std::floor(h));
  const double next = values[std::min(j + 1, values.size() - 1)];
  return values[j] + (h - std::floor(h)) * (next - values[j]);
}

TEST(Quantile, OfOneToFour) {
  const std::vector<double> values{4, 1, 3, 2};
  EXPECT_DOUBLE_EQ(quantile(values, 0.25), 1.75);
  EXPECT_DOUBLE_EQ(*medianOf(values), 2.5);
  EXPECT_DOUBLE_EQ(quantile(values, 1), 4);
  EXPECT_DOUBLE_EQ(quantile(values, 0), 1);
}

TEST(Quantile, NothingHasNone) {
  EXPECT_FALSE(medianOf({}));
  EXPECT_FALSE(quartiles({}));
}

TEST(Quantile, OneValueIsAllOfThem) {
  const Quartiles q = *quartiles({7});
  EXPECT_EQ(q.low, 7);
  EXPECT_EQ(q.median, 7);
  EXPECT_EQ(q.high, 7);
}

TEST(Quantile, EqualsThePlainDefinition) {
  const bool held = rc::check("quartiles, quantiles and median are those of the definition", [] {
    const auto size = *rc::gen::inRange(1, 40);
    // Few different values, so that many are equal.
    const auto drawn = *rc::gen::container<std::vector<int>>(static_cast<std::size_t>(size),
                                                             rc::gen::inRange(0, 15));
    const std::vector<double> values(drawn.begin(), drawn.end());
    const double p = *rc::gen::inRange(0, 101) / 100.0;
    RC_ASSERT(std::fabs(quantile(values, p) - plainQuantile(values, p)) < 1e-12);
    const Quartiles q = *quartiles(values);
    RC_ASSERT(std::fabs(q.low - plainQuantile(values, 0.25)) < 1e-12);
    RC_ASSERT(std::fabs(q.median - plainQuantile(values, 0.5)) < 1e-12);
    RC_ASSERT(std::fabs(q.high - plainQuantile(values, 0.75)) < 1e-12);
    RC_ASSERT(std::fabs(*medianOf(values) - q.median) < 1e-12);
  });
  EXPECT_TRUE(held);
}

} // namespace
} // namespace afterbeat
