#include "core/signal/hands/filters.h"

#include "core/signal/dsp/sections.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace afterbeat {
namespace {

constexpr int kOrder = 2;
constexpr double kMmPerM = 1000;

template <typename Of>
std::vector<double> movingSum(std::span<const double> values, double seconds, double rateHz,
                              Of of) {
  const auto half = static_cast<std::size_t>(seconds * rateHz / 2);
  std::vector<double> result(values.size());
  double sum = 0;
  std::size_t from = 0, to = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    for (; to < values.size() && to <= i + half; ++to) {
      sum += of(values[to]);
    }
    for (; from + half < i; ++from) {
      sum -= of(values[from]);
    }
    result[i] = sum / static_cast<double>(to - from);
  }
  return result;
}

} // namespace

std::vector<double> lowPassed(std::vector<double> values, double highHz, double rateHz) {
  if (highHz < 0.45 * rateHz) {
    filterBothWays(butterworth(kOrder, Band::lowPass, 0, highHz, rateHz), values);
  }
  return values;
}

std::vector<double> bandPassed(std::vector<double> values, double lowHz, double highHz,
                               double rateHz) {
  filterBothWays(butterworth(kOrder, Band::highPass, lowHz, 0, rateHz), values);
  return lowPassed(std::move(values), highHz, rateHz);
}

std::vector<double> movementFrom(std::vector<double> acceleration, double lowHz, double rateHz) {
  // The second-order high-pass s^2 / (s^2 + sqrt(2) s + 1) over s: run both ways it is the
  // fourth-order high-pass over the square of the frequency. In s of the edge; bilinear, the edge
  // kept in place.
  const double k = std::tan(std::numbers::pi * lowHz / rateHz);
  const double edge = 2 * rateHz * k;
  const double whole = 1 + std::numbers::sqrt2 * k + k * k;
  Section section;
  section.b0 = k / (whole * edge);
  section.b1 = 0;
  section.b2 = -section.b0;
  section.a1 = (2 * k * k - 2) / whole;
  section.a2 = (1 - std::numbers::sqrt2 * k + k * k) / whole;
  filterBothWays({&section, 1}, acceleration);
  for (double& x : acceleration) {
    x *= kMmPerM;
  }
  return acceleration;
}

std::vector<double> movingMean(std::span<const double> values, double seconds, double rateHz) {
  return movingSum(values, seconds, rateHz, [](double x) { return x; });
}

std::vector<double> movingRms(std::span<const double> values, double seconds, double rateHz) {
  auto result = movingSum(values, seconds, rateHz, [](double x) { return x * x; });
  for (double& x : result) {
    x = std::sqrt(std::max(0.0, x));
  }
  return result;
}

} // namespace afterbeat
