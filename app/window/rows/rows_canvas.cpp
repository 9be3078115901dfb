#include "app/window/rows/rows_canvas.h"

#include "app/window/rows/rows_scroll.h"

#include "app/window/look/figure_words.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QEvent>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr double kLeast = 20, kMost = 60, kSqueezed = 40;
constexpr double kMargin = 12;
/// Rows that do not fit at their least height may give up words and this much of their size before
/// the reader has to scroll.
constexpr double kSmallestShare = 0.8;

} // namespace

RowsCanvas::RowsCanvas(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection),
      look_(Look::of(palette(), font())) {
  installRowsAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("Rows of the rescue, two minutes each"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
  setSizePolicy(policy);
  connect(&session_, &Session::figuresChanged, this, &RowsCanvas::refresh);
  connect(&selection_, &Selection::measureChanged, this, &RowsCanvas::updateWorking);
  connect(&selection_, &Selection::stretchChanged, this, &RowsCanvas::updateOverlay);
  connect(&selection_, &Selection::cursorChanged, this, &RowsCanvas::updateOverlay);
}

void RowsCanvas::refresh() {
  picture_ = session_.loaded().rows;
  announcedRow_ = -1;
  layOut();
  updateWorking();
}

void RowsCanvas::updateWorking() {
  overlay_.working.clear();
  if (session_.hasRecord()) {
    if (const auto id = selection_.measure()) {
      for (const WorkingPart& part : session_.figures()[*id].working) {
        overlay_.working.push_back({part.from, part.to});
      }
    }
  }
  keptPlace_ = {};
  updateOverlay();
  update();
}

/// Only what changes is painted again.
void RowsCanvas::updateOverlay() {
  papers::RowsOverlay next;
  if (session_.hasRecord()) {
    next.selected =
        picture_ ? withoutSlivers(*picture_, selection_.stretch()) : selection_.stretch();
    next.cursor = selection_.cursor();
  }
  const papers::RowsOverlay before{{}, overlay_.selected, overlay_.cursor};
  overlay_.selected = next.selected;
  overlay_.cursor = next.cursor;
  const papers::RowsPlaced* places = placed();
  if (places == nullptr) {
    update();
    return;
  }
  papers::RowsOverlay changed[2] = {before, next};
  for (papers::RowsOverlay& one : changed) {
    if (before.selected == next.selected) {
      one.selected.reset();
    }
    if (before.cursor == next.cursor) {
      one.cursor.reset();
    }
    for (const QRectF& box : places->touched(one)) {
      update(box.toAlignedRect().adjusted(-1, -1, 1, 1));
    }
  }
}

QRectF RowsCanvas::area() const {
  return QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin / 2);
}

const papers::RowsPlaced* RowsCanvas::placed() const {
  if (!placed_ && picture_) {
    placed_ = std::make_unique<papers::RowsPlaced>(*picture_, area(), look_.rows, true, squeezed_);
  }
  return placed_.get();
}

void RowsCanvas::forgetPlaces() {
  placed_.reset();
  keptPlace_ = {};
  update();
}

void RowsCanvas::setViewHeight(int height) {
  viewHeight_ = height;
  layOut();
}

int RowsCanvas::leastHeight(int viewWidth) const {
  if (!picture_) {
    return 0;
  }
  papers::RowsLook look = look_.rows;
  look.smallestShare = kSmallestShare;
  look.rowHeight = kSqueezed;
  return static_cast<int>(
      std::ceil(picture_->leastHeightFor(viewWidth - 2 * kMargin, look, true) + 1.5 * kMargin));
}

int RowsCanvas::mostHeight(int viewWidth) const {
  if (!picture_) {
    return 0;
  }
  papers::RowsLook look = look_.rows;
  look.smallestShare = kSmallestShare;
  look.rowHeight = kMost;
  return static_cast<int>(
      std::ceil(picture_->heightFor(viewWidth - 2 * kMargin, look, true) + 1.5 * kMargin));
}

void RowsCanvas::layOut() {
  if (!picture_) {
    return;
  }
  const double width = area().width();
  const double room = viewHeight_ - 1.5 * kMargin;
  look_.rows.rowHeight = rowHeightFor(*picture_, look_.rows, width, room, kLeast, kMost);
  look_.rows.smallestShare = kSmallestShare;
  // Rows that do not fit with all their words are seen close together, to be compared by eye; a
  // long rescue scrolls.
  const double whole = picture_->heightFor(width, look_.rows, true);
  squeezed_ = whole > room;
  if (squeezed_) {
    look_.rows.rowHeight = kSqueezed; // painting shrinks it until everything fits
  }
  const int needed = squeezed_
                         ? std::max(viewHeight_, leastHeight(static_cast<int>(width + 2 * kMargin)))
                         : static_cast<int>(std::ceil(whole + 1.5 * kMargin));
  if (minimumHeight() != needed) {
    setMinimumHeight(needed);
    updateGeometry();
  }
  forgetPlaces();
}

QSize RowsCanvas::sizeHint() const {
  return {640, minimumHeight()};
}

int RowsCanvas::rowCount() const {
  return picture_ ? picture_->rowCount() : 0;
}

QString RowsCanvas::asText() const {
  return picture_ ? picture_->asText() : QString();
}

QString RowsCanvas::rowText(int index) const {
  return picture_ ? picture_->rowAsText(index) : QString();
}

QRect RowsCanvas::rowRect(int index) const {
  return placed() != nullptr ? placed()->rowRect(index).toAlignedRect() : QRect();
}

QRectF RowsCanvas::bandHolding(Time t) const {
  const int last = rowCount() - 1;
  for (int i = 0; i <= last; ++i) {
    if (t < picture_->row(i).end || i == last) {
      return placed()->rowRect(i);
    }
  }
  return {};
}

int RowsCanvas::currentRow() const {
  const Interval& stretch = selection_.stretch();
  const Time middle = stretch.begin + stretch.length() / 2;
  for (int i = 0; i < rowCount(); ++i) {
    const Interval row = picture_->row(i);
    if (middle >= row.begin && middle < row.end) {
      return i;
    }
  }
  return -1;
}

/// Paints the rows of a part of this widget, to be shown as often as needed.
void RowsCanvas::keepRows(const QRect& shown) {
  const double ratio = devicePixelRatioF();
  const QSize pixels = (QSizeF(shown.size()) * ratio).toSize();
  if (kept_.size() != pixels) {
    kept_ = QPixmap(pixels);
  }
  kept_.setDevicePixelRatio(ratio);
  kept_.fill(look_.paper);
  QPainter painter(&kept_);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(-shown.topLeft());
  painter.setClipRect(shown);
  placed()->paint(painter, overlay_.working);
  keptPlace_ = shown;
}

void RowsCanvas::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  if (placed() == nullptr) {
    painter.fillRect(event->rect(), look_.paper);
    return;
  }
  const QRect seen = visibleRegion().boundingRect();
  const QRect shown = seen.contains(event->rect()) ? seen : event->rect();
  const bool sharp = qFuzzyCompare(kept_.devicePixelRatio(), devicePixelRatioF());
  if (!keptPlace_.contains(event->rect()) || !sharp) {
    keepRows(shown);
  }
  for (const QRect& part : event->region()) {
    const QRectF source(QPointF(part.topLeft() - keptPlace_.topLeft()) * kept_.devicePixelRatio(),
                        QSizeF(part.size()) * kept_.devicePixelRatio());
    painter.drawPixmap(QRectF(part), kept_, source);
  }
  painter.setRenderHint(QPainter::Antialiasing);
  placed()->paintOverlay(painter, overlay_);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look_.accent, 2));
    painter.drawRect(QRectF(seen).adjusted(1, 1, -1, -1));
  }
  emit painted();
}

void RowsCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    layOut();
  } else {
    forgetPlaces();
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

} // namespace afterbeat::window
