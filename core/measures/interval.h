/// Closed stretches of time and the sums over them.
#pragma once

#include "core/record/time.h"

#include <vector>

namespace afterbeat {

/// A closed stretch; zero length is allowed; begin <= end.
struct Interval {
  Time begin{}, end{};
  [[nodiscard]] Duration length() const { return end - begin; }
  /// Both edges are inside.
  [[nodiscard]] bool holds(Time t) const { return t >= begin && t <= end; }
  /// Closed stretches that share at least a point.
  [[nodiscard]] bool touches(const Interval& o) const { return begin <= o.end && o.begin <= end; }
  friend bool operator==(const Interval&, const Interval&) = default;
};

/// Sorted by begin, and stretches that share at least a point made one.
[[nodiscard]] std::vector<Interval> merged(std::vector<Interval> stretches);

/// Sum of lengths; the stretches must not overlap.
[[nodiscard]] Duration total(const std::vector<Interval>& stretches);

/// Length of what `one` shares with `many` (sorted, not overlapping).
[[nodiscard]] Duration overlap(const Interval& one, const std::vector<Interval>& many);

/// `whole` without the interiors of `holes` (merged): closed stretches, zero length possible.
[[nodiscard]] std::vector<Interval> withoutInteriors(const Interval& whole,
                                                     const std::vector<Interval>& holes);

/// The stretch of `many` (sorted, not overlapping) that holds `t`, by index; -1 if none does.
[[nodiscard]] int indexHolding(const std::vector<Interval>& many, Time t);

} // namespace afterbeat
