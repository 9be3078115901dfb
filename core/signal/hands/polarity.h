/// Which way impedance moves under a press.
#pragma once

#include "core/signal/hands/pulses.h"

#include <span>
#include <vector>

namespace afterbeat {

/// Evidence that the pulses found are the presses (above 0) and not the releases between them
/// (below): at both ends of every series the presses begin from the level at rest and return to it.
/// `wave` is the band-passed signal in which the pulses are maxima, `signal` the same before the
/// band-pass.
[[nodiscard]] double polarityOf(std::span<const Series> series, std::span<const Pulse> pulses,
                                std::span<const double> wave, std::span<const double> signal,
                                double rateHz);

} // namespace afterbeat
