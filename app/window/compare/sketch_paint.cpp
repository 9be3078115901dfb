#include "app/window/compare/sketch_paint.h"

#include <QCoreApplication>
#include <QPainter>
#include <QRectF>

#include <algorithm>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

} // namespace

void paintSketch(QPainter& painter, const QRectF& area, const archive::RowsSketch& sketch,
                 const Look& look) {
  if (sketch.length <= Duration{}) {
    return;
  }
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  const double whole = seconds(std::max(sketch.length, kSketchLength));
  const auto x = [&](Duration t) { return area.left() + area.width() * seconds(t) / whole; };
  const auto box = [&](const Interval& part, double top, double bottom) {
    const double left = x(part.begin - Time{});
    return QRectF(
        QPointF(left, area.top() + area.height() * top),
        QPointF(std::max(left + 1, x(part.end - Time{})), area.top() + area.height() * bottom));
  };
  const Interval all{Time{}, Time{} + sketch.length};
  if (sketch.handsKnown) {
    painter.fillRect(box(all, 0.3, 0.9), look.rows.handsOn);
    for (const Interval& pause : sketch.pauses) {
      painter.fillRect(box(pause, 0.3, 0.9), look.paper);
    }
  }
  for (const auto* open : {&sketch.circulation, &sketch.leftOut}) {
    for (const Interval& part : *open) {
      painter.fillRect(box(part, 0.3, 0.9), look.paper);
    }
  }
  for (const Interval& part : sketch.circulation) {
    painter.fillRect(box(part, 0.55, 0.65), look.ink);
  }
  painter.fillRect(box(all, 0.9, 1.0), look.faintInk);
  for (const Duration shock : sketch.shocks) {
    painter.fillRect(QRectF(x(shock) - 1, area.top(), 2, area.height()), look.ink);
    painter.fillRect(QRectF(x(shock) - 1, area.top(), 5, area.height() * 0.25), look.ink);
  }
  painter.restore();
}

QString sketchWords(const archive::RowsSketch& sketch) {
  if (sketch.length <= Duration{}) {
    return tr("nothing begins a resuscitation here");
  }
  QStringList parts{words().length(sketch.length)};
  parts << (sketch.handsKnown ? tr("pauses: %1").arg(sketch.pauses.size())
                              : tr("compressions not recorded"));
  parts << tr("shocks: %1").arg(sketch.shocks.size());
  if (!sketch.circulation.empty()) {
    parts << tr("circulation returned");
  }
  return parts.join(QStringLiteral(", "));
}

} // namespace afterbeat::window
