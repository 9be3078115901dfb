/// Made-up ECG for tests: simple shapes whose truth is known.
#pragma once

#include "core/signal/signal_view.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

namespace afterbeat {

/// Noise of `mv` effective amplitude; the same for the same seed.
inline std::vector<double> madeNoise(std::size_t count, double mv, unsigned seed) {
  std::mt19937 dice(seed);
  std::vector<double> out(count);
  for (double& value : out) {
    // The sum of twelve even numbers is nearly normal, and the same with every library.
    double sum = -6;
    for (int k = 0; k < 12; ++k) {
      sum += static_cast<double>(dice()) / 4294967296.0;
    }
    value = mv * sum;
  }
  return out;
}

/// Adds a bell of `mv` at `at` seconds whose standard deviation is `width` seconds.
inline void addBell(std::vector<double>& ecg, double rateHz, double at, double mv, double width) {
  const auto first = static_cast<std::ptrdiff_t>((at - 5 * width) * rateHz);
  const auto last = static_cast<std::ptrdiff_t>((at + 5 * width) * rateHz) + 1;
  for (std::ptrdiff_t i = std::max<std::ptrdiff_t>(0, first);
       i < std::min(last, static_cast<std::ptrdiff_t>(ecg.size())); ++i) {
    const double x = (static_cast<double>(i) / rateHz - at) / width;
    ecg[static_cast<std::size_t>(i)] += mv * std::exp(-x * x / 2);
  }
}

/// Adds P wave, QRS complex and T wave with the R wave of `mv` at each of `beats` (seconds).
inline void addBeats(std::vector<double>& ecg, double rateHz, const std::vector<double>& beats,
                     double mv) {
  for (const double at : beats) {
    addBell(ecg, rateHz, at - 0.16, 0.12 * mv, 0.02);
    addBell(ecg, rateHz, at - 0.025, -0.12 * mv, 0.008);
    addBell(ecg, rateHz, at, mv, 0.011);
    addBell(ecg, rateHz, at + 0.028, -0.25 * mv, 0.009);
    addBell(ecg, rateHz, at + 0.26, 0.3 * mv, 0.045);
  }
}

/// Beats from `begin` to `end` seconds, `every` seconds apart, each moved by up to `jitter`.
inline std::vector<double> madeBeats(double begin, double end, double every, double jitter = 0) {
  std::mt19937 dice(5);
  std::vector<double> out;
  for (double at = begin; at < end; at += every) {
    out.push_back(at + jitter * (static_cast<double>(dice()) / 2147483648.0 - 1));
  }
  return out;
}

inline std::vector<double> madeSine(std::size_t count, double rateHz, double hz, double mv) {
  std::vector<double> out(count);
  for (std::size_t i = 0; i < count; ++i) {
    out[i] = mv * std::sin(2 * std::numbers::pi * hz * static_cast<double>(i) / rateHz);
  }
  return out;
}

/// As a recording of `stepMv` a step holds it, between `low` and `high`.
inline void digitise(std::vector<double>& ecg, double stepMv, double low, double high) {
  for (double& value : ecg) {
    value = std::clamp(std::round(value / stepMv), std::round(low / stepMv),
                       std::round(high / stepMv)) *
            stepMv;
  }
}

inline Time at(double s) {
  return *timeFromSeconds(s);
}

} // namespace afterbeat
