#include "tests/window/window_fixture.h"

#include "app/window/look/figure_words.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QTest>
#include <QToolTip>

namespace afterbeat::window {
namespace {

class RowsCanvasTest : public WindowTest {
protected:
  void SetUp() override {
    open(sample("ferry-terminal.resuslog"));
    canvas_ = page_->rows()->canvas();
    begin_ = window_.session().figures().window->begin;
  }
  [[nodiscard]] QPoint pointAt(Time t) const {
    const QRectF band = canvas_->bandHolding(t);
    const double rows = seconds(t - begin_) / seconds(papers::RowsPicture::kRowLength);
    return QPointF(band.left() + (rows - std::floor(rows)) * band.width(), band.center().y())
        .toPoint();
  }
  void moveTo(const QPoint& point, Qt::MouseButtons buttons) {
    QMouseEvent move(QEvent::MouseMove, point, canvas_->mapToGlobal(point), Qt::NoButton, buttons,
                     {});
    QCoreApplication::sendEvent(canvas_, &move);
  }
  [[nodiscard]] Selection& selection() { return window_.selection(); }

  RowsCanvas* canvas_ = nullptr;
  Time begin_{};
};

TEST_F(RowsCanvasTest, DraggingSelectsTheStretchBetween) {
  const Time from = begin_ + Duration{130'000'000};
  const Time to = from + Duration{25'000'000};
  QTest::mousePress(canvas_, Qt::LeftButton, {}, pointAt(to));
  moveTo(pointAt(from), Qt::LeftButton);
  QTest::mouseRelease(canvas_, Qt::LeftButton, {}, pointAt(from));
  const double pixel = 120.0 / canvas_->bandHolding(from).width();
  EXPECT_NEAR(seconds(selection().stretch().begin - from), 0, pixel);
  EXPECT_NEAR(seconds(selection().stretch().end - to), 0, pixel);
  // Beyond the end of a row the stretch ends with the row.
  QTest::mousePress(canvas_, Qt::LeftButton, {}, pointAt(from));
  moveTo(QPoint(canvas_->width() - 1, pointAt(from).y()), Qt::LeftButton);
  QTest::mouseRelease(canvas_, Qt::LeftButton, {}, pointAt(from));
  EXPECT_NEAR(seconds(selection().stretch().end - begin_), 240, 0.001);
}

TEST_F(RowsCanvasTest, AClickOnEveryPauseAndShockSelectsExactlyIt) {
  const Figures& figures = window_.session().figures();
  for (const Pause& pause : figures.pauses) {
    const Time middle = pause.stretch.begin + pause.stretch.length() / 2;
    if (pointedAt(figures, middle, Duration{4'000'000}).stretch != pause.stretch) {
      continue; // a shock stands there
    }
    page_->rows()->ensureVisible(0, pointAt(middle).y());
    QTest::mouseClick(canvas_, Qt::LeftButton, {}, pointAt(middle));
    EXPECT_EQ(selection().what(), pointedAt(figures, middle, Duration{-1}).what);
  }
  for (const ShockFigures& shock : figures.shocks) {
    page_->rows()->ensureVisible(0, pointAt(shock.t).y());
    QTest::mouseClick(canvas_, Qt::LeftButton, {}, pointAt(shock.t));
    EXPECT_EQ(selection().what(), pointedAt(figures, shock.t, Duration{0}).what);
    EXPECT_TRUE(selection().stretch().holds(shock.t));
  }
}

TEST_F(RowsCanvasTest, EveryRowIsReachedByKeysAlone) {
  canvas_->setFocus();
  QTest::keyClick(canvas_, Qt::Key_Home);
  EXPECT_EQ(canvas_->currentRow(), 0);
  for (int row = 1; row < canvas_->rowCount() - 1; ++row) {
    QTest::keyClick(canvas_, Qt::Key_Down);
    EXPECT_EQ(canvas_->currentRow(), row);
  }
  QTest::keyClick(canvas_, Qt::Key_End);
  EXPECT_TRUE(selection().stretch().holds(window_.session().figures().window->end));
  QTest::keyClick(canvas_, Qt::Key_Up);
  EXPECT_LT(selection().stretch().end, window_.session().figures().window->end);
}

TEST_F(RowsCanvasTest, EnterAsksForTheWaves) {
  const QSignalSpy asked(canvas_, &RowsCanvas::wavesAsked);
  canvas_->setFocus();
  QTest::keyClick(canvas_, Qt::Key_Return);
  QTest::keyClick(canvas_, Qt::Key_Enter);
  EXPECT_EQ(asked.count(), 2);
  EXPECT_EQ(window_.focusWidget(), page_->waves()->plot());
}

TEST_F(RowsCanvasTest, AReaderOfTheScreenFindsEveryRowWithItsText) {
  QAccessibleInterface* list = QAccessible::queryAccessibleInterface(canvas_);
  ASSERT_NE(list, nullptr);
  EXPECT_EQ(list->role(), QAccessible::List);
  EXPECT_FALSE(list->text(QAccessible::Name).isEmpty());
  ASSERT_EQ(list->childCount(), canvas_->rowCount());
  ASSERT_GT(list->childCount(), 5);
  selection().lookAt(begin_ + Duration{300'000'000});
  for (int i = 0; i < list->childCount(); ++i) {
    QAccessibleInterface* row = list->child(i);
    ASSERT_NE(row, nullptr);
    EXPECT_EQ(row, list->child(i));
    EXPECT_EQ(list->indexOfChild(row), i);
    EXPECT_EQ(row->role(), QAccessible::ListItem);
    EXPECT_EQ(row->text(QAccessible::Name), canvas_->rowText(i));
    EXPECT_TRUE(row->text(QAccessible::Name).contains("min")) << i;
    EXPECT_EQ(row->rect().size(), canvas_->rowRect(i).size());
    EXPECT_EQ(list->childAt(row->rect().center().x(), row->rect().center().y()), row);
    EXPECT_EQ(row->state().selected != 0, i == 2);
    EXPECT_EQ(row->parent(), list);
  }
  EXPECT_TRUE(list->child(0)->text(QAccessible::Name).contains("shock 1 at"));
  QAccessibleActionInterface* action = list->child(4)->actionInterface();
  ASSERT_NE(action, nullptr);
  action->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_EQ(canvas_->currentRow(), 4);
}

TEST_F(RowsCanvasTest, WhatLiesUnderThePointerIsSaid) {
  const Figures& figures = window_.session().figures();
  const Time shock = figures.shocks.front().t;
  EXPECT_TRUE(canvas_->wordsAt(pointAt(shock)).contains("shock 1"));
  EXPECT_TRUE(canvas_->wordsAt({0, 0}).isEmpty());
}

TEST_F(RowsCanvasTest, AFrameOfPointingLooksLikeAPictureMadeAfresh) {
  selection().lookAt(begin_ + Duration{100'000'000});
  selection().setCursor(begin_ + Duration{50'000'000});
  canvas_->grab();
  selection().setCursor(begin_ + Duration{170'000'000});
  selection().lookAt(begin_ + Duration{260'000'000});
  const QImage kept = canvas_->grab().toImage();
  QEvent restyled(QEvent::FontChange);
  QCoreApplication::sendEvent(canvas_, &restyled);
  const QImage fresh = canvas_->grab().toImage();
  EXPECT_EQ(kept, fresh);
}

} // namespace
} // namespace afterbeat::window
