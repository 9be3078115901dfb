/// The heart's part of an ECG, mV: fibrillation, beats of several kinds, nothing.
///
/// A rhythm is told by `TrueRhythm`: shockable without a rate is fibrillation, with a rate
/// ventricular tachycardia; organised below 25 a minute and wide is agonal.
#pragma once

#include "samples/body/body.h"

#include <vector>

namespace afterbeat::samples::body {

/// One hump of a beat.
struct Hump {
  /// Seconds from the beat's main wave; deviations before and after its top; mV.
  double at = 0, before = 0.01, after = 0.01, height = 0;
};

/// One beat: where, and of which form.
struct Beat {
  double s = 0, size = 1;
  std::size_t form = 0;
};

/// Fibrillation as many fronts that wander: hiss around a frequency that drifts between 3 and 7 Hz,
/// with a weaker part above and below, and waves more pointed on one side. It waxes and wanes.
class Fibrillation {
public:
  Fibrillation(double rateHz, Dice& seeds);
  /// `amplitude`: mean height of the waves over the middle, mV (half of peak to trough). Fine
  /// fibrillation is slower.
  double next(double amplitude);

private:
  double rateHz_, pointed_, middle_, smooth_, once_ = 0, twice_ = 0;
  Resonance main_, above_, below_;
  Walk drift_, strength_;
  int untilTuned_ = 0;
};

class Heart {
public:
  Heart(const Body& body, double rateHz);
  /// At moments `body.from` + i / rate, in turn.
  double next(double s);
  /// Every beat of organised rhythm and tachycardia, in time order.
  [[nodiscard]] const std::vector<Beat>& beats() const { return beats_; }

private:
  void addBeats(const TrueRhythm& rhythm, Dice& dice);

  const std::vector<TrueRhythm>& rhythm_;
  Dice seeds_;
  std::vector<std::vector<Hump>> forms_;
  std::vector<Beat> beats_;
  Fibrillation fibrillation_;
  std::size_t at_ = 0, firstBeat_ = 0;
};

/// Every beat of a body's heart, seconds in time order.
[[nodiscard]] std::vector<double> beatsOf(const Body& body);

/// Blood that beats move through the chest, 0 to about 1, along a time that does not go backwards.
class Pulse {
public:
  explicit Pulse(const Body& body) : beats_(beatsOf(body)) {}
  double at(double s);

private:
  std::vector<double> beats_;
  std::size_t first_ = 0;
};

} // namespace afterbeat::samples::body
