/// Marks of where something was new: shared by an archive, or the user's own.
#include "app/archive/database.h"
#include "app/archive/marked_steps.h"
#include "app/window/compare/chart_canvas.h"
#include "app/window/compare/mark_dialog.h"
#include "tests/window/season_fixture.h"

#include <QDateEdit>
#include <QLabel>

namespace afterbeat::window {

namespace {

class SeasonMarks : public ArchiveWindowTest {
protected:
  [[nodiscard]] std::vector<MarkedStep> inArchive() const {
    return archive::sharedSteps(*archive::Archive::open(place())).value();
  }
  [[nodiscard]] OverTimeView* view() const { return compare_->overTime(); }
  /// By Shift+T and the dialog it opens.
  void markByKeys(const QString& words) {
    compare_->showView(view());
    answering([this] { pressShift(Qt::Key_T); },
              [&words](QWidget& dialog) {
                auto* line = dialog.findChildren<QLineEdit*>().back();
                line->selectAll();
                QTest::keyClicks(line, words);
                QTest::keyClick(line, Qt::Key_Return);
              });
  }
  bool until(const std::function<bool()>& so) { return QTest::qWaitFor(so, kPatience); }
};

TEST_F(SeasonMarks, AreSharedByAnArchive) {
  writeSeason(6);
  takeIn();
  markByKeys("new bags");
  EXPECT_TRUE(said().contains("Marked in the archive")) << said().toStdString();
  ASSERT_TRUE(until([this] { return inArchive().size() == 1; }));
  EXPECT_EQ(inArchive()[0].words, "new bags");
  // Somebody else, who remembers nothing of it, sees it and adds to it.
  const MarkedStep others{std::chrono::sys_days(std::chrono::year(2024) / 2 / 3), "new boat"};
  ASSERT_TRUE(archive::shareStep(*archive::Archive::open(place()), others));
  ASSERT_EQ(view()->steps().size(), 1U);
  MainWindow second;
  second.comparePage()->desk()->openArchive(place());
  settled(second);
  ASSERT_EQ(second.comparePage()->overTime()->steps().size(), 2U);
  EXPECT_EQ(second.comparePage()->overTime()->steps()[0], others);
  // Taking the own one back leaves the other's, which is seen now.
  compare_->showView(view());
  pressShift(Qt::Key_Z);
  ASSERT_TRUE(until([this] { return inArchive().size() == 1; }));
  EXPECT_EQ(inArchive()[0], others);
  ASSERT_TRUE(until([&] { return view()->steps() == std::vector<MarkedStep>{others}; }));
  pressShift(Qt::Key_Y);
  ASSERT_TRUE(until([this] { return inArchive().size() == 2; }));
}

TEST_F(SeasonMarks, OfOthersAreSeenWhenTheViewIsLookedAtAgain) {
  writeSeason(6);
  takeIn();
  compare_->showView(view());
  settled();
  const MarkedStep others{std::chrono::sys_days(std::chrono::year(2024) / 2 / 3), "new boat"};
  ASSERT_TRUE(archive::shareStep(*archive::Archive::open(place()), others));
  EXPECT_TRUE(view()->steps().empty());
  compare_->showView(compare_->table());
  compare_->showView(view());
  ASSERT_TRUE(until([&] { return view()->steps() == std::vector<MarkedStep>{others}; }));
  ASSERT_TRUE(archive::unshareStep(*archive::Archive::open(place()), others));
  emit qGuiApp->applicationStateChanged(Qt::ApplicationActive);
  ASSERT_TRUE(until([&] { return view()->steps().empty(); }));
}

TEST_F(SeasonMarks, ThatAnArchiveRefusesAreKeptForTheUserAlone) {
  writeSeason(3);
  takeIn();
  {
    archive::Database database(place(), archive::Access::write);
    for (const char* when : {"INSERT", "UPDATE"}) {
      database.run(QStringLiteral("CREATE TRIGGER no_%1 BEFORE %1 ON note BEGIN "
                                  "SELECT RAISE(ABORT, 'the disk is full'); END")
                       .arg(QLatin1String(when)));
    }
  }
  markByKeys("new bags");
  ASSERT_TRUE(until([this] { return said().contains("kept for you alone"); }));
  EXPECT_TRUE(said().contains("the disk is full")) << said().toStdString();
  ASSERT_EQ(view()->steps().size(), 1U);
  EXPECT_TRUE(inArchive().empty());
  // The next start still has it.
  MainWindow second;
  second.comparePage()->desk()->openArchive(place());
  settled(second);
  ASSERT_EQ(second.comparePage()->overTime()->steps().size(), 1U);
  EXPECT_EQ(second.comparePage()->overTime()->steps()[0].words, "new bags");
  // It can be taken away again, which needs nothing of the archive.
  view()->unmark(0);
  EXPECT_TRUE(view()->steps().empty());
}

TEST_F(SeasonMarks, OfFilesStayInTheSettings) {
  writeSeason(3);
  desk_.openFiles({folder_.path()});
  compare_->go()->trigger();
  settled();
  markByKeys("new bags");
  EXPECT_EQ(said(), "Marked. Shift+Z takes it back.");
  EXPECT_EQ(view()->steps().size(), 1U);
  view()->mark(view()->steps()[0].day, "new  bags");
  EXPECT_EQ(said(), "This mark is there already.");
  EXPECT_EQ(view()->steps().size(), 1U);
}

/// Before anything is kept: how many records lie on each side, as the day is chosen, and who will
/// see the mark.
TEST_F(SeasonMarks, AreCountedAndPlacedBeforeTheyAreKept) {
  writeSeason(12);
  takeIn();
  compare_->showView(view());
  ASSERT_TRUE(until([this] { return view()->upToDate() && view()->canvas()->chart(); }));
  // Days of the kind in view, counted by the archive's own records.
  const auto& season = desk_.arranged().source->season();
  const auto kinds = kindsOf(season, desk_.arranged().chosen);
  std::vector<std::chrono::sys_days> days;
  for (const auto place : ofKind(season, desk_.arranged().chosen, kinds.front().kind)) {
    if (season.records[place].day) {
      days.push_back(*season.records[place].day);
    }
  }
  std::sort(days.begin(), days.end());
  ASSERT_GE(days.size(), 4U);
  const auto dateOf = [](std::chrono::sys_days day) {
    return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
  };
  const auto asked = [&](const std::function<void(MarkDialog&)>& look) {
    answering([this] { pressShift(Qt::Key_T); },
              [&look](QWidget& dialog) {
                look(dynamic_cast<MarkDialog&>(dialog));
                QTest::keyClick(&dialog, Qt::Key_Escape);
              });
  };
  asked([&](MarkDialog& dialog) {
    EXPECT_EQ(dialog.day(), dateOf(days.back())) << "the last record's";
    EXPECT_TRUE(dialog.counts().startsWith(
        QStringLiteral("%1 records before, 1 from this day on.").arg(days.size() - 1)))
        << dialog.counts().toStdString();
    dialog.dayField()->setDate(dateOf(days[1]));
    EXPECT_TRUE(dialog.counts().startsWith(
        QStringLiteral("1 record before, %1 from this day on.").arg(days.size() - 1)))
        << dialog.counts().toStdString();
    dialog.dayField()->setDate(dateOf(days[1]).addDays(1));
    EXPECT_TRUE(dialog.counts().startsWith(
        QStringLiteral("2 records before, %1 from this day on.").arg(days.size() - 2)))
        << dialog.counts().toStdString();
    EXPECT_EQ(dialog.kept(), "The mark will be kept in this archive, for all who use it.");
    const auto labels = dialog.findChildren<QLabel*>();
    for (const QString& shown : {dialog.counts(), dialog.kept()}) {
      EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
        return label->isVisible() && label->text() == shown;
      })) << shown.toStdString();
    }
  });
  // Where the keyboard is at a point, that point's day; its ring is drawn, behind the dialog too.
  ChartCanvas* canvas = view()->canvas();
  const auto ringed = [canvas](std::size_t index) {
    const QImage image = canvas->grab().toImage();
    const QColor ring = ChartCanvas::lookFor(canvas->palette(), canvas->font()).highlight;
    const QPoint at = canvas->placeOf(index)->toPoint();
    int found = 0;
    for (int x = at.x() - 16; x <= at.x() + 16; ++x) {
      for (int y = at.y() - 16; y <= at.y() + 16; ++y) {
        found += image.valid(x, y) && image.pixelColor(x, y) == ring ? 1 : 0;
      }
    }
    return found > 20;
  };
  EXPECT_FALSE(ringed(0));
  QTest::keyClick(canvas, Qt::Key_Home);
  ASSERT_EQ(canvas->current(), 0U);
  EXPECT_TRUE(ringed(0));
  EXPECT_FALSE(ringed(canvas->chart()->points.size() - 1));
  asked([&](MarkDialog& dialog) {
    EXPECT_TRUE(ringed(0));
    const std::uint32_t place = view()->canvas()->chart()->records.front();
    EXPECT_EQ(dialog.day(), dateOf(*season.records[place].day)) << "the point's";
    EXPECT_NE(dialog.day(), dateOf(days.back()));
  });
  EXPECT_TRUE(view()->steps().empty()) << "Escape keeps nothing";
  // Without an archive there is nobody to share it with.
  desk_.openFiles({folder_.path()});
  settled();
  asked([&](MarkDialog& dialog) {
    EXPECT_EQ(dialog.kept(), "The mark will be kept for you alone.");
  });
}

TEST_F(SeasonMarks, AreInTheReportThatIsWrittenOfTheArchive) {
  writeSeason(6);
  takeIn();
  const auto before = std::chrono::sys_days(std::chrono::year(2025) / 1 / 1);
  ASSERT_TRUE(archive::shareStep(*archive::Archive::open(place()), {before, "new boat"}));
  // Looked at anew: what others marked since is there.
  desk_.openArchive(place());
  settled();
  ASSERT_TRUE(until([this] { return view()->steps().size() == 1; }));
  EXPECT_TRUE(writeReport("report.html").contains("new boat"));
}

} // namespace

} // namespace afterbeat::window
