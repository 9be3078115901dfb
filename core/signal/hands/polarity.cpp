#include "core/signal/hands/polarity.h"

#include "core/signal/hands/alike.h"
#include "core/signal/hands/filters.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

constexpr std::size_t kFewest = 5;
constexpr double kSmoothHz = 4;
/// How much a restless signal beside a series takes from what its level says.
constexpr double kRestless = 4;

struct Extremes {
  double low = 0, high = 0, mean = 0;
};

class Ends {
public:
  Ends(std::span<const double> wave, std::vector<double> smooth)
      : wave_(wave), smooth_(std::move(smooth)) {}

  /// Where the movement between `a` and `b` reaches further: up (1) or down (-1).
  [[nodiscard]] double reach(double a, double b, double height) const {
    const Extremes e = extremes(wave_, a, b);
    return std::clamp((e.low + e.high) / height, -1.0, 1.0);
  }

  /// Whether the signal between `a` and `b`, where nobody presses, lies below the middle of the
  /// presses `first` to `last` (1) or above (-1); weighed by how still it is.
  [[nodiscard]] double level(double a, double b, double first, double last, double height) const {
    if (std::min(a, b) < 0 || std::max(a, b) > static_cast<double>(smooth_.size() - 1)) {
      return 0;
    }
    const Extremes rest = extremes(smooth_, std::min(a, b), std::max(a, b));
    const Extremes press = extremes(smooth_, first, last);
    const double range = (rest.high - rest.low) / height;
    const double weight = 1 / (1 + kRestless * range * range);
    return weight * std::clamp(((press.low + press.high) - 2 * rest.mean) / height, -1.0, 1.0);
  }

private:
  static Extremes extremes(std::span<const double> values, double a, double b) {
    const auto last = static_cast<double>(values.size() - 1);
    const auto from = static_cast<std::size_t>(std::clamp(a, 0.0, last));
    const auto to = static_cast<std::size_t>(std::clamp(b, 0.0, last));
    Extremes e{values[from], values[from], 0};
    for (std::size_t i = from; i <= to; ++i) {
      e.low = std::min(e.low, values[i]);
      e.high = std::max(e.high, values[i]);
      e.mean += values[i];
    }
    e.mean /= static_cast<double>(std::max(to, from) - from + 1);
    return e;
  }

  std::span<const double> wave_;
  std::vector<double> smooth_;
};

} // namespace

double polarityOf(std::span<const Series> series, std::span<const Pulse> pulses,
                  std::span<const double> wave, std::span<const double> signal, double rateHz) {
  if (series.empty()) {
    return 0;
  }
  const Ends ends(wave, lowPassed({signal.begin(), signal.end()}, kSmoothHz, rateHz));
  double sum = 0;
  for (const Series& one : series) {
    if (one.size() < kFewest) {
      continue;
    }
    const auto top = [&](std::size_t k) { return static_cast<double>(pulses[one[k]].top); };
    const std::size_t n = one.size();
    const double step = usualStep(one, pulses);
    std::vector<double> heights;
    for (const std::size_t i : one) {
      heights.push_back(pulses[i].height);
    }
    const double height = upperMedian(std::move(heights));
    sum += ends.reach(top(0) - 0.8 * step, top(0) + 0.6 * step, height) +
           ends.reach(top(n - 1) - 0.6 * step, top(n - 1) + 0.8 * step, height) +
           ends.level(top(0) - 1.8 * step, top(0) - 1.2 * step, top(0), top(2), height) +
           ends.level(top(n - 1) + 1.2 * step, top(n - 1) + 1.8 * step, top(n - 3), top(n - 1),
                      height);
  }
  return sum;
}

} // namespace afterbeat
