/// Series of like pulses in a signal without drift: what compressions look like in any channel.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace afterbeat {

/// A maximum between two minima.
struct Pulse {
  /// Sample indices: the top, the minima before and after.
  std::size_t top = 0, before = 0, after = 0;
  /// Mean of the two flanks, in the signal's unit.
  double height = 0;
  /// What else speaks for it, in log likelihood; 0: nothing known.
  double worth = 0;
  /// Which of several looks at the same signal shows it.
  std::size_t look = 0;
  /// The height at which it counts as neither likely nor unlikely; 0: as the rules have it.
  double fairHeight = 0;
};

/// Lets the pulses of several looks stand in one list, in order of their tops.
[[nodiscard]] std::vector<Pulse> joined(std::span<const std::vector<Pulse>> looks);

/// All maxima of `signal` that stand out by more than `least` from the minima on both sides, in
/// order.
[[nodiscard]] std::vector<Pulse> findPulses(std::span<const double> signal, double least);

/// What makes pulses a series of compressions.
struct SeriesRules {
  double rateHz = 50;
  /// Between two pulses of a series, in seconds: 40 to 200 a minute.
  double shortest = 0.30, longest = 1.5;
  /// The height at which a pulse counts as neither likely nor unlikely.
  double fairHeight = 1;
  /// What a series must gain, in log likelihood.
  double least = 8;
};

/// Pulses that follow each other, by index into the pulses given.
using Series = std::vector<std::size_t>;

/// The series of a signal, in time order, and what they gained together.
struct SeriesFound {
  std::vector<Series> series;
  double gain = 0;
};

/// The most likely series in `pulses`: a dynamic programme over pairs of pulses (after the beat
/// tracker of Ellis, J New Music Res 2007;36:51-60 [from memory]) in which a pulse gains by its
/// height, by an interval and a height like those before it, and loses by pulses left out in
/// between. Series that gain too little are none: noise has pulses too, but unlike ones.
///
/// `pulses` may be those of several looks (see `joined`): a series keeps to one look, and at any
/// time the look that gains most is believed, so that a slow rescuer may follow a quick one.
[[nodiscard]] SeriesFound findSeries(std::span<const Pulse> pulses, const SeriesRules& rules);

} // namespace afterbeat
