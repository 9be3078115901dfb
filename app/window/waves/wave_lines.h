/// The waves themselves: one line a track.
#pragma once

#include "app/window/waves/wave_marks.h"
#include "core/signal/trace.h"

#include <qcustomplot.h>

#include <vector>

namespace afterbeat::window {

/// What a line covers of each device pixel's column: from `low` to `high` (device pixels from the
/// top, `low` above `high`); nothing where `low` > `high`.
struct ColumnSpan {
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();
  friend bool operator==(const ColumnSpan&, const ColumnSpan&) = default;
};

/// The columns that the line through `points` (device pixels, a NaN lifts the pen) covers, column 0
/// beginning at x = 0, into `columns` (kept in size; what lies beside is left out). Between two
/// points the line is straight, so neighbouring columns touch.
void coverColumns(const std::vector<QPointF>& points, std::vector<ColumnSpan>& columns);

/// Draws the tracks' points as upright strokes, one a device pixel, whose ends are softened by the
/// share of the pixel they cover: a tenth of the cost of a line with the painter's own pen, and the
/// same look from hours to seconds.
class WaveLines final : public QCPLayerable {
public:
  WaveLines(QCustomPlot* plot, const QString& layer, const WaveScene& scene);

protected:
  void applyDefaultAntialiasingHint(QCPPainter*) const override {}
  void draw(QCPPainter* painter) override;

private:
  /// Rows of a track, from its top.
  struct Rows {
    int first = 0, count = 0;
  };
  void drawTrack(QCPPainter& painter, const TrackFrame& track);
  /// Paints `columns_`, `thickness` device pixels thick, into the top of `image_`; the rows it
  /// took.
  Rows paintStrokes(const QSize& size, const QColor& color, double thickness);
  void softenEnds(int first, int last, const QColor& color);

  const WaveScene& scene_;
  // Kept between frames for their memory.
  std::vector<QPointF> points_;
  std::vector<ColumnSpan> columns_;
  /// The rows each column covers wholly, from its first to its last; none where the first is later.
  std::vector<int> fullFrom_, fullTo_;
  QImage image_;
};

} // namespace afterbeat::window
