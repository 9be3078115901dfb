/// How strong a fibrillation is: figures of a short stretch of ECG.
#pragma once

#include "core/measures/interval.h"
#include "core/signal/findings.h"
#include "core/signal/signal_view.h"

#include <span>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat {

/// What keeps a figure from being told.
enum class EcgObstacle : std::uint8_t {
  /// The stretch is not recorded from its begin to its end.
  notRecorded,
  /// 96 samples a second or fewer: the highest frequencies are not there.
  rateTooLow,
  missingSamples,
  saturated,
  electrodesOff,
  spikes,
  noise,
  /// Chest compressions move the ECG.
  compressions,
  /// The rhythm hint does not say fibrillation.
  notFibrillation,
  /// There is no rhythm hint, or it is unclear.
  rhythmUnclear,
};

/// Figures of a stretch of fibrillation. They are a reviewer's aid, not a diagnosis.
struct Fibrillation {
  /// Amplitude spectrum area, mV Hz: the sum of amplitude x frequency over 2 to 48 Hz, both
  /// included, of the single-sided amplitude 2|X|/N of a rectangular window without zero padding.
  /// Over the 2 s before a shock: Ristagno et al., Resuscitation 2013;84:1697; its band from
  /// memory. A 5-Hz sine of 0.4 mV makes 2.0 mV Hz.
  double amsaMvHz = 0;
  /// Peak to trough, mV: the median over whole seconds, half a second apart, of largest minus
  /// smallest value below 30 Hz, once the straight line through the stretch is taken off. How it is
  /// measured is ours.
  double amplitudeMv = 0;
  /// Where the power between 2 and 12 Hz is largest (Hann window, parabola through three bins).
  double dominantHz = 0;

  /// Coarse from 0.2 mV peak to trough, else fine: Kerber et al., Circulation 1997;95:1677-1682.
  [[nodiscard]] bool coarse() const { return amplitudeMv >= kCoarseMv; }
  static constexpr double kCoarseMv = 0.2;
};

/// The stretches in which chest compressions move the ECG: 0.3 s around each deepest point (common
/// practice, no source), joined. `deepest` in time order.
[[nodiscard]] std::vector<Interval> movedByCompressions(std::span<const Time> deepest);

/// Figures of the `length` of ECG that ends just before `end`. `faults` as found in this run (noise
/// is looked for anew, in this stretch alone), `moved` sorted. Nothing is told of a stretch with
/// missing or saturated samples, electrodes off, spikes, noise or compressions, or with a jump that
/// no heart makes (more than 500 mV/s): a shock that began before its entry says. Whether it is
/// fibrillation is for the caller to know.
[[nodiscard]] tl::expected<Fibrillation, EcgObstacle>
fibrillationBefore(const SignalView& ecg, Time end, std::span<const FaultyStretch> faults,
                   std::span<const Interval> moved, Duration length = std::chrono::seconds(2));

/// The same of samples without gap or fault; at least 1 s of them, and more than 96 a second.
[[nodiscard]] Fibrillation fibrillationOf(std::span<const double> values, double rateHz);

} // namespace afterbeat
