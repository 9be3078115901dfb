#include "tests/window/window_fixture.h"

#include "app/window/look/figure_words.h"

#include <QTest>
#include <QWheelEvent>

namespace afterbeat::window {
namespace {

using RowsAndWaves = WindowTest;

Duration lengthOf(const Selection& selection) {
  return selection.stretch().length();
}

TEST_F(RowsAndWaves, AClickInAPauseSelectsThePause) {
  open(sample("ferry-terminal.resuslog"));
  RowsCanvas* canvas = page_->rows()->canvas();
  const Figures& figures = window_.session().figures();
  const Pause& pause = figures.pauses.front();
  const Time middle = pause.stretch.begin + pause.stretch.length() / 2;
  const QRectF band = canvas->bandHolding(middle);
  ASSERT_FALSE(band.isEmpty());
  const double share =
      seconds(middle - figures.window->begin) / seconds(papers::RowsPicture::kRowLength);
  const QPoint point(static_cast<int>(band.left() + (share - std::floor(share)) * band.width()),
                     static_cast<int>(band.center().y()));
  QTest::mouseClick(canvas, Qt::LeftButton, {}, point);
  const Interval& shown = window_.selection().stretch();
  EXPECT_TRUE(shown.holds(pause.stretch.begin) && shown.holds(pause.stretch.end));
  EXPECT_GE(shown.length(), Selection::kAround);
  EXPECT_TRUE(page_->rows()->canvas()->overlay().selected == shown);
}

TEST_F(RowsAndWaves, AShockUnderThePointerGoesBeforeThePauseAroundIt) {
  open(sample("ferry-terminal.resuslog"));
  const Figures& figures = window_.session().figures();
  const Time shock = figures.shocks.front().t;
  EXPECT_EQ(pointedAt(figures, shock + Duration{100'000}, Duration{500'000}).what, "shock 1");
  EXPECT_NE(pointedAt(figures, shock + Duration{900'000}, Duration{500'000}).what, "shock 1");
}

TEST_F(RowsAndWaves, TheMouseOverTheRowsSetsTheCursorAndLeavingTakesItAway) {
  open(sample("ferry-terminal.resuslog"));
  RowsCanvas* canvas = page_->rows()->canvas();
  const QSignalSpy changes(&window_.selection(), &Selection::cursorChanged);
  const Time first = window_.session().figures().window->begin;
  const QRectF band = canvas->bandHolding(first);
  const QPointF point(band.left() + band.width() / 4, band.center().y());
  QMouseEvent move(QEvent::MouseMove, point, canvas->mapToGlobal(point), Qt::NoButton, {}, {});
  QCoreApplication::sendEvent(canvas, &move);
  ASSERT_TRUE(window_.selection().cursor());
  EXPECT_NEAR(seconds(*window_.selection().cursor() - first), 30, 0.01);
  EXPECT_EQ(canvas->overlay().cursor, window_.selection().cursor());
  QEvent leave(QEvent::Leave);
  QCoreApplication::sendEvent(canvas, &leave);
  EXPECT_FALSE(window_.selection().cursor());
  EXPECT_FALSE(canvas->overlay().cursor);
  EXPECT_EQ(changes.count(), 2);
}

TEST_F(RowsAndWaves, KeysMoveTheSelection) {
  open(sample("ferry-terminal.resuslog"));
  RowsCanvas* canvas = page_->rows()->canvas();
  window_.selection().lookAt(at(300));
  const Interval before = window_.selection().stretch();
  QTest::keyClick(canvas, Qt::Key_Right);
  EXPECT_EQ(window_.selection().stretch().begin, before.begin + before.length() / 2);
  QTest::keyClick(canvas, Qt::Key_Left);
  EXPECT_EQ(window_.selection().stretch(), before);
  QTest::keyClick(canvas, Qt::Key_Down);
  EXPECT_EQ(window_.selection().stretch().begin, before.begin + papers::RowsPicture::kRowLength);
}

TEST_F(RowsAndWaves, StepsGoFromPauseToPauseAndShockToShock) {
  open(sample("ferry-terminal.resuslog"));
  const Figures& figures = window_.session().figures();
  window_.selection().lookAt(window_.selection().extent().begin);
  QAction* nextPause = page_->stepping()->actions()[0];
  for (const Pause& pause : figures.pauses) {
    nextPause->trigger();
    const Interval& shown = window_.selection().stretch();
    EXPECT_TRUE(shown.holds(pause.stretch.begin) && shown.holds(pause.stretch.end));
  }
  window_.selection().lookAt(window_.selection().extent().begin);
  QAction* nextShock = page_->stepping()->actions()[2];
  int number = 0;
  for (std::size_t i = 0; i < figures.shocks.size(); ++i) {
    nextShock->trigger();
    EXPECT_EQ(window_.selection().what(), QStringLiteral("shock %1").arg(++number));
  }
}

TEST_F(RowsAndWaves, TracksGetAtMostTwoPointsADevicePixel) {
  open(sample("ferry-terminal.resuslog"));
  WavesPlot* plot = page_->waves()->plot();
  for (const double length : {2.0, 20.0, 120.0, 1300.0}) {
    window_.selection().setStretch({at(100), at(100 + length)});
    for (int track = 0; track < plot->trackCount(); ++track) {
      EXPECT_LE(static_cast<int>(plot->points(track).size()),
                2 * plot->width() * plot->devicePixelRatioF() + 8);
      EXPECT_GT(static_cast<int>(plot->points(track).size()), 20) << length;
    }
  }
}

TEST_F(RowsAndWaves, TheWheelZoomsAroundThePointer) {
  open(sample("ferry-terminal.resuslog"));
  WavesPlot* plot = page_->waves()->plot();
  window_.selection().lookAt(at(300));
  const QPointF point(plot->width() * 0.75, plot->height() / 2.0);
  QCPAxis* axis = plot->axisRects().front()->axis(QCPAxis::atBottom);
  const double before = axis->pixelToCoord(point.x());
  const Duration length = lengthOf(window_.selection());
  QWheelEvent wheel(point, plot->mapToGlobal(point), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(plot, &wheel);
  EXPECT_LT(lengthOf(window_.selection()), length);
  EXPECT_NEAR(axis->pixelToCoord(point.x()), before, 0.001);
}

TEST_F(RowsAndWaves, DraggingMovesWhatIsUnderThePointer) {
  open(sample("ferry-terminal.resuslog"));
  WavesPlot* plot = page_->waves()->plot();
  window_.selection().lookAt(at(300));
  QCPAxis* axis = plot->axisRects().front()->axis(QCPAxis::atBottom);
  const QPoint from(plot->width() / 2, plot->height() / 2), to(from.x() - 80, from.y());
  const double held = axis->pixelToCoord(from.x());
  QTest::mousePress(plot, Qt::LeftButton, {}, from);
  QMouseEvent move(QEvent::MouseMove, to, plot->mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                   Qt::NoModifier);
  QCoreApplication::sendEvent(plot, &move);
  QTest::mouseRelease(plot, Qt::LeftButton, {}, to);
  EXPECT_NEAR(axis->pixelToCoord(to.x()), held, 0.001);
}

TEST_F(RowsAndWaves, ZoomStaysBetweenTwoSecondsAndTheRecord) {
  open(sample("ferry-terminal.resuslog"));
  for (int i = 0; i < 40; ++i) {
    window_.selection().zoom(0.5);
  }
  EXPECT_EQ(lengthOf(window_.selection()), Selection::kShortest);
  for (int i = 0; i < 60; ++i) {
    window_.selection().zoom(2);
  }
  EXPECT_LE(lengthOf(window_.selection()), Selection::kLongest);
  EXPECT_GE(lengthOf(window_.selection()), window_.selection().extent().length());
}

TEST_F(RowsAndWaves, ARecordWithoutWavesSaysSo) {
  open(fileWith("drill.resuslog", smallDrill()));
  EXPECT_FALSE(page_->waves()->hasTracks());
  EXPECT_FALSE(page_->waves()->plot()->isVisible());
  EXPECT_EQ(page_->waves()->heading(),
            momentWords(window_.session().record(), window_.selection().stretch().begin) + " to " +
                momentWords(window_.session().record(), window_.selection().stretch().end));
}

TEST_F(RowsAndWaves, TimeStepsAreRound) {
  EXPECT_EQ(roundTimeStep(0.01), 0.1);
  EXPECT_EQ(roundTimeStep(1.1), 2);
  EXPECT_EQ(roundTimeStep(31), 60);
  EXPECT_EQ(roundTimeStep(1e9), 10'800);
}

TEST_F(RowsAndWaves, WhatTheWavesShowIsSaidInWords) {
  open(sample("ferry-terminal.resuslog"));
  window_.selection().lookAt(window_.session().figures().shocks.front().t);
  const QString text = page_->waves()->plot()->asText();
  EXPECT_TRUE(text.contains("shock 1")) << text.toStdString();
  EXPECT_TRUE(text.contains("mV")) << text.toStdString();
  EXPECT_TRUE(text.contains("Hands off")) << text.toStdString();
}

} // namespace
} // namespace afterbeat::window
