#include "core/compare/over_time.h"

#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

#include <cmath>

namespace afterbeat {
namespace {

constexpr auto kRate = MeasureId::compressionRate;
constexpr auto kPause = MeasureId::longestPause;

/// A record every day from 1 January on.
ToldSeason daily(MeasureId id, const std::vector<double>& values) {
  ToldSeason told;
  for (std::size_t i = 0; i < values.size(); ++i) {
    told.rescue("pier", day(1, 1) + std::chrono::days(i), {{id, values[i]}});
  }
  return told;
}

OverTime chartOf(ToldSeason& told, const OverTimeSettings& settings) {
  return overTime(told.season(), told.all(), settings).value();
}

std::string wordsOf(const OverTime& chart) {
  return told(words(chart));
}

/// Up and down by one around 100, `n` times.
std::vector<double> steady(std::size_t n) {
  std::vector<double> values;
  for (std::size_t i = 0; i < n; ++i) {
    values.push_back(i % 2 == 0 ? 99 : 101);
  }
  return values;
}

TEST(OverTime, KindsAreNotMixed) {
  auto told = daily(kRate, steady(12));
  told.rescue("pier", day(2, 1), {{kRate, 100}}).kind = RecordKind::drill;
  EXPECT_FALSE(overTime(told.season(), told.all(), {ValueOf{kRate}}));
}

TEST(OverTime, IndividualsOfASteadySeries) {
  auto told = daily(kRate, steady(24));
  const auto chart = chartOf(told, {ValueOf{kRate}, ChartKind::individuals});
  ASSERT_EQ(chart.segments.size(), 1U);
  EXPECT_DOUBLE_EQ(chart.segments[0].centre, 100);
  EXPECT_NEAR(*chart.points[5].upper, 100 + 3 * 2 / 1.128, 1e-9);
  EXPECT_NEAR(*chart.points[5].lower, 100 - 3 * 2 / 1.128, 1e-9);
  EXPECT_TRUE(chart.signals.empty());
  EXPECT_FALSE(chart.segments[0].provisional);
  EXPECT_EQ(wordsOf(chart).find("No sign of a change: chance alone explains how these points lie.\n"
                                "With 24 points a real change can go unseen.\n"),
            0U)
      << wordsOf(chart);
}

TEST(OverTime, PointBeyondTheLimitIsNamedWithItsDay) {
  // The outlier must not pull the mean past the other points.
  auto values = steady(24);
  for (double& value : values) {
    value = 100 + 10 * (value - 100);
  }
  values[9] = 190;
  auto told = daily(kRate, values);
  const auto chart = chartOf(told, {ValueOf{kRate}, ChartKind::individuals});
  ASSERT_EQ(chart.signals.size(), 1U);
  EXPECT_EQ(chart.signals[0].hit.rule, SignalRule::beyondLimits);
  EXPECT_EQ(chart.signals[0].hit.first, 9U);
  EXPECT_EQ(inEnglish(chart.signals[0].saying),
            "2026-01-10: 190.0/min lies above the upper limit: chance alone would rarely reach it. "
            "Look at what was special.");
}

TEST(OverTime, FewPointsHaveNoLimitsAndNoSignals) {
  auto told = daily(kRate, {1, 1, 1, 1, 1, 1, 1, 1, 50});
  const auto chart = chartOf(told, {ValueOf{kRate}, ChartKind::individuals});
  EXPECT_TRUE(chart.segments[0].tooFew);
  EXPECT_FALSE(chart.points[0].upper);
  EXPECT_TRUE(chart.signals.empty());
  EXPECT_EQ(wordsOf(chart).find("Points: 9. With fewer than 10 nothing can be said of a change."),
            0U)
      << wordsOf(chart);
}

TEST(OverTime, AStretchWithFewPointsIsSaidToBeOneOfThem) {
  auto told = daily(kRate, steady(13));
  OverTimeSettings settings{ValueOf{kRate}, ChartKind::individuals};
  settings.steps = {{day(1, 13), ""}};
  const auto chart = chartOf(told, settings);
  EXPECT_TRUE(chart.points[0].upper);
  EXPECT_FALSE(chart.points[12].upper);
  const std::string text = wordsOf(chart);
  EXPECT_EQ(text.find("From 2026-01-13 (marked day): fewer than five values before or after it, so "
                      "nothing is compared."),
            0U)
      << text;
  EXPECT_NE(text.find("fewer than 10 points have no limits and no signals: 1 of 2."),
            std::string::npos)
      << text;
}

TEST(OverTime, EveryMarkedDayIsAccountedFor) {
  auto told = daily(kRate, steady(12));
  OverTimeSettings settings{ValueOf{kRate}};
  settings.steps = {
      {day(1, 1), "on the first"}, {day(1, 6), "boat"}, {day(1, 6), "bags"}, {day(2, 1), "later"}};
  const std::string text = wordsOf(chartOf(told, settings));
  EXPECT_EQ(text.find("on the first"), std::string::npos) << text;
  EXPECT_NE(text.find("(boat): no point lies between it and the next marked day."),
            std::string::npos)
      << text;
  EXPECT_NE(text.find("From 2026-01-06 (bags): 1"), std::string::npos) << text;
  EXPECT_NE(text.find("From 2026-02-01 (later): no point lies after it."), std::string::npos)
      << text;
}

TEST(OverTime, LimitsEndWhereValuesCannotBe) {
  std::vector<double> times;
  for (int i = 0; i < 12; ++i) {
    times.push_back(i % 2 == 0 ? 10 : 300);
  }
  constexpr auto kTime = MeasureId::powerOnToFirstShock;
  auto told = daily(kTime, times);
  auto chart = chartOf(told, {ValueOf{kTime}, ChartKind::individuals});
  EXPECT_EQ(chart.points[0].lower, 0);
  EXPECT_NEAR(*chart.points[0].upper, 155 + 3 * 290 / 1.128, 1e-9);
  told.cell(0, kTime).value = -10; // before the device was on
  chart = chartOf(told, {ValueOf{kTime}, ChartKind::individuals});
  EXPECT_LT(*chart.points[0].lower, -100);
  constexpr auto kShare = MeasureId::chestCompressionFraction;
  for (double& time : times) {
    time /= 300;
  }
  auto shares = daily(kShare, times);
  chart = chartOf(shares, {ValueOf{kShare}, ChartKind::individuals});
  EXPECT_EQ(chart.points[0].lower, 0);
  EXPECT_EQ(chart.points[0].upper, 1);
}

TEST(OverTime, AShareThatSaysLittleAloneIsNotDrawnAlone) {
  auto told = daily(MeasureId::chestCompressionFraction, {0.8, 0.9, 0.8, 0.9, 0.8, 0.9});
  for (std::uint32_t place = 0; place < 6; ++place) {
    told.cell(place, MeasureId::arrestTime) = {100.0 + place, Status::ok, 0};
  }
  const auto chart = chartOf(told, {ValueOf{MeasureId::chestCompressionFraction}});
  const std::string text = wordsOf(chart);
  EXPECT_NE(text.find("This share alone says little"), std::string::npos) << text;
  EXPECT_NE(text.find("From 2026-01-01 to 2026-01-06 (middles): Time without circulation 102.5 s, "
                      "Shocks given too few for a middle."),
            std::string::npos)
      << text;
  EXPECT_EQ(wordsOf(chartOf(told, {ValueOf{MeasureId::arrestTime}})).find("alone says little"),
            std::string::npos);
}

TEST(OverTime, OneAndNone) {
  auto told = daily(kRate, {7});
  EXPECT_EQ(chartOf(told, {ValueOf{kRate}, ChartKind::individuals}).segments[0].centre, 7);
  ToldSeason nothing;
  EXPECT_TRUE(chartOf(nothing, {ValueOf{kRate}}).points.empty());
}

TEST(OverTime, StepBeginsACentreLineOfItsOwn) {
  std::vector<double> values = steady(12), after = steady(12);
  for (const double v : after) {
    values.push_back(v - 50);
  }
  auto told = daily(kRate, values);
  OverTimeSettings settings{ValueOf{kRate}, ChartKind::individuals};
  settings.steps = {{day(1, 13), "new training from here"}};
  const auto chart = chartOf(told, settings);
  ASSERT_EQ(chart.segments.size(), 2U);
  EXPECT_EQ(chart.segments[1].firstPoint, 12U);
  EXPECT_DOUBLE_EQ(chart.segments[0].centre, 100);
  EXPECT_DOUBLE_EQ(chart.segments[1].centre, 50);
  EXPECT_TRUE(chart.signals.empty());
  EXPECT_TRUE(chart.segments[1].provisional);
  ASSERT_EQ(chart.changes.size(), 1U);
  EXPECT_TRUE(chart.changes[0].clear);
  EXPECT_NE(wordsOf(chart).find("From 2026-01-13 (new training from here): 50.0/min, before "
                                "100.0/min. That is more than chance explains"),
            std::string::npos)
      << wordsOf(chart);
}

TEST(OverTime, WithoutTheStepTheRulesSeeIt) {
  std::vector<double> values = steady(12), after = steady(12);
  for (const double v : after) {
    values.push_back(v - 50);
  }
  auto told = daily(kPause, values);
  const auto chart = chartOf(told, {ValueOf{kPause}});
  ASSERT_EQ(chart.signals.size(), 2U);
  EXPECT_EQ(chart.signals[0].hit.rule, SignalRule::longRun);
  EXPECT_EQ(chart.signals[0].hit.found, 12U);
  EXPECT_EQ(chart.signals[1].hit.rule, SignalRule::fewCrossings);
  EXPECT_FALSE(chart.points[0].upper); // a run chart has no limits
}

TEST(OverTime, StepsBeforeAllAndAfterAllAreNone) {
  auto told = daily(kRate, steady(12));
  OverTimeSettings settings{ValueOf{kRate}};
  settings.steps = {{day(6, 1), "later"}, {day(1, 1), "first day"}};
  const auto chart = chartOf(told, settings);
  ASSERT_EQ(chart.segments.size(), 1U);
  EXPECT_EQ(chart.settings.steps[*chart.segments[0].step].words, "first day");
  EXPECT_TRUE(chart.changes.empty());
}

TEST(OverTime, MonthIsCutWhereAStepLies) {
  ToldSeason told;
  for (const unsigned d : {2U, 9U, 16U, 23U}) {
    told.rescue("pier", day(3, d), {{kPause, d}});
  }
  OverTimeSettings settings{ValueOf{kPause}, ChartKind::run, Period::month};
  settings.steps = {{day(3, 16), "new device"}};
  const auto chart = chartOf(told, settings);
  ASSERT_EQ(chart.points.size(), 2U);
  EXPECT_DOUBLE_EQ(chart.points[0].value, 5.5);
  EXPECT_EQ(chart.points[0].recordCount, 2U);
  EXPECT_EQ(chart.points[1].firstDay, day(3, 16));
  EXPECT_EQ(chart.points[1].lastDay, day(3, 23));
}

TEST(OverTime, PeriodsHoldTheirDays) {
  ToldSeason told;
  // Sunday and Monday; the last of June and the first of July; both sides of a year.
  for (const auto d : {day(3, 1), day(3, 2), day(6, 30), day(7, 1), day(12, 31),
                       day(12, 31) + std::chrono::days(1)}) {
    told.rescue("pier", d, {{kPause, 1}});
  }
  const auto points = [&](Period period) {
    return chartOf(told, {ValueOf{kPause}, ChartKind::run, period}).points.size();
  };
  EXPECT_EQ(points(Period::record), 6U);
  EXPECT_EQ(points(Period::week),
            4U); // 30 June and 1 July, 31 December and 1 January: one week each
  EXPECT_EQ(points(Period::month), 5U);
  EXPECT_EQ(points(Period::quarter), 5U);
  EXPECT_EQ(points(Period::year), 2U);
}

TEST(OverTime, OrderOfTheTableChangesNothing) {
  auto told = daily(kPause, {5, 1, 4, 2, 3});
  told.rescue("pier", day(1, 1), {{kPause, 9}});
  const auto one = overTime(told.season(), {0, 1, 2, 3, 4, 5}, {ValueOf{kPause}}).value();
  const auto other = overTime(told.season(), {5, 3, 1, 4, 0, 2}, {ValueOf{kPause}}).value();
  EXPECT_EQ(one.records, other.records);
  EXPECT_EQ(one.records, (Chosen{0, 5, 1, 2, 3, 4}));
}

TEST(OverTime, MissingAndWithoutDayAreNamed) {
  auto told = daily(kPause, {1, 2});
  told.rescue("pier", {}, {{kPause, 3}});
  told.rescue("pier", day(2, 2));
  const auto chart = chartOf(told, {ValueOf{kPause}});
  EXPECT_EQ(chart.withoutDay, 1U);
  EXPECT_EQ(chart.missing, (Missing{1, 0}));
  EXPECT_NE(wordsOf(chart).find("Records without a day, which are in no point: 1."),
            std::string::npos);
}

TEST(OverTime, SharesOfRecords) {
  ToldSeason told;
  for (unsigned month = 1; month <= 12; ++month) {
    for (unsigned d = 1; d <= 4; ++d) {
      told.rescue("pier", day(month, d), {{kPause, d * 5.0}});
    }
  }
  const auto chart = chartOf(told, {RecordsWith{kPause, false, 10}, ChartKind::run, Period::month});
  EXPECT_EQ(chart.chart, ChartKind::shares);
  ASSERT_EQ(chart.points.size(), 12U);
  EXPECT_DOUBLE_EQ(chart.points[3].value, 0.25); // 5 of 5, 10, 15, 20: the limit is not below
  EXPECT_DOUBLE_EQ(chart.segments[0].centre, 0.25);
  EXPECT_NEAR(*chart.points[3].upper, 0.25 + 3 * std::sqrt(0.25 * 0.75 / 4), 1e-12);
  EXPECT_EQ(*chart.points[3].lower, 0);
  const auto atLeast =
      chartOf(told, {RecordsWith{kPause, true, 10}, ChartKind::run, Period::month});
  EXPECT_DOUBLE_EQ(atLeast.points[3].value, 0.75);
}

TEST(OverTime, SharesOfRecordsHaveNoSingleRecordsAsPoints) {
  auto told = daily(kPause, std::vector<double>(40, 5));
  const auto chart = chartOf(told, {RecordsWith{kPause, false, 10}});
  EXPECT_EQ(chart.settings.period, Period::month);
  EXPECT_EQ(chart.points.size(), 2U);
}

TEST(OverTime, ShockGivenOrNotOrUnknown) {
  ToldSeason told;
  told.rescue("pier", day(1, 1)).hadShock = true;
  told.rescue("pier", day(1, 2)).hadShock = false;
  told.rescue("pier", day(1, 3));
  const auto chart = chartOf(told, {RecordsWithShock{}, ChartKind::shares, Period::month});
  EXPECT_DOUBLE_EQ(chart.points[0].value, 0.5);
  EXPECT_EQ(chart.missing, (Missing{1, 0}));
}

TEST(OverTime, CountedSharesAreWeightedAndNeedTheirCounts) {
  constexpr auto kShare = MeasureId::compressionRateInRange;
  ToldSeason told;
  told.rescue("pier", day(1, 1), {{kShare, 0.5}});
  told.rescue("pier", day(1, 2), {{kShare, 1}});
  const OverTimeSettings settings{CountedShare{kShare}, ChartKind::shares, Period::month};
  const auto refused = overTime(told.season(), told.all(), settings);
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().why, SeasonRefusal::Why::noCounts);
  told.cell(0, kShare).of = 300;
  told.cell(1, kShare).of = 100;
  EXPECT_DOUBLE_EQ(chartOf(told, settings).points[0].value, 0.625);
  EXPECT_FALSE(overTime(told.season(), told.all(), {CountedShare{MeasureId::longestPause}}));
}

/// Months at 0.45 and 0.55 of 1000 each: neighbours differ by 0.1, a binomial deviation is 0.0158.
TEST(OverTime, LimitsOfCountedSharesAreWidened) {
  constexpr auto kShare = MeasureId::compressionRateInRange;
  ToldSeason told;
  for (unsigned month = 1; month <= 12; ++month) {
    told.rescue("pier", day(month, 1), {{kShare, month % 2 == 0 ? 0.55 : 0.45}});
    told.cell(month - 1, kShare).of = 1000;
  }
  const auto chart = chartOf(told, {CountedShare{kShare}, ChartKind::shares, Period::month});
  EXPECT_NEAR(chart.segments[0].widened, 0.1 / std::sqrt(0.25 / 1000) / 1.128, 1e-6);
  EXPECT_NEAR(*chart.points[0].upper, 0.5 + 3 * 0.1 / 1.128, 1e-6);
  EXPECT_TRUE(chart.signals.empty());
}

TEST(OverTime, CountsForAnExposure) {
  ToldSeason told;
  told.rescue("pier", day(1, 1), {{MeasureId::pausesOverLimit, 2}, {MeasureId::arrestTime, 300}});
  told.rescue("pier", day(1, 2), {{MeasureId::pausesOverLimit, 1}, {MeasureId::arrestTime, 1500}});
  told.rescue("pier", day(1, 3), {{MeasureId::pausesOverLimit, 1}, {MeasureId::arrestTime, 0}});
  const auto chart = chartOf(told, {CountedFor{}, ChartKind::counts, Period::month});
  EXPECT_DOUBLE_EQ(chart.points[0].value, 1); // 3 in 1800 s, for every 600 s
  EXPECT_EQ(chart.missing, (Missing{0, 1}));
}

TEST(OverTime, SkewedValuesAreSaidToBe) {
  std::vector<double> values;
  for (int i = 0; i < 30; ++i) {
    values.push_back(std::exp((i * 7 % 30) / 6.0));
  }
  auto told = daily(kRate, values);
  const auto chart = chartOf(told, {ValueOf{kRate}, ChartKind::individuals});
  EXPECT_TRUE(chart.segments[0].skewed);
  EXPECT_NE(wordsOf(chart).find("lean to one side"), std::string::npos);
}

TEST(OverTime, OfManyPointsSomeLieBeyondByChance) {
  auto many = daily(kRate, steady(370)), few = daily(kRate, steady(100));
  EXPECT_NE(wordsOf(chartOf(many, {ValueOf{kRate}, ChartKind::individuals}))
                .find("Of so many points chance alone puts about 1 beyond the limits."),
            std::string::npos);
  EXPECT_EQ(wordsOf(chartOf(few, {ValueOf{kRate}, ChartKind::individuals})).find("so many"),
            std::string::npos);
  EXPECT_EQ(wordsOf(chartOf(many, {ValueOf{kRate}})).find("so many"), std::string::npos);
}

TEST(OverTime, UsualCharts) {
  EXPECT_EQ(usualChart(MeasureId::preShockPauseWorst), ChartKind::run);
  EXPECT_EQ(usualChart(MeasureId::compressionDepth), ChartKind::individuals);
  EXPECT_EQ(usualChart(MeasureId::fullRelease), ChartKind::shares);
  EXPECT_EQ(usualChart(MeasureId::pausesOverLimit), ChartKind::counts);
}

} // namespace
} // namespace afterbeat
