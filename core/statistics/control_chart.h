/// Centre lines and limits of control charts: within the limits lies what a steady process does by
/// chance alone.
///
/// Shewhart, Economic Control of Quality of Manufactured Product, 1931; formulas as in Montgomery,
/// Introduction to Statistical Quality Control, and in the NIST/SEMATECH e-Handbook of Statistical
/// Methods, sections 6.3.2.2 and 6.3.3 (all from memory).
#pragma once

#include <optional>
#include <vector>

namespace afterbeat {

/// Limits stand this many deviations from the centre.
inline constexpr double kLimitDeviations = 3;
/// Mean range of two normal values, in deviations (the constant d2 for two).
inline constexpr double kMeanRangeOfTwo = 1.128;

/// A centre line and how far a point may be off it by chance.
struct ChartLimits {
  double centre = 0;
  /// Deviation of each point, in the order of the points; limits stand three of them off.
  std::vector<double> deviation;
  /// How many times as wide as for counts alone; 1 where nothing was widened.
  double widened = 1;
  /// Values cannot lie beyond these.
  std::optional<double> least, most;

  [[nodiscard]] double lower(std::size_t point) const;
  [[nodiscard]] double upper(std::size_t point) const;
};

/// One value a point: centre the mean, deviation the mean difference of neighbours / 1.128. At
/// least two values.
[[nodiscard]] ChartLimits individualsLimits(const std::vector<double>& values);

/// What the deviation of shares and counts is taken from.
enum class Dispersion : unsigned char {
  /// From chance alone (binomial, Poisson).
  counts,
  /// That, times the moving-range deviation of the standardised points, for counts that are not
  /// independent of each other, as compressions of one rescue are not: Laney, Quality Engineering
  /// 2002;14:531-537 (from secondary publications).
  widened,
};

/// Shares (p chart): `of[i]` cases, `with[i]` of them with what is counted; centre sum / sum. All
/// `of` above 0; at least one point (two where widened).
[[nodiscard]] ChartLimits shareLimits(const std::vector<double>& with,
                                      const std::vector<double>& of, Dispersion dispersion);

/// Counts for an exposure (u chart): centre sum / sum, deviation sqrt(centre / exposure). All
/// exposures above 0.
[[nodiscard]] ChartLimits countLimits(const std::vector<double>& counts,
                                      const std::vector<double>& exposure, Dispersion dispersion);

} // namespace afterbeat
