/// Values, tops and bottoms between samples.
#pragma once

#include <cstddef>
#include <span>

namespace afterbeat {

/// How high the parabola through sample `top` and its neighbours reaches.
[[nodiscard]] double topHeight(std::span<const double> values, std::size_t top);

/// The middle, in samples, of the time around `top` in which `values` stay at or above `level`, no
/// further than `from` and `to` (inclusive).
[[nodiscard]] double middleOfTop(std::span<const double> values, std::size_t top, double level,
                                 std::size_t from, std::size_t to);

/// Where the parabola through sample `bottom` and its neighbours is lowest, at most half a sample
/// away.
[[nodiscard]] double bottomAt(std::span<const double> values, std::size_t bottom);

/// The value between samples, by the cubic through four of them (Catmull-Rom); that of the first or
/// last sample outside.
[[nodiscard]] double valueAt(std::span<const double> values, double at);

} // namespace afterbeat
