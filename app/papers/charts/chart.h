/// A chart as plain values: what is drawn, in the units of the data and in words. Nothing here
/// knows where it will be painted.
#pragma once

#include "app/papers/words.h"

#include <QPointF>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <optional>
#include <vector>

namespace afterbeat::papers {

enum class AxisKind : std::uint8_t {
  number,
  /// 0 to 1, written in per cent.
  share,
  /// Written in seconds, from two minutes on in minutes.
  seconds,
  /// Days since 1970-01-01; a point stands at its day's number.
  days,
  /// Lanes: the first name is 0 and stands at the top.
  names,
};

struct ChartAxis {
  AxisKind kind = AxisKind::number;
  /// What is measured, with its unit: "Longest pause, seconds".
  QString title;
  /// What must be seen; rounded outwards where it is painted.
  double from = 0, to = 1;
  /// Nothing of this axis lies beyond; empty: no such bound.
  std::optional<double> least, most;
  /// For names alone: each lane's name, and a few words under it ("23 records").
  QStringList names, notes;
};

/// Shape goes with the meaning, beside the colour.
enum class PointShape : std::uint8_t {
  /// A usual one: a disc.
  usual,
  /// A rule spoke up: a larger diamond.
  signal,
  /// Stands on few records or is otherwise weak: an open ring.
  weak,
};

/// A point and the records it stands for: `count` of `Chart::records` from `first` on.
struct ChartPoint {
  double x = 0, y = 0;
  std::uint32_t first = 0, count = 1;
  PointShape shape = PointShape::usual;
};

enum class LineRole : std::uint8_t {
  /// Joins the points in their order.
  through,
  centre,
  limit,
  /// A published value.
  reference,
};

struct ChartLine {
  LineRole role = LineRole::centre;
  /// In the axes' units. A line through points breaks where a value is not a number.
  std::vector<QPointF> corners;
  /// Written at its right end; empty: nothing.
  QString label;
  /// Written above its beginning instead: for a line that ends inside the chart.
  bool labelAtBegin = false;
};

/// A stretch of the value axis, behind everything: published quartiles, a target.
struct ChartBand {
  double from = 0, to = 0;
  QString label;
};

/// A day or value marked across the chart: "new training from here".
struct ChartMark {
  double x = 0;
  QString label;
};

/// What lies around the median of a lane. The two are drawn unlike each other: they mean different
/// things, and both stand in one report.
enum class SummaryKind : std::uint8_t {
  /// How far the median may be off: a thin line with end strokes.
  interval,
  /// The middle half of all values: a box.
  middleHalf,
};

/// What stands for all points of a lane.
struct ChartSummary {
  SummaryKind kind = SummaryKind::interval;
  int lane = 0;
  double median = 0;
  std::optional<double> low, high;
};

/// A piece of a bar.
struct ChartPiece {
  double from = 0, to = 0;
  /// Stages it holds, from 0; `lastStage` is larger where moments between are not recorded.
  int firstStage = 0, lastStage = 0;
};

/// A bar of pieces in a lane; one record's, as `Chart::records[record]`.
struct ChartBar {
  int lane = 0;
  std::vector<ChartPiece> pieces;
  std::optional<std::uint32_t> record;
  /// Written after its end: "4 min 12 s", "first shock not recorded".
  QString label;
};

/// Explains a shape below the chart.
enum class KeyShape : std::uint8_t {
  usual,
  signal,
  weak,
  centre,
  limit,
  reference,
  band,
  mark,
  /// Median of a lane and how far it may be off.
  interval,
  /// Median of a lane and the middle half of all values.
  middleHalf,
  stage,
  /// Several stages that nothing divides.
  undivided,
};

struct ChartKey {
  KeyShape shape = KeyShape::usual;
  QString text;
  /// Number of the stage, from 0.
  int stage = 0;
};

struct Chart {
  /// The reader's language: numbers, days and the painter's own words.
  Words words{};
  QString title;
  /// "DRILL", "SYNTHETIC": set in frames beside the title.
  QStringList marks;
  ChartAxis x, y;
  std::vector<ChartPoint> points;
  /// Places in the season, owned in stretches by points and singly by bars.
  std::vector<std::uint32_t> records;
  std::vector<ChartLine> lines;
  std::vector<ChartBand> bands;
  std::vector<ChartMark> dayMarks;
  std::vector<ChartSummary> summaries;
  std::vector<ChartBar> bars;
  std::vector<ChartKey> keys;
  /// Under the picture: first what it shows to a person who never saw such a chart, then what is
  /// remarkable, then what is missing.
  QStringList sentences;
  /// Written in the plot where there is nothing to draw.
  QString emptyText;

  /// Lanes lie along y and points pile up in them; otherwise points stand where x and y say.
  [[nodiscard]] bool lanes() const { return y.kind == AxisKind::names; }
};

/// What the chart says, for who cannot see it: title, marks, sentences, then each lane or the
/// lines; single points are left to the table of records.
[[nodiscard]] QString asText(const Chart& chart);

/// A value of an axis in words: "42 %", "1 min 30 s", "12 Mar 2026".
[[nodiscard]] QString valueText(const Words& words, const ChartAxis& axis, double value);

} // namespace afterbeat::papers
