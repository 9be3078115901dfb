/// A shared archive in the window: a real server on loopback, one who keeps it and one who reads.
#include "app/archive/marked_steps.h"
#include "tests/archive/server.h"
#include "tests/window/season_fixture.h"

namespace afterbeat::window {

namespace {

using archive::testing::Server;

class SharedSeason : public ArchiveWindowTest {
protected:
  static constexpr const char *kKeeper = "season_keeper", *kReader = "season_reader";

  void SetUp() override {
    if (!archive::testing::serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
    Server::running().empty();
    fileWith("lantern.resuslog", smallDrill());
    QFile::copy(sample("ferry-terminal.resuslog"), folder_.filePath("ferry.resuslog"));
  }
  /// By Shift+G and the dialog that asks for the service.
  void openService(const QString& service) {
    answering([this] { pressShift(Qt::Key_G); },
              [&service](QWidget& dialog) {
                QTest::keyClicks(dialog.findChild<QLineEdit*>(), service);
                QTest::keyClick(&dialog, Qt::Key_Return);
              });
  }
  /// The two recordings, into the archive, by the role that may.
  void takeInAsKeeper() {
    desk_.takeIn({true, kKeeper}, {folder_.path()});
    compare_->go()->trigger();
    settled();
  }
  static std::vector<MarkedStep> inArchive() {
    return archive::sharedSteps(*archive::Archive::open({true, kReader})).value();
  }
  static bool until(const std::function<bool()>& so) { return QTest::qWaitFor(so, kPatience); }
};

TEST_F(SharedSeason, IsFilledAndSeenByItsService) {
  takeInAsKeeper();
  EXPECT_TRUE(said().contains("2 new")) << said().toStdString();
  EXPECT_EQ(compare_->table()->model()->rowCount(), 2);
  EXPECT_EQ(compare_->heading(), "Compare: service:season_keeper");
  // The small pictures come from the server as well.
  const SeasonTable* table = compare_->table();
  const QModelIndex rows = table->model()->index(0, table->lines()->sketchColumn());
  EXPECT_TRUE(until([&rows] {
    return rows.data(SeasonTableModel::kSketchRole).value<const void*>() != nullptr;
  }));
  // Another start finds it by its name alone.
  openService(kReader);
  ASSERT_TRUE(until([this] { return compare_->heading() == "Compare: service:season_reader"; }));
  settled();
  EXPECT_EQ(compare_->table()->model()->rowCount(), 2);
}

TEST_F(SharedSeason, SharesMarksWithWhoOnlyReads) {
  takeInAsKeeper();
  const auto day = std::chrono::sys_days(std::chrono::year(2026) / 3 / 1);
  compare_->overTime()->mark(day, "new bags");
  ASSERT_TRUE(until([] { return inArchive().size() == 1; }));
  openService(kReader);
  ASSERT_TRUE(until([this] { return compare_->heading().endsWith(kReader); }));
  settled();
  OverTimeView* view = compare_->overTime();
  ASSERT_EQ(view->steps().size(), 1U);
  EXPECT_EQ(view->steps()[0].words, "new bags");
  // It is not the reader's to take away.
  EXPECT_FALSE(view->actions()[1]->isEnabled());
  view->unmark(0);
  EXPECT_EQ(view->steps().size(), 1U);
  // The reader's own stays with the reader.
  view->mark(day + std::chrono::days(7), "own");
  EXPECT_TRUE(said().contains("for you alone, as you may not write to this archive"))
      << said().toStdString();
  EXPECT_EQ(view->steps().size(), 2U);
  EXPECT_TRUE(view->actions()[1]->isEnabled());
  MainWindow other;
  other.comparePage()->desk()->openArchive({true, kReader});
  settled(other);
  EXPECT_EQ(other.comparePage()->overTime()->steps().size(), 2U);
  EXPECT_EQ(inArchive().size(), 1U);
}

TEST_F(SharedSeason, TellsWhoOnlyReadsThatNothingWasTakenIn) {
  takeInAsKeeper();
  openService(kReader);
  ASSERT_TRUE(until([this] { return compare_->heading().endsWith(kReader); }));
  settled();
  QByteArray another = smallDrill();
  fileWith("another.resuslog", another.replace("c9c1d10", "c9c1d11"));
  desk_.takeIn({true, kReader}, {folder_.filePath("another.resuslog")});
  ASSERT_TRUE(until([this] { return !compare_->busy(); }));
  EXPECT_TRUE(said().startsWith("You may read the archive service:season_reader and not change it"))
      << said().toStdString();
  EXPECT_EQ(window_.notices()->kind(), NoticeBar::Kind::problem);
  // What was open still is.
  EXPECT_EQ(compare_->table()->model()->rowCount(), 2);
  EXPECT_EQ(archive::Archive::open({true, kKeeper})->recordCount(), 2U);
}

TEST_F(SharedSeason, ThatIsNotThereIsRefusedInWords) {
  compare_->go()->trigger();
  openService("no_such_service");
  ASSERT_TRUE(until([this] { return !compare_->busy(); }));
  EXPECT_TRUE(said().contains("There is no service “no_such_service”")) << said().toStdString();
  EXPECT_EQ(desk_.source(), nullptr);
}

} // namespace

} // namespace afterbeat::window
