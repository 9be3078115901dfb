#include "app/window/problems/problems_model.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPalette>
#include <QPolygonF>

#include <algorithm>
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

void ProblemsModel::show(std::vector<Problem> problems) {
  beginResetModel();
  problems_ = std::move(problems);
  std::stable_sort(problems_.begin(), problems_.end(), [](const Problem& a, const Problem& b) {
    return a.severity != b.severity ? a.severity > b.severity : a.line < b.line;
  });
  endResetModel();
}

int ProblemsModel::count(Severity severity) const {
  return static_cast<int>(
      std::count_if(problems_.begin(), problems_.end(),
                    [severity](const Problem& p) { return p.severity == severity; }));
}

QString ProblemsModel::summary() const {
  const int errors = count(Severity::error), warnings = count(Severity::warning),
            notes = count(Severity::info);
  QStringList parts;
  if (errors > 0) {
    parts << (errors == 1 ? tr("1 error") : tr("%1 errors").arg(errors));
  }
  if (warnings > 0) {
    parts << (warnings == 1 ? tr("1 warning") : tr("%1 warnings").arg(warnings));
  }
  if (notes > 0) {
    parts << (notes == 1 ? tr("1 note") : tr("%1 notes").arg(notes));
  }
  return parts.isEmpty() ? tr("no problems found") : parts.join(QStringLiteral(", "));
}

int ProblemsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(problems_.size());
}

int ProblemsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columnCount_;
}

QVariant ProblemsModel::data(const QModelIndex& index, int role) const {
  const Problem& problem = problems_[static_cast<std::size_t>(index.row())];
  const QString text = QString::fromStdString(sentence(problem));
  if (role == Qt::DecorationRole && index.column() == severityColumn) {
    return severityIcon(problem.severity, QGuiApplication::palette().color(QPalette::Text), 16);
  }
  if (role == Qt::ToolTipRole) {
    return text;
  }
  if (role != Qt::DisplayRole) {
    return {};
  }
  switch (index.column()) {
  case severityColumn:
    return severityWord(problem.severity);
  case lineColumn:
    return problem.line > 0 ? tr("line %1").arg(problem.line) : tr("no line");
  case sentenceColumn:
    return text;
  default:
    return {};
  }
}

QVariant ProblemsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
    return {};
  }
  switch (section) {
  case severityColumn:
    return tr("how bad");
  case lineColumn:
    return tr("where");
  case sentenceColumn:
    return tr("what was found");
  default:
    return {};
  }
}

} // namespace afterbeat::window
