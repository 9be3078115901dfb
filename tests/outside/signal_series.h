/// Steady made-up series, and how often the signal rules see something in them.
#pragma once

#include "core/statistics/random.h"
#include "core/statistics/signal_rules.h"

#include <functional>

namespace afterbeat {

/// One value of a series.
using Draw = std::function<double(Random&)>;

/// Where the centre line and the limits come from.
enum class Line : std::uint8_t {
  /// Known: centre 0, deviation 1.
  known,
  /// The series' own median, no limits: a run chart.
  ownMedian,
  /// The series' own mean and moving range: an individuals chart.
  ownLimits,
};

/// In how many of `series` series of `points` points each some rule finds something.
[[nodiscard]] int seriesWithSignal(int series, std::size_t points, const SignalRules& rules,
                                   Line line, const Draw& draw, std::uint64_t seed);

} // namespace afterbeat
