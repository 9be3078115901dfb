/// Samples of a channel as the detectors read them: evenly spaced, in one unit a quantity.
#pragma once

#include "core/record/channel.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace afterbeat {

/// A run of evenly spaced samples without a gap between blocks. A missing sample is NaN.
struct SignalView {
  Time begin{};
  /// Samples a second, > 0.
  double rateHz = 0;
  std::span<const double> values;

  /// The moment of sample `i`; a fraction lies between two samples.
  [[nodiscard]] Time timeAt(double i) const {
    return begin + Duration{std::llround(i * 1e6 / rateHz)};
  }
  /// The index of a moment, with its fraction; may lie outside.
  [[nodiscard]] double indexOf(Time t) const { return seconds(t - begin) * rateHz; }
};

/// The factor that turns values in `unit` (UCUM) into the unit the detectors use for `quantity`:
/// mV for `ecg`, Ohm for `impedance`, m/s2 for `acceleration`, mm for `depth`, N for `force`.
/// Nothing for another quantity or a unit that does not measure it: the channel is then not used.
[[nodiscard]] std::optional<double> factorToUsual(std::string_view quantity, std::string_view unit);

/// Samples [begin, begin + count) of a block in the detectors' unit, NaN where missing, into `into`
/// (resized to `count`, its memory kept). `factor` as from `factorToUsual`.
void readValues(const Channel& channel, const SampleBlock& block, std::size_t begin,
                std::size_t count, double factor, std::vector<double>& into);

} // namespace afterbeat
