/// Several recordings: on the command line, dropped, in a folder, and from one to the next.
#include "tests/window/window_fixture.h"

#include "app/window/look/remembered.h"
#include "app/window/session/shelf.h"
#include "app/window/shell/file_actions.h"
#include "app/window/shell/folder_page.h"
#include "app/window/shell/toast.h"

#include <QAction>
#include <QDir>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

namespace afterbeat::window {
namespace {

class Shelf : public WindowTest {
protected:
  QString drill(const char* name, const char* date, const char* site) const {
    return fileWith(name, QString(smallDrill())
                              .replace("2026-04-17", QLatin1String(date))
                              .replace("South boathouse", QLatin1String(site))
                              .toUtf8());
  }
  void listed(const std::function<void()>& does) {
    QSignalSpy spy(window_.folderPage(), &FolderPage::listed);
    does();
    ASSERT_TRUE(spy.count() > 0 || spy.wait(kPatience));
  }
  void opened(const std::function<void()>& does) {
    QSignalSpy complete(&window_, &MainWindow::pictureComplete);
    does();
    ASSERT_TRUE(complete.wait(kPatience));
  }
  [[nodiscard]] QString header() const { return window_.places()->header()->asText(); }
};

TEST_F(Shelf, SeveralFilesAreListedAndNoneIsDropped) {
  const QString a = drill("a.resuslog", "2026-04-17", "South");
  const QString b = drill("b.resuslog", "2026-05-02", "North");
  listed([&] { window_.openFiles({a, b}); });
  EXPECT_EQ(window_.currentPage(), window_.folderPage());
  EXPECT_EQ(window_.folderPage()->paths(), (QStringList{b, a}));
  opened([this] { window_.folderPage()->openButton()->click(); });
  EXPECT_TRUE(header().contains("North"));
  EXPECT_EQ(remembered::recentFiles().value(0), b);
  // On to the next one of the list, and no further.
  opened([this] { window_.files()->files()[0]->trigger(); });
  EXPECT_TRUE(header().contains("South"));
  window_.files()->files()[0]->trigger();
  EXPECT_TRUE(window_.toast()->isVisible());
  EXPECT_TRUE(window_.toast()->text().contains("last recording"));
  EXPECT_TRUE(header().contains("South"));
  QTest::keyClick(&window_, Qt::Key_F7);
  EXPECT_FALSE(window_.toast()->isVisible());
}

TEST_F(Shelf, TheNextFileOfTheFolderNeedsNoList) {
  const QString second = drill("drill-2.resuslog", "2026-04-17", "Second");
  const QString tenth = drill("drill-10.resuslog", "2026-04-18", "Tenth");
  fileWith("letter.pdf", "x");
  EXPECT_EQ(recordingsBeside(tenth), (QStringList{second, tenth}));
  open(second);
  opened([this] { window_.files()->files()[0]->trigger(); });
  EXPECT_TRUE(header().contains("Tenth"));
  opened([this] { window_.files()->files()[1]->trigger(); });
  EXPECT_TRUE(header().contains("Second"));
}

TEST_F(Shelf, ReadableRecordingsStandFirstAndOneIsChosen) {
  fileWith("empty.resuslog", "");
  fileWith("broken.resuslog", "no header\n");
  const QString good = drill("good.resuslog", "2026-04-17", "South");
  const QString old = drill("old.resuslog", "2025-04-17", "South");
  listed([this] { window_.openFile(folder_.path()); });
  EXPECT_EQ(window_.folderPage()->paths().mid(0, 2), (QStringList{good, old}));
  EXPECT_EQ(window_.folderPage()->list()->currentRow(), 0);
  EXPECT_TRUE(window_.folderPage()->asText().contains("begins like no recording"));
}

TEST_F(Shelf, BackFromTheSheetToTheList) {
  drill("a.resuslog", "2026-04-17", "South");
  drill("b.resuslog", "2026-05-02", "North");
  listed([this] { window_.openFile(folder_.path()); });
  window_.withoutRecording()->trigger();
  EXPECT_NE(window_.currentPage(), window_.folderPage());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
  EXPECT_EQ(window_.currentPage(), window_.folderPage());
  EXPECT_EQ(window_.folderPage()->list()->count(), 2);
}

TEST_F(Shelf, AFileThatIsNoRecordingPromisesNothing) {
  QByteArray bytes("\x01\x02\x00\x7f garbage", 12);
  open(fileWith("unknown.bin", bytes.repeated(500)));
  EXPECT_EQ(window_.currentPage(), window_.refusalPage());
  const QString text = window_.refusalPage()->asText();
  EXPECT_TRUE(text.contains("not a recording")) << text.toStdString();
  EXPECT_FALSE(text.contains("can probably"));
  bool sheet = false;
  for (const QPushButton* button : window_.refusalPage()->findChildren<QPushButton*>()) {
    if (button->isVisible()) {
      EXPECT_FALSE(button->accessibleName().contains("drill"));
      sheet = sheet || button->accessibleName().contains("without a recording");
    }
  }
  EXPECT_TRUE(sheet);
}

} // namespace
} // namespace afterbeat::window
