#include "app/window/rows/rows_canvas.h"

#include "app/window/look/figure_words.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr double kLeast = 20, kMost = 60, kSqueezed = 40;
constexpr double kMargin = 12;
/// Rows that do not fit at their least height may give up words and this much of their size before
/// the reader has to scroll.
constexpr double kSmallestShare = 0.8;
/// A click this near a shock means the shock.
constexpr double kReachPixels = 8;

} // namespace

RowsCanvas::RowsCanvas(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection),
      look_(Look::of(palette(), font())) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Rows of the rescue, two minutes each"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
  setSizePolicy(policy);
  connect(&session_, &Session::figuresChanged, this, &RowsCanvas::refresh);
  connect(&selection_, &Selection::measureChanged, this, &RowsCanvas::updateOverlay);
  connect(&selection_, &Selection::stretchChanged, this, &RowsCanvas::updateOverlay);
  connect(&selection_, &Selection::cursorChanged, this, &RowsCanvas::updateOverlay);
  setMouseTracking(true);
}

void RowsCanvas::refresh() {
  picture_ = std::make_unique<papers::RowsPicture>(
      session_.record(), session_.figures(),
      [](const char* english) { return QCoreApplication::translate("Papers", english); });
  setAccessibleDescription(picture_->asText());
  layOut();
  updateOverlay();
}

void RowsCanvas::updateOverlay() {
  overlay_ = {};
  if (!session_.hasRecord()) {
    return;
  }
  if (const auto id = selection_.measure()) {
    for (const WorkingPart& part : session_.figures()[*id].working) {
      overlay_.working.push_back({part.from, part.to});
    }
  }
  overlay_.selected = selection_.stretch();
  overlay_.cursor = selection_.cursor();
  update();
}

QRectF RowsCanvas::area() const {
  return QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin / 2);
}

void RowsCanvas::setViewHeight(int height) {
  viewHeight_ = height;
  layOut();
}

void RowsCanvas::layOut() {
  if (!picture_) {
    return;
  }
  const double width = area().width();
  const double room = viewHeight_ - 1.5 * kMargin;
  const auto heightWith = [&](double row) {
    papers::RowsLook look = look_.rows;
    look.rowHeight = row;
    return picture_->heightFor(width, look, true);
  };
  // The height grows evenly with the height of a row.
  const double least = heightWith(kLeast), most = heightWith(kMost);
  const double fitting =
      most > least ? kLeast + (room - least) / (most - least) * (kMost - kLeast) : kLeast;
  look_.rows.rowHeight = std::clamp(std::floor(fitting), kLeast, kMost);
  look_.rows.smallestShare = kSmallestShare;
  squeezed_ = heightWith(look_.rows.rowHeight) > room &&
              picture_->leastHeightFor(width, look_.rows, true) <= room;
  if (squeezed_) {
    look_.rows.rowHeight = kSqueezed; // painting shrinks it until everything fits
  }
  const int needed =
      squeezed_ ? viewHeight_
                : static_cast<int>(std::ceil(heightWith(look_.rows.rowHeight) + 1.5 * kMargin));
  if (minimumHeight() != needed) {
    setMinimumHeight(needed);
    updateGeometry();
  }
  update();
}

QSize RowsCanvas::sizeHint() const {
  return {640, minimumHeight()};
}

QRectF RowsCanvas::bandHolding(Time t) const {
  for (int i = 0; picture_ && i < picture_->rowCount(); ++i) {
    if (picture_->row(i).holds(t)) {
      return picture_->rowRect(i, area(), look_.rows, true, squeezed_);
    }
  }
  return {};
}

void RowsCanvas::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.fillRect(event->rect(), look_.paper);
  if (!picture_) {
    return;
  }
  painter.setRenderHint(QPainter::Antialiasing);
  picture_->paint(painter, area(), look_.rows, overlay_, true, squeezed_);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look_.accent, 2));
    painter.drawRect(QRectF(visibleRegion().boundingRect()).adjusted(1, 1, -1, -1));
  }
  emit painted();
}

Duration RowsCanvas::secondsOf(double pixels) const {
  const QRectF band = picture_->rowRect(0, area(), look_.rows, true, squeezed_);
  const double share = band.width() > 0 ? pixels / band.width() : 0;
  return Duration{
      std::llround(share * static_cast<double>(papers::RowsPicture::kRowLength.count()))};
}

void RowsCanvas::mousePressEvent(QMouseEvent* event) {
  if (!picture_ || event->button() != Qt::LeftButton || picture_->rowCount() == 0) {
    return;
  }
  if (const auto t = picture_->timeAt(event->position(), area(), look_.rows, true, squeezed_)) {
    const PointedAt there = pointedAt(session_.figures(), *t, secondsOf(kReachPixels));
    selection_.lookAtAll(there.stretch, there.what);
  }
}

void RowsCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (picture_) {
    selection_.setCursor(picture_->timeAt(event->position(), area(), look_.rows, true, squeezed_));
  }
}

void RowsCanvas::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  selection_.setCursor(std::nullopt);
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
    selection_.lookAt(picture_ && picture_->rowCount() > 0 ? picture_->row(0).begin
                                                           : selection_.extent().begin);
    break;
  case Qt::Key_End:
    selection_.lookAt(session_.hasRecord() && session_.figures().window
                          ? session_.figures().window->end
                          : selection_.extent().end);
    break;
  default:
    QWidget::keyPressEvent(event);
    return;
  }
  emit movedByKey();
}

void RowsCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    layOut();
  }
}

void RowsCanvas::restyle() {
  const double rowHeight = look_.rows.rowHeight;
  look_ = Look::of(palette(), font());
  look_.rows.rowHeight = rowHeight;
  layOut();
}

void RowsCanvas::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

void RowsCanvas::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void RowsCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

} // namespace afterbeat::window
