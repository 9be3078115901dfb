#include "core/signal/ecg/fibrillation.h"

#include "core/signal/dsp/sections.h"
#include "core/signal/dsp/spectrum.h"
#include "core/signal/ecg/quality.h"
#include "core/signal/ecg/quality_parts.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {

namespace {

constexpr double kAmsaLowHz = 2, kAmsaHighHz = 48;
constexpr double kTooLowHz = 2 * kAmsaHighHz;
constexpr double kDominantLowHz = 2, kDominantHighHz = 12;
constexpr double kSmoothHz = 30;
/// Steeper than any heart: the sharpest complexes rise by some 300 mV/s. A shock whose entry comes
/// a little late does.
constexpr double kSteepestMvPerSecond = 500;
constexpr Duration kMovedAside = std::chrono::milliseconds(300);

double amsaOf(std::span<const double> values, double rateHz) {
  Spectrum spectrum(values.size(), rateHz);
  const auto amplitude = spectrum.amplitude(values);
  const double tiny = 1e-9 * rateHz;
  double sum = 0;
  for (std::size_t k = 0; k < amplitude.size(); ++k) {
    const double hz = static_cast<double>(k) * spectrum.hzPerBin();
    if (hz >= kAmsaLowHz - tiny && hz <= kAmsaHighHz + tiny) {
      sum += amplitude[k] * hz;
    }
  }
  return sum;
}

double dominantOf(std::span<const double> values, double rateHz) {
  Spectrum spectrum(values.size(), rateHz, Window::hann);
  const auto power = spectrum.power(values);
  const double perBin = spectrum.hzPerBin();
  const auto first = static_cast<std::size_t>(std::ceil(kDominantLowHz / perBin));
  const auto last =
      std::min(power.size() - 2, static_cast<std::size_t>(std::floor(kDominantHighHz / perBin)));
  const auto peak = std::max_element(power.begin() + static_cast<std::ptrdiff_t>(first),
                                     power.begin() + static_cast<std::ptrdiff_t>(last) + 1) -
                    power.begin();
  const double left = std::sqrt(power[static_cast<std::size_t>(peak - 1)]);
  const double top = std::sqrt(power[static_cast<std::size_t>(peak)]);
  const double right = std::sqrt(power[static_cast<std::size_t>(peak + 1)]);
  const double bend = left - 2 * top + right;
  const double off = bend < 0 ? std::clamp((left - right) / 2 / bend, -0.5, 0.5) : 0;
  return (static_cast<double>(peak) + off) * perBin;
}

/// Takes off the straight line of least squares: a drifting baseline.
void takeOffLine(std::span<double> values) {
  const double n = static_cast<double>(values.size());
  const double middle = (n - 1) / 2;
  double mean = 0, slope = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    mean += values[i] / n;
    slope += values[i] * (static_cast<double>(i) - middle);
  }
  slope /= n * (n * n - 1) / 12;
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] -= mean + slope * (static_cast<double>(i) - middle);
  }
}

double amplitudeOf(std::span<const double> values, double rateHz) {
  std::vector<double> smooth(values.begin(), values.end());
  takeOffLine(smooth);
  filterBothWays(butterworth(2, Band::lowPass, 0, kSmoothHz, rateHz), smooth);
  const auto second = std::min(smooth.size(), static_cast<std::size_t>(std::lround(rateHz)));
  std::vector<double> spans;
  for (std::size_t begin = 0; begin + second <= smooth.size(); begin += (second + 1) / 2) {
    const auto from = smooth.begin() + static_cast<std::ptrdiff_t>(begin);
    const auto [low, high] = std::minmax_element(from, from + static_cast<std::ptrdiff_t>(second));
    spans.push_back(*high - *low);
  }
  std::sort(spans.begin(), spans.end());
  const std::size_t half = spans.size() / 2;
  return spans.size() % 2 != 0 ? spans[half] : (spans[half - 1] + spans[half]) / 2;
}

bool hasJump(std::span<const double> values, double rateHz) {
  const auto jump = std::adjacent_find(values.begin(), values.end(), [rateHz](double a, double b) {
    return std::fabs(b - a) * rateHz > kSteepestMvPerSecond;
  });
  return jump != values.end();
}

/// Noise is found second by second, and the second before a shock holds some of the shock: so the
/// stretch is looked at by itself.
bool isNoisy(std::span<const double> values, double rateHz) {
  std::vector<FaultyStretch> found;
  findNoise({Time{}, rateHz, values}, found);
  return !found.empty();
}

struct FaultObstacle {
  SignalFault fault;
  EcgObstacle obstacle;
};
/// What is said first where several are true.
constexpr std::array kObstacles{
    FaultObstacle{SignalFault::off, EcgObstacle::electrodesOff},
    FaultObstacle{SignalFault::missing, EcgObstacle::missingSamples},
    FaultObstacle{SignalFault::saturated, EcgObstacle::saturated},
    FaultObstacle{SignalFault::spikes, EcgObstacle::spikes},
    FaultObstacle{SignalFault::poorContact, EcgObstacle::noise},
};

} // namespace

std::vector<Interval> movedByCompressions(std::span<const Time> deepest) {
  std::vector<Interval> out;
  for (const Time t : deepest) {
    if (!out.empty() && t - kMovedAside <= out.back().end) {
      out.back().end = t + kMovedAside;
    } else {
      out.push_back({t - kMovedAside, t + kMovedAside});
    }
  }
  return out;
}

Fibrillation fibrillationOf(std::span<const double> values, double rateHz) {
  return {amsaOf(values, rateHz), amplitudeOf(values, rateHz), dominantOf(values, rateHz)};
}

tl::expected<Fibrillation, EcgObstacle> fibrillationBefore(const SignalView& ecg, Time end,
                                                           std::span<const FaultyStretch> faults,
                                                           std::span<const Interval> moved,
                                                           Duration length) {
  if (ecg.rateHz <= kTooLowHz) {
    return tl::unexpected(EcgObstacle::rateTooLow);
  }
  const auto count = std::llround(seconds(length) * ecg.rateHz);
  // A sample at the very moment no longer lies before it.
  const auto last = std::ceil(ecg.indexOf(end) - 1e-6 * ecg.rateHz);
  const double first = last - static_cast<double>(count);
  if (first < 0 || last > static_cast<double>(ecg.values.size())) {
    return tl::unexpected(EcgObstacle::notRecorded);
  }
  const Interval where{end - length, end};
  for (const auto& [fault, obstacle] : kObstacles) {
    if (hasFault(faults, where, {fault})) {
      return tl::unexpected(obstacle);
    }
  }
  const auto values =
      ecg.values.subspan(static_cast<std::size_t>(first), static_cast<std::size_t>(count));
  if (std::any_of(values.begin(), values.end(), [](double v) { return std::isnan(v); })) {
    return tl::unexpected(EcgObstacle::missingSamples);
  }
  const bool compressed = std::any_of(moved.begin(), moved.end(), [&where](const Interval& one) {
    return one.begin < where.end && where.begin < one.end;
  });
  if (compressed) {
    return tl::unexpected(EcgObstacle::compressions);
  }
  if (hasJump(values, ecg.rateHz)) {
    return tl::unexpected(EcgObstacle::spikes);
  }
  if (isNoisy(values, ecg.rateHz)) {
    return tl::unexpected(EcgObstacle::noise);
  }
  return fibrillationOf(values, ecg.rateHz);
}

} // namespace afterbeat
