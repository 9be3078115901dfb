#include "core/signal/rhythm/seconds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace afterbeat {

namespace {

constexpr std::size_t kTcscSpan = 3 * kRhythmSecond;
/// Samples of a quarter of a second over which the cosine window rises, and falls at the end.
constexpr std::size_t kRise = 31;

double peakToPeak(std::span<const double> values) {
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  return *high - *low;
}

double largest(std::span<const double> values) {
  double most = 0;
  for (const double v : values) {
    most = std::max(most, std::fabs(v));
  }
  return most;
}

double shareAbove(std::span<const double> values, double limit) {
  std::size_t count = 0;
  for (const double v : values) {
    count += std::fabs(v) >= limit ? 1U : 0U;
  }
  return static_cast<double>(count) / static_cast<double>(values.size());
}

double tcscOf(std::span<const double> values) {
  static const auto rise = [] {
    std::array<double, kRise> weights{};
    for (std::size_t i = 0; i < kRise; ++i) {
      weights[i] =
          0.5 * (1 - std::cos(std::numbers::pi * static_cast<double>(i) / double{kRise - 1}));
    }
    return weights;
  }();
  std::array<double, kTcscSpan> weighted{};
  const auto n = values.size();
  for (std::size_t i = 0; i < n; ++i) {
    const auto edge = std::min(i, n - 1 - i);
    weighted[i] = values[i] * (edge < kRise ? rise[edge] : 1);
  }
  const auto all = std::span{weighted}.first(n);
  return shareAbove(all, 0.2 * largest(all));
}

} // namespace

std::vector<SecondMeasures> measureSeconds(const RhythmBands& bands, std::size_t begin,
                                           std::size_t count) {
  std::vector<SecondMeasures> seconds;
  seconds.reserve(count);
  const auto size = bands.wide.size();
  for (auto at = begin; seconds.size() < count && at + kRhythmSecond <= size; at += kRhythmSecond) {
    const auto of = [&](const std::vector<double>& band, std::size_t length) {
      return std::span{band}.subspan(at, std::min(length, size - at));
    };
    const auto qrs = of(bands.qrs, kRhythmSecond);
    seconds.push_back({.wideMv = peakToPeak(of(bands.wide, kRhythmSecond)),
                       .narrowMv = peakToPeak(of(bands.narrow, kRhythmSecond)),
                       .count1 = shareAbove(qrs, 0.5 * largest(qrs)),
                       .tcsc = tcscOf(of(bands.narrow, kTcscSpan))});
  }
  return seconds;
}

} // namespace afterbeat
