/// A card's folder: what is in it is listed, the newest first, and one key opens it.
#include "app/window/shell/folder_page.h"
#include "tests/window/window_fixture.h"

#include <QDir>
#include <QListWidget>
#include <QTest>

namespace afterbeat::window {

namespace {

class Folder : public WindowTest {
protected:
  void lookInto() {
    QSignalSpy listed(window_.folderPage(), &FolderPage::listed);
    window_.openFile(folder_.path());
    ASSERT_TRUE(listed.count() > 0 || listed.wait(kPatience));
  }
  [[nodiscard]] QString later() const {
    return QString(smallDrill())
        .replace("2026-04-17", "2026-05-02")
        .replace("South boathouse", "North boathouse");
  }
};

TEST_F(Folder, RecordingsAreListedNewestFirstAndEnterOpensOne) {
  ASSERT_TRUE(QDir(folder_.path()).mkpath("CARD/0001"));
  fileWith("CARD/0001/a.resuslog", smallDrill());
  fileWith("CARD/b.resuslog", later().toUtf8());
  fileWith("notes.pdf", "not a recording");
  lookInto();
  ASSERT_EQ(window_.currentPage(), window_.folderPage());
  QListWidget* list = window_.folderPage()->list();
  ASSERT_EQ(list->count(), 2);
  EXPECT_TRUE(list->item(0)->text().contains("2026-05-02"));
  EXPECT_TRUE(list->item(0)->text().contains("North boathouse"));
  EXPECT_TRUE(list->item(1)->text().contains("drill"));
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  QTest::keyClick(list, Qt::Key_Down);
  QTest::keyClick(list, Qt::Key_Return);
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_TRUE(window_.places()->header()->asText().contains("South boathouse"));
}

TEST_F(Folder, TheOnlyRecordingIsOpenedAtOnce) {
  fileWith("only.resuslog", smallDrill());
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  window_.openFile(folder_.path());
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.currentPage(), page_);
}

TEST_F(Folder, AFolderWithoutRecordingsSaysWhatToDo) {
  fileWith("letter.odt", "x");
  lookInto();
  EXPECT_TRUE(window_.folderPage()->asText().contains("No recording was found"));
  EXPECT_EQ(window_.currentPage(), window_.folderPage());
}

TEST_F(Folder, ALogWithoutAHeaderIsListedAllTheSame) {
  fileWith("broken.resuslog", "no header\n");
  fileWith("b.resuslog", smallDrill());
  lookInto();
  const QString text = window_.folderPage()->asText();
  EXPECT_TRUE(text.contains("broken.resuslog"));
  EXPECT_TRUE(text.contains("(file date)"));
}

} // namespace

} // namespace afterbeat::window
