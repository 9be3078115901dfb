#include "core/statistics/control_chart.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace afterbeat {
namespace {

double sum(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

/// Mean difference of neighbours over what it is for deviation 1.
double deviationOfNeighbours(const std::vector<double>& values) {
  assert(values.size() >= 2);
  double ranges = 0;
  for (std::size_t i = 1; i < values.size(); ++i) {
    ranges += std::fabs(values[i] - values[i - 1]);
  }
  return ranges / static_cast<double>(values.size() - 1) / kMeanRangeOfTwo;
}

/// `variance` is that of one case; point `i` is a mean of `of[i]` such.
ChartLimits ratioLimits(const std::vector<double>& with, const std::vector<double>& of,
                        double centre, double variance, Dispersion dispersion) {
  ChartLimits limits;
  limits.centre = centre;
  limits.deviation.reserve(of.size());
  for (const double n : of) {
    limits.deviation.push_back(std::sqrt(variance / n));
  }
  if (dispersion == Dispersion::widened && variance > 0) {
    std::vector<double> standardised(of.size());
    for (std::size_t i = 0; i < of.size(); ++i) {
      standardised[i] = (with[i] / of[i] - centre) / limits.deviation[i];
    }
    limits.widened = deviationOfNeighbours(standardised);
    for (double& each : limits.deviation) {
      each *= limits.widened;
    }
  }
  return limits;
}

} // namespace

double ChartLimits::lower(std::size_t point) const {
  const double limit = centre - kLimitDeviations * deviation[point];
  return least ? std::max(limit, *least) : limit;
}

double ChartLimits::upper(std::size_t point) const {
  const double limit = centre + kLimitDeviations * deviation[point];
  return most ? std::min(limit, *most) : limit;
}

ChartLimits individualsLimits(const std::vector<double>& values) {
  ChartLimits limits;
  limits.centre = sum(values) / static_cast<double>(values.size());
  limits.deviation.assign(values.size(), deviationOfNeighbours(values));
  return limits;
}

ChartLimits shareLimits(const std::vector<double>& with, const std::vector<double>& of,
                        Dispersion dispersion) {
  assert(with.size() == of.size() && !of.empty());
  const double centre = sum(with) / sum(of);
  auto limits = ratioLimits(with, of, centre, centre * (1 - centre), dispersion);
  limits.least = 0;
  limits.most = 1;
  return limits;
}

ChartLimits countLimits(const std::vector<double>& counts, const std::vector<double>& exposure,
                        Dispersion dispersion) {
  assert(counts.size() == exposure.size() && !exposure.empty());
  const double centre = sum(counts) / sum(exposure);
  auto limits = ratioLimits(counts, exposure, centre, centre, dispersion);
  limits.least = 0;
  return limits;
}

} // namespace afterbeat
