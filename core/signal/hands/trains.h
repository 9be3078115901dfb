/// Series of pulses that can be trusted to be compressions.
#pragma once

#include "core/signal/hands/alike.h"
#include "core/signal/hands/pulses.h"

#include <span>
#include <vector>

namespace afterbeat {

/// A series with what it was judged by.
struct Train {
  Series series;
  /// One a pulse.
  std::vector<Likeness> likeness;
  /// Median height of the pulses, in the signal's unit.
  double height = 0;
  /// Median correlation of the pulses with their neighbours.
  double alike = 0;
  /// Usual step, in samples.
  double step = 0;
};

/// Cuts what is unlike its neighbours off every series and keeps those that are alike enough for
/// their length, fast enough (50 a minute and more), and high enough beside the sure ones of the
/// same piece. `shape` is the signal whose shapes are compared, `size` the one whose sizes are (it
/// may be the same), `share` the least of the neighbours' size, `leastAlone` the height that a
/// series needs to stand beside others more than twice as high.
[[nodiscard]] std::vector<Train> trustedTrains(std::span<const Series> found,
                                               std::span<const Pulse> pulses,
                                               std::span<const double> shape,
                                               std::span<const double> size, double rateHz,
                                               double share, double leastAlone = 0);

/// Pulses a second and heights of some series together, for a second and closer look at them.
struct Usual {
  /// From the slow and the fast eighth of the steps.
  double slowHz = 0, fastHz = 0;
  double height = 0;
};

/// The slow, the usual and the fast series of a signal (below 85 a minute, up to 120, above), those
/// of the three that there are: one look does not suit a rescuer of 65 a minute and the next of
/// 150.
[[nodiscard]] std::vector<Usual> usualRates(std::span<const Series> series,
                                            std::span<const Pulse> pulses, double rateHz);

/// 0 to 1: how sure one pulse of a train is, from its own likeness and that of the fifteen around
/// it.
[[nodiscard]] double surenessOf(const Train& train, std::size_t k);

/// Median correlation of the fifteen pulses around pulse `k`.
[[nodiscard]] double alikeAround(const Train& train, std::size_t k);

} // namespace afterbeat
