/// Files and folders dropped onto the place for many records.
#include "app/window/compare/beside_view.h"
#include "tests/window/season_fixture.h"

#include <QDropEvent>
#include <QMenu>
#include <QMimeData>

namespace afterbeat::window {

namespace {

class SeasonDropped : public ArchiveWindowTest {
protected:
  void drop(const QStringList& paths) {
    QMimeData dropped;
    QList<QUrl> urls;
    for (const QString& path : paths) {
      urls << QUrl::fromLocalFile(path);
    }
    dropped.setUrls(urls);
    QDragEnterEvent enter({400, 300}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window_, &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent event({400, 300}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window_, &event);
  }
  /// The menu that a drop opened; null: it asked nothing.
  static QMenu* menu() { return qobject_cast<QMenu*>(QApplication::activePopupWidget()); }
  static QStringList choices() {
    QStringList texts;
    for (const QAction* action : menu()->actions()) {
      if (!action->isSeparator()) {
        texts << action->text().remove(QLatin1Char('&'));
      }
    }
    return texts;
  }
  [[nodiscard]] QString newRecording(const char* name) const {
    return fileWith(name, smallDrill());
  }
  [[nodiscard]] std::size_t recordsInArchive() const {
    return archive::Archive::open(place())->recordCount().value();
  }
};

TEST_F(SeasonDropped, GoesIntoTheArchiveThatIsOpenIfTheUserSaysSo) {
  writeSeason(3);
  takeIn();
  const QString path = newRecording("new.resuslog");
  drop({path});
  ASSERT_NE(menu(), nullptr);
  EXPECT_EQ(choices(), (QStringList{"Take into season.sqlite", "Open the recording", "Cancel"}));
  QTest::keyClick(menu(), Qt::Key_Escape);
  EXPECT_FALSE(compare_->busy());
  EXPECT_EQ(recordsInArchive(), 3U);
  drop({path});
  ASSERT_NE(menu(), nullptr);
  QTest::keyClick(menu(), Qt::Key_T);
  EXPECT_TRUE(compare_->busy());
  settled();
  EXPECT_EQ(recordsInArchive(), 4U);
  EXPECT_EQ(compare_->table()->model()->rowCount(), 4);
  EXPECT_TRUE(said().contains("1 new")) << said().toStdString();
}

TEST_F(SeasonDropped, AFolderIsTakenInOrLookedAt) {
  writeSeason(3);
  takeIn();
  const QTemporaryDir other;
  QFile file(other.filePath("drill.resuslog"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(smallDrill());
  file.close();
  drop({other.path()});
  ASSERT_NE(menu(), nullptr);
  EXPECT_EQ(choices(),
            (QStringList{"Take into season.sqlite", "Look at them, keeping nothing", "Cancel"}));
  QTest::keyClick(menu(), Qt::Key_L);
  settled();
  EXPECT_FALSE(desk_.place());
  EXPECT_EQ(compare_->table()->model()->rowCount(), 1);
  EXPECT_EQ(recordsInArchive(), 3U);
}

TEST_F(SeasonDropped, WithoutAnArchiveAFolderIsLookedAtAtOnce) {
  writeSeason(4);
  compare_->go()->trigger();
  drop({folder_.path()});
  EXPECT_EQ(menu(), nullptr);
  settled();
  EXPECT_EQ(compare_->table()->model()->rowCount(), 4);
}

TEST_F(SeasonDropped, TwoFilesAreLookedAtOrLaidSideBySide) {
  compare_->go()->trigger();
  const QStringList two{newRecording("a.resuslog"), sample("ferry-terminal.resuslog")};
  drop(two);
  ASSERT_NE(menu(), nullptr);
  EXPECT_EQ(choices(),
            (QStringList{"Look at them, keeping nothing", "Lay them side by side", "Cancel"}));
  QSignalSpy shown(compare_, &ComparePage::shown);
  QTest::keyClick(menu(), Qt::Key_S);
  ASSERT_TRUE(shown.wait(kPatience));
  EXPECT_EQ(compare_->current(), compare_->beside());
  EXPECT_EQ(compare_->beside()->beside().records.size(), 2U);
}

TEST_F(SeasonDropped, OneRecordingIsOpenedAndAnArchiveToo) {
  writeSeason(2);
  takeIn();
  const QString path = newRecording("new.resuslog");
  desk_.openFiles({folder_.path()});
  settled();
  ASSERT_FALSE(desk_.place());
  drop({QString::fromStdString(place().name)});
  EXPECT_EQ(menu(), nullptr);
  ASSERT_TRUE(QTest::qWaitFor([this] { return desk_.place().has_value(); }, kPatience));
  settled();
  desk_.openFiles({folder_.path()});
  settled();
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  drop({path});
  EXPECT_EQ(menu(), nullptr);
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.session().path(), path);
  EXPECT_EQ(window_.currentPage(), page_);
}

TEST_F(SeasonDropped, ElsewhereARecordingIsOpenedEvenWithAnArchive) {
  writeSeason(2);
  takeIn();
  open(sample("ferry-terminal.resuslog"));
  ASSERT_EQ(window_.currentPage(), page_);
  const QString path = newRecording("new.resuslog");
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  drop({path});
  EXPECT_EQ(menu(), nullptr);
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.session().path(), path);
  EXPECT_EQ(recordsInArchive(), 2U);
}

} // namespace

} // namespace afterbeat::window
