/// An ECG as the rhythm features read it: at one rate, in bands that leave out what tells one
/// recorder from another.
#pragma once

#include "core/signal/signal_view.h"

#include <cmath>
#include <cstddef>
#include <functional>
#include <span>
#include <vector>

namespace afterbeat {

/// The rate the features work at. Nothing above 30 Hz is used.
inline constexpr double kRhythmRateHz = 125;
inline constexpr std::size_t kRhythmSecond = 125;

/// Rates of recordings that can be brought to it; below 100 Hz a complex is too few samples.
inline constexpr double kLowestRhythmRateHz = 100, kHighestRhythmRateHz = 4000;

/// Whether a value in mV is a measurement at all: a number, and below 100 V.
[[nodiscard]] inline bool isMeasured(double mv) {
  return std::fabs(mv) <= 1e5;
}

/// The same samples in several bands, in mV at `kRhythmRateHz`; all of one length.
struct RhythmBands {
  /// 1 to 30 Hz: Butterworth, 2nd order, both ways.
  std::vector<double> wide;
  /// `wide` above 2 Hz, likewise: without most of what moves with the patient.
  std::vector<double> narrow;
  /// 13 to 16.5 Hz, where QRS complexes are and fibrillation is not (Jekova and Krasteva 2004);
  /// forwards only.
  std::vector<double> qrs;
  /// Effective slope of `wide` over the 13 samples around each: mV/s.
  std::vector<double> slope;
};

/// The bands of samples at `kRhythmRateHz`, none missing.
[[nodiscard]] RhythmBands rhythmBands(std::span<const double> values);

/// Samples of a run at `kRhythmRateHz`; those not measured bridged by straight lines. The rate must
/// lie between the two limits above.
[[nodiscard]] std::vector<double> atRhythmRate(const SignalView& run);

/// Bands of a long signal in pieces of some minutes, each with enough beyond its edges for the
/// filters to settle. `take` is given the bands, the index of the first sample of `values` they
/// hold, and the samples [begin, end) of `values` that this piece is for, which the bands hold with
/// at least `beyond` samples (or all there are) after `end`.
void eachPieceOfBands(std::span<const double> values, std::size_t beyond,
                      const std::function<void(const RhythmBands& bands, std::size_t first,
                                               std::size_t begin, std::size_t end)>& take);

} // namespace afterbeat
