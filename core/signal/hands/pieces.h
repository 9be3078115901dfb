/// A channel cut at what cannot be used, at the rate the detectors of hands work with.
#pragma once

#include "core/signal/findings.h"
#include "core/signal/signal_view.h"

#include <vector>

namespace afterbeat {

/// Samples without a gap, owned.
struct Piece {
  Time begin{};
  double rateHz = 0;
  std::vector<double> values;

  [[nodiscard]] SignalView view() const { return {begin, rateHz, values}; }
  [[nodiscard]] Time timeAt(double i) const { return view().timeAt(i); }
  [[nodiscard]] Interval span() const {
    return {begin, timeAt(values.empty() ? 0 : static_cast<double>(values.size() - 1))};
  }
};

/// What of a channel can be used.
struct Pieces {
  /// In time order; none shorter than 1.5 s.
  std::vector<Piece> pieces;
  /// Missing, saturated and too short stretches, in time order.
  std::vector<FaultyStretch> faults;
  /// From the channel's first sample to its last.
  Duration length{};
};

/// The channel in the detectors' unit at 40 to 75 samples a second (channels below 75 Hz: at their
/// own rate), averaged over neighbouring samples so that nothing above 20 Hz folds into the rhythm
/// of compressions. Holes of up to 0.12 s are bridged; longer ones, and 0.1 s or more at the end of
/// the number range, cut. Nothing at all for another quantity, an unusable unit, or a rate below 20
/// Hz.
[[nodiscard]] Pieces readPieces(const Channel& channel);

} // namespace afterbeat
