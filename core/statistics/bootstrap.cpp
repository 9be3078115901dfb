#include "core/statistics/bootstrap.h"

#include "core/statistics/quantile.h"
#include "core/statistics/random.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace afterbeat {
namespace {

/// The value that a uniform number draws.
double drawn(const std::vector<double>& ascending, double u) {
  const auto n = static_cast<double>(ascending.size());
  const auto place = static_cast<std::size_t>(u * n);
  return ascending[std::min(place, ascending.size() - 1)];
}

/// The median of one resample: of n uniform numbers the middle one, or the two middle ones.
double resampledMedian(const std::vector<double>& ascending, Random& random) {
  const std::size_t n = ascending.size(), half = n / 2;
  const auto size = static_cast<double>(n), h = static_cast<double>(half);
  if (n % 2 == 1) {
    // The middle of n: number half + 1, so half lie on either side.
    return drawn(ascending, random.beta(h + 1, size - h));
  }
  const double lower = random.beta(h, size - h + 1);
  // The half that lie above it are uniform there; the smallest of them comes next.
  const double next = lower + (1 - lower) * (1 - std::pow(random.uniform(), 1 / h));
  return (drawn(ascending, lower) + drawn(ascending, next)) / 2;
}

} // namespace

std::vector<double> bootstrapMedians(const std::vector<double>& ascending,
                                     const BootstrapSettings& settings) {
  assert(!ascending.empty());
  Random random(settings.seed);
  std::vector<double> medians(static_cast<std::size_t>(settings.resamples));
  for (double& each : medians) {
    each = resampledMedian(ascending, random);
  }
  std::sort(medians.begin(), medians.end());
  return medians;
}

MedianInterval medianInterval(const std::vector<double>& ascending,
                              const BootstrapSettings& settings) {
  const auto medians = bootstrapMedians(ascending, settings);
  const double beside = (1 - settings.level) / 2;
  return {quantileOfSorted(medians, beside), quantileOfSorted(medians, 1 - beside)};
}

} // namespace afterbeat
