#include "core/signal/hands/pauses.h"

#include "core/signal/hands/alike.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

/// A typical press is made from this many on both sides, anew for every few.
constexpr std::size_t kReach = 24, kEvery = 4, kFewest = 12;
/// The noise is that of this many on both sides.
constexpr std::size_t kNoiseReach = 16;
constexpr double kLeastNoise = 0.05;
/// How much presses of one rescuer differ by themselves, as a share; how much higher than the
/// noise's deviation its maxima are.
constexpr double kNatural = 0.2, kMaxima = 1.5;
/// Spread of the logarithm of the step, as a share of the usual one: of presses and of noise.
constexpr double kSteady = 0.12, kUnsteady = 0.25;
constexpr double kMostForPress = 4, kMostAgainstStep = 2, kStepWeight = 0.5;
constexpr double kLongestStep = 0.5;
/// What a change of state costs, in log likelihood.
constexpr double kChange = 1.5;
/// A step this many times the usual one parts a series: what follows must stand for itself.
constexpr double kBreak = 1.7;
/// Between presses of one run, s.
constexpr double kLongestBeat = 1.5;

struct Fit {
  /// How much of a typical press there is, and what is left over, both as a share of it.
  double share = 0, rest = 0;
};

double dot(const Shape& a, const Shape& b) {
  double sum = 0;
  for (std::size_t p = 0; p < a.size(); ++p) {
    sum += a[p] * b[p];
  }
  return sum;
}

Shape meanOf(std::span<const Shape> shapes) {
  Shape mean{};
  for (const Shape& one : shapes) {
    for (std::size_t p = 0; p < mean.size(); ++p) {
      mean[p] += one[p] / static_cast<double>(shapes.size());
    }
  }
  return mean;
}

Shape typicalOf(std::span<const Shape> shapes) {
  Shape typical = meanOf(shapes);
  std::vector<double> shares(shapes.size());
  for (int pass = 0; pass < 2; ++pass) {
    for (std::size_t i = 0; i < shapes.size(); ++i) {
      shares[i] = dot(shapes[i], typical);
    }
    const double middle = upperMedian(shares);
    std::vector<Shape> fuller;
    for (std::size_t i = 0; i < shapes.size(); ++i) {
      if (shares[i] >= middle) {
        fuller.push_back(shapes[i]);
      }
    }
    typical = meanOf(fuller);
  }
  return typical;
}

/// The better of what comes before and what comes after: at a change of hands presses are like one
/// of them, noise in a pause is like neither.
void takeBetter(const Shape& one, const Shape& typical, Fit& fit) {
  const double power = dot(typical, typical);
  if (power <= 0) {
    return;
  }
  const double both = dot(one, typical);
  const double rest = std::sqrt(std::max(0.0, (dot(one, one) - 2 * both + power) / power));
  if (fit.share == 0 || rest < fit.rest) {
    fit = {both / power, rest};
  }
}

std::vector<Fit> fits(const std::vector<Shape>& shapes) {
  const std::size_t n = shapes.size();
  std::vector<Fit> result(n);
  for (std::size_t k = 0; k < n; k += kEvery) {
    const std::size_t end = std::min(n, k + kEvery);
    const auto add = [&](std::size_t from, std::size_t to) {
      if (to - from < std::min(n, kFewest)) {
        return;
      }
      const Shape typical = typicalOf(std::span(shapes).subspan(from, to - from));
      for (std::size_t i = k; i < end; ++i) {
        takeBetter(shapes[i], typical, result[i]);
      }
    };
    const std::size_t from = k > kReach ? k - kReach : 0, to = std::min(n, end + kReach);
    if (end - from < kFewest && to - k < kFewest) {
      add(from, to);
    } else {
      add(from, end);
      add(k, to);
    }
  }
  return result;
}

/// For each pulse the log likelihood of being a press over that of being noise in a pause.
std::vector<double> forPress(const std::vector<Fit>& fit, const std::vector<double>& tops) {
  std::vector<double> steps, rests;
  for (std::size_t k = 1; k < tops.size(); ++k) {
    steps.push_back(tops[k] - tops[k - 1]);
  }
  const double usual = upperMedian(steps);
  const auto inStep = [&](std::size_t k) {
    const double off = std::min(kLongestStep, std::fabs(std::log(steps[k] / usual)));
    const double x = off * off / 2 * (1 / (kSteady * kSteady) - 1 / (kUnsteady * kUnsteady));
    return kStepWeight * std::max(-kMostAgainstStep, std::log(kUnsteady / kSteady) - x);
  };
  std::vector<double> result(fit.size());
  for (std::size_t k = 0; k < fit.size(); ++k) {
    rests.clear();
    for (std::size_t j = k > kNoiseReach ? k - kNoiseReach : 0;
         j < std::min(fit.size(), k + kNoiseReach + 1); ++j) {
      rests.push_back(fit[j].rest);
    }
    const double noise = std::max(kLeastNoise, upperMedian(rests));
    const double power = noise * noise, short_ = std::max(0.0, 1 - fit[k].share);
    const double press = fit[k].share * fit[k].share / (2 * kMaxima * kMaxima * power) -
                         short_ * short_ / (2 * (power + kNatural * kNatural));
    result[k] = std::min(kMostForPress, press) + inStep(k > 0 ? k - 1 : 0) / 2 +
                inStep(std::min(k, steps.size() - 1)) / 2;
  }
  return result;
}

/// Which pulses lie in the state "pressed".
std::vector<bool> pressed(const std::vector<double>& forPress) {
  const std::size_t n = forPress.size();
  std::vector<bool> stayedOn(n), stayedOff(n), result(n);
  double on = forPress[0], off = 0;
  for (std::size_t k = 1; k < n; ++k) {
    stayedOn[k] = on >= off - kChange;
    stayedOff[k] = off >= on - kChange;
    const double was = on;
    on = (stayedOn[k] ? on : off - kChange) + forPress[k];
    off = stayedOff[k] ? off : was - kChange;
  }
  result[n - 1] = on >= off;
  for (std::size_t k = n - 1; k > 0; --k) {
    result[k - 1] = result[k] ? stayedOn[k] : !stayedOff[k];
  }
  return result;
}

} // namespace

std::vector<Series> withoutPauses(const Series& series, std::span<const Pulse> pulses,
                                  std::span<const double> shape, double rateHz) {
  if (series.size() < kFewest) {
    return {series};
  }
  std::vector<double> tops;
  for (const std::size_t i : series) {
    tops.push_back(static_cast<double>(pulses[i].top));
  }
  std::vector<bool> keep = pressed(forPress(fits(shapesOf(series, pulses, shape)), tops));
  // A few that noise has spoilt leave no pause.
  for (std::size_t k = 0; k < keep.size();) {
    std::size_t end = k;
    while (end < keep.size() && !keep[end]) {
      ++end;
    }
    if (end > k && k > 0 && end < keep.size() && tops[end] - tops[k - 1] <= kLongestBeat * rateHz) {
      std::fill(keep.begin() + static_cast<std::ptrdiff_t>(k),
                keep.begin() + static_cast<std::ptrdiff_t>(end), true);
    }
    k = std::max(end, k + 1);
  }
  std::vector<double> steps;
  for (std::size_t k = 1; k < tops.size(); ++k) {
    steps.push_back(tops[k] - tops[k - 1]);
  }
  const double longest = std::min(kLongestBeat * rateHz, kBreak * upperMedian(std::move(steps)));
  std::vector<Series> result;
  double last = 0;
  for (std::size_t k = 0; k < keep.size(); ++k) {
    if (!keep[k]) {
      continue;
    }
    if (result.empty() || tops[k] - last > longest) {
      result.emplace_back();
    }
    result.back().push_back(series[k]);
    last = tops[k];
  }
  return result;
}

} // namespace afterbeat
