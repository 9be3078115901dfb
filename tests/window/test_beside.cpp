/// Side by side: two to eight records under each other, what differs, and the ways there and back.
#include "app/window/compare/beside_canvas.h"
#include "app/window/compare/beside_legend.h"
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
#include <QRegularExpression>
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
  // More than three figures did better: those that differ most for their size are named, and none
  // that reads the same.
  EXPECT_TRUE(
      QRegularExpression("better in \\d+ figures, most of all [a-z]").match(text).hasMatch())
      << text.toStdString();
  EXPECT_TRUE(text.contains("; worse: no figure.")) << text.toStdString();
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

/// A rescue whose device is on `on` seconds after the call, as the times of the rescue.
QByteArray calledRescue(double call, double on) {
  QByteArray log =
      R"({"resuslog":"1.0","kind":"rescue","patient":{"category":"adult"},"synthetic":true}
)";
  const auto line = [&log](double t, const QByteArray& rest) {
    log += "{\"t\":" + QByteArray::number(t) + "," + rest + "}\n";
  };
  line(call, R"("type":"milestone","what":"call_received")");
  line(on - 20, R"("type":"milestone","what":"device_arrived")");
  line(on, R"("type":"power_on")");
  for (int i = 0; i < 60; ++i) {
    line(on + 8 + i * 0.55, R"("type":"compression","depth_mm":52)");
  }
  line(on + 42, R"("type":"analysis","advice":"shock")");
  line(on + 45, R"("type":"shock","delivered":true)");
  line(on + 100, R"("type":"power_off")");
  return log;
}

/// Rows are drawn from where something is done; the waiting before it is told in a line.
TEST_F(BesideTest, WaitingIsToldInALineAndWhatDiffersMostIsNamedWhereItStands) {
  putBeside(
      {fileWith("a.resuslog", calledRescue(0, 450)), fileWith("b.resuslog", calledRescue(0, 300))});
  ASSERT_TRUE(view_->compared().differsMost);
  EXPECT_TRUE(view_->sentence().startsWith("The time from call to device arrived differs most"))
      << view_->sentence().toStdString();
  const BesidePicture& picture = view_->canvas()->picture();
  ASSERT_FALSE(picture.blocks().empty());
  EXPECT_EQ(picture.blocks().front().from, Duration{});
  ASSERT_EQ(picture.waiting().size(), 2U);
  EXPECT_EQ(picture.waiting()[0].words.toStdString(),
            "call 7 min 30 s before device on, device arrived 20.0 s before");
  EXPECT_TRUE(picture.waiting()[0].marked);
  EXPECT_TRUE(picture.asText().startsWith(
      "A: call 7 min 30 s before device on, device arrived 20.0 s before (call to device arrived, "
      "7 min 10 s)"))
      << picture.asText().toStdString();
  // Aligned at the call, four minutes pass before the first row, in which nothing but it lies.
  align(KeyMoment::call);
  EXPECT_TRUE(picture.waiting().empty());
  EXPECT_EQ(picture.headingText(picture.blocks().front()).toStdString(),
            "4 min to 6 min after call");
  EXPECT_TRUE(view_->canvas()->alignedBox().isEmpty());
  align(KeyMoment::powerOn);
  EXPECT_FALSE(view_->canvas()->alignedBox().isEmpty());
  const QStringList legend = view_->legend()->said();
  EXPECT_EQ(legend.front(), "what differs most");
  for (const char* words : {"shock given", "hands off, seconds"}) {
    EXPECT_EQ(legend.count(words), 1) << words;
  }
}

TEST_F(BesideTest, APauseThatDiffersMostIsNamedAtItsRow) {
  putBeside(drills());
  ASSERT_EQ(view_->compared().differsMost->what, DiffersMost::What::longestPause);
  int labels = 0;
  for (const BesideRow* row : view_->canvas()->picture().rows()) {
    labels += row->label.isEmpty() ? 0 : 1;
    EXPECT_EQ(view_->canvas()->picture().rowText(*row).contains("longest pause, "),
              !row->label.isEmpty());
  }
  EXPECT_EQ(labels, 2);
}

/// What the sentence speaks of is what is marked: the first shock's pause, not the worst one.
TEST_F(BesideTest, ThePauseOfTheFirstShockIsMarked) {
  putBeside(drills());
  const BesideRecord& one = view_->beside().records[0];
  DiffersMost most;
  for (const bool before : {true, false}) {
    most.what = before ? DiffersMost::What::preShockPause : DiffersMost::What::postShockPause;
    const ShockFigures& first = one.figures->shocks.front();
    ASSERT_EQ(first.number, 1);
    const auto stretch = stretchOf(most, one);
    ASSERT_TRUE(stretch);
    EXPECT_EQ(stretch->length(), before ? *first.pre : *first.post);
    EXPECT_EQ(before ? stretch->end : stretch->begin, first.t);
  }
}

/// One record that begins long before the moment leaves no empty rows to the others.
TEST_F(BesideTest, TheFirstRowBeginsWhereSomethingIsDone) {
  putBeside({fileWith("a.resuslog", calledRescue(0, 450)),
             fileWith("b.resuslog", calledRescue(0, 300)), drills()[0], drills()[1]});
  align(KeyMoment::firstShock);
  const BesidePicture& picture = view_->canvas()->picture();
  std::optional<Duration> first;
  for (const BesideRecord& one : view_->beside().records) {
    const auto offset =
        view_->compared().offsets[static_cast<std::size_t>(&one - view_->beside().records.data())];
    const Duration begin = one.rows->model().span->begin - Time{} - *offset;
    first = std::min(first.value_or(begin), begin);
  }
  const BesideBlock& block = picture.blocks().front();
  EXPECT_LE(block.from, *first);
  EXPECT_LT(*first - block.from, picture.order().rowLength / 6);
  EXPECT_GT(block.to, Duration{});
  EXPECT_TRUE(picture.headingText(block).contains(" before first shock to "))
      << picture.headingText(block).toStdString();
}

/// A moment that was chosen and that none of the next records has leaves no empty picture.
TEST_F(BesideTest, AMomentThatNoneHasIsNotAlignedAt) {
  putBeside({sample("ferry-terminal.resuslog"), drills()[0]});
  align(KeyMoment::circulationReturned);
  putBeside(drills());
  EXPECT_EQ(view_->compared().alignedAt, KeyMoment::powerOn);
  EXPECT_FALSE(view_->canvas()->picture().blocks().empty());
}

TEST_F(BesideTest, NoCellOfTheTableIsCut) {
  putBeside(drills());
  const QTableView* table = view_->table();
  for (int row = 0; row < table->model()->rowCount(); ++row) {
    for (int column = 1; column < table->model()->columnCount(); ++column) {
      const QString text = table->model()->index(row, column).data().toString();
      EXPECT_LT(table->fontMetrics().horizontalAdvance(text) + 12, table->columnWidth(column))
          << text.toStdString();
    }
  }
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
