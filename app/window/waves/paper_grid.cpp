#include "app/window/waves/paper_grid.h"

#include <qcustomplot.h>

#include <cmath>

namespace afterbeat::window {

namespace {

constexpr double kMillimetresPerInch = 25.4;

/// Lines at multiples of `step` between two ends of an axis.
void drawLines(QCPPainter& painter, const QCPAxis& axis, const QRect& room, double step) {
  const QCPRange range = axis.range();
  const auto first = static_cast<long long>(std::ceil(range.lower / step));
  const auto last = static_cast<long long>(std::floor(range.upper / step));
  for (long long i = first; i <= last; ++i) {
    const double at = axis.coordToPixel(static_cast<double>(i) * step);
    if (axis.orientation() == Qt::Horizontal) {
      painter.drawLine(QPointF(at, room.top()), QPointF(at, room.bottom()));
    } else {
      painter.drawLine(QPointF(room.left(), at), QPointF(room.right(), at));
    }
  }
}

double pixelsOf(const QCPAxis& axis, double length) {
  return std::fabs(axis.coordToPixel(length) - axis.coordToPixel(0));
}

} // namespace

bool isEcg(const Channel& channel) {
  return channel.quantity == "ecg" && channel.unit == "mV";
}

Squares squaresFor(double smallSquarePixels) {
  constexpr double kSmallest = 4, kLeastLarge = 6;
  constexpr double kSmallInLarge = kLargeSquareSeconds / kSmallSquareSeconds;
  return {smallSquarePixels >= kSmallest, smallSquarePixels * kSmallInLarge >= kLeastLarge};
}

void drawPaperGrid(QCPPainter& painter, const QCPAxisRect& track, const Look& look) {
  const QCPAxis& time = *track.axis(QCPAxis::atBottom);
  const QCPAxis& value = *track.axis(QCPAxis::atLeft);
  const Squares across = squaresFor(pixelsOf(time, kSmallSquareSeconds));
  const Squares up = squaresFor(pixelsOf(value, kSmallSquareMillivolts));
  const QRect room = track.rect();
  painter.setPen(QPen(QColor(look.dark ? "#3a2b29" : "#f7e3de"), 1));
  if (across.small) {
    drawLines(painter, time, room, kSmallSquareSeconds);
  }
  if (up.small) {
    drawLines(painter, value, room, kSmallSquareMillivolts);
  }
  painter.setPen(QPen(QColor(look.dark ? "#5c413c" : "#eac0b5"), 1));
  if (across.large) {
    drawLines(painter, time, room, kLargeSquareSeconds);
  }
  if (up.large) {
    drawLines(painter, value, room, kLargeSquareMillivolts);
  }
}

double pixelsPerMillimetre(const QWidget& screen) {
  // Screens that do not know their size report none, or one no screen has.
  constexpr double kLeast = 40, kMost = 700;
  const double physical = screen.physicalDpiX();
  const double dots = physical >= kLeast && physical <= kMost ? physical : screen.logicalDpiX();
  return dots / kMillimetresPerInch;
}

PaperScale paperScale(const QCPAxisRect& track, const QWidget& screen) {
  const double perMillimetre = pixelsPerMillimetre(screen);
  return {pixelsOf(*track.axis(QCPAxis::atBottom), 1) / perMillimetre,
          pixelsOf(*track.axis(QCPAxis::atLeft), 1) / perMillimetre};
}

} // namespace afterbeat::window
