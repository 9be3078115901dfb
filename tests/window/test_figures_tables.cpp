#include "tests/window/window_fixture.h"

#include "app/window/finding/list_text.h"
#include "app/window/look/figure_words.h"

#include <QAbstractButton>
#include <QHeaderView>
#include <QTableView>
#include <QTest>

namespace afterbeat::window {
namespace {

class FiguresTables : public WindowTest {
protected:
  TablesView* tables() {
    page_->lower()->setCurrentWidget(page_->tables());
    return page_->tables();
  }
  QTableView* show(TableKind kind) {
    QTest::mouseClick(tables()->button(kind), Qt::LeftButton);
    EXPECT_EQ(page_->tables()->kind(), kind);
    return page_->tables()->currentTable();
  }
  static QStringList column(const QTableView* table, int column) {
    QStringList all;
    for (int row = 0; row < table->model()->rowCount(); ++row) {
      all << table->model()->index(row, column).data().toString();
    }
    return all;
  }
};

TEST_F(FiguresTables, EachHoldsTheRowsOfItsFigures) {
  open(sample("ferry-terminal.resuslog"));
  const Figures& figures = window_.session().figures();
  EXPECT_EQ(show(TableKind::minutes)->model()->rowCount(),
            static_cast<int>(figures.minutes.size()));
  EXPECT_EQ(show(TableKind::cycles)->model()->rowCount(), static_cast<int>(figures.cycles.size()));
  EXPECT_EQ(show(TableKind::pauses)->model()->rowCount(), static_cast<int>(figures.pauses.size()));
  EXPECT_EQ(show(TableKind::shocks)->model()->rowCount(), static_cast<int>(figures.shocks.size()));
}

TEST_F(FiguresTables, NumbersAreSortedAsNumbersBothWays) {
  open(sample("ferry-terminal.resuslog"));
  QTableView* table = show(TableKind::pauses);
  for (const Qt::SortOrder order : {Qt::AscendingOrder, Qt::DescendingOrder}) {
    table->sortByColumn(2, order);
    double before = order == Qt::AscendingOrder ? -1 : 1e9;
    for (const QString& text : column(table, 2)) {
      const double length = text.toDouble();
      EXPECT_TRUE(order == Qt::AscendingOrder ? length >= before : length <= before);
      before = length;
    }
  }
  // 9.9 is less than 28.4, which a sorting of words would not see.
  const QStringList lengths = column(table, 2);
  EXPECT_GT(lengths.front().toDouble(), 10);
  EXPECT_LT(lengths.back().toDouble(), 10);
}

TEST_F(FiguresTables, NotRecordedIsLastWhicheverWayIsSorted) {
  TableContent content;
  content.columns = {{"n", {}, true}};
  for (const auto& cell : {TableCell{"not recorded", {}, false}, TableCell{"3", 3.0, true},
                           TableCell{"20", 20.0, true}, TableCell{"not recorded", {}, false}}) {
    content.rows.push_back({{}, {}, {cell}});
  }
  TableModel model;
  model.show(content);
  TableSorting sorting;
  sorting.setSourceModel(&model);
  const auto order = [&](Qt::SortOrder way) {
    sorting.sort(0, way);
    QStringList all;
    for (int row = 0; row < sorting.rowCount(); ++row) {
      all << sorting.index(row, 0).data().toString();
    }
    return all.join(' ');
  };
  EXPECT_EQ(order(Qt::AscendingOrder), "3 20 not recorded not recorded");
  EXPECT_EQ(order(Qt::DescendingOrder), "20 3 not recorded not recorded");
}

TEST_F(FiguresTables, WhatWasNotRecordedIsSaidAndNoNumber) {
  open(fileWith("note.resuslog",
                "{\"resuslog\":\"1.0\",\"kind\":\"rescue\"}\n"
                "{\"t\":0,\"end\":90,\"type\":\"cpr\",\"source\":\"observer\"}\n"));
  const QTableView* table = show(TableKind::minutes);
  ASSERT_EQ(table->model()->rowCount(), 2);
  EXPECT_EQ(column(table, 4).front(), "not recorded"); // compressions
  EXPECT_EQ(column(table, 8).front(), "not recorded"); // breaths
  EXPECT_EQ(column(table, 9).front(), "not recorded"); // shocks
  EXPECT_EQ(column(table, 3).front(), "0.0");          // hands off
}

TEST_F(FiguresTables, ARowAndThePictureFollowEachOther) {
  open(sample("ferry-terminal.resuslog"));
  QTableView* table = show(TableKind::pauses);
  table->sortByColumn(2, Qt::DescendingOrder);
  const QModelIndex second = table->model()->index(1, 2);
  QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, table->visualRect(second).center());
  const Interval& shown = window_.selection().stretch();
  const double length = second.data().toDouble();
  const auto& pauses = window_.session().figures().pauses;
  EXPECT_TRUE(std::any_of(pauses.begin(), pauses.end(), [&](const Pause& pause) {
    return shown.holds(pause.stretch.begin) && shown.holds(pause.stretch.end) &&
           std::abs(seconds(pause.stretch.length()) - length) < 0.06;
  }));
  page_->stepping()->goToLongestPause();
  EXPECT_EQ(table->currentIndex().row(), 0);
}

TEST_F(FiguresTables, EnterOnAShockSelectsIt) {
  open(sample("ferry-terminal.resuslog"));
  QTableView* table = show(TableKind::shocks);
  table->setFocus();
  table->setCurrentIndex(table->model()->index(0, 0));
  QTest::keyClick(table, Qt::Key_Return);
  EXPECT_EQ(window_.selection().what(), "shock 1");
  EXPECT_TRUE(window_.selection().stretch().holds(window_.session().figures().shocks.front().t));
}

TEST_F(FiguresTables, CopiesWithUnitsInTheFirstLine) {
  open(sample("ferry-terminal.resuslog"));
  const QTableView* table = show(TableKind::shocks);
  const QStringList lines = tabbedText(*table).split('\n', Qt::SkipEmptyParts);
  EXPECT_EQ(lines.front(), "shock\tclock\tgiven\tenergy J\thands off before s\thands off after s\t"
                           "before and after s\tadvice to shock s");
  EXPECT_EQ(lines.size(), table->model()->rowCount() + 1);
  EXPECT_EQ(lines[1].count('\t'), lines.front().count('\t'));
}

TEST_F(FiguresTables, FollowTheSettings) {
  open(sample("ferry-terminal.resuslog"));
  const QTableView* table = show(TableKind::pauses);
  const int before = table->model()->rowCount();
  FigureSettings settings = window_.session().settings();
  settings.pauseThreshold = Duration{5'000'000};
  untilFiguresChange([&] { window_.session().setSettings(settings); });
  EXPECT_LT(table->model()->rowCount(), before);
}

TEST_F(FiguresTables, NoColumnIsHiddenAt900Pixels) {
  open(sample("ferry-terminal.resuslog"));
  window_.resize(1600, 900);
  for (const TableKind kind :
       {TableKind::minutes, TableKind::cycles, TableKind::pauses, TableKind::shocks}) {
    const QTableView* table = show(kind);
    EXPECT_LE(table->horizontalHeader()->length(), 900) << static_cast<int>(kind);
  }
}

TEST_F(FiguresTables, ATableWithoutRowsSaysWhy) {
  open(fileWith("note.resuslog", "{\"resuslog\":\"1.0\",\"kind\":\"rescue\"}\n"
                                 "{\"t\":0,\"type\":\"mark\",\"text\":\"here\"}\n"));
  show(TableKind::shocks);
  EXPECT_FALSE(page_->tables()->currentTable()->isVisible());
  EXPECT_EQ(show(TableKind::shocks)->model()->rowCount(), 0);
}

} // namespace
} // namespace afterbeat::window
