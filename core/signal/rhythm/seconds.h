/// The parts of the rhythm features that belong to a second and are shared by several windows.
#pragma once

#include "core/signal/rhythm/bands.h"

#include <cstddef>
#include <span>
#include <vector>

namespace afterbeat {

/// One second of the bands.
struct SecondMeasures {
  /// Peak-to-peak amplitudes in mV.
  double wideMv = 0, narrowMv = 0;
  /// Share of samples of `qrs` at least half as large as the largest.
  double count1 = 0;
  /// Share of samples above a fifth of the largest in the three seconds that begin here; as far as
  /// the signal goes.
  double tcsc = 0;
};

/// All whole seconds of the bands from sample `begin` on, at most `count`.
[[nodiscard]] std::vector<SecondMeasures> measureSeconds(const RhythmBands& bands,
                                                         std::size_t begin, std::size_t count);

} // namespace afterbeat
