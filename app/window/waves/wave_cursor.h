/// The values at the moment that is pointed at, and the ruler between two moments. Painted over the
/// finished picture of the waves, so that moving them draws no wave again.
#pragma once

#include "app/window/waves/wave_marks.h"

namespace afterbeat::window {

class WaveCursor {
public:
  explicit WaveCursor(const WaveScene& scene) : scene_(scene) {}
  void paint(QPainter& painter);
  /// The box of the ruler's words as it was drawn last; empty without a ruler. It stands over the
  /// tracks, where no wave is.
  [[nodiscard]] const QRectF& rulerBox() const { return rulerBox_; }

private:
  void drawUnits(QPainter& painter) const;
  void drawCursor(QPainter& painter) const;
  void drawRuler(QPainter& painter);
  /// The moment pointed at, where it is in view.
  [[nodiscard]] std::optional<Time> inView() const;
  [[nodiscard]] QRect axisLine() const;

  const WaveScene& scene_;
  QRectF rulerBox_;
};

/// "0.42 mV"; "no signal" in a gap, beside missing samples and outside the recording.
[[nodiscard]] QString valueWords(const TrackFrame& track, Time t);

/// "0.84 s · 71 a minute · 1.20 mV": time between the two moments, the rate of what happens once in
/// it (from a tenth of a second to a minute), and the difference of the signal.
[[nodiscard]] QString rulerWords(const Ruler& ruler, const TrackFrame& track);

} // namespace afterbeat::window
