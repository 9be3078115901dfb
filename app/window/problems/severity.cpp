/// Severities as words and shapes.
#include "app/window/problems/problems_model.h"

#include <QPainter>
#include <QPolygonF>

#include <cmath>
#include <numbers>

namespace afterbeat::window {

namespace {

QPolygonF octagon(double size) {
  QPolygonF shape;
  const double radius = size * 0.48;
  for (int i = 0; i < 8; ++i) {
    const double angle = std::numbers::pi / 8 + i * std::numbers::pi / 4;
    shape << QPointF(size / 2 + radius * std::cos(angle), size / 2 + radius * std::sin(angle));
  }
  return shape;
}

void paintShape(QPainter& painter, Severity severity, const QColor& ink, double size) {
  painter.setPen(QPen(ink, size / 11, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const double a = size * 0.34, b = size * 0.66, middle = size / 2;
  switch (severity) {
  case Severity::error:
    painter.drawPolygon(octagon(size));
    painter.drawLine(QPointF(a, a), QPointF(b, b));
    painter.drawLine(QPointF(a, b), QPointF(b, a));
    break;
  case Severity::warning:
    painter.drawPolygon(
        QPolygonF({{middle, size * 0.08}, {size * 0.95, size * 0.9}, {size * 0.05, size * 0.9}}));
    painter.drawLine(QPointF(middle, size * 0.38), QPointF(middle, size * 0.6));
    painter.drawPoint(QPointF(middle, size * 0.76));
    break;
  case Severity::info:
    painter.drawEllipse(QPointF(middle, middle), size * 0.43, size * 0.43);
    painter.drawLine(QPointF(middle, size * 0.48), QPointF(middle, size * 0.7));
    painter.drawPoint(QPointF(middle, size * 0.3));
    break;
  }
}

} // namespace

QString severityWord(Severity severity) {
  switch (severity) {
  case Severity::error:
    return ProblemsModel::tr("error");
  case Severity::warning:
    return ProblemsModel::tr("warning");
  case Severity::info:
    break;
  }
  return ProblemsModel::tr("information");
}

QIcon severityIcon(Severity severity, const QColor& ink, int size) {
  QIcon icon;
  for (const int scale : {1, 2}) {
    QPixmap pixmap(size * scale, size * scale);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    paintShape(painter, severity, ink, size * scale);
    painter.end();
    pixmap.setDevicePixelRatio(scale);
    icon.addPixmap(pixmap);
  }
  return icon;
}

} // namespace afterbeat::window
