/// Whatever is asked of a season, every chosen record is in a point or counted as missing.
#include "core/compare/over_time.h"
#include "core/compare/spread.h"
#include "core/compare/stages.h"
#include "samples/season/made_season.h"
#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace afterbeat {
namespace {

samples::SeasonPlan planOf(std::uint64_t seed) {
  samples::SeasonPlan plan;
  plan.seed = seed;
  plan.records = 40 * seed;
  plan.missing = 0.15 * static_cast<double>(seed);
  plan.unstated = 0.1;
  return plan;
}

void expectAll(const Chosen& chosen, std::vector<std::uint32_t> seen, std::size_t missing) {
  EXPECT_EQ(seen.size() + missing, chosen.size());
  std::sort(seen.begin(), seen.end());
  EXPECT_EQ(std::adjacent_find(seen.begin(), seen.end()), seen.end());
  EXPECT_TRUE(std::includes(chosen.begin(), chosen.end(), seen.begin(), seen.end()));
}

void checkSpread(const Season& season, const Chosen& chosen, MeasureId measure, GroupBy by) {
  const Spread found = spread(season, chosen, measure, by).value();
  std::vector<std::uint32_t> seen;
  std::size_t missing = 0;
  for (const SpreadGroup& group : found.groups) {
    missing += group.missing.all();
    for (const SpreadPoint& point : group.points) {
      seen.push_back(point.place);
      EXPECT_EQ(point.value, season.column(measure)[point.place].value);
    }
    EXPECT_EQ(group.tooFew, group.points.size() < 5);
    EXPECT_EQ(group.interval.has_value(), !group.tooFew);
  }
  EXPECT_EQ(missing, found.missing.all());
  expectAll(chosen, seen, missing);
}

void checkChart(const Season& season, const Chosen& chosen, const OverTimeSettings& settings) {
  const OverTime chart = overTime(season, chosen, settings).value();
  expectAll(chosen, chart.records, chart.missing.all() + chart.withoutDay);
  std::size_t next = 0, point = 0;
  for (const TimePoint& one : chart.points) {
    EXPECT_EQ(one.firstRecord, next);
    EXPECT_GT(one.recordCount, 0U);
    EXPECT_LE(one.firstDay, one.lastDay);
    next += one.recordCount;
  }
  EXPECT_EQ(next, chart.records.size());
  for (const ChartSegment& segment : chart.segments) {
    EXPECT_EQ(segment.firstPoint, point);
    point = segment.lastPoint + 1;
  }
  EXPECT_EQ(point, chart.points.size());
  for (const ChartSignal& signal : chart.signals) {
    EXPECT_GE(signal.hit.first, chart.segments[signal.segment].firstPoint);
    EXPECT_LE(signal.hit.last, chart.segments[signal.segment].lastPoint);
  }
}

TEST(NothingIsLost, InAnyFigureOfASeason) {
  for (std::uint64_t seed = 1; seed <= 5; ++seed) {
    const samples::MadeSeason made(planOf(seed));
    const Season season = made.season();
    for (const KindCount& kind : kindsOf(season, everything(season))) {
      const Chosen chosen = ofKind(season, everything(season), kind.kind);
      for (const GroupBy by : {GroupBy::nothing, GroupBy::site, GroupBy::team, GroupBy::quarter}) {
        checkSpread(season, chosen, MeasureId::preShockPauseWorst, by);
      }
      for (const Period period : {Period::record, Period::day, Period::week, Period::month,
                                  Period::quarter, Period::year}) {
        OverTimeSettings settings{ValueOf{MeasureId::longestPause}};
        settings.period = period;
        settings.steps = {{std::chrono::year(2024) / 8 / 15, "one"},
                          {std::chrono::year(2025) / 3 / 3, "two"}};
        checkChart(season, chosen, settings);
        settings.chart = ChartKind::individuals;
        settings.rules = westernElectricRules();
        checkChart(season, chosen, settings);
        settings.rules.clear();
        for (const ChartSubject& subject :
             {ChartSubject{RecordsWith{MeasureId::preShockPauseWorst, false, 10}},
              ChartSubject{RecordsWithShock{}},
              ChartSubject{CountedShare{MeasureId::compressionRateInRange}},
              ChartSubject{CountedFor{}}}) {
          settings.subject = subject;
          checkChart(season, chosen, settings);
        }
      }
      const Stages found = stages(season, chosen, StagesFrom::call).value();
      EXPECT_EQ(found.records.size() + found.leftOpen, chosen.size());
    }
  }
}

/// A record's own stages add up to its total, whatever is missing between.
TEST(NothingIsLost, StagesAddUp) {
  const samples::MadeSeason made(planOf(3));
  const Season season = made.season();
  const Chosen rescues = ofKind(season, everything(season), RecordKind::rescue);
  std::size_t totals = 0;
  for (const StagesFrom from : {StagesFrom::call, StagesFrom::powerOn}) {
    const Stages found = stages(season, rescues, from).value();
    for (const RecordStages& one : found.records) {
      double sum = 0;
      for (const Stage& stage : one.stages) {
        sum += stage.seconds;
      }
      if (one.total) {
        ++totals;
        EXPECT_NEAR(sum, *one.total, 1e-9);
      }
    }
  }
  EXPECT_GT(totals, 20U);
}

} // namespace
} // namespace afterbeat
