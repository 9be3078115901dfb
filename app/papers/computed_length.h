/// Lengths that were computed, not read: sums and differences can be longer than any time in a log.
#pragma once

#include "core/record/time.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

/// `s` seconds, to the microsecond; beyond a million million seconds that many. `s` is a number.
[[nodiscard]] inline Duration computedLength(double s) {
  constexpr double kMost = 1e12;
  return Duration{std::llround(std::clamp(s, -kMost, kMost) * 1e6)};
}

} // namespace afterbeat::papers
