/// Chest-compression artefact taken out of an ECG, for looking at it.
#pragma once

#include "core/measures/interval.h"
#include "core/signal/signal_view.h"

#include <span>
#include <vector>

namespace afterbeat {

/// How the filter follows the artefact.
struct ArtefactFilter {
  /// Multiples of the compression rate that the artefact is made of; those at or above half the
  /// sampling rate are left out.
  int harmonics = 8;
  /// Seconds in which the fundamental follows a change; harmonic k takes k times as long.
  double followSeconds = 2;
};

/// An ECG with its compression artefact suppressed. Shown beside the original and labelled: no
/// figure is computed from it, for what is left may look like a rhythm that is not there.
struct FilteredEcg {
  /// As many as went in, mV; NaN where they were.
  std::vector<double> values;
  /// Where the artefact was suppressed; elsewhere the values are the original ones, bit by bit.
  std::vector<Interval> filtered;
};

/// Models the artefact as a sum of harmonics of a phase that grows by one turn from each deepest
/// point to the next, follows their amplitudes by least mean squares, and subtracts it. After
/// Irusta, Ruiz, Ruiz de Gauna, Eftestol and Kramer-Johansen, IEEE Trans Biomed Eng
/// 2009;56:1052-1062 (from memory); that the signal is followed in both directions and the mean of
/// both is taken is ours.
///
/// `deepest`: moments of compressions in time order. Three or more with at most 1.5 s between
/// neighbours are a series; it is filtered from half a compression before its first to half a
/// compression after its last.
[[nodiscard]] FilteredEcg suppressCompressions(const SignalView& ecg, std::span<const Time> deepest,
                                               const ArtefactFilter& filter = {});

} // namespace afterbeat
