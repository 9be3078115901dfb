#include "tests/window/window_fixture.h"

#include "app/window/look/remembered.h"
#include "app/window/shell/folder_page.h"

#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QProcess>
#include <QPushButton>

namespace afterbeat::window {
namespace {

using Opening = WindowTest;

TEST_F(Opening, AnEmptyWindowSaysWhatToDoFirst) {
  EXPECT_NE(qobject_cast<WelcomePage*>(window_.currentPage()), nullptr);
  EXPECT_EQ(window_.session().state(), Session::State::empty);
}

TEST_F(Opening, ASampleShowsItsHeaderFiguresRowsAndWaves) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_EQ(window_.currentPage(), page_);
  const QString header = window_.places()->header()->asText();
  EXPECT_TRUE(header.contains("Ferry terminal")) << header.toStdString();
  EXPECT_TRUE(header.contains("rescue")) << header.toStdString();
  EXPECT_TRUE(header.contains("adult")) << header.toStdString();
  EXPECT_TRUE(header.contains("ferry-terminal.resuslog")) << header.toStdString();
  EXPECT_TRUE(header.contains("SYNTHETIC")) << header.toStdString();
  EXPECT_FALSE(header.contains("DRILL")) << header.toStdString();
  EXPECT_EQ(page_->headlines()->cards().size(), 6);
  EXPECT_GT(page_->waves()->plot()->trackCount(), 1);
  EXPECT_FALSE(page_->rows()->canvas()->asText().isEmpty());
  EXPECT_TRUE(window_.windowTitle().contains("Ferry terminal"));
}

TEST_F(Opening, ADrillIsMarkedInWords) {
  open(fileWith("drill.resuslog", smallDrill()));
  EXPECT_TRUE(window_.places()->header()->asText().contains("DRILL"));
  EXPECT_TRUE(window_.windowTitle().contains("DRILL"));
}

TEST_F(Opening, ADamagedFileIsShownWithItsProblems) {
  // One line is garbage, and no `end` line closes the file.
  QByteArray log = smallDrill();
  log.insert(log.indexOf('\n') + 1, "{\"t\": 1, garbage\n");
  open(fileWith("damaged.resuslog", log));
  EXPECT_EQ(window_.currentPage(), page_);
  EXPECT_TRUE(page_->problemsStrip()->isVisible());
  const ProblemsModel& problems = page_->panel()->problems()->problems();
  EXPECT_EQ(problems.count(Severity::error), 1);
  EXPECT_EQ(problems.count(Severity::warning), 1);
  EXPECT_EQ(problems.data(problems.index(0, ProblemsModel::severityColumn), Qt::DisplayRole),
            "error");
}

TEST_F(Opening, NoProblemsNoStrip) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_EQ(page_->panel()->problems()->problems().rowCount(), 0);
  EXPECT_EQ(page_->panel()->problems()->problems().summary(), "no problems found");
  EXPECT_FALSE(page_->problemsStrip()->text().contains("In this file"));
}

TEST_F(Opening, TimeAfterTheLastActivityIsSaidBesideTheHeadlines) {
  open(fileWith("short.resuslog", smallDrill()));
  EXPECT_FALSE(page_->problemsStrip()->text().contains("last activity"));
  QByteArray log = smallDrill();
  log.replace("{\"t\":110,", "{\"t\":300,");
  open(fileWith("long.resuslog", log));
  EXPECT_TRUE(page_->problemsStrip()->text().contains("last activity"))
      << page_->problemsStrip()->text().toStdString();
}

TEST_F(Opening, WithoutAHeaderThePageSaysWhatHappenedAndOpensItAnyway) {
  const QByteArray log = smallDrill();
  const QString path = fileWith("torn.resuslog", "{\"resusl" + log.mid(log.indexOf('\n')));
  open(path);
  EXPECT_EQ(window_.currentPage(), window_.refusalPage());
  const QString text = window_.refusalPage()->asText();
  EXPECT_TRUE(text.contains("header")) << text.toStdString();
  EXPECT_TRUE(text.contains("not changed")) << text.toStdString();
  QPushButton* asDrill = nullptr;
  for (QPushButton* button : window_.refusalPage()->findChildren<QPushButton*>()) {
    if (button->isVisible() && button->accessibleName().contains("drill")) {
      asDrill = button;
    }
  }
  ASSERT_NE(asDrill, nullptr);
  QSignalSpy complete(&window_, &MainWindow::pictureComplete);
  asDrill->click();
  ASSERT_TRUE(complete.wait(kPatience));
  EXPECT_EQ(window_.currentPage(), page_);
  EXPECT_TRUE(window_.places()->header()->asText().contains("DRILL"));
  EXPECT_TRUE(window_.places()->header()->asText().contains("MADE-UP HEADER"));
}

TEST_F(Opening, OtherRefusalsOfferNoMadeUpHeader) {
  open(fileWith("newer.resuslog", R"({"resuslog":"2.0","id":"urn:uuid:0","recorded":)"
                                  R"("2026-01-01T00:00:00Z","kind":"test"})"
                                  "\n"));
  EXPECT_TRUE(window_.refusalPage()->asText().contains("2.0"));
  for (QPushButton* button : window_.refusalPage()->findChildren<QPushButton*>()) {
    EXPECT_FALSE(button->isVisible() && button->accessibleName().contains("drill"));
  }
  open(folder_.filePath("nowhere.resuslog"));
  EXPECT_TRUE(window_.refusalPage()->asText().contains("no such file"));
  open(fileWith("empty.resuslog", ""));
  EXPECT_TRUE(window_.refusalPage()->asText().contains("empty"));
}

TEST_F(Opening, AFileWithTwoRecordsShowsTheFirstAndSaysSo) {
  QByteArray second = smallDrill();
  second.replace("South boathouse", "North boathouse").replace("1d10", "1d11");
  open(fileWith("two.resuslog", smallDrill() + second));
  EXPECT_TRUE(window_.places()->header()->asText().contains("South boathouse"));
  EXPECT_TRUE(page_->problemsStrip()->text().contains("2 records"));
  untilFiguresChange([this] { window_.session().showRecord(1); });
  EXPECT_TRUE(window_.places()->header()->asText().contains("North boathouse"));
}

TEST_F(Opening, DroppedFilesAreListedToChooseFrom) {
  QMimeData dropped;
  const QString path = fileWith("drill.resuslog", smallDrill());
  const QString other = fileWith("other.resuslog", smallDrill());
  dropped.setUrls({QUrl::fromLocalFile(path), QUrl::fromLocalFile(other)});
  QDropEvent drop({100, 100}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
  QDragEnterEvent enter({100, 100}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window_, &enter);
  EXPECT_TRUE(enter.isAccepted());
  QSignalSpy listed(window_.folderPage(), &FolderPage::listed);
  QCoreApplication::sendEvent(&window_, &drop);
  ASSERT_TRUE(listed.count() > 0 || listed.wait(kPatience));
  EXPECT_EQ(window_.currentPage(), window_.folderPage());
  EXPECT_EQ(window_.folderPage()->paths().size(), 2);
}

TEST_F(Opening, FilesOpenedLatelyAreRemembered) {
  const QString path = fileWith("drill.resuslog", smallDrill());
  open(path);
  ASSERT_FALSE(remembered::recentFiles().isEmpty());
  EXPECT_EQ(remembered::recentFiles().front(), path);
  QFile::remove(path);
  EXPECT_FALSE(remembered::recentFiles().contains(path));
}

TEST_F(Opening, ReadingCanBeStopped) {
  open(fileWith("drill.resuslog", smallDrill()));
  window_.session().open(sample("ferry-terminal.resuslog"));
  EXPECT_EQ(window_.session().state(), Session::State::loading);
  window_.session().cancel();
  EXPECT_EQ(window_.session().state(), Session::State::ready);
  EXPECT_TRUE(window_.places()->header()->asText().contains("South boathouse"));
  window_.session().close();
  EXPECT_NE(qobject_cast<WelcomePage*>(window_.currentPage()), nullptr);
}

TEST_F(Opening, TheProgramEndsOnceThePictureIsComplete) {
  QProcess program;
  program.start(QStringLiteral(AFTERBEAT_PROGRAM),
                {"--quit-after-picture", sample("ferry-terminal.resuslog")});
  ASSERT_TRUE(program.waitForFinished(kPatience));
  EXPECT_EQ(program.exitStatus(), QProcess::NormalExit);
  EXPECT_EQ(program.exitCode(), 0);
}

} // namespace
} // namespace afterbeat::window
