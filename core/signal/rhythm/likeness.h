/// Beats of a window and how much they resemble each other.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace afterbeat {

/// What is found; `kRhythmRateHz`.
struct Likeness {
  /// Median of the beats' correlations with their median; 0 for fewer than two beats.
  double correlation = 0;
  int beats = 0;
  /// 60 s over the median distance; 0 for fewer than two.
  double ratePerMin = 0;
};

/// Finds the beats of windows; keeps its memory from one to the next.
class BeatLikeness {
public:
  /// `wide` and `slope` of a window, of one length. Beats are local maxima of `slope` of at least
  /// 0.4 of its 98th percentile, 0.2 s apart (of nearer ones the higher), moved to the largest
  /// deflection of `wide` within 0.064 s; what is compared are the 0.12 s on each side without
  /// their mean.
  [[nodiscard]] Likeness of(std::span<const double> wide, std::span<const double> slope);

private:
  void findPeaks(std::span<const double> slope);
  [[nodiscard]] double correlation();

  std::vector<std::size_t> peaks_;
  std::vector<double> beats_, median_, scratch_;
};

/// The `share` (0 to 1) of values that lie below what is returned, interpolated linearly between
/// the two nearest (as numpy's percentile). Reorders `values`, which must not be empty.
[[nodiscard]] double quantile(std::span<double> values, double share);

} // namespace afterbeat
