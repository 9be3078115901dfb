#include "tests/window/window_fixture.h"

#include "app/window/handover/handover_actions.h"
#include "app/window/handover/handover_page.h"
#include "app/window/handover/sheet_preview.h"
#include "app/window/handover/told_form.h"
#include "app/window/shell/places_page.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <limits>

namespace afterbeat::window {
namespace {

class HandoverPlace : public WindowTest {
protected:
  /// The place of the last use is remembered; other tests begin at the record.
  void TearDown() override { window_.places()->goTo(window_.recordPage()); }

  /// Opens a file and goes to its sheet.
  void openSheet(const QString& path) {
    open(path);
    window_.places()->goTo(window_.handoverPage());
    untilDrawn(window_.handoverPage()->preview());
  }

  static void untilDrawn(SheetPreview* preview) {
    ASSERT_TRUE(QTest::qWaitFor([preview] { return preview->upToDate(); }, kPatience));
  }

  /// Text of a PDF, as a reader of it sees it.
  static QString textOf(const QString& path) {
    QProcess process;
    process.start("pdftotext", {"-layout", path, "-"});
    EXPECT_TRUE(process.waitForFinished(kPatience));
    return QString::fromUtf8(process.readAllStandardOutput());
  }

  /// Keys of the sheet's choices.
  static QAction* named(const QList<QAction*>& actions, const QString& value) {
    for (QAction* action : actions) {
      if (action->data().toString() == value) {
        return action;
      }
    }
    return nullptr;
  }

  SheetPreview* preview() { return window_.handoverPage()->preview(); }
};

TEST_F(HandoverPlace, ShowsThePageAsItWillBePrinted) {
  openSheet(sample("ferry-terminal.resuslog"));
  const QString text = preview()->text();
  EXPECT_TRUE(text.contains("[VALUE] 09:23:03")) << text.toStdString();
  EXPECT_TRUE(text.contains("[VALUE] 23 %"));
  const QImage& picture = preview()->picture();
  ASSERT_FALSE(picture.isNull());
  // The whole page, in its own proportions, in the device's pixels.
  EXPECT_NEAR(static_cast<double>(picture.height()) / picture.width(), 842.0 / 595.0, 0.01);
  const double ratio = preview()->devicePixelRatioF();
  EXPECT_LE(picture.height() / ratio, preview()->viewport()->height());
  EXPECT_GE(picture.height() / ratio, preview()->viewport()->height() - 40);
  // The band of invented data at the top is black, the margin below it white.
  EXPECT_LT(qGray(picture.pixel(10, 5)), 20);
  EXPECT_GT(qGray(picture.pixel(10, picture.height() / 2)), 235);
}

TEST_F(HandoverPlace, EveryPixelIsShownAsItWasDrawn) {
  openSheet(sample("ferry-terminal.resuslog"));
  for (const int zoom : {0, 1, 3}) {
    preview()->setZoom(zoom);
    untilDrawn(preview());
    const QImage drawn = preview()->picture().convertToFormat(QImage::Format_RGB32);
    const QImage shown =
        preview()->viewport()->grab().toImage().convertToFormat(QImage::Format_RGB32);
    // Black is first met at the corner of the band at the top of the page.
    const auto left = [](const QImage& image) {
      for (int x = 0; x < image.width(); ++x) {
        if (qGray(image.pixel(x, 20)) < 10) {
          return x;
        }
      }
      return image.width();
    };
    const QPoint corner(left(shown), zoom == 0 ? (shown.height() - drawn.height()) / 2 : 14);
    const QRect part = QRect(corner, drawn.size()).intersected(shown.rect());
    int best = std::numeric_limits<int>::max();
    for (int dy = -1; dy <= 1; ++dy) {
      int differing = 0;
      for (int y = 40; y < part.height() - 40; ++y) {
        for (int x = 2; x < part.width() - 2; ++x) {
          differing += shown.pixel(part.x() + x, part.y() + dy + y) != drawn.pixel(x, y) ? 1 : 0;
        }
      }
      best = std::min(best, differing);
    }
    EXPECT_EQ(best, 0) << "zoom " << zoom;
  }
}

TEST_F(HandoverPlace, ListsWhatIsLeftToThePen) {
  openSheet(sample("lake-steamer-power-lost.resuslog"));
  const QStringList& left = preview()->leftToPen();
  for (const char* label : {"Patient: Name", "Time: Collapse at", "Circulation"}) {
    EXPECT_TRUE(left.contains(QLatin1String(label))) << left.join('|').toStdString();
  }
  EXPECT_FALSE(left.contains("Last shock"));
  EXPECT_TRUE(window_.handoverPage()->leftToPen().contains("Collapse at"));
}

TEST_F(HandoverPlace, LanguageAndPaperAreTheSheetsOwnAndRemembered) {
  openSheet(sample("ferry-terminal.resuslog"));
  named(window_.handover().languages(), "de")->trigger();
  untilDrawn(preview());
  EXPECT_TRUE(preview()->text().contains(QStringLiteral("Übergabeblatt")));
  EXPECT_TRUE(preview()->leftToPen().contains("Patient: Name"));
  // The list beside the page does what the menu does, and follows it.
  QComboBox* paper = nullptr;
  for (QComboBox* list : window_.handoverPage()->findChildren<QComboBox*>()) {
    paper = list->accessibleName() == "Paper of the sheet" ? list : paper;
    if (list->accessibleName() == "Language of the sheet") {
      EXPECT_EQ(list->currentText(), "Deutsch");
    }
  }
  ASSERT_NE(paper, nullptr);
  paper->setFocus();
  QTest::keyClick(paper, Qt::Key_End);
  untilDrawn(preview());
  EXPECT_TRUE(named(window_.handover().paperSizes(), "Letter")->isChecked());
  const QImage& picture = preview()->picture();
  EXPECT_NEAR(static_cast<double>(picture.height()) / picture.width(), 792.0 / 612.0, 0.01);
  {
    Session session;
    const HandoverActions later(session, nullptr);
    EXPECT_TRUE(named(later.languages(), "de")->isChecked());
    EXPECT_TRUE(named(later.paperSizes(), "Letter")->isChecked());
  }
  named(window_.handover().languages(), "en")->trigger();
  named(window_.handover().paperSizes(), "A4")->trigger();
}

TEST_F(HandoverPlace, KeysEnlargeAndShowTheWholePageAgain) {
  openSheet(sample("ferry-terminal.resuslog"));
  const int whole = preview()->picture().width();
  EXPECT_EQ(preview()->verticalScrollBar()->maximum(), 0);
  preview()->setFocus();
  QTest::keyClick(preview(), Qt::Key_Plus);
  QTest::keyClick(preview(), Qt::Key_Plus);
  untilDrawn(preview());
  EXPECT_NEAR(preview()->picture().width(), whole * 1.25 * 1.25, 3);
  EXPECT_GT(preview()->verticalScrollBar()->maximum(), 0);
  window_.handover().zoomActions().last()->trigger();
  untilDrawn(preview());
  EXPECT_EQ(preview()->picture().width(), whole);
}

TEST_F(HandoverPlace, FollowsTheFigures) {
  openSheet(fileWith("small.resuslog", smallDrill()));
  const QString before = preview()->text();
  FigureSettings settings = window_.session().settings();
  settings.pauseThreshold = Duration{2'500'000};
  untilFiguresChange([&] { window_.session().setSettings(settings); });
  untilDrawn(preview());
  EXPECT_TRUE(before.contains("pauses longer than 1.5 s"));
  EXPECT_TRUE(preview()->text().contains("pauses longer than 2.5 s"));
}

TEST_F(HandoverPlace, AsksAPrinterThroughTheSystemsDialog) {
  openSheet(sample("ferry-terminal.resuslog"));
  bool asked = false;
  QTimer::singleShot(0, [&asked] {
    for (QWidget* widget : QApplication::topLevelWidgets()) {
      if (auto* dialog = qobject_cast<QPrintDialog*>(widget)) {
        asked = dialog->isVisible();
        dialog->reject();
      }
    }
  });
  window_.handover().printAction()->trigger();
  EXPECT_TRUE(asked);
}

TEST_F(HandoverPlace, APrinterGetsOnePageWhateverItsPaper) {
  openSheet(sample("ferry-terminal.resuslog"));
  for (const auto paper : {QPageSize::A4, QPageSize::A5}) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    const QString path = folder_.filePath("printed.pdf");
    printer.setOutputFileName(path);
    printer.setPageSize(QPageSize(paper));
    printer.setFullPage(true);
    ASSERT_TRUE(window_.handover().printOn(printer));
    const QString text = textOf(path);
    EXPECT_TRUE(text.contains("SHA-256 of the file")) << text.toStdString();
    EXPECT_EQ(text.count('\f'), 1);
  }
}

TEST_F(HandoverPlace, ExportsTheSameSheetWhileTheWindowRepaints) {
  openSheet(sample("ferry-terminal.resuslog"));
  const auto exported = [this](const char* name, bool repaint) {
    const QString path = folder_.filePath(QLatin1String(name));
    QSignalSpy written(&window_.handover(), &HandoverActions::written);
    int repaints = 0;
    window_.handover().writePdf(path);
    while (written.isEmpty()) {
      if (repaint) {
        preview()->setZoom(repaints++ % 3);
        window_.resize(1100 + repaints % 50, 700);
        window_.repaint();
      }
      QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
    }
    EXPECT_EQ(repaint, repaints > 0);
    return path;
  };
  const QString still = exported("still.pdf", false);
  const QString moving = exported("moving.pdf", true);
  const QRegularExpression printed("printed [-0-9: ]+");
  EXPECT_EQ(textOf(still).remove(printed), textOf(moving).remove(printed));
  EXPECT_GT(textOf(still).size(), 500);
}

class WithoutRecording : public HandoverPlace {
protected:
  void SetUp() override {
    window_.withoutRecording()->trigger();
    ASSERT_EQ(window_.currentPage(), window_.toldPage());
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window_));
    untilDrawn(told());
  }
  SheetPreview* told() { return window_.toldPage()->preview(); }
  ToldForm* form() { return window_.toldPage()->form(); }
};

TEST_F(WithoutRecording, NothingTypedIsASheetOfRuledLines) {
  const QString text = told()->text();
  EXPECT_FALSE(text.contains("[VALUE]")) << text.toStdString();
  EXPECT_TRUE(text.contains("everything is filled in by pen"));
  EXPECT_FALSE(text.contains("0 %"));
  EXPECT_TRUE(window_.handover().printAction()->isEnabled());
}

TEST_F(WithoutRecording, EverythingThatCannotStandOnTheSheetIsNamed) {
  form()->minutes()->setText("9999");
  form()->shocks()->setText("-3");
  form()->lastShock()->setText("99:99");
  EXPECT_EQ(form()->hint().split('\n').size(), 3) << form()->hint().toStdString();
}

TEST_F(WithoutRecording, WhatIsTypedStandsOnTheSheetAsTold) {
  EXPECT_EQ(window_.focusWidget(), form()->minutes());
  QTest::keyClicks(form()->minutes(), "22");
  QTest::keyClicks(form()->shocks(), "4");
  QTest::keyClicks(form()->lastShock(), "9.31");
  QTest::keyClicks(form()->site(), "North boathouse");
  form()->setting()->setCurrentIndex(2);
  form()->kind()->setCurrentIndex(1);
  untilDrawn(told());
  const QString text = told()->text();
  for (const char* words : {"[VALUE] 22 min", "[VALUE] 4", "[VALUE] 09:31", "[VALUE] Child",
                            "North boathouse", "DRILL", "as told"}) {
    EXPECT_TRUE(text.contains(QLatin1String(words))) << words << "\nin\n" << text.toStdString();
  }
  QSignalSpy written(&window_.handover(), &HandoverActions::written);
  const QString path = folder_.filePath("told.pdf");
  window_.handover().writePdf(path);
  ASSERT_TRUE(written.wait(kPatience));
  EXPECT_TRUE(textOf(path).contains("There is no recording"));
  EXPECT_EQ(window_.handover().suggestedName(), "Handover North boathouse.pdf");
}

TEST_F(WithoutRecording, WhatCannotBeUnderstoodIsLeftToThePen) {
  struct Case {
    const char *minutes, *shocks, *lastShock;
    bool minutesKnown, shocksKnown, timeKnown;
  };
  for (const Case& one : {Case{"", "", "", false, false, false},
                          {"2h", "3", "", false, true, false},
                          {"-4", "", "25:10", false, false, false},
                          {"12", "many", "09:31", true, false, true},
                          {"12", "0", "09:31", true, false, false},
                          {"12", "0", "", true, true, false},
                          {"601", "100", "0931", false, false, true},
                          {"0", "2", "9:5", true, true, false}}) {
    form()->startAnew();
    form()->minutes()->setText(QLatin1String(one.minutes));
    form()->shocks()->setText(QLatin1String(one.shocks));
    form()->lastShock()->setText(QLatin1String(one.lastShock));
    const papers::ToldFigures figures = form()->told().figures;
    SCOPED_TRACE(std::string(one.minutes) + "|" + one.shocks + "|" + one.lastShock);
    EXPECT_EQ(figures.minutesOn.has_value(), one.minutesKnown);
    EXPECT_EQ(figures.shocks.has_value(), one.shocksKnown);
    EXPECT_EQ(!figures.lastShockAt.isEmpty(), one.timeKnown);
    const bool allOnSheet = (one.minutesKnown || *one.minutes == 0) &&
                            (one.shocksKnown || *one.shocks == 0) &&
                            (one.timeKnown || *one.lastShock == 0);
    EXPECT_EQ(form()->hint().isEmpty(), allOnSheet);
  }
}

TEST_F(WithoutRecording, GoingBackLeavesNothingBehind) {
  window_.toldPage()->back()->trigger();
  EXPECT_NE(window_.currentPage(), window_.toldPage());
  EXPECT_FALSE(window_.handover().source().has_value());
  EXPECT_FALSE(window_.handover().printAction()->isEnabled());
  open(sample("ferry-terminal.resuslog"));
  const auto source = window_.handover().source();
  ASSERT_TRUE(source);
  EXPECT_FALSE(source->options.told.has_value());
}

TEST_F(WithoutRecording, AFileThatIsDroppedTakesItsPlace) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_NE(window_.currentPage(), window_.toldPage());
  ASSERT_TRUE(window_.handover().source());
  EXPECT_FALSE(window_.handover().source()->options.told.has_value());
}

} // namespace
} // namespace afterbeat::window
