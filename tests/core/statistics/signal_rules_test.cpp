#include "core/statistics/signal_rules.h"

#include "core/statistics/control_chart.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace afterbeat {
namespace {

/// '+' above, '-' below, '0' on the line; upper case letters: that many deviations above ('A' one
/// and a half, 'B' two and a half, 'C' three and a half), lower case ones below.
std::vector<double> drawn(const std::string& points) {
  std::vector<double> values;
  for (const char c : points) {
    if (c >= 'A' && c <= 'C') {
      values.push_back(c - 'A' + 1.5);
    } else if (c >= 'a' && c <= 'c') {
      values.push_back(-(c - 'a' + 1.5));
    } else {
      values.push_back(c == '+' ? 0.5 : c == '-' ? -0.5 : 0);
    }
  }
  return values;
}

std::vector<RuleHit> hits(const std::string& points, const SignalRules& rules) {
  const auto values = drawn(points);
  return findSignals(values, 0, std::vector<double>(values.size(), 1), rules);
}

/// "rule first-last", as they come.
std::string found(const std::string& points, const SignalRules& rules) {
  std::string text;
  for (const RuleHit& hit : hits(points, rules)) {
    text += std::to_string(hit.first) + '-' + std::to_string(hit.last) + (hit.above ? "+ " : " ");
  }
  return text;
}

// Published in the tables of the run-chart literature: 12 useful points, runs up to 7, 3 crossings
// at least; 24 points: 8 and 8; 100: 10.
TEST(RunRules, LimitsOfPublishedTables) {
  EXPECT_EQ(longestRunExpected(10), 6U);
  EXPECT_EQ(longestRunExpected(12), 7U);
  EXPECT_EQ(longestRunExpected(22), 7U);
  EXPECT_EQ(longestRunExpected(23), 8U);
  EXPECT_EQ(longestRunExpected(24), 8U);
  EXPECT_EQ(longestRunExpected(46), 9U);
  EXPECT_EQ(longestRunExpected(100), 10U);
  EXPECT_EQ(fewestCrossingsExpected(10), 2U);
  EXPECT_EQ(fewestCrossingsExpected(13), 3U);
  EXPECT_EQ(fewestCrossingsExpected(20), 6U);
  EXPECT_EQ(fewestCrossingsExpected(24), 8U);
}

/// Against adding up Pascal's triangle.
TEST(RunRules, CrossingsAreTheFivePercentQuantile) {
  for (std::size_t n = 2; n <= 50; ++n) {
    double choose = 1, reached = 1, all = 1;
    for (std::size_t i = 0; i + 1 < n; ++i) {
      all *= 2;
    }
    std::size_t k = 0;
    while (reached / all < 0.05) {
      choose = choose * static_cast<double>(n - 1 - k) / static_cast<double>(k + 1);
      reached += choose;
      ++k;
    }
    EXPECT_EQ(fewestCrossingsExpected(n), k) << n;
  }
  // Where single chances are too small for a number: half of 99 999 less 1.645 deviations.
  EXPECT_NEAR(static_cast<double>(fewestCrossingsExpected(100'000)), 49'739, 2);
}

TEST(RunRules, RunIsFoundWhereItIs) {
  EXPECT_EQ(found("-+-++++++++-+-", {SignalRule::longRun}), "3-10+ ");
  EXPECT_EQ(found("-+-+++++++-+-+", {SignalRule::longRun}), ""); // 7 of 14 is explained
}

TEST(RunRules, PointsOnTheLineNeitherBreakNorLengthen) {
  EXPECT_EQ(found("-+-+++00+++++-+-", {SignalRule::longRun}), "3-12+ ");
  EXPECT_EQ(hits("-+-+++00+++++-+-", {SignalRule::longRun}).front().found, 8U);
}

TEST(RunRules, FewCrossings) {
  EXPECT_EQ(found("-----+++++-----+++++", {SignalRule::fewCrossings}), "0-19 ");
  EXPECT_EQ(hits("-----+++++-----+++++", {SignalRule::fewCrossings}).front().found, 3U);
  EXPECT_EQ(found("--++--++--++--++--++", {SignalRule::fewCrossings}), "");
}

TEST(Rules, EqualValuesAreNoSignal) {
  // The mean of these is not quite their value.
  for (const double value : {109.0909090909091, 0.83, 1e6 / 7, 1e-3}) {
    const std::vector<double> values(14, value);
    const ChartLimits limits = individualsLimits(values);
    for (const SignalRules& rules : {controlChartRules(), westernElectricRules()}) {
      EXPECT_TRUE(findSignals(values, limits.centre, limits.deviation, rules).empty()) << value;
    }
    std::vector<double> of, with;
    for (int i = 0; i < 14; ++i) {
      of.push_back(100 + i);
      with.push_back(0.83 * of.back());
    }
    const ChartLimits shares = shareLimits(with, of, Dispersion::widened);
    std::vector<double> ratios;
    for (std::size_t i = 0; i < of.size(); ++i) {
      ratios.push_back(with[i] / of[i]);
    }
    EXPECT_TRUE(findSignals(ratios, shares.centre, shares.deviation, controlChartRules()).empty());
  }
}

TEST(Rules, AreNotAskedOfFewPoints) {
  EXPECT_EQ(found("+++++++++", westernElectricRules()), "");
  EXPECT_EQ(found("CCCCCCCCC", controlChartRules()), "");
}

TEST(WesternElectric, EachRule) {
  EXPECT_EQ(found("-+-+C-+-+-c+", {SignalRule::beyondLimits}), "4-4+ 10-10 ");
  EXPECT_EQ(found("-+-+B-B+-+-", {SignalRule::twoOfThree}), "4-6+ ");
  EXPECT_EQ(found("-+-+B-+B-+-", {SignalRule::twoOfThree}), "");
  EXPECT_EQ(found("-+-+B-b+-+-", {SignalRule::twoOfThree}), "");
  EXPECT_EQ(found("-+-aa+aa-+-+", {SignalRule::fourOfFive}), "3-7 ");
  EXPECT_EQ(found("-+-aa+-aa-+-+", {SignalRule::fourOfFive}), "");
  EXPECT_EQ(found("-+-++++++++-", {SignalRule::eightInARow}), "3-10+ ");
  EXPECT_EQ(found("-+-+++++++-+", {SignalRule::eightInARow}), "");
  EXPECT_EQ(found("-+-++++0++++-", {SignalRule::eightInARow}), "");
}

TEST(WesternElectric, HitsThatShareAPointAreOne) {
  EXPECT_EQ(found("-+-+++++++++++-", {SignalRule::eightInARow}), "3-13+ ");
  EXPECT_EQ(found("-+BBB+-+-+BB-", {SignalRule::twoOfThree}), "2-4+ 10-11+ ");
}

TEST(Rules, WithoutDeviationsOnlyThoseThatNeedNone) {
  const auto values = drawn("CCCCCCCCCCCC-");
  EXPECT_EQ(findSignals(values, 0, {}, westernElectricRules()).size(), 1U);
}

} // namespace
} // namespace afterbeat
