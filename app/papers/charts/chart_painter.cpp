#include "app/papers/charts/chart_painter.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace afterbeat::papers {

namespace {

QColor mixed(const QColor& from, const QColor& to, double share) {
  const auto part = [&](int a, int b) {
    return static_cast<int>(std::lround(a + share * (b - a)));
  };
  return {part(from.red(), to.red()), part(from.green(), to.green()), part(from.blue(), to.blue())};
}

} // namespace

QPen ChartPainter::pen(const QColor& color, double share, Qt::PenStyle style) {
  return {color, share * layout_.size, style, Qt::FlatCap, Qt::MiterJoin};
}

void ChartPainter::paint(const Lettering& lettering) {
  painter_.save();
  painter_.setRenderHint(QPainter::Antialiasing, true);
  painter_.fillRect(layout_.area, look_.paper);
  paintGround();
  painter_.save();
  painter_.setClipRect(
      layout_.plot.adjusted(-layout_.size, -layout_.size / 2, layout_.size, layout_.size / 2));
  paintDayMarks();
  paintAmounts();
  paintLines();
  paintPoints();
  paintSummaries();
  paintBars();
  painter_.restore();
  paintKeys();
  paintTexts(lettering);
  painter_.restore();
}

void ChartPainter::paintBand(const QRectF& box) {
  painter_.fillRect(box, look_.band);
  painter_.setPen(pen(look_.bandEdge, 0.06));
  if (chart_.lanes()) {
    painter_.drawLine(box.topLeft(), box.bottomLeft());
    painter_.drawLine(box.topRight(), box.bottomRight());
  } else {
    painter_.drawLine(box.topLeft(), box.topRight());
    painter_.drawLine(box.bottomLeft(), box.bottomRight());
  }
}

void ChartPainter::paintGround() {
  const QRectF& plot = layout_.plot;
  const bool lanes = chart_.lanes();
  for (const ChartBand& band : chart_.bands) {
    if (lanes) {
      const double from = std::max(plot.left(), layout_.xAt(band.from));
      const double to = std::min(plot.right(), layout_.xAt(band.to));
      paintBand({from, plot.top(), to - from, plot.height()});
    } else {
      const double from = std::max(plot.top(), layout_.yAt(band.to, false));
      const double to = std::min(plot.bottom(), layout_.yAt(band.from, false));
      paintBand({plot.left(), from, plot.width(), to - from});
    }
  }
  painter_.setPen(pen(look_.grid, 0.07));
  if (lanes) {
    for (const ChartTick& tick : layout_.x.ticks) {
      if (chart_.points.empty() && chart_.bars.empty()) {
        break;
      }
      const double x = layout_.xAt(tick.at);
      painter_.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
    }
    painter_.setPen(pen(look_.faintInk, 0.05));
    for (int lane = 0; lane < chart_.y.names.size() && chart_.bars.empty(); ++lane) {
      const double y = layout_.laneFloor(lane, !chart_.summaries.empty());
      painter_.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
  } else {
    for (const ChartTick& tick : layout_.y.ticks) {
      const double y = layout_.yAt(tick.at, false);
      painter_.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
    painter_.setPen(pen(look_.faintInk, 0.07));
    for (const ChartTick& tick : layout_.x.ticks) {
      const double x = layout_.xAt(tick.at);
      painter_.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 0.3 * layout_.size));
    }
  }
  painter_.setPen(pen(look_.faintInk, 0.07));
  painter_.drawLine(plot.bottomLeft(), plot.bottomRight());
}

void ChartPainter::paintDayMarks() {
  for (const ChartMark& mark : chart_.dayMarks) {
    const double x = layout_.xAt(mark.x);
    painter_.setPen(pen(look_.ink, 0.1, Qt::DotLine));
    painter_.drawLine(QPointF(x, layout_.plot.top() - layout_.size / 2),
                      QPointF(x, layout_.plot.bottom()));
  }
}

void ChartPainter::paintLine(LineRole role, const QPolygonF& line) {
  switch (role) {
  case LineRole::through:
    painter_.setPen(pen(mixed(look_.paper, look_.value, 0.55), 0.08));
    break;
  case LineRole::centre:
    painter_.setPen(pen(look_.centre, 0.14));
    break;
  case LineRole::limit:
    painter_.setPen(pen(look_.centre, 0.08, Qt::DashLine));
    break;
  case LineRole::reference:
    painter_.setPen(pen(look_.bandEdge, 0.12, Qt::DashDotLine));
    break;
  }
  painter_.setBrush(Qt::NoBrush);
  painter_.drawPolyline(line);
}

void ChartPainter::paintLines() {
  for (const ChartLine& line : chart_.lines) {
    if (line.role == LineRole::through && !layout_.amounts.empty()) {
      continue;
    }
    QPolygonF part;
    for (const QPointF& corner : line.corners) {
      if (std::isfinite(corner.y())) {
        part << QPointF(layout_.xAt(corner.x()), layout_.yAt(corner.y(), chart_.lanes()));
      } else if (!part.isEmpty()) {
        paintLine(line.role, part);
        part.clear();
      }
    }
    if (!part.isEmpty()) {
      paintLine(line.role, part);
    }
  }
}

void ChartPainter::paintAmounts() {
  painter_.save();
  painter_.setRenderHint(QPainter::Antialiasing, chart_.lanes());
  for (std::size_t k = 0; k < layout_.amounts.size(); ++k) {
    const ChartAmount& amount = layout_.amounts[k];
    if (amount.count == 0) {
      continue;
    }
    QRectF box = amount.box;
    // Neighbours of one shade are one rectangle: a picture of shapes stays small.
    while (!chart_.lanes() && k + 1 < layout_.amounts.size() && layout_.amounts[k + 1].count > 0 &&
           layout_.amounts[k + 1].shade == amount.shade &&
           layout_.amounts[k + 1].box.top() == box.top()) {
      box.setRight(layout_.amounts[++k].box.right());
    }
    painter_.fillRect(box, mixed(look_.paper, look_.value, 0.25 + 0.15 * amount.shade));
  }
  painter_.restore();
}

void ChartPainter::paintPoint(PointShape shape, const QPointF& at, double radius) {
  const double edge = std::max(0.05 * layout_.size, 0.2 * radius);
  switch (shape) {
  case PointShape::usual:
    painter_.setPen(QPen(look_.paper, edge));
    painter_.setBrush(look_.value);
    painter_.drawEllipse(at, radius + edge / 2, radius + edge / 2);
    break;
  case PointShape::weak:
    painter_.setPen(QPen(look_.value, 0.4 * radius));
    painter_.setBrush(look_.paper);
    painter_.drawEllipse(at, 0.8 * radius, 0.8 * radius);
    break;
  case PointShape::signal: {
    const double r = 1.7 * radius;
    painter_.setPen(QPen(look_.paper, edge));
    painter_.setBrush(look_.attention);
    painter_.drawPolygon(QPolygonF(
        {{at.x(), at.y() - r}, {at.x() + r, at.y()}, {at.x(), at.y() + r}, {at.x() - r, at.y()}}));
    break;
  }
  }
}

/// In lanes from the floor up: of a pile whose points overlap each one is seen.
std::vector<std::size_t> ChartPainter::paintingOrder() const {
  std::vector<std::size_t> order(layout_.points.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  if (chart_.lanes()) {
    std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
      return layout_.points[a].y() > layout_.points[b].y();
    });
  }
  return order;
}

void ChartPainter::paintPoints() {
  for (const std::size_t i : paintingOrder()) {
    if (chart_.points[i].shape != PointShape::signal) {
      paintPoint(chart_.points[i].shape, layout_.points[i], layout_.radius);
    }
  }
  for (std::size_t i = 0; i < chart_.points.size(); ++i) {
    if (chart_.points[i].shape == PointShape::signal) {
      const QPointF at = i < layout_.points.size()
                             ? layout_.points[i]
                             : QPointF(layout_.xAt(chart_.points[i].x),
                                       layout_.yAt(chart_.points[i].y, chart_.lanes()));
      paintPoint(PointShape::signal, at, layout_.radius);
    }
  }
}

void ChartPainter::paintSummary(SummaryKind kind, double y, double from, double to, double median) {
  const double half = 0.26 * layout_.size;
  if (kind == SummaryKind::middleHalf) {
    painter_.setPen(pen(look_.centre, 0.07));
    painter_.setBrush(mixed(look_.paper, look_.centre, 0.22));
    painter_.drawRect(QRectF(from, y - half, std::max(0.0, to - from), 2 * half));
  } else {
    painter_.setPen(pen(look_.centre, 0.09));
    painter_.drawLine(QPointF(from, y), QPointF(to, y));
    painter_.drawLine(QPointF(from, y - half), QPointF(from, y + half));
    painter_.drawLine(QPointF(to, y - half), QPointF(to, y + half));
  }
  painter_.setPen(pen(look_.centre, 0.24));
  painter_.drawLine(QPointF(median, y - 2 * half), QPointF(median, y + 2 * half));
}

void ChartPainter::paintSummaries() {
  for (const ChartSummary& summary : chart_.summaries) {
    const double y = layout_.lane(summary.lane).bottom() - 0.68 * layout_.size;
    paintSummary(summary.kind, y, layout_.xAt(summary.low.value_or(summary.median)),
                 layout_.xAt(summary.high.value_or(summary.median)), layout_.xAt(summary.median));
  }
}

void ChartPainter::paintPiece(const QRectF& box, const ChartPiece& piece) {
  const auto stage = static_cast<std::size_t>(std::clamp(piece.firstStage, 0, 4));
  if (piece.lastStage > piece.firstStage) {
    // Several stages that nothing divides: hatched, open.
    painter_.setPen(pen(look_.faintInk, 0.09));
    painter_.setBrush(QBrush(look_.paper));
    painter_.drawRect(box);
    // Cut by hand: a file of shapes knows no clipping.
    painter_.setPen(pen(look_.faintInk, 0.06));
    const double high = box.height();
    for (double x = box.left() - high; x < box.right(); x += 0.55 * layout_.size) {
      const double from = std::max(x, box.left()), to = std::min(x + high, box.right());
      painter_.drawLine(QPointF(from, box.bottom() - (from - x)),
                        QPointF(to, box.bottom() - (to - x)));
    }
    return;
  }
  painter_.fillRect(box, look_.stages[stage]);
}

void ChartPainter::paintBars() {
  const double gap = 0.06 * layout_.size;
  for (std::size_t i = 0; i < chart_.bars.size(); ++i) {
    const QRectF& bar = layout_.bars[i];
    for (const ChartPiece& piece : chart_.bars[i].pieces) {
      const double from = layout_.xAt(std::min(piece.from, piece.to));
      const double to = layout_.xAt(std::max(piece.from, piece.to));
      QRectF box(from + gap, bar.top(), std::max(to - from - 2 * gap, gap), bar.height());
      if (piece.to < piece.from) {
        // Came before what it usually follows: half as high, on top.
        box.setTop(bar.center().y());
        painter_.fillRect(box.adjusted(-gap, -gap, gap, 0), look_.paper);
      }
      paintPiece(box, piece);
    }
  }
}

void ChartPainter::paintKey(const PlacedKey& key) {
  const QRectF& box = key.box;
  const QPointF middle = box.center();
  const QPolygonF line(
      QList<QPointF>{QPointF(box.left(), middle.y()), QPointF(box.right(), middle.y())});
  const double radius = 0.3 * layout_.size;
  switch (key.key.shape) {
  case KeyShape::usual:
    paintPoint(PointShape::usual, middle, radius);
    break;
  case KeyShape::signal:
    paintPoint(PointShape::signal, middle, radius);
    break;
  case KeyShape::weak:
    paintPoint(PointShape::weak, middle, radius);
    break;
  case KeyShape::centre:
    paintLine(LineRole::centre, line);
    break;
  case KeyShape::limit:
    paintLine(LineRole::limit, line);
    break;
  case KeyShape::reference:
    paintLine(LineRole::reference, line);
    break;
  case KeyShape::band:
    paintBand(box);
    break;
  case KeyShape::mark:
    painter_.setPen(pen(look_.ink, 0.1, Qt::DotLine));
    painter_.drawLine(QPointF(middle.x(), box.top()), QPointF(middle.x(), box.bottom()));
    break;
  case KeyShape::interval:
    paintSummary(SummaryKind::interval, middle.y(), box.left(), box.right(), middle.x());
    break;
  case KeyShape::middleHalf:
    paintSummary(SummaryKind::middleHalf, middle.y(), box.left(), box.right(), middle.x());
    break;
  case KeyShape::stage:
    paintPiece(box, {0, 1, key.key.stage, key.key.stage});
    break;
  case KeyShape::undivided:
    paintPiece(box, {0, 1, 0, 1});
    break;
  }
}

void ChartPainter::paintKeys() {
  for (const PlacedKey& key : layout_.keys) {
    paintKey(key);
  }
}

void ChartPainter::paintTexts(const Lettering& lettering) {
  painter_.setBrush(Qt::NoBrush);
  painter_.setPen(pen(look_.ink, 0.1));
  for (const QRectF& frame : layout_.markFrames) {
    painter_.drawRect(frame);
  }
  for (const ChartText& text : layout_.texts) {
    const bool faint = text.role == ChartTextRole::axis || text.role == ChartTextRole::tick ||
                       text.role == ChartTextRole::note || text.role == ChartTextRole::key;
    if (text.role == ChartTextRole::inside) {
      const double wide = lettering.width(text.text, text.size, text.weight);
      painter_.fillRect(QRectF(text.at.x() - 0.2 * text.size, text.at.y() - 0.9 * text.size,
                               wide + 0.4 * text.size, 1.15 * text.size),
                        look_.paper);
    }
    lettering.paint(painter_, text.at, text.text, text.size, text.weight,
                    faint ? look_.faintInk : look_.ink);
  }
  // The number of a stage stands on its piece where it fits.
  for (std::size_t i = 0; i < chart_.bars.size(); ++i) {
    for (const ChartPiece& piece : chart_.bars[i].pieces) {
      const QRectF& bar = layout_.bars[i];
      const QString number = QString::number(piece.firstStage + 1);
      const double from = layout_.xAt(piece.from), to = layout_.xAt(piece.to);
      const double wide = lettering.width(number, 0.85 * layout_.size, Weight::bold);
      if (piece.firstStage == piece.lastStage && to - from > wide + 0.5 * layout_.size) {
        lettering.paint(
            painter_, {(from + to - wide) / 2, bar.center().y() + 0.31 * layout_.size}, number,
            0.85 * layout_.size, Weight::bold,
            look_.stageInk[static_cast<std::size_t>(std::clamp(piece.firstStage, 0, 4))]);
      }
    }
  }
}

} // namespace afterbeat::papers
