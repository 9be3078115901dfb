#include "core/signal/hands/resting.h"

#include <algorithm>

namespace afterbeat {
namespace {

constexpr double kShortestPauseSeconds = 0.8;
/// A pause's edges may still belong to a press.
constexpr double kEdgeSeconds = 0.15;

} // namespace

RestingLevel::RestingLevel(std::span<const double> values,
                           std::span<const std::pair<std::size_t, std::size_t>> pressed,
                           double rateHz) {
  std::size_t from = 0;
  for (const auto& [first, last] : pressed) {
    addPause(values, from, first, rateHz);
    from = last;
  }
  if (!values.empty()) {
    addPause(values, from, values.size() - 1, rateHz);
  }
}

void RestingLevel::addPause(std::span<const double> values, std::size_t from, std::size_t to,
                            double rateHz) {
  const auto edge = static_cast<std::size_t>(kEdgeSeconds * rateHz);
  if (to <= from || static_cast<double>(to - from) < kShortestPauseSeconds * rateHz) {
    return;
  }
  std::vector<double> level(values.begin() + static_cast<std::ptrdiff_t>(from + edge),
                            values.begin() + static_cast<std::ptrdiff_t>(to - edge));
  const auto tenth = level.begin() + static_cast<std::ptrdiff_t>(level.size() / 10);
  std::nth_element(level.begin(), tenth, level.end());
  knots_.emplace_back(static_cast<double>(from + to) / 2, *tenth);
}

double RestingLevel::at(std::size_t sample) const {
  if (knots_.empty()) {
    return 0;
  }
  const auto x = static_cast<double>(sample);
  const auto next = std::lower_bound(knots_.begin(), knots_.end(), x,
                                     [](const auto& knot, double at) { return knot.first < at; });
  if (next == knots_.begin()) {
    return next->second;
  }
  const auto before = next - 1;
  if (next == knots_.end()) {
    return before->second;
  }
  const double share = (x - before->first) / (next->first - before->first);
  return before->second + share * (next->second - before->second);
}

} // namespace afterbeat
