/// The filters of the detectors of hands: nothing is delayed, and every one costs a fixed amount a
/// sample.
#pragma once

#include <span>
#include <vector>

namespace afterbeat {

/// Low-pass, second-order Butterworth run forwards and backwards: fourth order, half the amplitude
/// at `highHz`. Unchanged where `highHz` is not below 0.45 of the rate.
[[nodiscard]] std::vector<double> lowPassed(std::vector<double> values, double highHz,
                                            double rateHz);

/// High-pass of the same kind, then `lowPassed`.
[[nodiscard]] std::vector<double> bandPassed(std::vector<double> values, double lowHz,
                                             double highHz, double rateHz);

/// Movement from acceleration: divided by the square of the angular frequency (which is double
/// integration, with the sign that turns acceleration out of the chest into depth), without what is
/// slower than `lowHz` (as the high-pass of `bandPassed`). Millimetres for m/s2.
[[nodiscard]] std::vector<double> movementFrom(std::vector<double> acceleration, double lowHz,
                                               double rateHz);

/// Mean over `seconds` around every sample, fewer at the ends.
[[nodiscard]] std::vector<double> movingMean(std::span<const double> values, double seconds,
                                             double rateHz);

/// Root of the mean square over `seconds` around every sample, fewer at the ends.
[[nodiscard]] std::vector<double> movingRms(std::span<const double> values, double seconds,
                                            double rateHz);

} // namespace afterbeat
