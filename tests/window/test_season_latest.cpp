/// A large archive: its latest records are in view at once, and nothing is made of them alone.
#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/compare_page.h"
#include "app/window/compare/filter_bar.h"
#include "app/window/compare/season_table.h"
#include "app/window/compare/season_views.h"
#include "app/window/compare/season_ways.h"
#include "samples/season/write_season.h"
#include "tests/archive/made_archive.h"
#include "tests/window/window_fixture.h"

#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QLineEdit>
#include <QPaintEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QSemaphore>
#include <QTest>

namespace afterbeat::window {

namespace {

constexpr std::size_t kRecords = 1000;

/// What of a widget was asked to be painted.
class PaintedPart : public QObject {
public:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) {
      part |= static_cast<QPaintEvent*>(event)->rect();
    }
    return false;
  }
  QRect part;
};

class LatestTest : public WindowTest {
protected:
  LatestTest() : compare_(window_.comparePage()), desk_(*compare_->desk()) {
    // All records are not there before the test lets them.
    ArchiveReading held;
    held.all = [gate = gate_](const archive::ArchivePlace& place, const FigureSettings& settings) {
      gate->acquire();
      return readArchive(place, settings);
    };
    held.latest = [asked = asked_](const archive::ArchivePlace& place,
                                   const FigureSettings& settings) {
      ++*asked;
      return readLatest(place, settings);
    };
    desk_.setReading(held);
  }
  ~LatestTest() override { gate_->release(100); }

  static archive::ArchivePlace made(const QString& path, std::size_t records) {
    samples::SeasonPlan plan;
    plan.records = records;
    const archive::ArchivePlace place{false, path.toStdString()};
    archive::testing::makeArchive(place, plan);
    return place;
  }
  /// The same file for all tests: it is only read.
  static archive::ArchivePlace large() {
    static const QTemporaryDir folder;
    static const archive::ArchivePlace place = made(folder.filePath("large.sqlite"), kRecords);
    return place;
  }
  void openLatest() {
    compare_->ways()->openTyped(QString::fromStdString(large().name));
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk_.onlyLatest(); }, kPatience));
  }
  void letAllCome() {
    gate_->release();
    ASSERT_TRUE(QTest::qWaitFor(
        [this] { return !desk_.busy() && !desk_.arranging() && !desk_.onlyLatest(); }, kPatience));
  }
  [[nodiscard]] int rows() const { return compare_->table()->model()->rowCount(); }
  /// What names the record of a line in the archive.
  [[nodiscard]] std::int64_t number(int row) const {
    const SeasonTableModel* lines = compare_->table()->lines();
    return lines->shown().source->season().records[lines->place(row)].number;
  }
  [[nodiscard]] std::vector<std::int64_t> numbers() const {
    std::vector<std::int64_t> all;
    for (int row = 0; row < rows(); ++row) {
      all.push_back(number(row));
    }
    return all;
  }
  /// Whether what a chart is made and a report written with can be reached.
  [[nodiscard]] std::vector<bool> reached() const {
    std::vector<bool> all;
    for (const QAction* action : compare_->actionGroups()[2] + compare_->actionGroups().back()) {
      all.push_back(action->isEnabled());
    }
    return all;
  }

  ComparePage* compare_;
  SeasonDesk& desk_;
  std::shared_ptr<QSemaphore> gate_ = std::make_shared<QSemaphore>();
  std::shared_ptr<std::atomic<int>> asked_ = std::make_shared<std::atomic<int>>(0);
};

TEST_F(LatestTest, TheyAreInViewAndNothingIsMadeOfThem) {
  openLatest();
  EXPECT_EQ(window_.currentPage(), compare_);
  EXPECT_EQ(compare_->current(), compare_->table());
  const int latest = rows();
  EXPECT_GT(latest, 150);
  EXPECT_LE(latest, 200);
  EXPECT_EQ(compare_->filter()->sentence(),
            QString("The latest %1 of 1000 records; all of them are being read…").arg(latest));
  EXPECT_EQ(compare_->heading(), "Compare: large.sqlite");
  EXPECT_TRUE(compare_->busy());
  // Of these few there is no chart, nothing worth a look, and no report.
  EXPECT_EQ(desk_.source(), nullptr);
  EXPECT_TRUE(desk_.arranged().chosen.empty());
  // The records; side by side, spread, over time, stages, worth a look; chart twice, report.
  EXPECT_EQ(reached(),
            (std::vector<bool>{true, true, false, false, false, false, false, false, false}));
  EXPECT_FALSE(compare_->filter()->site()->isEnabled());
  EXPECT_EQ(compare_->filter()->site()->count(), 1);
  letAllCome();
  EXPECT_EQ(rows(), static_cast<int>(kRecords));
  EXPECT_TRUE(compare_->filter()->sentence().startsWith("Records: 1000, all of them."));
  EXPECT_EQ(reached(), (std::vector<bool>{true, true, true, true, true, true, false, false, true}));
  EXPECT_TRUE(compare_->filter()->site()->isEnabled());
  EXPECT_GT(compare_->filter()->site()->count(), 2);
}

TEST_F(LatestTest, AllRecordsComeWithoutMovingWhatIsLookedAt) {
  openLatest();
  SeasonTable* table = compare_->table();
  const auto before = numbers();
  const QString cells = table->model()->index(70, 6).data().toString();
  table->selectRow(63);
  table->selectionModel()->setCurrentIndex(table->model()->index(66, 2),
                                           QItemSelectionModel::Select | QItemSelectionModel::Rows);
  table->verticalScrollBar()->setValue(60);
  table->setColumnWidth(2, 91);
  compare_->filter()->words()->setFocus();
  const std::vector<std::int64_t> marked{number(63), number(66)};
  letAllCome();
  auto after = numbers();
  ASSERT_EQ(after.size(), kRecords);
  after.resize(before.size());
  EXPECT_EQ(after, before);
  EXPECT_EQ(table->model()->index(70, 6).data().toString(), cells);
  std::vector<std::int64_t> stillMarked;
  for (const std::uint32_t place : table->marked()) {
    stillMarked.push_back(desk_.source()->season().records[place].number);
  }
  EXPECT_EQ(stillMarked, marked);
  EXPECT_EQ(table->currentIndex(), table->model()->index(66, 2));
  EXPECT_EQ(table->verticalScrollBar()->value(), 60);
  EXPECT_EQ(table->columnWidth(2), 91);
  EXPECT_TRUE(compare_->filter()->words()->hasFocus());
}

TEST_F(LatestTest, OrderAndFilterThatAreAskedForMeanwhileHoldForAll) {
  openLatest();
  const auto before = numbers();
  const QHeaderView* header = compare_->table()->horizontalHeader();
  const int byDay = header->sortIndicatorSection();
  EXPECT_EQ(compare_->table()->lines()->sorts(byDay), (std::variant<Fact, MeasureId>(Fact::day)));
  QTest::keyClicks(compare_->filter()->words(), "boathouse");
  ASSERT_TRUE(QTest::qWaitFor([this] { return desk_.filter().words == "boathouse"; }, kPatience));
  // A click on the heading "Longest pause".
  const int column = [this] {
    int at = 0;
    while (compare_->table()->lines()->sorts(at) !=
           std::variant<Fact, MeasureId>(MeasureId::longestPause)) {
      ++at;
    }
    return at;
  }();
  QTest::mouseClick(header->viewport(), Qt::LeftButton, {},
                    QPoint(header->sectionViewportPosition(column) + 20, header->height() / 2));
  EXPECT_EQ(desk_.order(), (Order{MeasureId::longestPause, true}));
  // What is in view is as it was, and says so.
  EXPECT_EQ(numbers(), before);
  EXPECT_EQ(header->sortIndicatorSection(), byDay);
  EXPECT_TRUE(compare_->filter()->sentence().endsWith(
      "The order and filter you chose take effect once all records are there."));
  letAllCome();
  EXPECT_EQ(compare_->filter()->words()->text(), "boathouse");
  EXPECT_EQ(header->sortIndicatorSection(), column);
  const Season& season = desk_.source()->season();
  const FigureColumn& pauses = season.column(MeasureId::longestPause);
  const Chosen& chosen = desk_.arranged().chosen;
  ASSERT_GT(chosen.size(), 100U);
  ASSERT_LT(chosen.size(), kRecords);
  for (std::size_t i = 0; i < chosen.size(); ++i) {
    EXPECT_TRUE(QString::fromStdString(season.records[chosen[i]].site).contains("boathouse"));
    if (i > 0 && pauses[chosen[i]].ok()) {
      EXPECT_GE(pauses[chosen[i - 1]].value, pauses[chosen[i]].value);
    }
  }
  EXPECT_EQ(compare_->table()->currentIndex().row(), 0);
}

TEST_F(LatestTest, ALineOpensTheFileOfItsOwnRecord) {
  openLatest();
  const QString file = *desk_.shown().source->file(compare_->table()->lines()->place(2));
  const auto kept = archive::Archive::open(large())->file(number(2));
  EXPECT_EQ(file.toStdString(), kept->path.string());
  QSignalSpy failed(compare_, &ComparePage::failed);
  compare_->table()->setCurrentIndex(compare_->table()->model()->index(2, 0));
  QTest::keyClick(compare_->table(), Qt::Key_Return);
  ASSERT_TRUE(failed.count() > 0 || failed.wait(kPatience));
  EXPECT_TRUE(failed[0][0].toString().contains(file));
}

TEST_F(LatestTest, WithoutTheOthersTheyDoNotStay) {
  ArchiveReading cut;
  cut.all = [gate = gate_](const archive::ArchivePlace&,
                           const FigureSettings&) -> tl::expected<SharedSource, QString> {
    gate->acquire();
    return tl::unexpected(QString("The disk is gone."));
  };
  desk_.setReading(cut);
  openLatest();
  letAllCome();
  EXPECT_EQ(desk_.source(), nullptr);
  EXPECT_EQ(rows(), 0);
  EXPECT_NE(compare_->current(), compare_->table());
  EXPECT_FALSE(compare_->filter()->isVisible());
  EXPECT_EQ(window_.notices()->text(), "The disk is gone.");
}

TEST_F(LatestTest, AnotherSeasonThatIsOpenedMeanwhileTakesTheirPlace) {
  const auto file = samples::seasonFile({}, 0);
  fileWith(file.name.c_str(), QByteArray::fromStdString(file.bytes));
  openLatest();
  desk_.openFiles({folder_.path()});
  EXPECT_FALSE(desk_.onlyLatest());
  EXPECT_EQ(rows(), 0);
  letAllCome();
  ASSERT_TRUE(QTest::qWaitFor([this] { return rows() == 1; }, kPatience));
  EXPECT_EQ(desk_.place(), std::nullopt);
}

TEST_F(LatestTest, ASeasonThatIsOpenIsReadAnewInTheViewItIsIn) {
  openLatest();
  letAllCome();
  EXPECT_EQ(*asked_, 1);
  compare_->showView(compare_->spread());
  FigureSettings settings = window_.session().settings();
  settings.pauseThreshold = Duration{3'000'000};
  window_.session().setSettings(settings);
  EXPECT_TRUE(desk_.busy());
  EXPECT_NE(desk_.source(), nullptr);
  letAllCome();
  EXPECT_EQ(*asked_, 1);
  EXPECT_EQ(compare_->current(), compare_->spread());
}

TEST_F(LatestTest, FewRecordsAreThereAtOnce) {
  EXPECT_FALSE(readLatest(made(folder_.filePath("few.sqlite"), 150), {}));
  EXPECT_FALSE(readLatest({false, folder_.filePath("none.sqlite").toStdString()}, {}));
  const auto latest = readLatest(large(), {});
  ASSERT_TRUE(latest);
  EXPECT_EQ(latest->all, kRecords);
}

TEST_F(LatestTest, TooManyMarkedLinesAreNotLookedForOneByOne) {
  openLatest();
  letAllCome();
  QSignalSpy said(compare_, &ComparePage::failed);
  compare_->table()->selectAll();
  compare_->putBeside()->trigger();
  ASSERT_EQ(said.count(), 1);
  EXPECT_EQ(said[0][0].toString(),
            "Eight records at most stand side by side, and 1000 are marked.");
  EXPECT_FALSE(compare_->busy());
  EXPECT_EQ(compare_->current(), compare_->table());
}

TEST_F(LatestTest, ManyLanesScrollInsteadOfHidingEachOther) {
  window_.resize(1024, 640);
  openLatest();
  letAllCome();
  SpreadView* spread = compare_->spread();
  compare_->showView(spread);
  ChartCanvas* canvas = spread->canvas();
  QComboBox* by = spread->by();
  const auto choose = [&](GroupBy group) {
    by->setCurrentIndex(by->findData(static_cast<int>(group)));
    emit by->activated(by->currentIndex());
    ASSERT_TRUE(QTest::qWaitFor([&] { return spread->upToDate(); }, kPatience));
    QCoreApplication::processEvents();
  };
  choose(GroupBy::nothing);
  const int around = canvas->parentWidget()->height();
  EXPECT_EQ(canvas->height(), around);
  choose(GroupBy::quarter);
  const auto lanes = canvas->chart()->y.names.size();
  ASSERT_GE(lanes, 8);
  EXPECT_GT(canvas->height(), around);
  EXPECT_GT(canvas->height(), lanes * 3 * canvas->fontMetrics().height());
  // The lanes fill it: nothing of the chart was laid out for less.
  EXPECT_GT(canvas->placeOf(canvas->chart()->points.size() - 1)->y(), canvas->height() * 0.7);
  // The axis lies at the lower edge of what is in view, wherever that is, as it lies in its place.
  auto* scroll = qobject_cast<QScrollArea*>(canvas->parentWidget()->parentWidget());
  ASSERT_NE(scroll, nullptr);
  const auto lowest = [&](int lines) {
    QWidget* port = scroll->viewport();
    return port->grab({0, port->height() - lines, port->width(), lines}).toImage();
  };
  QScrollBar* bar = scroll->verticalScrollBar();
  const int lines = 3 * canvas->fontMetrics().height() / 2;
  const QImage before = lowest(lines);
  bar->setValue(bar->maximum() / 3);
  EXPECT_EQ(lowest(lines), before);
  // Nothing under it is pointed at.
  const auto pointsAt = [&](int from, int to) {
    int pointed = 0;
    for (int y = from; y < to; y += 4) {
      for (int x = 0; x < canvas->width(); x += 4) {
        QTest::mouseMove(canvas, canvas->mapFrom(scroll->viewport(), QPoint(x, y)));
        pointed += canvas->cursor().shape() == Qt::ArrowCursor ? 0 : 1;
      }
    }
    return pointed;
  };
  EXPECT_EQ(pointsAt(around - lines, around), 0);
  EXPECT_GT(pointsAt(around - 3 * lines, around - 2 * lines), 0);
  // What a little scrolling leaves on the screen is painted anew as well.
  QCoreApplication::processEvents();
  PaintedPart seen;
  canvas->installEventFilter(&seen);
  bar->setValue(bar->value() + 5);
  QCoreApplication::processEvents();
  EXPECT_GE(seen.part.height(), around);
  canvas->removeEventFilter(&seen);
  // In its own place there is more below it, and a line at the edge of the first view is a lane's.
  bar->setValue(bar->maximum());
  EXPECT_NE(lowest(lines), before);
  bar->setValue(0);
  EXPECT_EQ(lowest(lines), before);
  // A point that the keyboard comes to is brought into view.
  QTest::keyClick(canvas, Qt::Key_End);
  ASSERT_TRUE(canvas->current());
  const QPoint at = canvas->placeOf(*canvas->current())->toPoint();
  EXPECT_TRUE(canvas->parentWidget()->rect().contains(canvas->mapTo(canvas->parentWidget(), at)));
  EXPECT_GT(at.y(), around);
  // With room for all of them nothing scrolls.
  window_.resize(1024, 1000);
  QCoreApplication::processEvents();
  EXPECT_EQ(canvas->height(), canvas->parentWidget()->height());
  EXPECT_GT(canvas->height(), around);
}

TEST_F(LatestTest, AnArchiveIsOpenedLikeAnyFile) {
  QSignalSpy painted(compare_, &ComparePage::tablePainted);
  window_.openFile(QString::fromStdString(large().name));
  EXPECT_EQ(window_.currentPage(), compare_);
  ASSERT_TRUE(painted.count() > 0 || painted.wait(kPatience));
  EXPECT_EQ(painted[0][0], false);
  letAllCome();
  ASSERT_TRUE(painted.count() > 1 || painted.wait(kPatience));
  EXPECT_EQ(painted[1][0], true);
  EXPECT_EQ(rows(), static_cast<int>(kRecords));
  // What begins like a database and is none, and what is too short to be one.
  gate_->release();
  window_.openFile(fileWith("other.sqlite", QByteArray("SQLite format 3\0 and no more", 29)));
  ASSERT_TRUE(QTest::qWaitFor([this] { return !compare_->busy(); }, kPatience));
  EXPECT_TRUE(window_.notices()->text().contains("other.sqlite"));
  open(fileWith("short.resuslog", "SQLite"));
  EXPECT_EQ(window_.currentPage(), window_.refusalPage());
}

} // namespace

} // namespace afterbeat::window
