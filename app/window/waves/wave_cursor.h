/// The values at the moment that is pointed at, and the ruler between two moments. On a layer of
/// their own, so that moving them draws no wave again.
#pragma once

#include "app/window/waves/wave_marks.h"

namespace afterbeat::window {

class WaveCursor final : public QCPLayerable {
public:
  WaveCursor(QCustomPlot* plot, const QString& layer, const WaveScene& scene);
  /// The box of the ruler's words as it was drawn last; empty without a ruler. It stands over the
  /// tracks, where no wave is.
  [[nodiscard]] const QRectF& rulerBox() const { return rulerBox_; }

protected:
  void applyDefaultAntialiasingHint(QCPPainter*) const override {}
  void draw(QCPPainter* painter) override;

private:
  void drawUnits(QCPPainter& painter) const;
  void drawCursor(QCPPainter& painter) const;
  void drawRuler(QCPPainter& painter);
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
