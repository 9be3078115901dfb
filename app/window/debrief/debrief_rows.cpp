#include "app/window/debrief/debrief_rows.h"

#include "app/papers/debrief.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr double kMargin = 10;
constexpr double kLeastRow = 22, kMostRow = 96;
constexpr double kSmallestShare = 0.75;
constexpr Duration kStep{5'000'000};

} // namespace

DebriefRowsCanvas::DebriefRowsCanvas(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), session_(session), selection_(selection),
      look_(Look::of(palette(), font())) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Rows of the rescue, two minutes each"));
  connect(&selection_, &Selection::cursorChanged, this, [this] {
    // Only the rows that the cursor leaves and comes to: while a record is replayed, many times a
    // second.
    updateRow(overlay_.cursor);
    overlay_.cursor = selection_.cursor();
    updateRow(overlay_.cursor);
  });
}

void DebriefRowsCanvas::refresh(bool wordsShown) {
  if (!session_.hasRecord()) {
    return;
  }
  picture_ = wordsShown
                 ? std::make_unique<papers::RowsPicture>(session_.record(), session_.figures(),
                                                         papers::inOwnLanguage)
                 : std::make_unique<papers::RowsPicture>(papers::withoutOwnWords(session_.record()),
                                                         session_.figures(), papers::inOwnLanguage);
  setAccessibleDescription(picture_->asText());
  layOut();
}

void DebriefRowsCanvas::setMoment(std::optional<Interval> moment) {
  overlay_.selected = moment && picture_ ? withoutSlivers(*picture_, *moment) : moment;
  update();
}

QRectF DebriefRowsCanvas::area() const {
  return QRectF(rect()).adjusted(kMargin, kMargin / 2, -kMargin, -kMargin / 2);
}

void DebriefRowsCanvas::setViewHeight(int height) {
  viewHeight_ = height;
  layOut();
}

void DebriefRowsCanvas::layOut() {
  if (!picture_) {
    return;
  }
  const double width = area().width(), room = viewHeight_ - kMargin;
  look_.rows.smallestShare = kSmallestShare;
  look_.rows.rowHeight = rowHeightFor(*picture_, look_.rows, width, room, kLeastRow, kMostRow);
  const double needed = picture_->heightFor(width, look_.rows, true);
  fit_ = needed > room && picture_->leastHeightFor(width, look_.rows, true) <= room;
  const int height = fit_ ? viewHeight_ : static_cast<int>(std::ceil(needed + kMargin));
  if (minimumHeight() != height) {
    setMinimumHeight(height);
    updateGeometry();
  }
  update();
}

void DebriefRowsCanvas::updateRow(std::optional<Time> t) {
  if (t) {
    // The cursor's head stands out of the band, by less than the height of a letter.
    const int head = QFontMetrics(font()).height();
    update(bandHolding(*t).toAlignedRect().adjusted(-head, -head, head, head / 2));
  }
}

int DebriefRowsCanvas::mostHeight() const {
  if (!picture_) {
    return 0;
  }
  papers::RowsLook most = look_.rows;
  most.rowHeight = kMostRow;
  return static_cast<int>(std::ceil(picture_->heightFor(area().width(), most, true) + kMargin));
}

QRectF DebriefRowsCanvas::bandHolding(Time t) const {
  const int last = picture_ ? picture_->rowCount() - 1 : -1;
  for (int i = 0; i <= last; ++i) {
    if (t < picture_->row(i).end || i == last) {
      return picture_->rowRect(i, area(), look_.rows, true, fit_);
    }
  }
  return {};
}

void DebriefRowsCanvas::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.fillRect(event->rect(), look_.paper);
  if (!picture_) {
    return;
  }
  painter.setRenderHint(QPainter::Antialiasing);
  picture_->paint(painter, area(), look_.rows, overlay_, true, fit_);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look_.accent, 2));
    painter.drawRect(QRectF(visibleRegion().boundingRect()).adjusted(1, 1, -1, -1));
  }
}

void DebriefRowsCanvas::mousePressEvent(QMouseEvent* event) {
  if (!picture_ || event->button() != Qt::LeftButton) {
    return;
  }
  if (const auto t = picture_->timeAt(event->position(), area(), look_.rows, true, fit_)) {
    emit pointedAt(*t);
  }
}

void DebriefRowsCanvas::keyPressEvent(QKeyEvent* event) {
  if (!picture_ || picture_->rowCount() == 0) {
    QWidget::keyPressEvent(event);
    return;
  }
  const Time begin = picture_->row(0).begin;
  const Time end = picture_->row(picture_->rowCount() - 1).end;
  const Time here = selection_.cursor().value_or(begin);
  constexpr Duration row = papers::RowsPicture::kRowLength;
  Time to = here;
  switch (event->key()) {
  case Qt::Key_Left:
    to = here - kStep;
    break;
  case Qt::Key_Right:
    to = here + kStep;
    break;
  case Qt::Key_Up:
    to = here - row;
    break;
  case Qt::Key_Down:
    to = here + row;
    break;
  case Qt::Key_Home:
    to = begin;
    break;
  case Qt::Key_End:
    to = end;
    break;
  default:
    QWidget::keyPressEvent(event);
    return;
  }
  emit pointedAt(std::clamp(to, begin, end));
}

void DebriefRowsCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    layOut();
  }
}

void DebriefRowsCanvas::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    look_ = Look::of(palette(), font());
    layOut();
  }
}

DebriefRows::DebriefRows(Session& session, Selection& selection, QWidget* parent)
    : RowsScroll(new DebriefRowsCanvas(session, selection), parent),
      canvas_(static_cast<DebriefRowsCanvas*>(widget())) {
  connect(this, &RowsScroll::viewHeightChanged, canvas_, &DebriefRowsCanvas::setViewHeight);
  setKept([this, &selection] {
    return selection.cursor() ? canvas_->bandHolding(*selection.cursor()) : QRectF();
  });
  connect(&selection, &Selection::cursorChanged, this, [this, &selection] {
    if (selection.cursor()) {
      reveal(*selection.cursor());
    }
  });
}

void DebriefRows::reveal(Time t) {
  revealBand(canvas_->bandHolding(t));
}

} // namespace afterbeat::window
