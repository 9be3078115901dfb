/// Paints what `layOutChart` has placed.
#pragma once

#include "app/papers/charts/chart_layout.h"

namespace afterbeat::papers {

class ChartPainter {
public:
  ChartPainter(QPainter& painter, const Chart& chart, const ChartLayout& layout,
               const ChartLook& look)
      : painter_(painter), chart_(chart), layout_(layout), look_(look) {}
  void paint(const Lettering& lettering);

private:
  void paintGround();
  void paintBand(const QRectF& box);
  void paintDayMarks();
  void paintLines();
  void paintAmounts();
  void paintPoints();
  void paintSummaries();
  void paintBars();
  void paintKeys();
  void paintTexts(const Lettering& lettering);
  void paintLine(LineRole role, const QPolygonF& line);
  void paintPoint(PointShape shape, const QPointF& at, double radius);
  void paintSummary(SummaryKind kind, double y, double from, double to, double median);
  void paintPiece(const QRectF& box, const ChartPiece& piece);
  void paintKey(const PlacedKey& key);
  [[nodiscard]] std::vector<std::size_t> paintingOrder() const;
  [[nodiscard]] QPen pen(const QColor& color, double share, Qt::PenStyle style = Qt::SolidLine);

  QPainter& painter_;
  const Chart& chart_;
  const ChartLayout& layout_;
  const ChartLook& look_;
};

} // namespace afterbeat::papers
