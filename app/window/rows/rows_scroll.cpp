#include "app/window/rows/rows_scroll.h"

#include <QResizeEvent>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

RowsScroll::RowsScroll(QWidget* canvas, QWidget* parent) : QScrollArea(parent) {
  setWidget(canvas);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("Rows"));
}

void RowsScroll::revealBand(const QRectF& band) {
  if (!band.isEmpty()) {
    // With its words above; whole where the view has the room.
    const int above =
        std::min(static_cast<int>(band.height()), std::max(0, (viewport()->height() - 2) / 2));
    ensureVisible(width() / 2, static_cast<int>(band.center().y()), 0, above);
  }
}

void RowsScroll::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  emit viewHeightChanged(viewport()->height());
}

bool RowsScroll::eventFilter(QObject* watched, QEvent* event) {
  const bool laidOut = watched == widget() && event->type() == QEvent::Resize;
  const bool other = QScrollArea::eventFilter(watched, event);
  if (laidOut && kept_) {
    // The scroll bar knows its new range only after this.
    QMetaObject::invokeMethod(
        this, [this] { revealBand(kept_()); }, Qt::QueuedConnection);
  }
  return other;
}

Interval withoutSlivers(const papers::RowsPicture& picture, Interval stretch) {
  constexpr Duration kRow = papers::RowsPicture::kRowLength;
  constexpr Duration kSliver = kRow / 150;
  if (picture.rowCount() == 0) {
    return stretch;
  }
  const Time first = picture.row(0).begin;
  const auto intoRow = [&](Time t) { return (t - first) % kRow; };
  const Duration left = kRow - intoRow(stretch.begin), over = intoRow(stretch.end);
  const bool many = stretch.length() > 2 * kSliver;
  if (many && stretch.begin >= first && left < kSliver) {
    stretch.begin = stretch.begin + left;
  }
  if (many && stretch.end > first && over < kSliver) {
    stretch.end = stretch.end - over - Duration{1};
  }
  return stretch;
}

double rowHeightFor(const papers::RowsPicture& picture, const papers::RowsLook& look, double width,
                    double room, double least, double most) {
  const auto heightWith = [&](double row) {
    papers::RowsLook tried = look;
    tried.rowHeight = row;
    return picture.heightFor(width, tried, true);
  };
  // The height of everything grows evenly with the height of a row.
  const double lowest = heightWith(least), highest = heightWith(most);
  const double fitting =
      highest > lowest ? least + (room - lowest) / (highest - lowest) * (most - least) : least;
  return std::clamp(std::floor(fitting), least, most);
}

} // namespace afterbeat::window
