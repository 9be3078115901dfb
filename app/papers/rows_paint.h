/// Paints what `rows_layout` has placed.
#pragma once

#include "app/papers/rows_layout.h"

namespace afterbeat::papers {

/// Paints one row's shapes; words come last, over all rows.
class RowPainter {
public:
  RowPainter(QPainter& painter, const RowsModel& model, const RowsGeometry& geometry,
             const RowsLook& look);
  /// One row with the stretches of a working; those that lie outside the row do no harm.
  void paintRow(const RowPlace& place, const std::vector<Interval>& working);
  /// What is selected or pointed at in one row.
  void paintOver(const RowPlace& place, const RowsOverlay& overlay);

private:
  struct Span {
    double from = 0, to = 0;
    [[nodiscard]] double length() const { return to - from; }
  };
  /// The part of a stretch that lies in the row, as places; nothing if none does.
  [[nodiscard]] std::optional<Span> span(const Interval& stretch) const;
  [[nodiscard]] double x(Time t) const { return geometry_.x(row_, t); }
  [[nodiscard]] bool inRow(Time t) const { return model_.inRow(place_.index, t); }
  /// The first pause that reaches into the row: pauses are in time order and do not overlap.
  [[nodiscard]] std::vector<PauseShown>::const_iterator firstPause() const;
  /// Height of the band for a rate.
  [[nodiscard]] double heightOf(double rate) const;
  /// Where the rate is not known: below the target.
  [[nodiscard]] double unknownHeight() const;

  void paintWorking(const std::vector<Interval>& working, bool behind);
  [[nodiscard]] std::vector<Span> corridorSpans() const;
  void paintCorridor();
  void paintCorridor(const Span& at);
  void paintCorridorLines();
  void paintDots(double from, double to, double y, bool over);
  void paintDotsOver(const QPolygonF& steps);
  [[nodiscard]] std::vector<double> corridorHeights() const;
  void paintAxis();
  void paintPauses();
  void paintHandsOn();
  [[nodiscard]] std::size_t firstPiece(const BandRun& run) const;
  void paintRun(const BandRun& run);
  void paintSeparators(const BandRun& run);
  void paintUnknownRate(const Span& at);
  void paintExcluded();
  void paintCirculation();
  void paintAnalyses();
  void paintCycles();
  void paintBrokenEnd();
  void paintShockBars();
  void paintRemarks();
  void paintSelected(const RowsOverlay& overlay);
  void paintCursor(const RowsOverlay& overlay);

  QPainter& painter_;
  const RowsModel& model_;
  const RowsGeometry& geometry_;
  const RowsLook& look_;
  bool raster_;
  /// A line's width: one unit on screen, a hairline on paper.
  double line_;
  RowPlace place_;
  Interval row_;
};

/// The words of a layout and the breaths' circles; only what meets `shown` unless that is null.
void paintTexts(QPainter& painter, const RowsModel& model, const RowsLayout& layout,
                const RowsLook& look, const QRectF& shown);
void paintBreaths(QPainter& painter, const RowsLayout& layout, const RowsLook& look,
                  const QRectF& shown);
/// A breath's circle with the painter's pen; open to the right where it was read off the signals.
void paintBreath(QPainter& painter, const QPointF& centre, double radius, bool derived);
/// The ground of a band that was read off the signals; its outline has the colour of hands on.
[[nodiscard]] QColor derivedGround(const RowsLook& look);
/// Where a cycle begins: a corner under the band, open to the right.
void paintCycleCorner(QPainter& painter, const QPointF& at, double small, const QColor& color,
                      double line);
/// Diagonal lines across a rectangle, cut at its edges; `cross`: both ways.
void paintHatch(QPainter& painter, const QRectF& box, double spacing, const QColor& color,
                double width, bool cross);
/// A sine between two places.
void paintWave(QPainter& painter, double from, double to, double y, double amplitude, double length,
               const QColor& color, double width);
/// An analysis's bar: solid where a shock was advised, a line between two end strokes where
/// not, dashed where inconclusive.
void paintAnalysisBar(QPainter& painter, const QRectF& bar, MarkKind kind, const RowsLook& look,
                      double line);
/// The pole of a shock's flag with a small pennant: filled where given, hollow where not, dotted
/// where unknown. The pennant flies to the left (`direction` -1) or to the right (1).
void paintShockPole(QPainter& painter, const QPointF& top, double bottom, double small,
                    MarkKind kind, int direction, const RowsLook& look, double line);
void paintRemarkTick(QPainter& painter, const QPointF& tip, double small, const QColor& color);
/// A medication's sign: a hollow rhombus whose lower tip is its moment.
void paintMedicationSign(QPainter& painter, const QPointF& tip, double small, const RowsLook& look,
                         double line);
/// The torn end of a recording: a jagged edge at `x`, and blank paper beyond it for the width of a
/// tooth.
void paintTornEnd(QPainter& painter, double x, double top, double bottom, double tooth,
                  const RowsLook& look, double line);
/// The shape of a legend's item in `box`.
void paintLegendShape(QPainter& painter, const QRectF& box, LegendShape shape, const RowsLook& look,
                      double line);

} // namespace afterbeat::papers
