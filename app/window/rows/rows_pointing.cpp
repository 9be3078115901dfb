/// Pointing into the rows and moving in them by keys.
#include "app/window/look/figure_words.h"
#include "app/window/rows/rows_canvas.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include "app/papers/rows_model.h"

#include <QAccessible>
#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

/// A click this near a shock means the shock.
constexpr double kReachPixels = 8;

} // namespace

Duration RowsCanvas::secondsOf(double pixels) const {
  const double width = placed()->rowRect(0).width();
  const double share = width > 0 ? pixels / width : 0;
  return Duration{
      std::llround(share * static_cast<double>(papers::RowsPicture::kRowLength.count()))};
}

std::optional<Time> RowsCanvas::dragTime(const QPointF& point) const {
  QPointF inside = point;
  if (rowCount() > 0) {
    const QRectF first = placed()->rowRect(0);
    inside.setX(std::clamp(point.x(), first.left(), first.right()));
  }
  return placed()->timeAt(inside);
}

void RowsCanvas::mousePressEvent(QMouseEvent* event) {
  if (placed() != nullptr && event->button() == Qt::LeftButton) {
    pressedAt_ = placed()->timeAt(event->position());
    pressedPoint_ = event->position();
    dragging_ = false;
  }
}

void RowsCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (placed() == nullptr) {
    return;
  }
  selection_.setCursor(placed()->timeAt(event->position()));
  if (!pressedAt_ || !(event->buttons() & Qt::LeftButton)) {
    return;
  }
  const double moved = (event->position() - pressedPoint_).manhattanLength();
  dragging_ = dragging_ || moved >= QApplication::startDragDistance();
  const auto to = dragging_ ? dragTime(event->position()) : std::nullopt;
  if (to) {
    selection_.setStretch({std::min(*pressedAt_, *to), std::max(*pressedAt_, *to)});
  }
}

void RowsCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) {
    return;
  }
  if (pressedAt_ && !dragging_) {
    const PointedAt there = pointedAt(session_.figures(), *pressedAt_, secondsOf(kReachPixels));
    selection_.lookAtAll(there.stretch, there.what);
  }
  pressedAt_.reset();
  dragging_ = false;
}

void RowsCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) {
    emit wavesAsked();
  }
}

void RowsCanvas::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  selection_.setCursor(std::nullopt);
}

QString RowsCanvas::wordsAt(const QPointF& point) const {
  const auto t = placed() != nullptr ? placed()->timeAt(point) : std::nullopt;
  if (!t || !session_.hasRecord()) {
    return {};
  }
  const Duration reach = secondsOf(kReachPixels);
  QStringList lines{momentWords(session_.record(), *t, true)};
  const PointedAt there = pointedAt(session_.figures(), *t, reach);
  if (!there.what.isEmpty()) {
    lines << there.what;
  }
  for (const papers::RowMark& mark : picture_->model().marks) {
    const bool near = mark.stretch.begin - reach <= *t && mark.stretch.end + reach >= *t;
    if (near && !papers::isShock(mark.kind) && !mark.words.isEmpty()) {
      lines << mark.words.first();
    }
  }
  return lines.join(QLatin1Char('\n'));
}

bool RowsCanvas::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), wordsAt(help->pos()), this);
    return true;
  }
  return QWidget::event(event);
}

void RowsCanvas::selectRow(int index) {
  if (index >= 0 && index < rowCount()) {
    const Interval row = picture_->row(index);
    selection_.setStretch({row.begin, row.end - Duration{1}});
    announceRow();
  }
}

/// A reader of the screen hears the row that the selection came to.
void RowsCanvas::announceRow() {
  const int row = currentRow();
  if (row >= 0 && row != announcedRow_ && hasFocus()) {
    announcedRow_ = row;
    QAccessibleEvent focus(this, QAccessible::Focus);
    focus.setChild(row);
    QAccessible::updateAccessibility(&focus);
  }
}

void RowsCanvas::keyPressEvent(QKeyEvent* event) {
  const Duration half = selection_.stretch().length() / 2;
  constexpr Duration row = papers::RowsPicture::kRowLength;
  switch (event->key()) {
  case Qt::Key_Left:
    selection_.moveBy(-half);
    break;
  case Qt::Key_Right:
    selection_.moveBy(half);
    break;
  case Qt::Key_Up:
    selection_.moveBy(-row);
    break;
  case Qt::Key_Down:
    selection_.moveBy(row);
    break;
  case Qt::Key_Home:
    selection_.lookAt(rowCount() > 0 ? picture_->row(0).begin : selection_.extent().begin);
    break;
  case Qt::Key_End:
    selection_.lookAt(session_.hasRecord() && session_.figures().window
                          ? session_.figures().window->end
                          : selection_.extent().end);
    break;
  case Qt::Key_Return:
  case Qt::Key_Enter:
    emit wavesAsked();
    return;
  default:
    QWidget::keyPressEvent(event);
    return;
  }
  announceRow();
  emit movedByKey();
}

void RowsCanvas::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  announcedRow_ = -1;
  announceRow();
  update();
}

void RowsCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

} // namespace afterbeat::window
