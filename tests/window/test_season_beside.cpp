/// Side by side out of a season: the tab before anything lies there, and the two latest.
#include "app/window/compare/beside_load.h"
#include "app/window/compare/beside_view.h"
#include "app/window/compare/compare_pages.h"
#include "app/window/compare/filter_bar.h"
#include "tests/window/season_fixture.h"

#include <QHeaderView>
#include <QPushButton>

namespace afterbeat::window {

namespace {

class SeasonBesideTest : public ArchiveWindowTest {};

/// The way to compare two is there before anything lies side by side.
TEST_F(SeasonBesideTest, WithNothingLaidTheTabSaysHowAndLaysTheTwoLatest) {
  writeSeason(20);
  takeIn();
  EXPECT_TRUE(compare_->filter()->sentence().contains("mark two to eight, then Shift+C"));
  compare_->table()->selectAll();
  EXPECT_TRUE(compare_->filter()->sentence().contains("Marked: 20."));
  pressShift(Qt::Key_C);
  EXPECT_TRUE(window_.notices()->text().startsWith("Eight records at most"));
  pressShift(Qt::Key_F5);
  EXPECT_EQ(compare_->current(), compare_->beside());
  // What was said of too many marks is over.
  EXPECT_FALSE(window_.notices()->isVisible());
  ASSERT_TRUE(compare_->beside()->empty()->isVisible());
  QSignalSpy shown(compare_, &ComparePage::shown);
  compare_->beside()->empty()->latest()->click();
  ASSERT_TRUE(shown.wait(kPatience));
  EXPECT_FALSE(compare_->beside()->empty()->isVisible());
  const auto& records = compare_->beside()->beside().records;
  ASSERT_EQ(records.size(), 2U);
  EXPECT_EQ(records[0].record->header.kind, records[1].record->header.kind);
  EXPECT_EQ(records[0].record->header.site, records[1].record->header.site);
}

TEST_F(SeasonBesideTest, AllColumnsOfTheRecordsAreInViewAt1280) {
  writeSeason(20);
  window_.resize(1280, 720);
  takeIn();
  const SeasonTable* table = compare_->table();
  EXPECT_LE(table->horizontalHeader()->length(), table->viewport()->width());
  const QAbstractItemModel& model = *table->model();
  const int cause = model.columnCount() - 2;
  const QString shown = model.index(0, cause).data().toString();
  EXPECT_TRUE(shown.startsWith(QChar(0x2003))) << shown.toStdString();
  const QString whole = model.index(0, cause).data(Qt::ToolTipRole).toString();
  EXPECT_TRUE(whole.startsWith("Longest pause was: ")) << whole.toStdString();
  EXPECT_TRUE(model.index(0, 1)
                  .data(Qt::AccessibleTextRole)
                  .toString()
                  .startsWith("Small picture of the rows"));
}

TEST(TwoLatest, AreOfOneKindAndSite) {
  Season season;
  const auto add = [&season](RecordKind kind, const char* site, int day) {
    RecordFacts facts;
    facts.kind = kind;
    facts.site = site;
    facts.day = std::chrono::sys_days(std::chrono::days(day));
    season.records.push_back(facts);
  };
  add(RecordKind::drill, "pier", 30);
  add(RecordKind::rescue, "pier", 29);
  add(RecordKind::drill, "jetty", 5);
  EXPECT_TRUE(twoLatest(season).empty());
  add(RecordKind::drill, "jetty", 20);
  add(RecordKind::drill, "jetty", 12);
  EXPECT_EQ(twoLatest(season), (std::vector<std::uint32_t>{4, 3}));
  add(RecordKind::drill, "pier", 1);
  EXPECT_EQ(twoLatest(season), (std::vector<std::uint32_t>{5, 0}));
}

} // namespace

} // namespace afterbeat::window
