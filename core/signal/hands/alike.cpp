#include "core/signal/hands/alike.h"

#include "core/signal/hands/sum_of_neighbours.h"
#include "core/signal/hands/tops.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {
namespace {

constexpr std::size_t kNeighbours = 8;
/// The pace at a press is that of so many steps before and after it.
constexpr std::size_t kPaceSteps = 4;

Shape shapeAround(std::span<const double> signal, std::size_t top, double step) {
  Shape shape{};
  double mean = 0;
  for (std::size_t p = 0; p < kPhases; ++p) {
    const double at =
        static_cast<double>(top) + step * ((static_cast<double>(p) + 0.5) / kPhases - 0.5);
    const double inside = std::clamp(at, 0.0, static_cast<double>(signal.size() - 1));
    const auto i = static_cast<std::size_t>(inside);
    const std::size_t next = std::min(i + 1, signal.size() - 1);
    shape[p] = signal[i] + (signal[next] - signal[i]) * (inside - static_cast<double>(i));
    mean += shape[p];
  }
  for (double& x : shape) {
    x -= mean / kPhases;
  }
  return shape;
}

/// `sum` is that of `count` neighbours.
Likeness compare(const Shape& one, const Shape& sum, double count) {
  double ab = 0, aa = 0, bb = 0;
  for (std::size_t p = 0; p < kPhases; ++p) {
    ab += one[p] * sum[p];
    aa += one[p] * one[p];
    bb += sum[p] * sum[p];
  }
  return aa > 0 && bb > 0 ? Likeness{ab / std::sqrt(aa * bb), ab * count / bb} : Likeness{};
}

constexpr double kAloneShare = 0.75;

/// Whether pulse `k` is far from both neighbours, compared with the usual step of its ten
/// neighbours.
bool outOfStep(const Series& series, std::span<const Pulse> pulses, std::size_t k, double usual) {
  const auto top = [&](std::size_t i) { return static_cast<double>(pulses[series[i]].top); };
  const std::size_t from = k > 5 ? k - 5 : 0, to = std::min(k + 5, series.size() - 1);
  std::vector<double> steps;
  for (std::size_t i = from; i < to; ++i) {
    steps.push_back(top(i + 1) - top(i));
  }
  const double limit = 1.45 * std::min(usual, upperMedian(std::move(steps)));
  return (k == 0 || top(k) - top(k - 1) > limit) &&
         (k + 1 == series.size() || top(k + 1) - top(k) > limit);
}

} // namespace

double upperMedian(std::vector<double> values) {
  if (values.empty()) {
    return 0;
  }
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

double usualStep(const Series& series, std::span<const Pulse> pulses) {
  std::vector<double> steps;
  for (std::size_t k = 1; k < series.size(); ++k) {
    steps.push_back(static_cast<double>(pulses[series[k]].top - pulses[series[k - 1]].top));
  }
  return upperMedian(std::move(steps));
}

std::vector<Shape> shapesOf(const Series& series, std::span<const Pulse> pulses,
                            std::span<const double> signal) {
  const auto top = [&](std::size_t k) { return pulses[series[k]].top; };
  std::vector<Shape> shapes;
  shapes.reserve(series.size());
  std::vector<double> steps;
  for (std::size_t k = 0; k < series.size(); ++k) {
    steps.clear();
    for (std::size_t j = k > kPaceSteps ? k - kPaceSteps : 0;
         j < std::min(k + kPaceSteps, series.size() - 1); ++j) {
      steps.push_back(static_cast<double>(top(j + 1) - top(j)));
    }
    shapes.push_back(shapeAround(signal, top(k), upperMedian(steps)));
  }
  return shapes;
}

std::vector<Likeness> likenessToNeighbours(const Series& series, std::span<const Pulse> pulses,
                                           std::span<const double> signal) {
  const std::vector<Shape> shapes = shapesOf(series, pulses, signal);
  std::vector<Likeness> result(series.size());
  eachSumOfNeighbours(shapes, kNeighbours, true,
                      [&](std::size_t k, const Shape& sum, double count) {
                        result[k] = compare(shapes[k], sum, count);
                      });
  return result;
}

void dropUnlike(Series& series, std::span<const Pulse> pulses, std::span<const double> signal,
                double least) {
  for (int pass = 0; pass < 2 && series.size() > 2; ++pass) {
    const auto likeness = likenessToNeighbours(series, pulses, signal);
    const double step = usualStep(series, pulses);
    const auto unlike = [&](std::size_t k) {
      return likeness[k].share <
             (outOfStep(series, pulses, k, step) ? std::max(least, kAloneShare) : least);
    };
    Series kept;
    for (std::size_t k = 0; k < series.size();) {
      std::size_t end = k;
      while (end < series.size() && unlike(end)) {
        ++end;
      }
      // One alone between like ones, in step with them, is a press that noise has spoilt.
      const bool spoilt =
          end == k + 1 && k > 0 && end < series.size() && !outOfStep(series, pulses, k, step);
      if (end == k || spoilt) {
        kept.push_back(series[k]);
        ++k;
      } else {
        k = end;
      }
    }
    series = std::move(kept);
  }
}

void trimEnds(Series& series, std::span<const Pulse> pulses, double share) {
  const auto low = [&](bool front) {
    std::vector<double> heights;
    for (std::size_t k = 1; k <= 6 && k < series.size(); ++k) {
      heights.push_back(pulses[series[front ? k : series.size() - 1 - k]].height);
    }
    return pulses[front ? series.front() : series.back()].height <
           share * upperMedian(std::move(heights));
  };
  while (series.size() > 2 && low(true)) {
    series.erase(series.begin());
  }
  while (series.size() > 2 && low(false)) {
    series.pop_back();
  }
}

std::vector<double> releasesOf(const Series& series, std::span<const Pulse> pulses,
                               std::span<const double> signal) {
  const auto reach = static_cast<std::size_t>(0.7 * usualStep(series, pulses));
  const Pulse& first = pulses[series.front()];
  const Pulse& last = pulses[series.back()];
  std::vector<double> result;
  result.reserve(series.size() + 1);
  const auto add = [&](std::size_t bottom) { result.push_back(bottomAt(signal, bottom)); };
  add(std::max(first.before, first.top > reach ? first.top - reach : 0));
  for (std::size_t k = 1; k < series.size(); ++k) {
    const auto a = signal.begin() + static_cast<std::ptrdiff_t>(pulses[series[k - 1]].top);
    const auto b = signal.begin() + static_cast<std::ptrdiff_t>(pulses[series[k]].top);
    add(static_cast<std::size_t>(std::min_element(a, b) - signal.begin()));
  }
  add(std::min({last.after, last.top + reach, signal.size() - 1}));
  return result;
}

} // namespace afterbeat
