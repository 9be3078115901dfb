/// A window with an archive beside it, and dialogs answered as a user does.
#pragma once

#include "app/archive/archive.h"
#include "app/window/compare/compare_page.h"
#include "app/window/compare/save_report.h"
#include "app/window/compare/season_table.h"
#include "app/window/compare/season_views.h"
#include "app/window/compare/season_ways.h"
#include "samples/season/made_season.h"
#include "samples/season/write_season.h"
#include "tests/window/window_fixture.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QLineEdit>
#include <QTest>
#include <QTimer>

#include <functional>

namespace afterbeat::window {

class ArchiveWindowTest : public WindowTest {
protected:
  ArchiveWindowTest() : compare_(window_.comparePage()), desk_(*compare_->desk()) {}

  /// Recordings of a made-up season in the test's folder.
  void writeSeason(std::size_t count) const {
    samples::SeasonPlan plan;
    plan.records = count;
    for (std::size_t i = 0; i < count; ++i) {
      const auto file = samples::seasonFile(plan, i);
      fileWith(file.name.c_str(), QByteArray::fromStdString(file.bytes));
    }
  }
  /// The archive of the test, a file of its own.
  [[nodiscard]] archive::ArchivePlace place() const {
    return {false, elsewhere_.filePath("season.sqlite").toStdString()};
  }
  /// Until all that was asked for is in view, with the marks of the archive.
  static void settled(MainWindow& window) {
    const ComparePage& page = *window.comparePage();
    ASSERT_TRUE(QTest::qWaitFor(
        [&page] {
          const SeasonDesk& desk = *page.desk();
          return !desk.busy() && !desk.arranging() && desk.arranged().source &&
                 page.overTime()->stepsKnown();
        },
        kPatience));
  }
  void settled() { settled(window_); }
  /// Takes what is in the folder into the archive, and looks at it.
  void takeIn() {
    desk_.takeIn(place(), {folder_.path()});
    compare_->go()->trigger();
    settled();
  }
  /// A dialog that closed without a window manager leaves no window active.
  void pressShift(Qt::Key key) {
    QApplication::setActiveWindow(&window_);
    QTest::keyClick(&window_, key, Qt::ShiftModifier);
  }
  /// Lets `answer` act on the dialog that `ask` opens, before `ask` returns.
  static void answering(const std::function<void()>& ask,
                        const std::function<void(QWidget& dialog)>& answer) {
    int answered = 0;
    QTimer::singleShot(0, qApp, [&answered, &answer] {
      QWidget* dialog = QApplication::activeModalWidget();
      ASSERT_NE(dialog, nullptr);
      ++answered;
      answer(*dialog);
    });
    ask();
    EXPECT_EQ(answered, 1);
  }
  /// By Shift+Q and the two dialogs that it opens; gives what is in the file then.
  QByteArray writeReport(const QString& name, bool withoutIdentity = false) {
    const QString path = elsewhere_.filePath(name);
    QSignalSpy written(compare_, &ComparePage::written);
    answering([this] { pressShift(Qt::Key_Q); },
              [&](QWidget& dialog) {
                auto& asked = dynamic_cast<ReportDialog&>(dialog);
                EXPECT_FALSE(asked.withoutIdentity()->isChecked());
                if (withoutIdentity) {
                  QTest::keyClick(asked.withoutIdentity(), Qt::Key_Space);
                }
                QTimer::singleShot(0, qApp, [&path] { nameFile(path); });
                QTest::keyClick(&dialog, Qt::Key_Return);
              });
    EXPECT_TRUE(written.count() > 0 || written.wait(kPatience));
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  /// In the dialog that asks for a file.
  static void nameFile(const QString& path) {
    QWidget* dialog = QApplication::activeModalWidget();
    ASSERT_NE(dialog, nullptr);
    auto* line = dialog->findChild<QLineEdit*>("fileNameEdit");
    ASSERT_NE(line, nullptr);
    line->setText(path); // typed, it would be completed
    QTest::keyClick(line, Qt::Key_Return);
  }
  [[nodiscard]] QString said() const { return window_.notices()->text(); }

  ComparePage* compare_;
  SeasonDesk& desk_;
  QTemporaryDir elsewhere_;
};

} // namespace afterbeat::window
