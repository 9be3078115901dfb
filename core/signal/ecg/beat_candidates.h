/// Places where an ECG may have a QRS complex.
#pragma once

#include "core/signal/signal_view.h"

#include <cstddef>
#include <vector>

namespace afterbeat {

struct BeatCandidate {
  /// Largest deflection between 8 and 20 Hz.
  std::size_t sample = 0;
  /// Root mean square of the filtered ECG over 97 ms, in mV.
  double strength = 0;
};

/// Stretches where the mean square over one complex is above that over one beat, as `findBeats`
/// says, in order; none where samples are missing. Works through the run in pieces of a minute.
[[nodiscard]] std::vector<BeatCandidate> beatCandidates(const SignalView& ecg);

} // namespace afterbeat
