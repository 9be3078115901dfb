/// How far the median of so few records may be off: the bootstrap's percentile interval.
///
/// Efron, The Annals of Statistics 1979;7:1-26; percentile interval: Efron and Tibshirani, An
/// Introduction to the Bootstrap, 1993 (both from memory).
#pragma once

#include <cstdint>
#include <vector>

namespace afterbeat {

struct BootstrapSettings {
  int resamples = 2000;
  /// Share of intervals that hold the true median, were the method exact.
  double level = 0.95;
  std::uint64_t seed = 20'260'417;
};

/// An interval, limits included.
struct MedianInterval {
  double low = 0, high = 0;
};

/// The medians of `settings.resamples` samples, each as large as the first and drawn from it with
/// putting back; ascending. `ascending` holds at least one value.
///
/// The sample is not drawn value by value: the two middle ones of n draws from n places lie where
/// the middle ones of n uniform numbers do, which follow beta distributions. That is the same
/// bootstrap, in time that does not grow with the number of values.
[[nodiscard]] std::vector<double> bootstrapMedians(const std::vector<double>& ascending,
                                                   const BootstrapSettings& settings = {});

/// Type-7 quantiles of the resampled medians at (1 - level) / 2 on either side.
[[nodiscard]] MedianInterval medianInterval(const std::vector<double>& ascending,
                                            const BootstrapSettings& settings = {});

} // namespace afterbeat
