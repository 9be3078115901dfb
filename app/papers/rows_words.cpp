#include "app/papers/rows_paint.h"

#include <QPainter>

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// A blank ground under words that lie on a hatch.
bool needsGround(TextRole role, RowDetail detail) {
  const bool onBand = role == TextRole::circulation || role == TextRole::deviceOn;
  return (detail == RowDetail::dense && onBand) || role == TextRole::pause ||
         role == TextRole::pauseBeyond || role == TextRole::excluded;
}

QColor colorOf(TextRole role, const RowsLook& look) {
  switch (role) {
  case TextRole::flagGiven:
    return look.paper;
  case TextRole::pauseBeyond:
    return look.attention;
  case TextRole::rowClock:
  case TextRole::cycle:
  case TextRole::deviceOn:
  case TextRole::legend:
    return look.faintInk;
  default:
    return look.ink;
  }
}

void paintFlag(QPainter& painter, const PlacedText& text, const RowsLook& look, double line) {
  painter.setRenderHint(QPainter::Antialiasing, true);
  if (text.role == TextRole::flagGiven) {
    painter.fillRect(text.box, look.ink);
    return;
  }
  painter.setBrush(look.paper);
  painter.setPen(QPen(look.ink, line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.drawRect(text.box.adjusted(line / 2, line / 2, -line / 2, -line / 2));
}

/// "On before": an arrow head to the left of the words.
void paintDeviceOn(QPainter& painter, const PlacedText& text, const RowsLook& look, double line) {
  const double half = text.size * 0.3;
  const double y = text.box.center().y();
  const double left = text.box.left() + line;
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look.ink, line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.drawPolygon(QPolygonF{
      {QPointF(left, y), QPointF(left + 2 * half, y - half), QPointF(left + 2 * half, y + half)}});
}

} // namespace

void paintTexts(QPainter& painter, const RowsModel& model, const RowsLayout& layout,
                const RowsLook& look, const QRectF& shown) {
  const Lettering lettering(look.font);
  const double line = std::max(0.4, layout.geometry.sizes.small * 0.09);
  const auto items = legendItems(model);
  std::size_t legendItem = 0;
  for (const PlacedText& text : layout.texts) {
    const std::size_t item = text.role == TextRole::legend ? legendItem++ : 0;
    if (!shown.isNull() && !text.box.intersects(shown)) {
      continue;
    }
    if (needsGround(text.role, layout.geometry.sizes.detail)) {
      painter.fillRect(text.box, look.paper);
    }
    if (text.role == TextRole::flagGiven || text.role == TextRole::flagHollow) {
      paintFlag(painter, text, look, line);
    } else if (text.role == TextRole::legend) {
      paintLegendShape(painter, text.box, items[item].shape, look, line);
    } else if (text.role == TextRole::deviceOn) {
      paintDeviceOn(painter, text, look, line);
    }
    lettering.paint(painter, text.at, text.text, text.size, text.weight, colorOf(text.role, look));
  }
}

void paintBreath(QPainter& painter, const QPointF& centre, double radius, bool derived) {
  if (!derived) {
    painter.drawEllipse(centre, radius, radius);
    return;
  }
  constexpr int kSixteenth = 16, kFrom = 50, kSpan = 260;
  painter.drawArc(QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius),
                  kFrom * kSixteenth, kSpan * kSixteenth);
}

void paintBreaths(QPainter& painter, const RowsLayout& layout, const RowsLook& look,
                  const QRectF& shown) {
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setBrush(look.paper);
  painter.setPen(QPen(look.ink, std::max(0.5, layout.geometry.sizes.small * 0.11)));
  for (const PlacedBreath& breath : layout.breaths) {
    if (shown.isNull() || (breath.centre.y() + 2 * breath.radius >= shown.top() &&
                           breath.centre.y() - 2 * breath.radius <= shown.bottom())) {
      paintBreath(painter, breath.centre, breath.radius, breath.derived);
    }
  }
}

} // namespace afterbeat::papers
