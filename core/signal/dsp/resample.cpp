#include "core/signal/dsp/resample.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>

namespace afterbeat {

namespace {

constexpr std::int64_t kLargestDown = 1000;
constexpr double kBeta = 5;
constexpr std::int64_t kCrossings = 10;
/// Inputs no longer needed are thrown away when they are this many.
constexpr std::size_t kHoard = 4096;

/// Modified Bessel function of the first kind, order 0, by its power series.
double bessel0(double x) {
  double term = 1, sum = 1;
  for (int k = 1; term > 1e-18 * sum; ++k) {
    term *= (x / 2 / k) * (x / 2 / k);
    sum += term;
  }
  return sum;
}

/// A low-pass at 1 / `widest` of half the common rate, 2 x `half` + 1 taps that sum to `gain`.
std::vector<double> lowPass(std::int64_t half, std::int64_t widest, double gain) {
  std::vector<double> h;
  double sum = 0;
  for (std::int64_t i = -half; i <= half; ++i) {
    const double x = std::numbers::pi * static_cast<double>(i) / static_cast<double>(widest);
    const double off = static_cast<double>(i) / static_cast<double>(half);
    const double weight = bessel0(kBeta * std::sqrt(1 - off * off)) / bessel0(kBeta);
    h.push_back((i == 0 ? 1 : std::sin(x) / x) * weight);
    sum += h.back();
  }
  for (double& tap : h) {
    tap *= gain / sum;
  }
  return h;
}

/// Sum of products in four sums at once, which is what a processor does quickly.
double product(const double* a, const double* b, std::int64_t count) {
  double s0 = 0, s1 = 0, s2 = 0, s3 = 0;
  std::int64_t j = 0;
  for (; j + 4 <= count; j += 4) {
    s0 += a[j] * b[j];
    s1 += a[j + 1] * b[j + 1];
    s2 += a[j + 2] * b[j + 2];
    s3 += a[j + 3] * b[j + 3];
  }
  for (; j < count; ++j) {
    s0 += a[j] * b[j];
  }
  return (s0 + s1) + (s2 + s3);
}

std::int64_t floorDiv(std::int64_t a, std::int64_t b) {
  return a / b - (a % b < 0 ? 1 : 0);
}

} // namespace

RateRatio rateRatio(double fromHz, double toHz) {
  assert(fromHz > 0 && toHz > 0);
  const double wanted = toHz / fromHz;
  RateRatio best;
  double error = std::numeric_limits<double>::infinity();
  for (std::int64_t down = 1; down <= kLargestDown && error > 1e-12; ++down) {
    const auto up = std::max<std::int64_t>(1, std::llround(wanted * static_cast<double>(down)));
    const double off = std::fabs(static_cast<double>(up) / static_cast<double>(down) / wanted - 1);
    if (off < error) {
      error = off;
      best = {up, down};
    }
  }
  return best;
}

Resampler::Resampler(double fromHz, double toHz) : ratio_(rateRatio(fromHz, toHz)) {
  const auto [up, down] = ratio_;
  rateHz_ = fromHz * static_cast<double>(up) / static_cast<double>(down);
  if (up == down) {
    return;
  }
  const auto widest = std::max(up, down);
  half_ = kCrossings * widest;
  taps_ = 2 * half_ / up + 1;
  const auto h = lowPass(half_, widest, static_cast<double>(up));
  phases_.assign(static_cast<std::size_t>(up * taps_), 0.0);
  for (std::int64_t phase = 0; phase < up; ++phase) {
    // Output at `phase` beyond input 0 takes inputs first, first + 1, ...
    const auto first = -floorDiv(half_ - phase, up);
    for (std::int64_t j = 0; j < taps_; ++j) {
      const auto at = half_ + phase - (first + j) * up;
      if (at >= 0 && at <= 2 * half_) {
        phases_[static_cast<std::size_t>(phase * taps_ + j)] = h[static_cast<std::size_t>(at)];
      }
    }
  }
}

void Resampler::emit(std::int64_t lastKnown, std::vector<double>& out) {
  const auto [up, down] = ratio_;
  const auto end = (taken_ * up + down - 1) / down;
  for (; given_ < end; ++given_) {
    const auto phase = given_ * down % up;
    const auto first = given_ * down / up - floorDiv(half_ - phase, up);
    if (first + taps_ - 1 > lastKnown) {
      break;
    }
    const double* in = kept_.data() + (first - keptFrom_);
    const double* taps = phases_.data() + phase * taps_;
    out.push_back(product(in, taps, taps_));
  }
}

void Resampler::run(std::span<const double> values, std::vector<double>& out) {
  if (ratio_.up == ratio_.down) {
    out.insert(out.end(), values.begin(), values.end());
    return;
  }
  if (values.empty()) {
    return;
  }
  if (taken_ == 0) {
    keptFrom_ = -taps_;
    kept_.assign(static_cast<std::size_t>(taps_), values.front());
  }
  // In pieces, so that not the whole signal is kept.
  while (!values.empty()) {
    const auto piece = values.first(std::min(values.size(), kHoard));
    values = values.subspan(piece.size());
    kept_.insert(kept_.end(), piece.begin(), piece.end());
    taken_ += static_cast<std::int64_t>(piece.size());
    emit(taken_ - 1, out);
    const auto needed = given_ * ratio_.down / ratio_.up - taps_;
    if (needed - keptFrom_ > static_cast<std::int64_t>(kHoard)) {
      kept_.erase(kept_.begin(), kept_.begin() + (needed - keptFrom_));
      keptFrom_ = needed;
    }
  }
}

void Resampler::finish(std::vector<double>& out) {
  if (taken_ == 0) {
    return;
  }
  kept_.insert(kept_.end(), static_cast<std::size_t>(taps_ + 1), kept_.back());
  emit(taken_ + taps_, out);
}

std::vector<double> resampled(std::span<const double> values, double fromHz, double toHz) {
  Resampler resampler(fromHz, toHz);
  std::vector<double> out;
  out.reserve(static_cast<std::size_t>(static_cast<double>(values.size()) * toHz / fromHz) + 2);
  resampler.run(values, out);
  resampler.finish(out);
  return out;
}

} // namespace afterbeat
