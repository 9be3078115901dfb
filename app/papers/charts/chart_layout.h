/// Where everything of a chart lies; made once, then painted and asked.
#pragma once

#include "app/papers/charts/chart_placed.h"
#include "app/papers/charts/chart_ticks.h"
#include "app/papers/lettering.h"

namespace afterbeat::papers {

enum class ChartTextRole : std::uint8_t {
  title,
  mark,
  axis,
  tick,
  lane,
  note,
  label,
  /// Within the plot: on a ground of its own.
  inside,
  key,
  sentence,
  empty,
};

struct ChartText {
  ChartTextRole role = ChartTextRole::sentence;
  QString text;
  /// Where the baseline begins.
  QPointF at;
  double size = 10;
  Weight weight = Weight::regular;
};

struct PlacedKey {
  ChartKey key;
  QRectF box;
};

/// Many points as amounts: a column of a lane, or a shaded cell.
struct ChartAmount {
  QRectF box;
  std::uint32_t count = 0;
  /// 1 (few) to 5 (most); columns are always 5.
  int shade = 5;
};

struct ChartLayout {
  QRectF area, plot;
  TickedAxis x, y;
  double size = 10, radius = 3;
  /// Of the words under the plot.
  double axisHeight = 0;
  std::vector<ChartText> texts;
  std::vector<QRectF> markFrames;
  std::vector<PlacedKey> keys;
  /// One for each point; empty where amounts are drawn.
  std::vector<QPointF> points;
  std::vector<ChartAmount> amounts;
  /// For each point the amount it is part of; empty where points are drawn.
  std::vector<std::uint32_t> amountOf;
  std::vector<QRectF> bars;

  [[nodiscard]] double xAt(double value) const {
    return plot.left() + (value - x.from) / (x.to - x.from) * plot.width();
  }
  /// Values grow upwards, lanes downwards.
  [[nodiscard]] double yAt(double value, bool lanes) const {
    const double share = (value - y.from) / (y.to - y.from);
    return lanes ? plot.top() + share * plot.height() : plot.bottom() - share * plot.height();
  }
  [[nodiscard]] double laneHeight() const { return plot.height() / (y.to - y.from); }
  [[nodiscard]] QRectF lane(int index) const {
    return {plot.left(), plot.top() + index * laneHeight(), plot.width(), laneHeight()};
  }
  /// Where the points of a lane stand on; the summary lies below.
  [[nodiscard]] double laneFloor(int index, bool summaries) const {
    return lane(index).bottom() - (summaries ? 1.35 : 0.35) * size;
  }
};

[[nodiscard]] ChartLayout layOutChart(const Chart& chart, const QRectF& area, const ChartLook& look,
                                      const Lettering& lettering);

/// Places the points, or amounts where they would hide each other.
void placePoints(const Chart& chart, ChartLayout& layout);

/// Places the words of lines, bands and marked days where none lies on another.
void placeChartLabels(const Chart& chart, const Lettering& lettering, ChartLayout& layout);

/// Breaks a text into lines of at most `width`.
[[nodiscard]] QStringList wrapped(const QString& text, const Lettering& lettering, double size,
                                  Weight weight, double width);

} // namespace afterbeat::papers
