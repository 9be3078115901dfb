#include "app/window/signals/rhythm_strip.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr double kPad = 4;
/// A shape cannot be told from another in less.
constexpr double kLeastShape = 6;
/// No word fits into less.
constexpr double kLeastWritten = 30;

void paintZigzag(QPainter& painter, double left, double right, double middle, double half) {
  constexpr double kStep = 4;
  QPolygonF line;
  int turn = 0;
  for (double x = left; x <= right; x += kStep) {
    line << QPointF(x, middle + (turn++ % 2 == 0 ? half : -half));
  }
  painter.drawPolyline(line);
}

void paintTicks(QPainter& painter, double left, double right, double middle, double half) {
  constexpr double kStep = 9;
  QList<QLineF> ticks{QLineF(left, middle + half, right, middle + half)};
  for (double x = left + kStep / 2; x <= right; x += kStep) {
    ticks << QLineF(x, middle - half, x, middle + half);
  }
  painter.drawLines(ticks);
}

void paintDots(QPainter& painter, double left, double right, double middle, const QColor& color) {
  constexpr double kStep = 5, kSize = 2;
  QVector<QRectF> dots;
  for (double x = left; x + kSize <= right; x += kStep) {
    dots << QRectF(x, middle - kSize / 2, kSize, kSize);
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(color);
  painter.drawRects(dots);
}

/// The words and the shape of one stretch.
void paintStretch(QPainter& painter, const RhythmStretch& one, const QRectF& box,
                  const Look& look) {
  const QFontMetricsF metrics(painter.font());
  double left = box.left() + kPad;
  for (const QString& text : box.width() < kLeastWritten ? QStringList() : shortening(one)) {
    const double width = metrics.horizontalAdvance(text);
    if (left + width + kPad <= box.right()) {
      // Lines of moments go through the lane: words stand before them.
      painter.fillRect(QRectF(left - 1, box.top() + 1, width + 2, box.height() - 2),
                       one.isHint() ? look.paper : look.panel);
      painter.setPen(look.ink);
      painter.drawText(QRectF(left, box.top(), width + 1, box.height()),
                       Qt::AlignLeft | Qt::AlignVCenter, text);
      left += width + kPad * 1.5;
      break;
    }
  }
  const double from = left > box.left() + kPad ? left : box.left() + 1;
  if (box.right() - kPad / 2 - from >= kLeastShape || from < left) {
    paintRhythmShape(painter, one.kind, from, box.right() - kPad / 2, box, look.ink);
  }
}

} // namespace

void paintRhythmShape(QPainter& painter, RhythmKind kind, double left, double right,
                      const QRectF& line, const QColor& color) {
  const double middle = std::floor(line.center().y()) + 0.5;
  const double half = std::floor(line.height() * 0.25);
  painter.setPen(QPen(color, 1));
  painter.setBrush(Qt::NoBrush);
  switch (kind) {
  case RhythmKind::shockable:
    painter.setRenderHint(QPainter::Antialiasing, true);
    paintZigzag(painter, left, right, middle, half);
    painter.setRenderHint(QPainter::Antialiasing, false);
    break;
  case RhythmKind::organised:
    paintTicks(painter, left, right, middle, half);
    break;
  case RhythmKind::asystole:
    painter.fillRect(QRectF(left, middle - 1, right - left, 2), color);
    break;
  case RhythmKind::unclear:
    paintDots(painter, left, right, middle, color);
    break;
  }
}

void paintRhythms(QPainter& painter, const RhythmLine& rhythms, const StripFrame& frame,
                  const Look& look) {
  const auto [first, last] = rhythms.within(frame.shown);
  double painted = frame.line.left() - 1.0;
  for (std::size_t i = first; i < last; ++i) {
    const RhythmStretch& one = rhythms.all()[i];
    const double left = std::max<double>(frame.line.left(), frame.x(one.where.begin));
    const double right = std::min<double>(frame.line.right() + 1, frame.x(one.where.end));
    // Over hours many stretches share a pixel: the first of them stands for it.
    if (right <= left || right < painted + 1) {
      continue;
    }
    painted = right;
    const QRectF box(left, frame.line.top() + 1, right - left, frame.line.height() - 2);
    if (!one.isHint()) {
      painter.fillRect(box, look.panel);
      painter.setPen(QPen(look.faintInk, 1));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(box.adjusted(0, 0, -1, -1));
    } else if (one.where.begin > frame.shown.begin) {
      painter.fillRect(QRectF(left, box.top(), 1, box.height()), look.faintInk);
    }
    paintStretch(painter, one, box, look);
  }
}

} // namespace afterbeat::window
