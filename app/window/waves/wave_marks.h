/// What is marked in the wave tracks besides the waves: shocks, analyses, hands off, breaths.
#pragma once

#include "app/papers/rows_model.h"
#include "app/window/look/look.h"
#include "app/window/signals/rhythms.h"
#include "core/signal/trace.h"

#include <qcustomplot.h>

#include <memory>

namespace afterbeat::window {

/// Everything that has a place in time, for one record and one set of figures.
struct WaveMarks {
  papers::RowsModel model;
  std::shared_ptr<const Figures> figures;
  /// What the record says within a stretch, in words, for a screen reader.
  [[nodiscard]] QString asText(const Record& record, const Interval& shown) const;
};

/// A track to paint around: the plot's rectangle, the channel with its name and unit, and its gaps.
struct TrackFrame {
  QCPAxisRect* rect = nullptr;
  const Channel* channel = nullptr;
  QString name, unit;
  /// Decimals that suit the channel's usual range.
  int decimals = 2;
  std::vector<Interval> gaps;
  /// The line of what is shown.
  std::vector<TracePoint> points = {};
  QColor color = {};
  /// Written over the track; empty: nothing.
  QString note = {};
};

/// Two moments of one track, to measure between.
struct Ruler {
  Time from, to;
  std::size_t track = 0;
  friend bool operator==(const Ruler&, const Ruler&) = default;
};

/// What the painters of marks share with the plot.
struct WaveScene {
  std::shared_ptr<const WaveMarks> marks;
  const Record* record = nullptr;
  std::vector<TrackFrame> tracks;
  QCPAxisRect* lane = nullptr;
  /// What the lane says about rhythm.
  std::shared_ptr<const Rhythms> rhythms = std::make_shared<const Rhythms>();
  /// What the ECG says around shocks; may be null.
  std::shared_ptr<const Derived> hints;
  Look look;
  /// The figure's working, laid under the waves.
  std::vector<Interval> working;
  /// The moment whose values are shown.
  std::optional<Time> cursor;
  std::optional<Ruler> ruler;
  /// The squares of ECG paper are drawn in ECG tracks.
  bool paperGrid = false;
};

/// Hands off, gaps and the squares of ECG paper, under the waves.
class WaveShading final : public QCPLayerable {
public:
  WaveShading(QCustomPlot* plot, const QString& layer, const WaveScene& scene);

protected:
  void applyDefaultAntialiasingHint(QCPPainter*) const override {}
  void draw(QCPPainter* painter) override;

private:
  void hatchPauses(QCPPainter& painter, const TrackFrame& track, const Interval& shown) const;

  const WaveScene& scene_;
};

/// Names, words and the lines of single moments, over the waves.
class WaveLabels final : public QCPLayerable {
public:
  WaveLabels(QCustomPlot* plot, const QString& layer, const WaveScene& scene);

protected:
  void applyDefaultAntialiasingHint(QCPPainter*) const override {}
  void draw(QCPPainter* painter) override;

private:
  void drawNames(QCPPainter& painter) const;
  void drawHands(QCPPainter& painter, const QRect& line) const;
  void writeLength(QCPPainter& painter, const papers::PauseShown& pause, const QRectF& bar) const;
  void drawCompressions(QCPPainter& painter, const QRect& line) const;
  void drawBars(QCPPainter& painter, const QRect& line) const;
  void drawLines(QCPPainter& painter, const QRect& line) const;
  void drawFlags(QCPPainter& painter, const QRect& line) const;
  void drawRhythms(QCPPainter& painter) const;
  /// Shocks and other moments in view, the most important first.
  [[nodiscard]] std::vector<const papers::RowMark*> moments() const;
  const WaveScene& scene_;
};

/// Horizontal place of a moment in a track or the lane.
[[nodiscard]] double pixelOf(const QCPAxisRect& rect, Time t);
/// The type of words in and beside the tracks.
[[nodiscard]] QFont smallFont(const QFont& font, bool bold = false);

/// Lines of the lane: moments, analyses, hands; below them those of rhythms.
inline constexpr int kLaneLines = 3;
/// Height of the lane of words over the tracks, with lines for rhythms.
[[nodiscard]] int laneHeight(const QFont& font, int rhythmLines);
/// A line of the lane, from the top.
[[nodiscard]] QRect laneLine(const WaveScene& scene, int index);
/// The rhythm at a place of the lane; null: none is shown there.
[[nodiscard]] const RhythmStretch* rhythmAt(const WaveScene& scene, const QPointF& point);
/// What is to be said about a place of the lane or the tracks, line by line: a rhythm, a shock with
/// what the ECG says around it, derived compressions. Empty: nothing.
[[nodiscard]] QString tipAt(const WaveScene& scene, const QPointF& point);

} // namespace afterbeat::window
