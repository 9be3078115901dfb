/// Missing samples (NaN) before a filter that would never get rid of them.
#pragma once

#include <cstddef>
#include <span>

namespace afterbeat {

/// Puts the straight line between its neighbours in place of every run of NaN, the neighbour's
/// value at an end, and 0 where there is nothing but NaN. Returns how many samples were missing.
/// Remember where they were: what a filter makes of a bridge is no measurement.
std::size_t bridgeMissing(std::span<double> values);

} // namespace afterbeat
