#include "core/resuslog/read_log.h"
#include "samples/season/made_season.h"
#include "samples/season/script.h"
#include "samples/season/write_season.h"

#include <gtest/gtest.h>

#include <set>

namespace afterbeat::samples {
namespace {

SeasonPlan fullPlan() {
  SeasonPlan plan;
  plan.records = 150;
  plan.missing = 0.3;
  plan.tests = 0.05;
  plan.unstated = 0.05;
  plan.slowSite = 3;
  plan.training = std::chrono::year(2025) / 1 / 1;
  return plan;
}

/// How far a figure of the outline may be off that of single compressions: hands stop up to one
/// interval before a run's end, once at each of up to fourteen pauses.
double tolerance(MeasureId id) {
  switch (id) {
  case MeasureId::handsOffTime:
  case MeasureId::adjustedHandsOffTime:
    return 14;
  case MeasureId::handsOffFraction:
  case MeasureId::chestCompressionFraction:
    return 0.03;
  case MeasureId::compressions:
    return 20;
  case MeasureId::compressionsPerMinute:
  case MeasureId::compressionRate:
    return 3;
  case MeasureId::compressionRateInRange:
  case MeasureId::compressionDepthInRange:
    return 0.25; // of few compressions, with a target's limit in the middle of the spread
  case MeasureId::compressionDepth:
    return 1;
  case MeasureId::pausesOverLimit:
    return 3; // pauses just below the limit
  case MeasureId::periShockPauseMedian:
  case MeasureId::periShockPauseWorst:
  case MeasureId::preShockPauseMedian:
  case MeasureId::preShockPauseWorst:
  case MeasureId::longestPause:
  case MeasureId::arrestTime:
    return 1;
  default:
    return 0.002; // logs are written on the full millisecond
  }
}

TEST(Season, FiguresInMemoryAreThoseOfTheLogs) {
  const SeasonPlan plan = fullPlan();
  const MadeSeason made(plan);
  const Season season = made.season();
  for (std::size_t i = 0; i < plan.records; ++i) {
    const auto file = seasonFile(plan, i);
    MemorySource source(file.bytes);
    const auto log = readLog(source);
    ASSERT_TRUE(log.has_value()) << file.name;
    const Record& record = log->records.front().record;
    for (const Problem& problem : log->problems) {
      // A record may leave out its day, its kind; the reader says so.
      EXPECT_EQ(problem.kind, ProblemKind::missingHeaderKey) << file.name << sentence(problem);
    }
    EXPECT_TRUE(record.header.synthetic);
    const Figures figures = computeFigures(record);
    EXPECT_EQ(season.records[i].evidence, figures.evidence) << file.name;
    for (const Measure& measure : figures.measures) {
      const FigureCell& cell = season.column(measure.id)[i];
      EXPECT_EQ(cell.status, measure.status) << file.name << ' ' << measureInfo(measure.id).name;
      if (cell.ok() && measure.value) {
        EXPECT_NEAR(cell.value, *measure.value, tolerance(measure.id))
            << file.name << ' ' << measureInfo(measure.id).name;
      }
    }
  }
}

TEST(Season, FactsAreThoseOfTheLogs) {
  const SeasonPlan plan = fullPlan();
  const MadeSeason made(plan);
  for (std::size_t i = 0; i < plan.records; ++i) {
    const auto file = seasonFile(plan, i);
    MemorySource source(file.bytes);
    const Header header = readLog(source)->records.front().record.header;
    const RecordFacts& facts = made.records()[i];
    EXPECT_EQ(facts.id, header.id);
    EXPECT_EQ(facts.file, file.name);
    EXPECT_EQ(facts.kind, header.kind);
    EXPECT_EQ(facts.site, header.site);
    EXPECT_EQ(facts.team, header.team);
    EXPECT_EQ(facts.device, header.device.label);
    EXPECT_EQ(facts.day.has_value(), header.recorded.has_value());
    if (facts.day && header.recorded) {
      EXPECT_EQ(*facts.day, std::chrono::floor<std::chrono::days>(header.recorded->local()));
    }
  }
}

TEST(Season, SamePlanSameSeasonAnotherSeedAnother) {
  SeasonPlan plan = fullPlan();
  const auto file = seasonFile(plan, 7);
  EXPECT_EQ(seasonFile(plan, 7).bytes, file.bytes);
  plan.seed = 2;
  EXPECT_NE(seasonFile(plan, 7).bytes, file.bytes);
}

TEST(Season, IdsAreAllDifferent) {
  SeasonPlan plan;
  std::set<std::string> ids;
  for (std::size_t i = 0; i < 2000; ++i) {
    ids.insert(script(plan, i).facts.id);
  }
  EXPECT_EQ(ids.size(), 2000U);
}

} // namespace
} // namespace afterbeat::samples
