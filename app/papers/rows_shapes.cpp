#include "app/papers/rows_paint.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// Lines that rise to the right (`up`) or fall, on a fixed raster so that neighbours agree.
void addDiagonals(QList<QLineF>& lines, const QRectF& box, double spacing, bool up) {
  const double sign = up ? 1 : -1;
  // On such a line x + sign * y is the same everywhere.
  const double low = box.left() + std::min(sign * box.top(), sign * box.bottom());
  const double high = box.right() + std::max(sign * box.top(), sign * box.bottom());
  for (double c = std::ceil(low / spacing) * spacing; c < high; c += spacing) {
    const double xTop = std::clamp(c - sign * box.top(), box.left(), box.right());
    const double xBottom = std::clamp(c - sign * box.bottom(), box.left(), box.right());
    lines.append(QLineF(xTop, sign * (c - xTop), xBottom, sign * (c - xBottom)));
  }
}

} // namespace

void paintHatch(QPainter& painter, const QRectF& box, double spacing, const QColor& color,
                double width, bool cross) {
  QList<QLineF> lines;
  addDiagonals(lines, box, spacing, true);
  if (cross) {
    addDiagonals(lines, box, spacing, false);
  }
  painter.setPen(QPen(color, width, Qt::SolidLine, Qt::FlatCap));
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.drawLines(lines);
}

void paintWave(QPainter& painter, double from, double to, double y, double amplitude, double length,
               const QColor& color, double width) {
  const double step = length / 8;
  QPolygonF points;
  for (double x = from; x < to; x += step) {
    points << QPointF(x, y - amplitude * std::sin((x - from) * 2 * M_PI / length));
  }
  points << QPointF(to, y - amplitude * std::sin((to - from) * 2 * M_PI / length));
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setPen(QPen(color, width));
  painter.drawPolyline(points);
}

void paintAnalysisBar(QPainter& painter, const QRectF& bar, MarkKind kind, const RowsLook& look,
                      double line) {
  painter.setRenderHint(QPainter::Antialiasing, true);
  if (kind == MarkKind::analysisShock) {
    painter.fillRect(bar, look.ink);
    return;
  }
  painter.setPen(QPen(look.ink, line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setBrush(Qt::NoBrush);
  if (kind == MarkKind::analysisNoShock) {
    // Another shape, not another filling: it must survive a mono printer and a few pixels.
    const double thick = std::max(line, bar.height() * 0.28);
    painter.fillRect(QRectF(bar.left(), bar.center().y() - thick / 2, bar.width(), thick),
                     look.ink);
    for (const double x : {bar.left(), bar.right() - thick}) {
      painter.fillRect(QRectF(x, bar.top() - thick / 2, thick, bar.height() + thick), look.ink);
    }
    return;
  }
  const double dash = std::max(1.5, bar.height() * 1.2);
  for (double x = bar.left(); x < bar.right(); x += 2 * dash) {
    painter.fillRect(QRectF(x, bar.top(), std::min(dash, bar.right() - x), bar.height()), look.ink);
  }
}

void paintShockPole(QPainter& painter, const QPointF& top, double bottom, double small,
                    MarkKind kind, int direction, const RowsLook& look, double line) {
  const double half = small * 0.16;
  painter.setRenderHint(QPainter::Antialiasing, true);
  const QRectF pole(top.x() - half, top.y(), 2 * half, bottom - top.y());
  const QPolygonF pennant{{QPointF(top.x() + direction * half, top.y()),
                           QPointF(top.x() + direction * small * 0.9, top.y() + small * 0.4),
                           QPointF(top.x() + direction * half, top.y() + small * 0.8)}};
  if (kind == MarkKind::shockGiven) {
    painter.fillRect(pole, look.ink);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.ink);
    painter.drawPolygon(pennant);
    return;
  }
  painter.setPen(QPen(look.ink, line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setBrush(look.paper);
  if (kind == MarkKind::shockNotGiven) {
    painter.drawRect(pole);
  } else {
    const double dash = small * 0.22;
    painter.fillRect(pole, look.paper);
    for (double y = top.y(); y < bottom; y += 2 * dash) {
      painter.fillRect(QRectF(pole.left(), y, pole.width(), std::min(dash, bottom - y)), look.ink);
    }
  }
  painter.drawPolygon(pennant);
}

void paintRemarkTick(QPainter& painter, const QPointF& tip, double small, const QColor& color) {
  const double half = small * 0.26;
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setPen(Qt::NoPen);
  painter.setBrush(color);
  painter.drawPolygon(QPolygonF{{QPointF(tip.x() - half, tip.y() - small * 0.45),
                                 QPointF(tip.x() + half, tip.y() - small * 0.45), tip}});
}

void paintMedicationSign(QPainter& painter, const QPointF& tip, double small, const RowsLook& look,
                         double line) {
  const double half = small * 0.24;
  const double wide = small * 0.32;
  const QPointF middle(tip.x(), tip.y() - half);
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setPen(
      QPen(look.ink, std::max(1.0, line * 1.3), Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
  painter.setBrush(look.paper);
  painter.drawPolygon(
      QPolygonF{{QPointF(middle.x(), middle.y() - half), QPointF(middle.x() + wide, middle.y()),
                 tip, QPointF(middle.x() - wide, middle.y())}});
}

void paintTornEnd(QPainter& painter, double x, double top, double bottom, double tooth,
                  const RowsLook& look, double line) {
  const int teeth = std::max(2, static_cast<int>(std::lround((bottom - top) / (tooth * 1.4))));
  const double step = (bottom - top) / (2 * teeth);
  QPolygonF edge;
  for (int i = 0; i <= 2 * teeth; ++i) {
    edge << QPointF(x + (i % 2 == 0 ? tooth : 0), top + i * step);
  }
  QPolygonF blank = edge;
  const double beyond = x + tooth + std::max(1.0, line);
  blank << QPointF(beyond, bottom) << QPointF(beyond, top);
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.setPen(Qt::NoPen);
  painter.setBrush(look.paper);
  painter.drawPolygon(blank);
  painter.setPen(
      QPen(look.ink, std::max(1.0, line * 1.6), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.drawPolyline(edge);
}

void paintCycleCorner(QPainter& painter, const QPointF& at, double small, const QColor& color,
                      double line) {
  const double thick = std::max(1.0, line * 1.3);
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.fillRect(QRectF(at.x(), at.y(), thick, small * 0.42), color);
  painter.fillRect(QRectF(at.x(), at.y() + small * 0.42 - thick, small * 0.45, thick), color);
}

void paintLegendShape(QPainter& painter, const QRectF& box, LegendShape shape, const RowsLook& look,
                      double line) {
  const double size = box.height() / 1.4;
  const QRectF mark(box.left(), box.top() + size * 0.15, size * 2, size * 1.1);
  const QPointF middle = mark.center();
  const auto frame = [&](const QColor& color, double width) {
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(color, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawRect(mark);
  };
  const auto analysis = [&](MarkKind kind) {
    paintAnalysisBar(painter,
                     QRectF(mark.left(), middle.y() - size * 0.15, mark.width(), size * 0.3), kind,
                     look, line);
  };
  const auto pole = [&](MarkKind kind) {
    paintShockPole(painter, QPointF(middle.x() - size * 0.3, mark.top()), mark.bottom(), size, kind,
                   1, look, line);
  };
  switch (shape) {
  case LegendShape::handsOn:
    painter.fillRect(mark, look.handsOn);
    break;
  case LegendShape::handsOnUnknownRate: {
    painter.setPen(QPen(look.handsOn, line));
    for (double y = mark.top() + line; y < mark.bottom(); y += line * 2.4) {
      painter.drawLine(QPointF(mark.left(), y), QPointF(mark.right(), y));
    }
    frame(look.handsOn, line);
    break;
  }
  case LegendShape::handsOnDerived:
    painter.fillRect(mark, derivedGround(look));
    frame(look.handsOn, line * 1.4);
    break;
  case LegendShape::corridor:
    painter.fillRect(mark, look.target);
    painter.setPen(QPen(look.ink, line, Qt::DotLine));
    painter.drawLine(mark.topLeft(), mark.topRight());
    painter.drawLine(mark.bottomLeft(), mark.bottomRight());
    break;
  case LegendShape::handsOff:
    paintHatch(painter, mark, size * 0.42, look.hatch, line * 0.8, false);
    break;
  case LegendShape::handsOffBeyond:
    paintHatch(painter, mark, size * 0.42, look.hatch, line * 0.8, false);
    frame(look.attention, line * 1.6);
    break;
  case LegendShape::shock:
    pole(MarkKind::shockGiven);
    break;
  case LegendShape::shockNotGiven:
    pole(MarkKind::shockNotGiven);
    break;
  case LegendShape::shockUnknown:
    pole(MarkKind::shockUnknown);
    break;
  case LegendShape::analysisShock:
    analysis(MarkKind::analysisShock);
    break;
  case LegendShape::analysisNoShock:
    analysis(MarkKind::analysisNoShock);
    break;
  case LegendShape::analysisInconclusive:
    analysis(MarkKind::analysisInconclusive);
    break;
  case LegendShape::breath:
  case LegendShape::breathDerived:
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setBrush(look.paper);
    painter.setPen(QPen(look.ink, line));
    paintBreath(painter, middle, size * 0.3, shape == LegendShape::breathDerived);
    break;
  case LegendShape::circulation:
    paintWave(painter, mark.left(), mark.right(), middle.y(), size * 0.3, size, look.ink,
              line * 1.2);
    break;
  case LegendShape::remark:
    paintRemarkTick(painter, QPointF(middle.x(), middle.y() + size * 0.3), size * 1.3, look.ink);
    break;
  case LegendShape::medication:
    paintMedicationSign(painter, QPointF(middle.x(), middle.y() + size * 0.4), size * 1.1, look,
                        line);
    break;
  case LegendShape::brokeOff:
    paintTornEnd(painter, middle.x(), mark.top(), mark.bottom(), size * 0.4, look, line);
    break;
  case LegendShape::cycle:
    paintCycleCorner(painter, QPointF(middle.x() - size * 0.3, middle.y() - size * 0.3), size * 1.2,
                     look.ink, line);
    break;
  case LegendShape::excluded:
    paintHatch(painter, mark, size * 0.42, look.excluded, line * 0.8, true);
    break;
  }
}

} // namespace afterbeat::papers
