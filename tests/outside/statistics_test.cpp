/// Control charts and signal rules against published values.
#include "core/statistics/control_chart.h"
#include "tests/outside/signal_series.h"

#include <gtest/gtest.h>

#include <cmath>

namespace afterbeat {
namespace {

// NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.2, flow rates of ten batches:
// centre 50.81, limits 45.82 and 55.80 (from memory; the arithmetic was checked).
TEST(IndividualsLimits, NistFlowRates) {
  const auto limits =
      individualsLimits({49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
  EXPECT_NEAR(limits.centre, 50.81, 0.005);
  // The mean moving range is 1.8778, printed there as 1.88.
  EXPECT_NEAR(limits.lower(0), 45.82, 0.005);
  EXPECT_NEAR(limits.upper(0), 55.80, 0.005);
}

// Montgomery, Introduction to Statistical Quality Control: thirty samples of 50; centre 0.2313,
// limits 0.0524 and 0.4102; samples 15 and 23 lie outside (from memory; the arithmetic was
// checked).
TEST(ShareLimits, MontgomeryThirtySamplesOfFifty) {
  const std::vector<double> with{12, 15, 8, 10, 4,  7,  16, 9,  14, 10, 5,  6, 17, 12, 22,
                                 8,  10, 5, 13, 11, 20, 18, 24, 15, 9,  12, 7, 13, 9,  6};
  const std::vector<double> of(with.size(), 50);
  const auto limits = shareLimits(with, of, Dispersion::counts);
  EXPECT_NEAR(limits.centre, 0.2313, 0.00005);
  EXPECT_NEAR(limits.lower(0), 0.0524, 0.00005);
  EXPECT_NEAR(limits.upper(0), 0.4102, 0.00005);
  std::vector<double> shares;
  for (const double n : with) {
    shares.push_back(n / 50);
  }
  const auto hits =
      findSignals(shares, limits.centre, limits.deviation, {SignalRule::beyondLimits});
  ASSERT_EQ(hits.size(), 2U);
  EXPECT_EQ(hits[0].first + 1, 15U);
  EXPECT_EQ(hits[1].first + 1, 23U);
}

/// The first point at which the rules see something; 0: none. What a shorter begin shows, a longer
/// one shows too, so the place can be halved in.
std::size_t runLength(const std::vector<double>& values, const SignalRules& rules) {
  const auto seen = [&](std::size_t n) {
    const std::vector<double> begin(values.begin(),
                                    values.begin() + static_cast<std::ptrdiff_t>(n));
    return !findSignals(begin, 0, std::vector<double>(n, 1), rules).empty();
  };
  std::size_t low = 0, high = values.size();
  if (!seen(high)) {
    return 0;
  }
  while (high - low > 1) {
    const std::size_t middle = (low + high) / 2;
    (seen(middle) ? high : low) = middle;
  }
  return high;
}

// Champ and Woodall, Technometrics 1987;29:393-399: with all four rules a false alarm comes every
// 91.75 points in the mean (from memory). Simulated: deviation of a run's length about 90.
TEST(WesternElectricRules, MeanRunLength) {
  constexpr int kSeries = 3000;
  // Ten points on the line first, because no rule is asked of fewer.
  constexpr std::size_t kBefore = kLeastPointsForSignals;
  Random random(11);
  double sum = 0;
  for (int i = 0; i < kSeries; ++i) {
    std::vector<double> values(kBefore, 0);
    for (int n = 0; n < 1500; ++n) {
      values.push_back(random.normal());
    }
    const std::size_t length = runLength(values, westernElectricRules());
    ASSERT_GT(length, kBefore);
    sum += static_cast<double>(length - kBefore);
  }
  EXPECT_NEAR(sum / kSeries, 91.75, 4 * 90 / std::sqrt(kSeries));
}

// Three deviations are passed by 0.27 % of normal values: one in 370.
TEST(BeyondLimits, OneIn370) {
  Random random(12);
  std::vector<double> values(400'000);
  for (double& value : values) {
    value = random.normal();
  }
  const auto hits =
      findSignals(values, 0, std::vector<double>(values.size(), 1), {SignalRule::beyondLimits});
  const double expected = 400'000 * 0.0026998;
  EXPECT_NEAR(static_cast<double>(hits.size()), expected, 4 * std::sqrt(expected));
}

/// Chance of fewer crossings than `least` among n - 1 even chances.
double fewerCrossings(std::size_t n, std::size_t least) {
  double chance = 0;
  for (std::size_t k = 0; k < least; ++k) {
    const auto all = static_cast<double>(n - 1), some = static_cast<double>(k);
    chance += std::exp(std::lgamma(all + 1) - std::lgamma(some + 1) - std::lgamma(all - some + 1) -
                       all * std::log(2.0));
  }
  return chance;
}

// Along a known middle every crossing is an even chance: the rule's false alarms are those of the
// binomial distribution, below 5 %.
TEST(FewCrossings, FalseAlarmsAreBinomial) {
  constexpr int kSeries = 20'000;
  for (const std::size_t n : {12U, 24U, 60U}) {
    const double expected = fewerCrossings(n, fewestCrossingsExpected(n));
    EXPECT_LT(expected, 0.05);
    const int found = seriesWithSignal(
        kSeries, n, {SignalRule::fewCrossings}, Line::known,
        [](Random& random) { return random.normal(); }, n);
    EXPECT_NEAR(found, kSeries * expected, 4 * std::sqrt(kSeries * expected)) << n;
  }
}

/// Chance that the longest run among n even chances is at most `most`: runs of n throws are one
/// longer than those of n - 1 changes (Feller, An Introduction to Probability Theory; the count of
/// arrangements follows a(n) = a(n-1) + ... + a(n-most)).
double longestUpTo(std::size_t n, std::size_t most) {
  std::vector<double> share{1};
  for (std::size_t i = 1; i <= n; ++i) {
    double sum = 0;
    for (std::size_t back = 1; back <= std::min(most, i); ++back) {
      sum += share[i - back] * std::exp2(-static_cast<double>(back));
    }
    share.push_back(sum);
  }
  return 2 * share[n];
}

TEST(LongRun, FalseAlarmsAreThoseOfEvenChances) {
  constexpr int kSeries = 20'000;
  for (const std::size_t n : {12U, 24U, 60U}) {
    const double expected = 1 - longestUpTo(n, longestRunExpected(n));
    const int found = seriesWithSignal(
        kSeries, n, {SignalRule::longRun}, Line::known,
        [](Random& random) { return random.normal(); }, n + 1);
    EXPECT_NEAR(found, kSeries * expected, 4 * std::sqrt(kSeries * expected)) << n;
  }
}

} // namespace
} // namespace afterbeat
