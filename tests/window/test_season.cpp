/// A season: its table, its filter, its charts, and the ways from a point to its record and back.
#include "app/window/compare/beside_view.h"
#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/chart_writing.h"
#include "app/window/compare/compare_page.h"
#include "app/window/compare/filter_bar.h"
#include "app/window/compare/report_writing.h"
#include "app/window/compare/season_table.h"
#include "app/window/compare/season_views.h"
#include "app/window/compare/season_ways.h"
#include "app/window/compare/stand_out_view.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/pictures_for_ears.h"
#include "samples/season/made_season.h"
#include "samples/season/write_season.h"
#include "tests/window/window_fixture.h"

#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QImage>
#include <QLineEdit>
#include <QScrollBar>
#include <QTest>
#include <QTreeWidget>

namespace afterbeat::window {

namespace {

/// A made-up season of any size, in memory.
class MadeSource final : public SeasonSource {
public:
  explicit MadeSource(const samples::SeasonPlan& plan) : made_(plan) { season_ = made_.season(); }
  [[nodiscard]] QString name() const override { return "made up"; }
  [[nodiscard]] QString key() const override { return "made"; }
  [[nodiscard]] std::map<std::uint32_t, archive::RowsSketch>
  sketches(const std::vector<std::uint32_t>& places) const override {
    asked += places.size();
    std::map<std::uint32_t, archive::RowsSketch> all;
    for (const std::uint32_t place : places) {
      all[place].length = Duration{600'000'000};
    }
    return all;
  }
  [[nodiscard]] tl::expected<QString, QString> file(std::uint32_t) const override {
    return tl::unexpected(QString("in memory alone"));
  }
  mutable std::atomic<std::size_t> asked = 0;

private:
  samples::MadeSeason made_;
};

class SeasonTest : public WindowTest {
protected:
  SeasonTest() : compare_(window_.comparePage()), desk_(*compare_->desk()) {}

  /// Until everything that was asked for is in view.
  void settled() {
    ASSERT_TRUE(QTest::qWaitFor(
        [this] { return !desk_.busy() && !desk_.arranging() && desk_.arranged().source; },
        kPatience));
  }
  void show(const SharedSource& source) {
    desk_.show(source);
    compare_->go()->trigger();
    settled();
  }
  void writeSeason(std::size_t count, double drills = 0.4) {
    samples::SeasonPlan plan;
    plan.records = count;
    plan.drills = drills;
    for (std::size_t i = 0; i < count; ++i) {
      const auto file = samples::seasonFile(plan, i);
      fileWith(file.name.c_str(), QByteArray::fromStdString(file.bytes));
    }
  }
  void openFolder() {
    desk_.openFiles({folder_.path()});
    compare_->go()->trigger();
    settled();
  }
  [[nodiscard]] QString cell(int row, const QString& title) const {
    const QAbstractItemModel& model = *compare_->table()->model();
    for (int column = 0; column < model.columnCount(); ++column) {
      if (model.headerData(column, Qt::Horizontal).toString().replace('\n', ' ') == title) {
        return model.index(row, column).data().toString();
      }
    }
    return "no such column";
  }
  void goTo(ChartView* view) {
    compare_->showView(view);
    ASSERT_TRUE(QTest::qWaitFor([view] { return view->upToDate(); }, kPatience));
  }
  static void choose(QComboBox* box, int index) {
    box->setCurrentIndex(index);
    emit box->activated(index);
  }

  ComparePage* compare_;
  SeasonDesk& desk_;
};

TEST_F(SeasonTest, AFolderIsATableAndWhatCannotBeReadIsCounted) {
  writeSeason(12);
  fileWith("broken.resuslog", "");
  openFolder();
  EXPECT_EQ(window_.currentPage(), compare_);
  EXPECT_EQ(compare_->table()->model()->rowCount(), 12);
  EXPECT_TRUE(compare_->filter()->sentence().contains("Records: 12"));
  EXPECT_TRUE(
      compare_->filter()->sentence().contains("could not be read and are not among them: 1"));
  // The latest first, and each cell is what the record's own figures say.
  for (int row = 1; row < 12; ++row) {
    const QString before = cell(row - 1, "Day"), here = cell(row, "Day");
    EXPECT_TRUE(here == "not recorded" || (before != "not recorded" && before >= here));
  }
  const auto file = desk_.source()->file(compare_->table()->lines()->place(0));
  ASSERT_TRUE(file);
  open(*file);
  EXPECT_EQ(cell(0, "Longest pause"),
            valueWords(window_.session().figures()[MeasureId::longestPause]));
}

TEST_F(SeasonTest, SortingPutsWhatIsNotRecordedLastAndSaysSo) {
  writeSeason(30);
  openFolder();
  for (const bool descending : {false, true}) {
    desk_.setOrder({MeasureId::callToFirstShock, descending});
    settled();
    // It stands in the table although it is no usual column.
    const int rows = compare_->table()->model()->rowCount();
    ASSERT_EQ(rows, 30);
    EXPECT_EQ(cell(0, "no such"), "no such column");
    bool last = false;
    std::size_t without = 0;
    for (int row = 0; row < rows; ++row) {
      const QString text = cell(row, titleWords(MeasureId::callToFirstShock));
      const bool none = text == "not recorded" || text == "does not apply";
      EXPECT_TRUE(none || !last);
      last = last || none;
      without += none ? 1U : 0U;
    }
    ASSERT_GT(without, 0U);
    EXPECT_EQ(desk_.arranged().withoutValue, without);
    EXPECT_TRUE(compare_->filter()->sentence().contains("therefore last"));
  }
}

TEST_F(SeasonTest, TypingAndChoosersLeaveWhatFits) {
  writeSeason(30);
  openFolder();
  FilterBar* bar = compare_->filter();
  choose(bar->kind(), bar->kind()->findData(static_cast<int>(RecordKind::drill)));
  settled();
  const int drills = compare_->table()->model()->rowCount();
  EXPECT_GT(drills, 0);
  EXPECT_LT(drills, 30);
  for (int row = 0; row < drills; ++row) {
    EXPECT_TRUE(cell(row, "Kind").startsWith("DRILL"));
    EXPECT_TRUE(cell(row, "Kind").contains("SYNTHETIC"));
  }
  QTest::keyClicks(bar->words(), "boathouse");
  ASSERT_TRUE(QTest::qWaitFor([this] { return desk_.filter().words == "boathouse"; }, kPatience));
  settled();
  for (int row = 0; row < compare_->table()->model()->rowCount(); ++row) {
    EXPECT_TRUE(cell(row, "Site").contains("boathouse"));
  }
  EXPECT_TRUE(bar->sentence().contains("do not fit the filter"));
  bar->actions()[1]->trigger();
  settled();
  EXPECT_EQ(compare_->table()->model()->rowCount(), 30);
}

TEST_F(SeasonTest, ALineOpensItsRecordAndOneKeyLeadsBack) {
  writeSeason(5);
  openFolder();
  SeasonTable* table = compare_->table();
  table->setCurrentIndex(table->model()->index(2, 0));
  const QString file = *desk_.source()->file(table->lines()->place(2));
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  QTest::keyClick(table, Qt::Key_Return);
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.session().path(), file);
  EXPECT_EQ(window_.currentPage(), page_);
  QTest::keyClick(&window_, Qt::Key_C);
  EXPECT_EQ(window_.currentPage(), compare_);
  EXPECT_EQ(compare_->current(), table);
  EXPECT_EQ(table->currentIndex().row(), 2);
}

TEST_F(SeasonTest, MarkedLinesAreLaidSideBySide) {
  writeSeason(5);
  openFolder();
  SeasonTable* table = compare_->table();
  table->clearSelection();
  for (const int row : {0, 3}) { // not by selectRow, which heeds keys of the test before
    table->selectionModel()->select(table->model()->index(row, 0),
                                    QItemSelectionModel::Select | QItemSelectionModel::Rows);
  }
  QSignalSpy shown(compare_, &ComparePage::shown);
  compare_->putBeside()->trigger();
  ASSERT_TRUE(shown.wait(kPatience));
  EXPECT_TRUE(compare_->heading().contains("2 records side by side"));
}

TEST_F(SeasonTest, MarkedLinesAreLaidSideBySideFromAnyView) {
  writeSeason(5);
  openFolder();
  compare_->table()->selectAll();
  compare_->showView(compare_->beside()); // which says to mark some and come by this key
  QSignalSpy shown(compare_, &ComparePage::shown);
  compare_->putBeside()->trigger();
  ASSERT_TRUE(shown.wait(kPatience));
  EXPECT_TRUE(compare_->heading().contains("5 records side by side"));
}

TEST_F(SeasonTest, APointOfASpreadIsReachedByKeysAndOpensItsRecord) {
  writeSeason(30, 0.3);
  openFolder();
  SpreadView* spread = compare_->spread();
  goTo(spread);
  ASSERT_NE(spread->canvas()->chart(), nullptr);
  // Drills are not in it, and it says so.
  EXPECT_TRUE(spread->sentences().contains("Kinds are never mixed"));
  EXPECT_EQ(spread->kind()->count(), 2);
  ChartCanvas* canvas = spread->canvas();
  EXPECT_TRUE(canvas->spokenDescription().contains(canvas->chart()->title));
  QTest::keyClick(canvas, Qt::Key_Home);
  QTest::keyClick(canvas, Qt::Key_Right);
  ASSERT_TRUE(canvas->current().has_value());
  const papers::ChartPoint point = canvas->chart()->points[*canvas->current()];
  const std::uint32_t place = canvas->chart()->records[point.first];
  EXPECT_NEAR(point.x, desk_.source()->season().column(MeasureId::powerOnToFirstShock)[place].value,
              1e-9);
  EXPECT_TRUE(canvas->spokenDescription().contains(
      QString::fromStdString(desk_.source()->season().records[place].file)));
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  QTest::keyClick(canvas, Qt::Key_Return);
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.session().path(), *desk_.source()->file(place));
  // A click does the same.
  window_.comparePage()->go()->trigger();
  const QPointF there = *canvas->placeOf(*canvas->current());
  QTest::mouseClick(canvas, Qt::LeftButton, {}, there.toPoint());
  EXPECT_TRUE(QTest::qWaitFor([this] { return window_.currentPage() == page_; }, kPatience));
}

TEST_F(SeasonTest, DrillsAreAChartOfTheirOwn) {
  writeSeason(30, 0.3);
  openFolder();
  SpreadView* spread = compare_->spread();
  goTo(spread);
  const std::size_t rescues = spread->canvas()->chart()->points.size();
  EXPECT_FALSE(spread->canvas()->chart()->marks.contains("DRILL"));
  choose(spread->kind(), 1);
  ASSERT_TRUE(QTest::qWaitFor([spread] { return spread->upToDate(); }, kPatience));
  EXPECT_TRUE(spread->canvas()->chart()->marks.contains("DRILL"));
  EXPECT_LT(spread->canvas()->chart()->points.size(), rescues);
}

TEST_F(SeasonTest, AMarkOfTheUserIsDrawnTakenBackAndRemembered) {
  samples::SeasonPlan plan;
  plan.records = 200;
  plan.training = std::chrono::sys_days(std::chrono::year(2025) / 1 / 1);
  plan.trainingTimes = 0.4;
  const auto source = std::make_shared<MadeSource>(plan);
  show(source);
  OverTimeView* view = compare_->overTime();
  goTo(view);
  EXPECT_TRUE(view->canvas()->chart()->dayMarks.empty());
  view->mark(*plan.training, "new training from here");
  ASSERT_TRUE(QTest::qWaitFor([view] { return view->upToDate(); }, kPatience));
  ASSERT_EQ(view->canvas()->chart()->dayMarks.size(), 1U);
  EXPECT_TRUE(view->canvas()->chart()->dayMarks[0].label.contains("new training"));
  view->actions()[2]->trigger();
  EXPECT_TRUE(view->steps().empty());
  view->actions()[3]->trigger();
  EXPECT_EQ(view->steps().size(), 1U);
  // The next start finds it.
  MainWindow other;
  other.comparePage()->desk()->show(source);
  EXPECT_EQ(other.comparePage()->overTime()->steps().size(), 1U);
  view->unmark(0);
  EXPECT_TRUE(view->steps().empty());
}

TEST_F(SeasonTest, StagesAndWhatIsWorthALookAreShown) {
  writeSeason(30);
  openFolder();
  StagesView* stages = compare_->stages();
  goTo(stages);
  ASSERT_NE(stages->canvas()->chart(), nullptr);
  EXPECT_FALSE(stages->sentences().isEmpty());
  choose(stages->shape(), 1);
  ASSERT_TRUE(QTest::qWaitFor([stages] { return stages->upToDate(); }, kPatience));
  EXPECT_FALSE(stages->canvas()->chart()->bars.empty());
  QTest::keyClick(stages->canvas(), Qt::Key_Home);
  EXPECT_TRUE(stages->canvas()->current().has_value());
  StandOutView* standOut = compare_->standOut();
  compare_->showView(standOut);
  ASSERT_TRUE(QTest::qWaitFor([standOut] { return standOut->upToDate(); }, kPatience));
  ASSERT_GT(standOut->list()->topLevelItemCount(), 0);
  EXPECT_FALSE(standOut->list()->topLevelItem(0)->text(1).isEmpty());
  QSignalSpy wanted(standOut, &StandOutView::wanted);
  emit standOut->list()->itemActivated(standOut->list()->topLevelItem(0), 0);
  EXPECT_EQ(wanted.count(), 1);
}

TEST_F(SeasonTest, AChartIsWrittenAsAPictureInThreeWays) {
  writeSeason(10, 0);
  openFolder();
  goTo(compare_->spread());
  const papers::Chart& chart = *compare_->spread()->canvas()->chart();
  EXPECT_EQ(writeChart(chart, folder_.filePath("c.svg")), QString());
  EXPECT_EQ(writeChart(chart, folder_.filePath("c.png")), QString());
  EXPECT_EQ(writeChart(chart, folder_.filePath("c.pdf")), QString());
  QFile svg(folder_.filePath("c.svg")), pdf(folder_.filePath("c.pdf"));
  ASSERT_TRUE(svg.open(QIODevice::ReadOnly));
  EXPECT_TRUE(svg.readAll().contains("<svg"));
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
  EXPECT_GT(QImage(folder_.filePath("c.png")).width(), 900);
  EXPECT_TRUE(writeChart(chart, folder_.filePath("c.bmp")).contains(".svg, .png or .pdf"));
  EXPECT_TRUE(writeChart(chart, "/no/such/folder/c.svg").contains("not written"));
}

TEST_F(SeasonTest, TheReportIsWrittenForPaperForABrowserAndAsATable) {
  writeSeason(8);
  openFolder();
  const ReportOrder order{desk_.source(), desk_.arranged().chosen, {}, "en"};
  for (const char* name : {"r.pdf", "r.html", "r.csv"}) {
    EXPECT_EQ(writeReport(order, folder_.filePath(name)), QString());
  }
  QFile pdf(folder_.filePath("r.pdf")), page(folder_.filePath("r.html")),
      table(folder_.filePath("r.csv"));
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
  ASSERT_TRUE(page.open(QIODevice::ReadOnly));
  EXPECT_TRUE(page.readAll().contains("</html>"));
  ASSERT_TRUE(table.open(QIODevice::ReadOnly));
  EXPECT_EQ(table.readAll().count("\r\n"), 9);
  EXPECT_TRUE(writeReport(order, folder_.filePath("r.odt")).contains(".pdf, .html or .csv"));
}

TEST_F(SeasonTest, WhatHasNoFiguresIsCountedAndNotTakenForWithoutEvidence) {
  writeSeason(6);
  QTemporaryDir elsewhere;
  const auto place = archive::ArchivePlace::from(elsewhere.filePath("season.sqlite").toStdString());
  ASSERT_TRUE(place);
  desk_.takeIn(*place, {folder_.path()});
  settled();
  EXPECT_FALSE(compare_->filter()->sentence().contains("No figures under"));
  // A file is gone before the figures of other settings are computed.
  const auto gone = desk_.source()->file(0);
  ASSERT_TRUE(gone && QFile::remove(*gone));
  FigureSettings other = window_.session().settings();
  other.pauseThreshold = Duration{3'000'000};
  const auto kept = archive::Archive::open(*place);
  ASSERT_TRUE(kept && kept->use({other, DeriveMode::automatic}));
  desk_.takeIn(*place, {folder_.path()});
  settled();
  window_.session().setSettings(other);
  settled();
  ASSERT_TRUE(desk_.source()->asAsked());
  EXPECT_TRUE(compare_->filter()->sentence().contains("No figures under these settings: 1."))
      << compare_->filter()->sentence().toStdString();
  const auto& records = desk_.source()->season().records;
  ASSERT_EQ(std::count_if(records.begin(), records.end(),
                          [](const RecordFacts& one) { return !one.hasFigures; }),
            1);
  for (const RecordFacts& one : records) {
    EXPECT_EQ(factWords(Fact::longestPauseCause, one) == "no figures", !one.hasFigures);
    EXPECT_EQ(factWords(Fact::hadShock, one) == "no figures", !one.hasFigures);
  }
}

TEST_F(SeasonTest, FiguresOfOtherSettingsThanTheWindowsAreNamed) {
  writeSeason(6);
  QTemporaryDir elsewhere;
  const auto place = archive::ArchivePlace::from(elsewhere.filePath("season.sqlite").toStdString());
  ASSERT_TRUE(place);
  desk_.takeIn(*place, {folder_.path()});
  settled();
  EXPECT_TRUE(desk_.source()->asAsked());
  EXPECT_FALSE(compare_->filter()->sentence().contains("computed with"));
  FigureSettings other = window_.session().settings();
  other.pauseThreshold = Duration{3'000'000};
  window_.session().setSettings(other);
  settled();
  EXPECT_FALSE(desk_.source()->asAsked());
  EXPECT_EQ(desk_.source()->settings().pauseThreshold, FigureSettings{}.pauseThreshold);
  const QString sentence = compare_->filter()->sentence();
  EXPECT_TRUE(sentence.contains("computed with: Pauses longer than 1.5 s"))
      << sentence.toStdString();
  // The report says what its figures are, not what the window is set to.
  const ReportOrder order{desk_.source(), desk_.arranged().chosen, {}, "en"};
  EXPECT_EQ(writeReport(order, folder_.filePath("r.html")), QString());
  QFile page(folder_.filePath("r.html"));
  ASSERT_TRUE(page.open(QIODevice::ReadOnly));
  EXPECT_TRUE(page.readAll().contains("Figures computed with: Pauses longer than 1.5 s"));
  window_.session().setSettings({});
  settled();
  EXPECT_TRUE(desk_.source()->asAsked());
}

TEST_F(SeasonTest, RecordingsAreTakenIntoAnArchiveThatIsFoundAgain) {
  writeSeason(6);
  fileWith("broken.resuslog", "");
  QTemporaryDir elsewhere;
  const auto place = archive::ArchivePlace::from(elsewhere.filePath("season.sqlite").toStdString());
  ASSERT_TRUE(place);
  desk_.takeIn(*place, {folder_.path()});
  EXPECT_TRUE(compare_->busy());
  settled();
  ASSERT_TRUE(desk_.report());
  EXPECT_EQ(desk_.report()->added, 6U);
  EXPECT_EQ(desk_.report()->refused.size(), 1U);
  EXPECT_TRUE(window_.notices()->text().contains("6 new"));
  EXPECT_EQ(compare_->table()->model()->rowCount(), 6);
  EXPECT_TRUE(compare_->recentArchives().front()->text().contains("season.sqlite"));
  // Once more: nothing is new.
  desk_.takeIn(*place, {folder_.path()});
  settled();
  EXPECT_EQ(desk_.report()->added, 0U);
  EXPECT_EQ(desk_.report()->known, 6U);
  EXPECT_EQ(compare_->table()->model()->rowCount(), 6);
  // Its small pictures come when the lines are seen.
  compare_->go()->trigger();
  const SeasonTable* table = compare_->table();
  const QModelIndex rows = table->model()->index(0, table->lines()->sketchColumn());
  ASSERT_TRUE(QTest::qWaitFor(
      [&rows] { return rows.data(SeasonTableModel::kSketchRole).value<const void*>() != nullptr; },
      kPatience));
  EXPECT_TRUE(rows.data(Qt::ToolTipRole).toString().contains("shocks"));
}

TEST_F(SeasonTest, AnArchiveThatIsNotThereIsRefusedInWords) {
  compare_->ways()->openTyped(folder_.filePath("nothing.sqlite"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return !compare_->busy(); }, kPatience));
  EXPECT_FALSE(window_.notices()->text().isEmpty());
  EXPECT_EQ(desk_.source(), nullptr);
}

TEST_F(SeasonTest, AnEmptyFolderAndOneRecordAreSaidNotDrawn) {
  openFolder();
  EXPECT_EQ(compare_->table()->model()->rowCount(), 0);
  goTo(compare_->spread());
  EXPECT_TRUE(compare_->spread()->sentences().contains("no record to draw"));
  writeSeason(1, 0);
  openFolder();
  EXPECT_EQ(compare_->table()->model()->rowCount(), 1);
  goTo(compare_->overTime());
  EXPECT_FALSE(compare_->overTime()->sentences().isEmpty());
}

TEST_F(SeasonTest, EveryFigureShowsItsDefinitionWithItsSource) {
  writeSeason(6);
  openFolder();
  const auto* model = compare_->table()->model();
  int figures = 0;
  for (int column = 0; column < model->columnCount(); ++column) {
    const auto sorts = compare_->table()->lines()->sorts(column);
    if (sorts && std::holds_alternative<MeasureId>(*sorts)) {
      ++figures;
      const MeasureInfo& info = measureInfo(std::get<MeasureId>(*sorts));
      const QString about = model->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
      EXPECT_TRUE(about.contains(info.definition.data())) << about.toStdString();
      EXPECT_TRUE(about.contains("Definition: ")) << about.toStdString();
    }
  }
  EXPECT_GE(figures, 5);
  goTo(compare_->spread());
  const QString last = compare_->spread()->sentences().section('\n', -1);
  EXPECT_TRUE(last.contains("Definition: ")) << last.toStdString();
  EXPECT_TRUE(last.startsWith(measureInfo(MeasureId::powerOnToFirstShock).definition.data()));
  goTo(compare_->overTime());
  EXPECT_TRUE(compare_->overTime()->sentences().contains("Definition: "));
}

TEST_F(SeasonTest, EveryReasonToLookIsInViewInANarrowColumn) {
  writeSeason(40);
  openFolder();
  StandOutView* standOut = compare_->standOut();
  compare_->showView(standOut);
  ASSERT_TRUE(QTest::qWaitFor([standOut] { return standOut->upToDate(); }, kPatience));
  QTreeWidget* list = standOut->list();
  const int records = list->topLevelItemCount();
  ASSERT_GT(records, 0);
  // Day, kind and file are not broken as long as nobody makes their column narrower.
  for (int i = 0; i < records; ++i) {
    for (const QString& line : list->topLevelItem(i)->text(0).split('\n')) {
      EXPECT_LE(list->fontMetrics().horizontalAdvance(line), list->columnWidth(0));
    }
  }
  const auto heightOfAll = [&](int narrower) {
    list->header()->resizeSection(0, list->viewport()->width() - narrower);
    QCoreApplication::processEvents();
    int all = 0;
    for (int i = 0; i < records; ++i) {
      const QTreeWidgetItem* item = list->topLevelItem(i);
      const int high = list->visualItemRect(item).height();
      const QRect needed = list->fontMetrics().boundingRect(
          {0, 0, list->columnWidth(1), 10'000}, Qt::AlignLeft | Qt::TextWordWrap, item->text(1));
      EXPECT_GE(high, needed.height()) << item->text(1).toStdString();
      all += high;
    }
    return all;
  };
  const int wide = heightOfAll(700), narrow = heightOfAll(160);
  EXPECT_GT(narrow, wide);
  EXPECT_EQ(heightOfAll(700), wide);
}

TEST_F(SeasonTest, WhatTheyAreSortedByIsTheFirstOfTheFigures) {
  writeSeason(6);
  openFolder();
  const SeasonTableModel* lines = compare_->table()->lines();
  const auto firstFigure = [lines] {
    int column = 0;
    while (!lines->sorts(column) || std::holds_alternative<Fact>(*lines->sorts(column))) {
      ++column;
    }
    return std::get<MeasureId>(*lines->sorts(column));
  };
  const int columns = lines->columnCount();
  EXPECT_EQ(firstFigure(), SeasonDesk::usualColumns().front());
  desk_.setOrder({MeasureId::compressionRate, true});
  ASSERT_TRUE(QTest::qWaitFor([this] { return !desk_.arranging(); }, kPatience));
  EXPECT_EQ(firstFigure(), MeasureId::compressionRate);
  EXPECT_EQ(lines->columnCount(), columns + 1);
  // A usual one stays where it is.
  desk_.setOrder({MeasureId::longestPause, true});
  ASSERT_TRUE(QTest::qWaitFor([this] { return !desk_.arranging(); }, kPatience));
  EXPECT_EQ(firstFigure(), SeasonDesk::usualColumns().front());
  EXPECT_EQ(lines->columnCount(), columns);
}

TEST_F(SeasonTest, WithoutEvidenceOfCompressionsNobodySaysThatThereWasNoPause) {
  RecordFacts facts;
  EXPECT_EQ(factWords(Fact::longestPauseCause, facts), "not recorded");
  facts.evidence = Evidence::segments;
  EXPECT_EQ(factWords(Fact::longestPauseCause, facts), "no pause");
  facts.longestPauseCause = PauseCause::shock;
  EXPECT_EQ(factWords(Fact::longestPauseCause, facts), causeName(PauseCause::shock));
}

TEST_F(SeasonTest, AHundredThousandRecordsFetchOnlyWhatIsSeen) {
  samples::SeasonPlan plan;
  plan.records = 100'000;
  const auto source = std::make_shared<MadeSource>(plan);
  show(source);
  ASSERT_EQ(compare_->table()->model()->rowCount(), 100'000);
  QTest::qWait(0);
  compare_->table()->verticalScrollBar()->setValue(50'000);
  window_.grab();
  ASSERT_TRUE(QTest::qWaitFor([&source] { return source->asked > 0; }, kPatience));
  EXPECT_LT(source->asked, 500U);
  EXPECT_TRUE(compare_->filter()->sentence().contains("100"));
}

TEST_F(SeasonTest, EveryViewHasNamesAndFitsTheSmallestWindow) {
  writeSeason(10);
  openFolder();
  window_.resize(1024, 640);
  for (QWidget* view : QList<QWidget*>{compare_->table(), compare_->spread(), compare_->overTime(),
                                       compare_->stages(), compare_->standOut()}) {
    compare_->showView(view);
    QCoreApplication::processEvents();
    EXPECT_EQ(window_.width(), 1024);
    EXPECT_LE(window_.minimumSizeHint().width(), 1024);
    EXPECT_LE(window_.minimumSizeHint().height(), 640);
    for (QWidget* widget : compare_->findChildren<QWidget*>()) {
      if (widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) && !widget->focusProxy() &&
          !widget->objectName().startsWith("qt_")) {
        EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
      }
    }
  }
}

} // namespace

} // namespace afterbeat::window
