#include "app/papers/charts/season_charts.h"
#include "app/papers/said.h"
#include "core/compare/filter.h"
#include "tests/papers/charts/season_example.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {
namespace {

Chosen rescuesOf(const Season& season) {
  return ofKind(season, everything(season), RecordKind::rescue);
}

bool says(const Chart& chart, const char* part) {
  return chart.sentences.join(QLatin1Char('\n')).contains(QString::fromUtf8(part));
}

std::size_t pointsIn(const Chart& chart, int lane) {
  return static_cast<std::size_t>(
      std::count_if(chart.points.begin(), chart.points.end(),
                    [&](const ChartPoint& point) { return std::lround(point.y) == lane; }));
}

TEST(SpreadChart, SitesStandInTheOrderOfNames) {
  const Season season = test::exampleSeason(400);
  const auto found = *spread(season, rescuesOf(season), MeasureId::longestPause, GroupBy::site);
  const Chart chart = spreadChart(season, found, Words{});
  EXPECT_EQ(chart.title, QStringLiteral("Longest pause by site (rescues)"));
  EXPECT_EQ(chart.y.names.join(QLatin1Char('|')),
            QStringLiteral("Boathouse East|Ferry terminal|Lido|Rowing club Schilfbucht|"
                           "Site not recorded"));
  EXPECT_EQ(chart.marks.join(QLatin1Char('|')), QStringLiteral("SYNTHETIC"));
  ASSERT_EQ(chart.points.size(), chart.records.size());
  for (int lane = 0; lane < 5; ++lane) {
    EXPECT_EQ(pointsIn(chart, lane), found.groups[static_cast<std::size_t>(lane)].points.size());
  }
  EXPECT_TRUE(says(chart, "Each record counts once"));
  EXPECT_TRUE(says(chart, "Records in which it is not recorded: 17."));
}

TEST(SpreadChart, FewRecordsArePointsOnlyAndThatIsSaid) {
  const Season season = test::exampleSeason(400);
  const auto found = *spread(season, rescuesOf(season), MeasureId::longestPause, GroupBy::site);
  const Chart chart = spreadChart(season, found, Words{});
  // The Lido has two rescues, one of them without a value.
  EXPECT_EQ(chart.y.notes[2], QStringLiteral("1 record: points only; 1 without value"));
  for (const ChartSummary& summary : chart.summaries) {
    EXPECT_NE(summary.lane, 2);
  }
  EXPECT_EQ(chart.summaries.size(), 4U);
}

TEST(SpreadChart, TheFractionNeverStandsAlone) {
  const Season season = test::exampleSeason(400);
  for (const MeasureId id : {MeasureId::handsOffFraction, MeasureId::chestCompressionFraction}) {
    const auto found = *spread(season, rescuesOf(season), id, GroupBy::site);
    const Chart chart = spreadChart(season, found, Words{});
    EXPECT_TRUE(says(chart, "Ferry terminal – Time without circulation, middle of "));
    EXPECT_TRUE(says(chart, "Shocks given, middle of "));
  }
}

/// Eight lines that all said "too few" were read as eight findings.
TEST(SpreadChart, GroupsWithTooFewShareASentence) {
  const Season season = test::exampleSeason(40);
  const Chart chart =
      spreadChart(season,
                  *spread(season, ofKind(season, everything(season), RecordKind::drill),
                          MeasureId::handsOffFraction, GroupBy::quarter),
                  Words{});
  EXPECT_EQ(chart.sentences.front(),
            QStringLiteral("Quarters are not held against each other here: whether anything "
                           "changed is asked over time."));
  EXPECT_TRUE(says(chart,
                   "Time without circulation and Shocks given – too few records for a middle: "
                   "Quarter 1, 2024; Quarter 2, 2024; "));
  EXPECT_EQ(chart.sentences.filter(QStringLiteral("too few")).size(), 1);
  EXPECT_TRUE(chart.summaries.empty());
  EXPECT_FALSE(says(chart, "line")) << "none is drawn";
}

TEST(SpreadChart, TheAnswerLeads) {
  const Season season = test::exampleSeason(400);
  const auto first = [&](GroupBy by) {
    return spreadChart(season, *spread(season, rescuesOf(season), MeasureId::longestPause, by),
                       Words{})
        .sentences.front()
        .toStdString();
  };
  const auto all = *spread(season, rescuesOf(season), MeasureId::longestPause, GroupBy::nothing);
  const auto value = [](double one) {
    return said(amountOf(MeasureId::longestPause, one), Words{}).toStdString();
  };
  EXPECT_EQ(first(GroupBy::nothing), "Middle of " + std::to_string(all.groups[0].points.size()) +
                                         " records: " + value(all.groups[0].quartiles->median) +
                                         " (may really be " + value(all.groups[0].interval->low) +
                                         " to " + value(all.groups[0].interval->high) + ").");
  EXPECT_EQ(first(GroupBy::quarter), "Quarters are not held against each other here: whether "
                                     "anything changed is asked over time.");
  const Season few = test::exampleSeason(4);
  EXPECT_EQ(spreadChart(few, *spread(few, rescuesOf(few), MeasureId::longestPause, GroupBy::site),
                        Words{})
                .sentences.front()
                .toStdString(),
            "Too few records to hold one group against another.");
  EXPECT_EQ(first(GroupBy::site), "No group differs from the others by more than chance explains.");
}

TEST(SpreadChart, PublishedBandsAreForRescuesAlone) {
  const Season season = test::exampleSeason(400);
  const auto make = [&](RecordKind kind) {
    const auto chosen = ofKind(season, everything(season), kind);
    return spreadChart(
        season, *spread(season, chosen, MeasureId::preShockPauseMedian, GroupBy::site), Words{});
  };
  const Chart rescues = make(RecordKind::rescue), drills = make(RecordKind::drill);
  ASSERT_EQ(rescues.bands.size(), 1U);
  EXPECT_TRUE(says(rescues, "What others measured, not a target."));
  EXPECT_TRUE(drills.bands.empty());
  EXPECT_EQ(drills.marks.join(QLatin1Char('|')), QStringLiteral("DRILL|SYNTHETIC"));
}

OverTimeSettings longestPause(ChartKind kind, Period period) {
  OverTimeSettings settings;
  settings.subject = ValueOf{MeasureId::longestPause};
  settings.chart = kind;
  settings.period = period;
  return settings;
}

std::size_t linesOf(const Chart& chart, LineRole role) {
  return static_cast<std::size_t>(
      std::count_if(chart.lines.begin(), chart.lines.end(),
                    [&](const ChartLine& line) { return line.role == role; }));
}

TEST(OverTimeChart, AMarkedDayPartsTheLine) {
  using namespace std::chrono;
  const Season season = test::exampleSeason(400);
  auto settings = longestPause(ChartKind::individuals, Period::month);
  settings.steps.push_back({sys_days{2025y / April / 1}, "new training\nfrom here"});
  const Chart chart =
      overTimeChart(season, *overTime(season, rescuesOf(season), settings), Words{});
  EXPECT_EQ(linesOf(chart, LineRole::centre), 2U);
  ASSERT_EQ(chart.dayMarks.size(), 1U);
  EXPECT_EQ(chart.dayMarks[0].label, QStringLiteral("new training from here"));
  EXPECT_TRUE(says(chart, "From 1 Apr 2025 (new training from here): "));
  EXPECT_TRUE(says(chart, "what caused it this picture cannot say"));
  EXPECT_TRUE(says(chart, "Records without a day, which are in no point: 18."));
}

TEST(OverTimeChart, SignalsHaveAShapeOfTheirOwn) {
  const Season season = test::exampleSeason(400);
  const auto found =
      *overTime(season, rescuesOf(season), longestPause(ChartKind::run, Period::record));
  const Chart chart = overTimeChart(season, found, Words{});
  std::size_t marked = 0;
  for (const ChartPoint& point : chart.points) {
    marked += point.shape == PointShape::signal ? 1 : 0;
  }
  // Pauses are shorter from April 2025 on.
  EXPECT_GT(marked, 10U);
  EXPECT_LT(marked, chart.points.size());
  EXPECT_TRUE(says(chart, "points in a row lie below the line"));
  EXPECT_TRUE(std::any_of(chart.keys.begin(), chart.keys.end(),
                          [](const ChartKey& key) { return key.shape == KeyShape::signal; }));
}

TEST(OverTimeChart, FewerThanFivePointsHaveNoLine) {
  const Season season = test::exampleSeason(5);
  const Chart chart = overTimeChart(
      season, *overTime(season, rescuesOf(season), longestPause(ChartKind::run, Period::record)),
      Words{});
  EXPECT_EQ(chart.points.size(), 4U);
  EXPECT_TRUE(chart.lines.empty());
  EXPECT_TRUE(says(chart, "Fewer than five points: they are drawn without a line."));
  EXPECT_FALSE(says(chart, "The line is"));
}

TEST(StageBars, ADayThatWasTakenAwayIsItsMonthAlone) {
  Season season = test::exampleSeason(40);
  for (RecordFacts& record : season.records) {
    record.monthOnly = true;
  }
  const auto found = *stages(season, rescuesOf(season), StagesFrom::powerOn);
  const Chart chart = stageBarsChart(season, found, Words{}, 10);
  ASSERT_FALSE(chart.y.names.isEmpty());
  for (const QString& name : chart.y.names) {
    EXPECT_TRUE(name.contains(QRegularExpression("^([A-Z][a-z]{2} 20[0-9]{2}|[^0-9])")))
        << name.toStdString();
  }
}

TEST(StageCharts, OpenStagesAreNotGuessed) {
  const Season season = test::exampleSeason(60);
  const auto found = *stages(season, rescuesOf(season), StagesFrom::call);
  const Chart chart = stageBarsChart(season, found, Words{}, 10);
  ASSERT_EQ(chart.bars.size(), 10U);
  std::size_t open = 0;
  for (const ChartBar& bar : chart.bars) {
    open += bar.label == QStringLiteral("no first shock recorded") ? 1 : 0;
  }
  std::size_t expected = 0;
  for (const RecordStages& one : found.records) {
    expected += one.total ? 0 : 1;
  }
  EXPECT_GT(expected, 0U);
  EXPECT_LE(open, expected);
  EXPECT_TRUE(says(chart, "The latest 10 of "));
  const Chart all = stageBarsChart(season, found, Words{}, 1000);
  EXPECT_EQ(all.bars.size(), found.records.size());
  // A piece that holds several stages is one that nothing divides.
  std::size_t undivided = 0, stagesUndivided = 0;
  for (const ChartBar& bar : all.bars) {
    for (const ChartPiece& piece : bar.pieces) {
      undivided += piece.lastStage > piece.firstStage ? 1 : 0;
    }
  }
  for (const RecordStages& one : found.records) {
    stagesUndivided += static_cast<std::size_t>(std::count_if(
        one.stages.begin(), one.stages.end(), [](const Stage& stage) { return !stage.divided(); }));
  }
  EXPECT_EQ(undivided, stagesUndivided);
  open = static_cast<std::size_t>(
      std::count_if(all.bars.begin(), all.bars.end(), [](const ChartBar& bar) {
        return bar.label == QStringLiteral("no first shock recorded");
      }));
  EXPECT_EQ(open, expected);
}

TEST(StageCharts, PointsOfAStageAreItsRecords) {
  const Season season = test::exampleSeason(400);
  const auto found = *stages(season, rescuesOf(season), StagesFrom::call);
  const Chart chart = stageChart(season, found, Words{});
  for (std::size_t i = 0; i < found.median.size(); ++i) {
    EXPECT_EQ(pointsIn(chart, static_cast<int>(i)), found.median[i].records) << i;
  }
  EXPECT_TRUE(says(chart, "do not add up to the middle of the whole"));
  for (const ChartPoint& point : chart.points) {
    ASSERT_LT(point.first, chart.records.size());
  }
}

/// Every chart of an empty season says what it would show and that there is nothing.
TEST(SeasonCharts, EmptySeasonsAreSaid) {
  const Season season = test::exampleSeason(0);
  const Chosen none;
  for (const Chart& chart :
       {spreadChart(season, *spread(season, none, MeasureId::longestPause, GroupBy::site), Words{}),
        overTimeChart(season, *overTime(season, none, longestPause(ChartKind::run, Period::record)),
                      Words{}),
        stageChart(season, *stages(season, none, StagesFrom::call), Words{}),
        stageBarsChart(season, *stages(season, none, StagesFrom::powerOn), Words{})}) {
    EXPECT_TRUE(chart.points.empty());
    EXPECT_FALSE(chart.emptyText.isEmpty());
    EXPECT_FALSE(chart.sentences.isEmpty());
  }
}

} // namespace
} // namespace afterbeat::papers
