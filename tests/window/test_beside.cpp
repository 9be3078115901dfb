/// Side by side: two to eight records under each other, what differs, and the ways there and back.
#include "app/window/compare/beside_canvas.h"
#include "app/window/compare/beside_view.h"
#include "app/window/compare/beside_words.h"
#include "app/window/compare/compare_page.h"
#include "app/window/shell/file_actions.h"
#include "app/window/shell/folder_page.h"
#include "app/window/shell/toast.h"
#include "tests/window/window_fixture.h"

#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QListWidget>
#include <QTableView>
#include <QTest>

namespace afterbeat::window {

namespace {

class BesideTest : public WindowTest {
protected:
  BesideTest() : compare_(window_.comparePage()), view_(compare_->beside()) {}

  void putBeside(const QStringList& paths) {
    QSignalSpy shown(compare_, &ComparePage::shown);
    compare_->openBeside(paths);
    ASSERT_TRUE(shown.wait(kPatience));
    compare_->go()->trigger();
  }
  [[nodiscard]] static QStringList drills() {
    return {sample("drill-evening-1.resuslog"), sample("drill-evening-2.resuslog")};
  }
  [[nodiscard]] QString cell(const QString& title, int column) const {
    const QAbstractItemModel& model = *view_->table()->model();
    for (int row = 0; row < model.rowCount(); ++row) {
      if (model.index(row, 0).data().toString() == title) {
        return model.index(row, column).data().toString();
      }
    }
    return QStringLiteral("no such line");
  }
  void align(KeyMoment moment) {
    QComboBox* box = view_->alignment();
    box->setCurrentIndex(box->findData(static_cast<int>(moment)));
    emit box->activated(box->currentIndex());
  }

  ComparePage* compare_;
  BesideView* view_;
};

TEST_F(BesideTest, ALateDrillStandsBelowAnEarlyOneWithItsDifferences) {
  // In the order of their begins, whatever the order of the files.
  putBeside({drills()[1], drills()[0]});
  ASSERT_EQ(view_->beside().records.size(), 2U);
  EXPECT_EQ(view_->beside().records[0].path, drills()[0]);
  const Figures& first = *view_->beside().records[0].figures;
  const Figures& second = *view_->beside().records[1].figures;
  const double before = *first[MeasureId::longestPause].value;
  const double after = *second[MeasureId::longestPause].value;
  ASSERT_LT(after, before - 0.1);
  EXPECT_EQ(cell("Longest pause", 1), cellWords(MeasureId::longestPause, {before, Status::ok}));
  EXPECT_EQ(cell("Longest pause", 2),
            cellWords(MeasureId::longestPause, {after, Status::ok}) + "   (" +
                differenceWords(MeasureId::longestPause, after - before) + ")");
  EXPECT_TRUE(differenceWords(MeasureId::longestPause, after - before).startsWith("−"));
  EXPECT_TRUE(view_->sentence().contains("differs most"));
  // Did this drill beat the last? It did.
  const QString text = view_->asText();
  EXPECT_TRUE(text.contains("B against A")) << text.toStdString();
  EXPECT_TRUE(text.contains("Longest pause"));
  EXPECT_TRUE(text.contains("DRILL"));
  EXPECT_TRUE(text.contains("SYNTHETIC"));
}

TEST_F(BesideTest, RowsOfOneStretchLieUnderEachOtherAlignedAtTheMoment) {
  putBeside(drills());
  for (const KeyMoment moment : {KeyMoment::powerOn, KeyMoment::firstShock}) {
    align(moment);
    EXPECT_EQ(view_->compared().alignedAt, moment);
    const BesidePicture& picture = view_->canvas()->picture();
    ASSERT_FALSE(picture.blocks().empty());
    for (const BesideBlock& block : picture.blocks()) {
      double lastBottom = block.heading.bottom();
      for (const BesideRow& row : block.rows) {
        EXPECT_GE(row.box.top(), lastBottom - 0.01);
        lastBottom = row.box.bottom();
        // The moment itself is as far from the row's begin in each.
        const KeyTimes times = keyTimes({view_->beside().records[row.record].record.get(),
                                         view_->beside().records[row.record].figures.get()});
        EXPECT_EQ(*times[static_cast<std::size_t>(moment)] - row.stretch.begin, -block.from);
      }
    }
    // Bands of all rows begin and end at the same places.
    const auto rows = picture.rows();
    for (const BesideRow* row : rows) {
      EXPECT_DOUBLE_EQ(row->placed->rowRect(0).left(), rows.front()->placed->rowRect(0).left());
      EXPECT_DOUBLE_EQ(row->placed->rowRect(0).right(), rows.front()->placed->rowRect(0).right());
    }
  }
  EXPECT_EQ(cell("first shock", 1), "here");
}

TEST_F(BesideTest, ALongerRowHoldsMoreAndNothingIsLost) {
  putBeside(drills());
  const auto covered = [this] {
    Duration sum{};
    for (const BesideRow* row : view_->canvas()->picture().rows()) {
      const Interval all = *view_->beside().records[row->record].figures->window;
      sum += std::max(Duration{}, std::min(all.end, row->stretch.end) -
                                      std::max(all.begin, row->stretch.begin));
    }
    return sum;
  };
  Duration windows{};
  for (const BesideRecord& one : view_->beside().records) {
    windows += one.figures->window->length();
  }
  EXPECT_EQ(covered(), windows);
  const auto before = view_->canvas()->picture().blocks().size();
  view_->actions()[1]->trigger();
  EXPECT_LT(view_->canvas()->picture().blocks().size(), before);
  EXPECT_EQ(covered(), windows);
}

TEST_F(BesideTest, WhatHasNoSuchMomentIsNamedAndNotDrawn) {
  putBeside({sample("drill-evening-1.resuslog"), sample("bathing-jetty-child.resuslog")});
  align(KeyMoment::firstShock);
  EXPECT_TRUE(view_->asText().contains("Not in the rows, as first shock is not recorded: B."));
  EXPECT_TRUE(view_->asText().contains("different kinds"));
  for (const BesideRow* row : view_->canvas()->picture().rows()) {
    EXPECT_EQ(row->record, 0U);
  }
  EXPECT_EQ(cell("first shock", 2), "not recorded");
}

TEST_F(BesideTest, BrokenFilesAndThoseBeyondTheEighthAreNamed) {
  QStringList paths;
  for (int i = 0; i < 9; ++i) {
    paths << fileWith(qPrintable(QStringLiteral("d%1.resuslog").arg(i)), smallDrill());
  }
  paths.prepend(fileWith("broken.resuslog", ""));
  putBeside(paths);
  EXPECT_EQ(view_->beside().records.size(), kMostBeside);
  EXPECT_TRUE(view_->asText().contains("Left out: d8.resuslog."));
  EXPECT_TRUE(view_->asText().contains("broken.resuslog is not among them. This file is empty"));
}

TEST_F(BesideTest, ARecordIsOpenedFromThereAndOneKeyLeadsBack) {
  putBeside(drills());
  EXPECT_EQ(window_.currentPage(), compare_);
  BesideCanvas* canvas = view_->canvas();
  canvas->setCurrent(1);
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  QTest::keyClick(canvas, Qt::Key_Return);
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.currentPage(), page_);
  EXPECT_EQ(window_.session().path(), drills()[1]);
  QTest::keyClick(&window_, Qt::Key_C);
  EXPECT_EQ(window_.currentPage(), compare_);
  EXPECT_EQ(compare_->current(), view_);
  EXPECT_EQ(canvas->current(), 1);
  QTest::keyClick(&window_, Qt::Key_F7);
  EXPECT_EQ(window_.currentPage(), page_);
  // Closing it leads back as well, and without it there is no way to a record.
  window_.session().close();
  EXPECT_EQ(window_.currentPage(), compare_);
}

TEST_F(BesideTest, MarkedFilesOfAFolderAreLaidSideBySide) {
  for (const QString& drill : drills()) {
    ASSERT_TRUE(QFile::copy(drill, folder_.filePath(QFileInfo(drill).fileName())));
  }
  fileWith("c.resuslog", smallDrill());
  QSignalSpy listed(window_.folderPage(), &FolderPage::listed);
  window_.openFile(folder_.path());
  ASSERT_TRUE(listed.count() > 0 || listed.wait(kPatience));
  QListWidget* list = window_.folderPage()->list();
  // With one marked: all of a short list.
  EXPECT_EQ(window_.folderPage()->besideChosen().size(), 3);
  list->item(1)->setSelected(true);
  EXPECT_EQ(window_.folderPage()->besideChosen().size(), 2);
  QSignalSpy shown(compare_, &ComparePage::shown);
  QTest::keyClick(&window_, Qt::Key_C, Qt::ShiftModifier);
  ASSERT_TRUE(shown.wait(kPatience));
  EXPECT_EQ(view_->beside().records.size(), 2U);
  EXPECT_EQ(window_.currentPage(), compare_);
}

TEST_F(BesideTest, TheDrillBeforeIsFoundByPlaceKindAndTime) {
  for (int i = 1; i <= 3; ++i) {
    const QString name = QStringLiteral("drill-evening-%1.resuslog").arg(i);
    ASSERT_TRUE(QFile::copy(sample(qPrintable(name)), folder_.filePath(name)));
  }
  ASSERT_TRUE(QFile::copy(sample("ferry-terminal.resuslog"), folder_.filePath("f.resuslog")));
  open(folder_.filePath("drill-evening-3.resuslog"));
  QSignalSpy shown(compare_, &ComparePage::shown);
  compare_->besideBefore()->trigger();
  ASSERT_TRUE(shown.wait(kPatience));
  ASSERT_EQ(view_->beside().records.size(), 2U);
  EXPECT_TRUE(view_->beside().records[0].path.endsWith("drill-evening-2.resuslog"));
  EXPECT_TRUE(view_->beside().records[1].path.endsWith("drill-evening-3.resuslog"));
  // The first has none before it.
  open(folder_.filePath("drill-evening-1.resuslog"));
  compare_->besideBefore()->trigger();
  EXPECT_TRUE(QTest::qWaitFor([this] { return window_.toast()->isVisible(); }, kPatience));
  EXPECT_TRUE(window_.toast()->text().contains("no earlier recording"));
}

TEST_F(BesideTest, OtherSettingsGiveOtherFigures) {
  putBeside(drills());
  const QString before = cell("Time without circulation", 1);
  FigureSettings settings = window_.session().settings();
  settings.windowEnd = WindowEnd::recordEnd;
  QSignalSpy shown(compare_, &ComparePage::shown);
  window_.session().setSettings(settings);
  ASSERT_TRUE(shown.wait(kPatience));
  EXPECT_NE(cell("Time without circulation", 1), before);
  window_.session().setSettings({});
  ASSERT_TRUE(shown.wait(kPatience));
}

TEST_F(BesideTest, ReadingCanBeStopped) {
  QStringList many;
  for (int i = 0; i < 8; ++i) {
    many << sample("ferry-terminal.resuslog");
  }
  compare_->openBeside(many);
  EXPECT_TRUE(compare_->busy());
  EXPECT_TRUE(window_.files()->stop()->isEnabled());
  window_.files()->stop()->trigger();
  EXPECT_FALSE(compare_->busy());
  EXPECT_TRUE(view_->beside().records.empty());
}

TEST_F(BesideTest, DifferencesAreSaidInTheUnitsOfTheirFigures) {
  EXPECT_EQ(differenceWords(MeasureId::longestPause, 6.24), "+6.2 s");
  EXPECT_EQ(differenceWords(MeasureId::longestPause, 0.01), "the same");
  EXPECT_EQ(differenceWords(MeasureId::handsOffFraction, -0.12), "−12 percentage points");
  EXPECT_EQ(differenceWords(MeasureId::shocksDelivered, 1), "+1");
  EXPECT_EQ(differenceWords(MeasureId::powerOnToFirstShock, -95), "−1 min 35 s");
}

} // namespace

} // namespace afterbeat::window
