/// How much the pulses of a series are copies of each other.
#pragma once

#include "core/signal/hands/pulses.h"

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace afterbeat {

/// The middle value (the upper of two); 0 of none.
[[nodiscard]] double upperMedian(std::vector<double> values);

/// Mean time between the pulses of a series that lie next to each other, in samples: the median of
/// the steps. 0 for fewer than two.
[[nodiscard]] double usualStep(const Series& series, std::span<const Pulse> pulses);

/// One press, or what could be one: a signal around a top, as long as
/// a step is thereabouts, its mean taken off.
inline constexpr std::size_t kPhases = 24;
using Shape = std::array<double, kPhases>;
[[nodiscard]] std::vector<Shape> shapesOf(const Series& series, std::span<const Pulse> pulses,
                                          std::span<const double> signal);

/// How a pulse compares with the mean of the up to eight neighbours before and after it.
struct Likeness {
  /// Of the shapes: near 1 for presses of one rescuer, near 0 where only noise happens to have
  /// maxima.
  double correlation = 0;
  /// Its size as a share of theirs, by projection: what a matched filter says.
  double share = 0;
};

/// For each pulse of the series; shapes as `shapesOf` has them.
[[nodiscard]] std::vector<Likeness> likenessToNeighbours(const Series& series,
                                                         std::span<const Pulse> pulses,
                                                         std::span<const double> signal);

/// Lets go of pulses whose share is below `least`; twice, as they blur the mean of the others.
void dropUnlike(Series& series, std::span<const Pulse> pulses, std::span<const double> signal,
                double least);

/// Removes pulses at both ends of the series that are lower than `share` of the median of the six
/// next to them.
void trimEnds(Series& series, std::span<const Pulse> pulses, double share);

/// Where each press of the series begins and ends: n + 1 moments in samples, the lowest points of
/// `signal` between the tops, and beside the first and last the minima there, at most 0.7 usual
/// steps away.
[[nodiscard]] std::vector<double> releasesOf(const Series& series, std::span<const Pulse> pulses,
                                             std::span<const double> signal);

} // namespace afterbeat
