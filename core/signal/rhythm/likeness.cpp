#include "core/signal/rhythm/likeness.h"

#include "core/signal/rhythm/bands.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {

namespace {

constexpr std::size_t kApart = kRhythmSecond / 5;
constexpr std::size_t kNear = 8;
/// Samples on each side of a beat that are compared, and of the whole.
constexpr std::size_t kSide = 15;
constexpr std::size_t kLength = 2 * kSide + 1;
constexpr double kHeight = 0.4;

double dot(std::span<const double> a, std::span<const double> b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) {
    sum += a[i] * b[i];
  }
  return sum;
}

constexpr std::size_t kFewLargest = 32;

/// The `count` largest, in falling order: most values are smaller than all of them and cost one
/// comparison.
std::array<double, kFewLargest> fewLargest(std::span<const double> values, std::size_t count) {
  std::array<double, kFewLargest> kept{};
  std::size_t size = 0;
  for (const double v : values) {
    if (size == count && v <= kept[size - 1]) {
      continue;
    }
    size = std::min(size + 1, count);
    auto i = size - 1;
    for (; i > 0 && kept[i - 1] < v; --i) {
      kept[i] = kept[i - 1];
    }
    kept[i] = v;
  }
  return kept;
}

} // namespace

double quantile(std::span<double> values, double share) {
  const double at = share * static_cast<double>(values.size() - 1);
  const auto below = static_cast<std::size_t>(at);
  const auto fromTop = values.size() - 1 - below;
  if (fromTop < kFewLargest) {
    const auto largest = fewLargest(values, fromTop + 1);
    return fromTop == 0
               ? largest[0]
               : std::lerp(largest[fromTop], largest[fromTop - 1], at - static_cast<double>(below));
  }
  const auto nth = values.begin() + static_cast<std::ptrdiff_t>(below);
  std::nth_element(values.begin(), nth, values.end());
  return std::lerp(*nth, *std::min_element(nth + 1, values.end()), at - static_cast<double>(below));
}

void BeatLikeness::findPeaks(std::span<const double> slope) {
  scratch_.assign(slope.begin(), slope.end());
  const double least = kHeight * quantile(scratch_, 0.98);
  peaks_.clear();
  for (std::size_t i = 1; i + 1 < slope.size(); ++i) {
    if (slope[i] < least || slope[i] <= slope[i - 1] || slope[i] < slope[i + 1]) {
      continue;
    }
    if (!peaks_.empty() && i - peaks_.back() < kApart) {
      if (slope[i] > slope[peaks_.back()]) {
        peaks_.back() = i;
      }
      continue;
    }
    peaks_.push_back(i);
  }
}

double BeatLikeness::correlation() {
  const auto count = beats_.size() / kLength;
  median_.resize(kLength);
  scratch_.resize(count);
  for (std::size_t k = 0; k < kLength; ++k) {
    for (std::size_t b = 0; b < count; ++b) {
      scratch_[b] = beats_[b * kLength + k];
    }
    median_[k] = quantile(scratch_, 0.5);
  }
  const double own = dot(median_, median_);
  for (std::size_t b = 0; b < count; ++b) {
    const auto beat = std::span<const double>{beats_}.subspan(b * kLength, kLength);
    scratch_[b] = dot(beat, median_) / std::max(std::sqrt(dot(beat, beat) * own), 1e-12);
  }
  return quantile(scratch_, 0.5);
}

Likeness BeatLikeness::of(std::span<const double> wide, std::span<const double> slope) {
  findPeaks(slope);
  beats_.clear();
  std::size_t kept = 0;
  for (const auto peak : peaks_) {
    const auto from = peak < kNear ? 0 : peak - kNear;
    const auto to = std::min(wide.size(), peak + kNear + 1);
    auto at = from;
    for (auto i = from; i < to; ++i) {
      at = std::fabs(wide[i]) > std::fabs(wide[at]) ? i : at;
    }
    if (at < kSide || at + kSide >= wide.size()) {
      continue;
    }
    peaks_[kept++] = at;
    const auto beat = wide.subspan(at - kSide, kLength);
    double mean = 0;
    for (const double v : beat) {
      mean += v / double{kLength};
    }
    for (const double v : beat) {
      beats_.push_back(v - mean);
    }
  }
  peaks_.resize(kept);
  Likeness found{.beats = static_cast<int>(kept)};
  if (kept < 2) {
    return found;
  }
  found.correlation = correlation();
  scratch_.clear();
  for (std::size_t i = 1; i < kept; ++i) {
    scratch_.push_back(static_cast<double>(peaks_[i]) - static_cast<double>(peaks_[i - 1]));
  }
  const double apart = quantile(scratch_, 0.5);
  found.ratePerMin = apart > 0 ? 60 * kRhythmRateHz / apart : 0;
  return found;
}

} // namespace afterbeat
