/// Small manners of the window: room for waves, the ruler's ends, signs, search among the keys.
#include "tests/window/window_fixture.h"

#include "app/window/debrief/debrief_page.h"
#include "app/window/handover/handover_actions.h"
#include "app/window/handover/handover_page.h"
#include "app/window/handover/told_form.h"
#include "app/window/look/look.h"
#include "app/window/look/own_style.h"
#include "app/window/shell/help.h"
#include "app/window/shell/toast.h"
#include "app/window/waves/wave_cursor.h"
#include "core/signal/trace.h"

#include <QAction>
#include <QLineEdit>
#include <QMenuBar>
#include <QPainter>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QSortFilterProxyModel>
#include <QStyleOptionSlider>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <QTreeWidget>

namespace afterbeat::window {
namespace {

class Desk : public WindowTest {
protected:
  [[nodiscard]] WavesPlot* plot() const { return page_->waves()->plot(); }
  [[nodiscard]] QRect track(int index) const { return plot()->axisRects()[index + 1]->rect(); }
  void size(int width, int height) {
    window_.resize(width, height);
    for (int i = 0; i < 5; ++i) {
      QCoreApplication::processEvents();
    }
  }
};

TEST_F(Desk, AnEcgCanBeReadWhereThereIsRoom) {
  size(1900, 1000);
  open(sample("ferry-terminal.resuslog"));
  size(1900, 1000);
  EXPECT_GE(track(0).height(), 90);
  size(1024, 640);
  EXPECT_GE(track(0).height(), 45);
  // The first track is whole in what is seen of the waves.
  const auto* scroll = page_->waves()->findChild<QScrollArea*>();
  EXPECT_LE(track(0).bottom(), scroll->viewport()->height());
}

TEST_F(Desk, AShortDrillLeavesItsRoomToTheWaves) {
  size(1400, 900);
  open(sample("drill-evening-1.resuslog"));
  size(1400, 900);
  const RowsCanvas* canvas = page_->rows()->canvas();
  EXPECT_LE(page_->rows()->viewport()->height(), canvas->mostHeight(canvas->width()) + 2);
  if (page_->waves()->hasTracks()) {
    EXPECT_GT(page_->waves()->height(), 250);
  }
}

TEST_F(Desk, TheEndsOfTheRulerCanBePulled) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().lookAt(at(300));
  QCoreApplication::processEvents();
  plot()->startRuler();
  const Ruler before = *plot()->ruler();
  const auto x = [this](Time t) { return static_cast<int>(pixelOf(*plot()->axisRects()[1], t)); };
  const int y = track(0).center().y();
  const Interval shown = window_.selection().stretch();
  QTest::mouseMove(plot(), {x(before.to), y});
  EXPECT_EQ(plot()->cursor().shape(), Qt::SizeHorCursor);
  QTest::mousePress(plot(), Qt::LeftButton, {}, {x(before.to), y});
  QTest::mouseMove(plot(), {x(before.to) + 60, y});
  QTest::mouseRelease(plot(), Qt::LeftButton, {}, {x(before.to) + 60, y});
  EXPECT_EQ(window_.selection().stretch(), shown);
  EXPECT_EQ(plot()->ruler()->from, before.from);
  EXPECT_NEAR(x(plot()->ruler()->to), x(before.to) + 60, 1);
  // The other end too: what was pulled is the end that moved.
  QTest::mousePress(plot(), Qt::LeftButton, {}, {x(before.from), y});
  QTest::mouseMove(plot(), {x(before.from) - 40, y});
  QTest::mouseRelease(plot(), Qt::LeftButton, {}, {x(before.from) - 40, y});
  EXPECT_NEAR(x(plot()->ruler()->to), x(before.from) - 40, 1);
  EXPECT_EQ(window_.selection().stretch(), shown);
}

TEST_F(Desk, NoValueIsANoughtBelowZero) {
  Channel channel;
  channel.unit = "mm";
  channel.rateHz = 1;
  channel.scale = 0.1;
  channel.samples = {-2, -30};
  TrackFrame track;
  track.channel = &channel;
  track.unit = "mm";
  track.decimals = 0;
  channel.blocks = {SampleBlock{Time{}, 0, 2}};
  EXPECT_EQ(valueWords(track, Time{}), "0 mm");
  EXPECT_EQ(valueWords(track, at(1)), QStringLiteral("−3 mm"));
}

TEST_F(Desk, AThresholdBelowTheTimeBetweenCompressionsIsWarnedOf) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_FALSE(page_->problemsStrip()->text().contains("between two compressions"));
  FigureSettings settings = window_.session().settings();
  const FigureSettings usual = settings;
  settings.pauseThreshold = Duration{500'000};
  untilFiguresChange([&] { window_.session().setSettings(settings); });
  EXPECT_TRUE(page_->problemsStrip()->text().contains("between two compressions"));
  untilFiguresChange([&] { window_.session().setSettings(usual); });
  EXPECT_FALSE(page_->problemsStrip()->text().contains("between two compressions"));
}

TEST_F(Desk, TheEventAtTheCursorIsTheOneThatIsMarked) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().lookAt(at(300));
  window_.selection().setCursor(at(293));
  page_->panel()->setCurrentWidget(page_->panel()->happenings());
  const QTableView* table = page_->panel()->happenings()->table();
  const auto* sorted = qobject_cast<const QSortFilterProxyModel*>(table->model());
  ASSERT_NE(sorted, nullptr);
  const auto& model = *static_cast<const HappeningsModel*>(sorted->sourceModel());
  ASSERT_TRUE(table->currentIndex().isValid());
  const int marked = sorted->mapToSource(table->currentIndex()).row();
  EXPECT_LE(model.at(marked).stretch.begin, at(293));
  for (int i = 0; i < model.rowCount(); ++i) {
    const Time begin = model.at(i).stretch.begin;
    EXPECT_FALSE(begin > model.at(marked).stretch.begin && begin <= at(293));
  }
}

TEST_F(Desk, PrintingSaysWhereTheSheetWent) {
  open(sample("boathouse.resuslog"));
  QPrinter printer(QPrinter::ScreenResolution);
  const QString path = folder_.filePath("sheet.pdf");
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(path);
  window_.handover().printAndTell(printer);
  EXPECT_TRUE(window_.notices()->isVisible());
  EXPECT_TRUE(window_.notices()->text().contains(path));
  EXPECT_EQ(window_.notices()->kind(), NoticeBar::Kind::done);
  QSignalSpy wanted(window_.notices(), &NoticeBar::wanted);
  // Nobody's viewer is started here.
  window_.notices()->disconnect(&window_);
  window_.notices()->openButton()->click();
  window_.notices()->folderButton()->click();
  ASSERT_EQ(wanted.count(), 2);
  EXPECT_EQ(wanted[0][0].toString(), path);
  EXPECT_EQ(wanted[1][0].toString(), folder_.path());
}

TEST_F(Desk, TheNextSheetWithoutARecordingBeginsEmpty) {
  ToldForm* form = window_.toldPage()->form();
  window_.withoutRecording()->trigger();
  EXPECT_FALSE(form->takeBackButton()->isVisible());
  form->minutes()->setText("22");
  QTest::keyClick(form->minutes(), Qt::Key_Escape);
  EXPECT_NE(window_.currentPage(), window_.toldPage());
  window_.withoutRecording()->trigger();
  EXPECT_TRUE(form->minutes()->text().isEmpty());
  ASSERT_TRUE(form->takeBackButton()->isVisible());
  form->takeBackButton()->click();
  EXPECT_EQ(form->minutes()->text(), "22");
}

TEST_F(Desk, KeysCanBeSearchedAndTheListScrollsAtOnce) {
  showKeys(window_.menuBar(), &window_);
  QTreeWidget* list = nullptr;
  QLineEdit* search = nullptr;
  for (QTreeWidget* tree : window_.findChildren<QTreeWidget*>()) {
    list = tree->accessibleName() == "Keys" ? tree : list;
  }
  for (QLineEdit* edit : window_.findChildren<QLineEdit*>()) {
    search = edit->accessibleName() == "Search the keys" ? edit : search;
  }
  ASSERT_NE(list, nullptr);
  ASSERT_NE(search, nullptr);
  QTest::keyClicks(search, "ruler");
  int shown = 0, hidden = 0;
  for (int i = 0; i < list->topLevelItemCount(); ++i) {
    for (int j = 0; j < list->topLevelItem(i)->childCount(); ++j) {
      QTreeWidgetItem* line = list->topLevelItem(i)->child(j);
      line->isHidden() ? ++hidden : ++shown;
      if (!line->isHidden()) {
        EXPECT_TRUE((line->text(0) + line->text(1)).contains("ruler", Qt::CaseInsensitive));
      }
    }
  }
  EXPECT_GE(shown, 3);
  EXPECT_GT(hidden, 50);
  search->clear();
  const QModelIndex before = list->currentIndex();
  QTest::keyClick(search, Qt::Key_Down);
  EXPECT_NE(list->currentIndex(), before);
}

TEST_F(Desk, NoSliverOfAStretchIsMarkedInTheRowBefore) {
  open(sample("ferry-terminal.resuslog"));
  const papers::RowsPicture& picture = *window_.session().loaded().rows;
  const Time second = picture.row(1).begin;
  const auto shifted = [&](double from, double to) {
    return Interval{second + *durationFromSeconds(from), second + *durationFromSeconds(to)};
  };
  EXPECT_EQ(withoutSlivers(picture, shifted(-0.2, 60)).begin, second);
  EXPECT_LT(withoutSlivers(picture, shifted(-60, 0.2)).end, second);
  // What is wide enough to be seen as what it is stays.
  EXPECT_EQ(withoutSlivers(picture, shifted(-5, 60)), shifted(-5, 60));
  EXPECT_EQ(withoutSlivers(picture, shifted(-0.2, 0.4)), shifted(-0.2, 0.4));
  window_.selection().setStretch(shifted(-0.2, 60));
  EXPECT_EQ(page_->rows()->canvas()->overlay().selected->begin, second);
}

TEST_F(Desk, TheThumbOfAScrollBarCanBeTold) {
  for (const bool dark : {false, true}) {
    const Look look = Look::of(ownPalette(dark), QFont());
    QStyleOptionSlider option;
    option.palette = ownPalette(dark);
    option.rect = {0, 0, 16, 200};
    option.orientation = Qt::Vertical;
    option.maximum = 100;
    option.pageStep = 100;
    option.subControls = QStyle::SC_All;
    QImage picture(16, 200, QImage::Format_ARGB32_Premultiplied);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    const OwnStyle style;
    style.drawComplexControl(QStyle::CC_ScrollBar, &option, &painter, nullptr);
    painter.end();
    const QColor thumb = picture.pixelColor(8, 60), groove = picture.pixelColor(8, 150);
    EXPECT_GE(contrast(thumb, groove), 3) << thumb.name().toStdString();
    EXPECT_GE(contrast(look.accent, look.panel), 3);
  }
}

} // namespace
} // namespace afterbeat::window
