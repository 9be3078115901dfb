#include "core/signal/hands/depth_of_press.h"

#include "core/signal/hands/tops.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

namespace afterbeat {
namespace {

constexpr std::size_t kHarmonics = 6;
constexpr double kHighestHarmonicHz = 16;
constexpr double kMmPerM = 1000;
/// The deepest point is the middle of the time above this share of the depth: steadier than the top
/// itself where a machine holds the chest down.
constexpr double kTopShare = 0.96;

/// Integrates one press given at both releases and evenly in between, `step` seconds apart.
Press integrated(std::span<const double> acceleration, double step) {
  const std::size_t n = acceleration.size() - 1;
  std::vector<double> depth(n + 1, 0);
  double mean = (acceleration.front() + acceleration.back()) / 2;
  for (std::size_t i = 1; i < n; ++i) {
    mean += acceleration[i];
  }
  mean /= static_cast<double>(n);
  double velocity = 0;
  for (std::size_t i = 1; i <= n; ++i) {
    const double a = acceleration[i - 1] - mean;
    const double b = acceleration[i] - mean;
    // Exact for straight lines between the samples.
    depth[i] = depth[i - 1] + velocity * step - (2 * a + b) * step * step / 6;
    velocity -= (a + b) * step / 2;
  }
  const double left = depth[n];
  for (std::size_t i = 0; i <= n; ++i) {
    const double u = static_cast<double>(i) / static_cast<double>(n);
    depth[i] -= left * u * u * (3 - 2 * u);
    // Straight lines between samples take w^2 / 12 from a movement of w radians a sample.
    depth[i] += (acceleration[i] - acceleration[0]) * step * step / 12;
  }
  const auto at =
      static_cast<std::size_t>(std::max_element(depth.begin(), depth.end()) - depth.begin());
  return {topHeight(depth, at) * kMmPerM, middleOfTop(depth, at, kTopShare * depth[at], 0, n)};
}

} // namespace

Press integratedPress(std::span<const double> acceleration, double from, double to, double rateHz) {
  const double length = std::max(2.0, to - from);
  const double steps = std::ceil(length);
  std::vector<double> press(static_cast<std::size_t>(steps) + 1);
  for (std::size_t i = 0; i < press.size(); ++i) {
    press[i] = valueAt(acceleration, from + length * static_cast<double>(i) / steps);
  }
  Press result = integrated(press, length / steps / rateHz);
  result.deepest = from + result.deepest * length / steps;
  return result;
}

double meanPressDepth(std::span<const double> acceleration, std::span<const double> releases,
                      double rateHz) {
  constexpr std::size_t kSteps = 40;
  std::array<double, kSteps + 1> mean{};
  const auto presses = static_cast<double>(releases.size() - 1);
  const double usual = (releases.back() - releases.front()) / presses;
  for (std::size_t k = 0; k + 1 < releases.size(); ++k) {
    const double length = releases[k + 1] - releases[k];
    // The same movement in another time: acceleration goes with the square.
    const double weight = length * length / (usual * usual) / presses;
    for (std::size_t p = 0; p <= kSteps; ++p) {
      mean[p] +=
          weight * valueAt(acceleration, releases[k] + length * static_cast<double>(p) / kSteps);
    }
  }
  return integrated(mean, usual / kSteps / rateHz).depthMm;
}

double spectralDepth(std::span<const double> acceleration, std::size_t from, std::size_t to,
                     double ratePerMin, double rateHz) {
  const double base = 2 * std::numbers::pi * ratePerMin / 60;
  const auto n = static_cast<double>(to - from);
  std::array<std::complex<double>, kHarmonics> movement{};
  double mean = 0;
  for (std::size_t i = from; i < to; ++i) {
    mean += acceleration[i];
  }
  mean /= n;
  for (std::size_t h = 0; h < kHarmonics; ++h) {
    const double omega = base * static_cast<double>(h + 1);
    if (omega > 2 * std::numbers::pi * std::min(kHighestHarmonicHz, 0.45 * rateHz)) {
      break;
    }
    const std::complex<double> turn = std::polar(1.0, -omega / rateHz);
    const std::complex<double> hannTurn = std::polar(1.0, 2 * std::numbers::pi / n);
    std::complex<double> phase{1, 0}, hann = std::polar(1.0, std::numbers::pi / n), sum{0, 0};
    for (std::size_t i = from; i < to; ++i) {
      sum += phase * ((acceleration[i] - mean) * (1 - hann.real()));
      phase *= turn;
      hann *= hannTurn;
    }
    movement[h] = sum * (2 / n) / (omega * omega);
  }
  constexpr int kSteps = 48;
  double low = 0, high = 0;
  for (int s = 0; s < kSteps; ++s) {
    const double angle = 2 * std::numbers::pi * s / kSteps;
    double d = 0;
    for (std::size_t h = 0; h < kHarmonics; ++h) {
      d += (movement[h] * std::polar(1.0, angle * static_cast<double>(h + 1))).real();
    }
    low = std::min(low, d);
    high = std::max(high, d);
  }
  return (high - low) * kMmPerM;
}

} // namespace afterbeat
