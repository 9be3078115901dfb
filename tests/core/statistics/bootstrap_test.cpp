#include "core/statistics/bootstrap.h"

#include "core/statistics/quantile.h"
#include "core/statistics/random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace afterbeat {
namespace {

/// The bootstrap as everyone describes it: draw with putting back, value by value.
std::vector<double> plainMedians(const std::vector<double>& values, int resamples, Random& random) {
  std::vector<double> medians;
  for (int r = 0; r < resamples; ++r) {
    std::vector<double> drawn;
    for (std::size_t i = 0; i < values.size(); ++i) {
      drawn.push_back(values[random.below(values.size())]);
    }
    medians.push_back(*medianOf(std::move(drawn)));
  }
  return medians;
}

std::vector<double> squares(std::size_t n) {
  std::vector<double> values;
  for (std::size_t i = 0; i < n; ++i) {
    values.push_back(static_cast<double>(i * i));
  }
  return values;
}

double shareUpTo(const std::vector<double>& medians, double x) {
  const auto n = std::count_if(medians.begin(), medians.end(), [x](double m) { return m <= x; });
  return static_cast<double>(n) / static_cast<double>(medians.size());
}

/// Two empirical distributions of N each differ by more than 1.95 sqrt(2 / N) in one of a thousand
/// comparisons (Kolmogorov and Smirnov); values that repeat only make it rarer.
TEST(Bootstrap, DrawsTheSameMediansAsDrawingValueByValue) {
  constexpr int kResamples = 20'000;
  const double limit = 1.95 * std::sqrt(2.0 / kResamples);
  for (const std::size_t n : {1U, 2U, 5U, 6U, 11U, 12U}) {
    const auto values = squares(n);
    Random random(n);
    const auto plain = plainMedians(values, kResamples, random);
    const auto medians = bootstrapMedians(values, {kResamples, 0.95, n + 100});
    double apart = 0;
    // Every median is a value or lies in the middle of two.
    for (const double a : values) {
      for (const double b : values) {
        const double x = (a + b) / 2;
        apart = std::max(apart, std::fabs(shareUpTo(medians, x) - shareUpTo(plain, x)));
      }
    }
    EXPECT_LT(apart, limit) << n << " values";
  }
}

TEST(Bootstrap, IsTheSameForTheSameSeed) {
  const auto values = squares(25);
  EXPECT_EQ(bootstrapMedians(values, {200, 0.95, 3}), bootstrapMedians(values, {200, 0.95, 3}));
  EXPECT_NE(bootstrapMedians(values, {200, 0.95, 3}), bootstrapMedians(values, {200, 0.95, 4}));
}

TEST(Bootstrap, IntervalHoldsTheMedianAndNarrowsWithNumbers) {
  const auto few = medianInterval(squares(9)), many = medianInterval(squares(900));
  EXPECT_LE(few.low, 16);
  EXPECT_GE(few.high, 16);
  EXPECT_GT((few.high - few.low) / 16, (many.high - many.low) / (449.5 * 449.5));
}

TEST(Bootstrap, OfEqualValuesIsThatValue) {
  const auto interval = medianInterval(std::vector<double>(8, 4.5));
  EXPECT_EQ(interval.low, 4.5);
  EXPECT_EQ(interval.high, 4.5);
}

TEST(Random, BelowIsEvenAndWithin) {
  Random random(5);
  std::map<std::uint64_t, int> counts;
  for (int i = 0; i < 60'000; ++i) {
    ++counts[random.below(6)];
  }
  ASSERT_EQ(counts.size(), 6U);
  for (const auto& [face, n] : counts) {
    // Five deviations of a binomial count: sqrt(60000 x 1/6 x 5/6) = 91.
    EXPECT_NEAR(n, 10'000, 456) << face;
  }
}

/// Mean and variance of beta(a, b) against their formulas, five standard errors wide.
TEST(Random, BetaHasItsMeanAndVariance) {
  Random random(6);
  constexpr int n = 40'000;
  for (const auto& [a, b] : {std::pair{1.0, 1.0}, {3.0, 5.0}, {60.0, 61.0}}) {
    double sum = 0, squaresSum = 0;
    for (int i = 0; i < n; ++i) {
      const double x = random.beta(a, b);
      sum += x;
      squaresSum += x * x;
    }
    const double mean = a / (a + b), variance = a * b / ((a + b) * (a + b) * (a + b + 1));
    const double found = squaresSum / n - sum / n * sum / n;
    EXPECT_NEAR(sum / n, mean, 5 * std::sqrt(variance / n));
    EXPECT_NEAR(found, variance, 5 * variance * std::sqrt(2.0 / n)) << a << ' ' << b;
  }
}

} // namespace
} // namespace afterbeat
