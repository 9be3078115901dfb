#include "core/signal/hands/trains.h"

#include "core/signal/hands/pauses.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {
namespace {

constexpr double kSlowestPerMin = 50;
/// Compressions a minute that part slow from usual and usual from fast series.
constexpr std::array kPaces{85.0, 120.0};
constexpr std::size_t kFewest = 4;
/// A series this alike, and this many pulses of such series, tell how high presses are.
constexpr double kSureAlike = 0.75;
constexpr std::size_t kSurePulses = 15;
/// Ends lower than this beside the next six are no presses; a series this low beside the sure ones
/// none.
constexpr double kLowEnd = 0.45, kLowSeries = 0.4;
/// However many they are (heartbeats after a rescue), series this low beside the highest are none.
constexpr double kLowBesideHighest = 0.3;
/// This many this alike need no others beside them: a rescuer may press less than half as deep as
/// the one before.
constexpr std::size_t kManyPulses = 8;
constexpr double kOwnAlike = 0.9;
/// As quick as a sure series: this far apart, in the logarithm.
constexpr double kSamePace = 0.3;
/// Fewer than this must keep step this well: the median distance from the usual step, a share.
constexpr std::size_t kFewForStep = 12;
constexpr double kUnsteady = 0.12;
/// Noise has maxima alike by chance, the more so the fewer there are.
constexpr double kAlike = 0.5, kAlikeForFew = 1.2, kAlikeKnown = 0.4;

void measure(Train& train, std::span<const Pulse> pulses, std::span<const double> shape) {
  train.likeness = likenessToNeighbours(train.series, pulses, shape);
  train.step = usualStep(train.series, pulses);
  std::vector<double> heights, correlations;
  heights.reserve(train.series.size());
  correlations.reserve(train.series.size());
  for (std::size_t k = 0; k < train.series.size(); ++k) {
    heights.push_back(pulses[train.series[k]].height);
    correlations.push_back(train.likeness[k].correlation);
  }
  train.height = upperMedian(std::move(heights));
  train.alike = upperMedian(std::move(correlations));
}

/// How far the steps are from the usual one, in the logarithm: the median.
double unsteadiness(const Train& train, std::span<const Pulse> pulses) {
  std::vector<double> off;
  for (std::size_t k = 1; k < train.series.size(); ++k) {
    const auto step =
        static_cast<double>(pulses[train.series[k]].top - pulses[train.series[k - 1]].top);
    off.push_back(std::fabs(std::log(step / train.step)));
  }
  return upperMedian(std::move(off));
}

/// Median height over the pulses of series at least `alike` alike; 0 for too few.
double heightOf(std::span<const Train> trains, std::span<const Pulse> pulses, double alike) {
  std::vector<double> heights;
  for (const Train& train : trains) {
    if (train.alike >= alike && train.series.size() > kFewest) {
      for (const std::size_t i : train.series) {
        heights.push_back(pulses[i].height);
      }
    }
  }
  return heights.size() >= kSurePulses ? upperMedian(std::move(heights)) : 0;
}

} // namespace

std::vector<Train> trustedTrains(std::span<const Series> found, std::span<const Pulse> pulses,
                                 std::span<const double> shape, std::span<const double> size,
                                 double rateHz, double share, double leastAlone) {
  std::vector<Train> trains;
  for (Series series : found) {
    dropUnlike(series, pulses, size, share);
    for (Series& part : withoutPauses(series, pulses, size, rateHz)) {
      trimEnds(part, pulses, kLowEnd);
      if (part.size() >= kFewest) {
        trains.push_back({std::move(part), {}, 0, 0, 0});
        measure(trains.back(), pulses, shape);
      }
    }
  }
  const double usual = heightOf(trains, pulses, 0);
  const double sure = heightOf(trains, pulses, kSureAlike);
  double highest = 0;
  for (const Train& train : trains) {
    if (leastAlone > 0 && train.alike >= kSureAlike && train.series.size() >= kSurePulses) {
      highest = std::max(highest, kLowBesideHighest / kLowSeries * train.height);
    }
  }
  std::vector<double> surePaces;
  for (const Train& train : trains) {
    if (train.alike >= kSureAlike && train.series.size() >= kManyPulses) {
      surePaces.push_back(train.step);
    }
  }
  const auto keepsPaceOfSure = [&](const Train& train) {
    return std::any_of(surePaces.begin(), surePaces.end(), [&](double step) {
      return std::fabs(std::log(train.step / step)) < kSamePace;
    });
  };
  std::erase_if(trains, [&](const Train& train) {
    const auto n = static_cast<double>(train.series.size());
    const bool known = sure > 0 && train.height > 0.6 * sure && train.height < 1.6 * sure &&
                       keepsPaceOfSure(train);
    const bool own = train.series.size() >= kManyPulses && train.alike >= kOwnAlike &&
                     train.height >= leastAlone;
    return (!own && train.height < kLowSeries * std::max({usual, sure, highest})) ||
           train.alike < (known ? kAlikeKnown : kAlike + kAlikeForFew / n) ||
           60 * rateHz < kSlowestPerMin * train.step ||
           (train.series.size() < kFewForStep && unsteadiness(train, pulses) > kUnsteady);
  });
  return trains;
}

std::vector<Usual> usualRates(std::span<const Series> series, std::span<const Pulse> pulses,
                              double rateHz) {
  std::array<std::vector<double>, kPaces.size() + 1> steps, heights;
  for (const Series& one : series) {
    const double pace = 60 * rateHz / std::max(1.0, usualStep(one, pulses));
    const auto at = static_cast<std::size_t>(std::upper_bound(kPaces.begin(), kPaces.end(), pace) -
                                             kPaces.begin());
    for (std::size_t k = 1; k < one.size(); ++k) {
      steps[at].push_back(static_cast<double>(pulses[one[k]].top - pulses[one[k - 1]].top));
      heights[at].push_back(pulses[one[k]].height);
    }
  }
  std::vector<Usual> result;
  for (std::size_t at = 0; at < steps.size(); ++at) {
    if (steps[at].empty()) {
      continue;
    }
    std::sort(steps[at].begin(), steps[at].end());
    const std::size_t n = steps[at].size();
    result.push_back({rateHz / steps[at][n * 7 / 8], rateHz / steps[at][n / 8],
                      upperMedian(std::move(heights[at]))});
  }
  return result;
}

double alikeAround(const Train& train, std::size_t k) {
  std::vector<double> correlations;
  const std::size_t end = std::min(train.likeness.size(), k + 8);
  for (std::size_t j = k > 7 ? k - 7 : 0; j < end; ++j) {
    correlations.push_back(train.likeness[j].correlation);
  }
  return upperMedian(std::move(correlations));
}

double surenessOf(const Train& train, std::size_t k) {
  const double own = train.likeness[k].correlation;
  return std::clamp((own + 2 * alikeAround(train, k)) / 3, 0.05, 0.99);
}

} // namespace afterbeat
