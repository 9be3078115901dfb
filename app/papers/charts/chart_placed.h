/// A chart laid out for one area: painted, and asked which record lies at a place.
#pragma once

#include "app/papers/charts/chart.h"
#include "app/papers/charts/chart_look.h"

#include <QRectF>

#include <memory>

class QPainter;

namespace afterbeat::papers {

struct ChartLayout;

/// What lies at a place.
struct ChartHit {
  /// Index in `Chart::points`, or for a bar in `Chart::bars`.
  std::size_t index = 0;
  bool bar = false;
  /// Where it is painted.
  QPointF at;
};

/// The same code paints on a screen, into a PDF, SVG or PNG. Where points would hide each other,
/// amounts are drawn instead of points: columns in lanes, shades elsewhere, and the key says so.
/// Laying out and painting 100 000 points each take some tens of milliseconds.
class ChartPlaced {
public:
  ChartPlaced(std::shared_ptr<const Chart> chart, const QRectF& area, const ChartLook& look);

  void paint(QPainter& painter) const;
  /// Rings around points, frames around bars: what is pointed at or selected.
  void paintHighlight(QPainter& painter, const std::vector<ChartHit>& hits) const;
  /// Everything within `reach`, nearest first; where amounts are drawn, all that the amount under
  /// the place stands for.
  [[nodiscard]] std::vector<ChartHit> at(const QPointF& place, double reach = 6) const;
  /// Where a point or bar is painted, for moving by keys; nothing for an index beyond.
  [[nodiscard]] std::optional<ChartHit> point(std::size_t index) const;
  [[nodiscard]] std::optional<ChartHit> bar(std::size_t index) const;
  /// The place in the season of the first record a hit stands for; empty: none.
  [[nodiscard]] std::optional<std::uint32_t> record(const ChartHit& hit) const;
  [[nodiscard]] QRectF plot() const;
  /// The axis under the plot with its words, as wide as the area.
  [[nodiscard]] QRectF axis() const;
  /// Amounts are drawn instead of points.
  [[nodiscard]] bool crowded() const;
  /// Every text in reading order with what it is, a line each; for tests.
  [[nodiscard]] QString layoutAsText() const;

private:
  std::shared_ptr<const Chart> chart_;
  ChartLook look_;
  std::shared_ptr<const ChartLayout> layout_;
};

/// The height a chart is best read in at this width, and the least in which nothing is crowded out.
[[nodiscard]] double chartHeight(const Chart& chart, double width, const ChartLook& look);
[[nodiscard]] double leastChartHeight(const Chart& chart, double width, const ChartLook& look);
/// With less the names of lanes touch each other; what explains them is left out already.
[[nodiscard]] double tightChartHeight(const Chart& chart, double width, const ChartLook& look);

} // namespace afterbeat::papers
