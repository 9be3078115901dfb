/// Which patterns along a centre line chance alone would rarely draw.
#pragma once

#include <cstdint>
#include <vector>

namespace afterbeat {

enum class SignalRule : std::uint8_t {
  /// A point beyond the limits: Shewhart 1931; rule 1 of the Western Electric handbook.
  beyondLimits,
  /// The longest run of points on one side of the centre is longer than round(log2(n) + 3), n the
  /// points that lie on neither: Anhøj and Olesen, PLoS ONE 2014;9:e113825 (read in secondary
  /// publications).
  longRun,
  /// The line crosses the centre less often than the 5 % quantile of a binomial distribution of
  /// n - 1 even chances: the same.
  fewCrossings,
  /// Two of three points beyond two deviations, on one side: rule 2 of Western Electric,
  /// Statistical Quality Control Handbook, 1956, as in the NIST/SEMATECH e-Handbook, section 6.3.2
  /// (both from memory).
  twoOfThree,
  /// Four of five points beyond one deviation, on one side: rule 3 of the same.
  fourOfFive,
  /// Eight points in a row on one side of the centre: rule 4 of the same.
  eightInARow,
};

using SignalRules = std::vector<SignalRule>;

/// For a median without limits: longest run and crossings.
[[nodiscard]] SignalRules runChartRules();
/// The program's choice for control charts: beyond the limits, longest run, crossings. The four of
/// Western Electric together raise a false alarm in one of 92 points (Champ and Woodall,
/// Technometrics 1987;29:393-399, from memory): too many for a season of records.
[[nodiscard]] SignalRules controlChartRules();
/// The four of Western Electric.
[[nodiscard]] SignalRules westernElectricRules();

/// With fewer points no rule is asked.
inline constexpr std::size_t kLeastPointsForSignals = 10;

/// A pattern that a rule found, in the points `first` to `last`.
struct RuleHit {
  SignalRule rule = SignalRule::beyondLimits;
  std::size_t first = 0, last = 0;
  /// `longRun`: length of the run; `fewCrossings`: crossings; otherwise number of points.
  std::size_t found = 0;
  /// `longRun`: the longest that chance explains; `fewCrossings`: the fewest; otherwise 0.
  std::size_t expected = 0;
  /// Above the centre; meaningless for `fewCrossings`.
  bool above = false;
};

/// Points along a centre line. `deviation` (one a point, or empty) is asked by the rules that speak
/// of deviations or limits; those are passed over without it.
[[nodiscard]] std::vector<RuleHit> findSignals(const std::vector<double>& values, double centre,
                                               const std::vector<double>& deviation,
                                               const SignalRules& rules);

/// Length of the longest run that chance explains among `n` points off the centre.
[[nodiscard]] std::size_t longestRunExpected(std::size_t n);
/// The fewest crossings that chance explains among `n` points off the centre.
[[nodiscard]] std::size_t fewestCrossingsExpected(std::size_t n);

} // namespace afterbeat
