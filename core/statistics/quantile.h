/// Quantiles by interpolation between neighbouring values: type 7 of Hyndman and Fan, The American
/// Statistician 1996;50:361-365 (from memory), what most statistics programs give when nothing is
/// said.
#pragma once

#include <optional>
#include <vector>

namespace afterbeat {

/// Quantile `p` (0 to 1) of values in ascending order; at least one.
[[nodiscard]] double quantileOfSorted(const std::vector<double>& ascending, double p);

/// Quantile of values in any order, at least one; the copy is reordered.
[[nodiscard]] double quantile(std::vector<double> values, double p);

/// A quarter of the values lie below `low`, half below `median`, a quarter above `high`.
struct Quartiles {
  double low = 0, median = 0, high = 0;
  [[nodiscard]] double range() const { return high - low; }
};

/// Empty without values. Takes time in proportion to their number.
[[nodiscard]] std::optional<Quartiles> quartiles(std::vector<double> values);

/// Empty without values.
[[nodiscard]] std::optional<double> medianOf(std::vector<double> values);

} // namespace afterbeat
