/// Where depth or force lies while nobody presses.
#pragma once

#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace afterbeat {

/// The level of a signal at rest, read off the pauses between series of presses (its lowest tenth
/// in each pause of at least 0.8 s, so that hands resting in part of a pause do not count as rest)
/// and joined by straight lines: a sensor's drift and a chest that has changed its shape are not
/// leaning. Zero, as the format has it, where there is no pause.
class RestingLevel {
public:
  /// `pressed` are the series as first and last sample, in order.
  RestingLevel(std::span<const double> values,
               std::span<const std::pair<std::size_t, std::size_t>> pressed, double rateHz);

  [[nodiscard]] double at(std::size_t sample) const;

private:
  void addPause(std::span<const double> values, std::size_t from, std::size_t to, double rateHz);

  /// Middle of a pause, and its level.
  std::vector<std::pair<double, double>> knots_;
};

} // namespace afterbeat
