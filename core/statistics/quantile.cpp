#include "core/statistics/quantile.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace afterbeat {
namespace {

/// Where quantile `p` of `n` values lies: below the value of this place, and how far on to the
/// next.
struct Place {
  std::size_t below = 0;
  double share = 0;
};

Place placeOf(double p, std::size_t n) {
  assert(n > 0 && p >= 0 && p <= 1);
  const double at = p * static_cast<double>(n - 1);
  const double below = std::floor(at);
  return {static_cast<std::size_t>(below), at - below};
}

double between(double a, double b, double share) {
  return share > 0 ? a + share * (b - a) : a;
}

/// Of `values` from `from` on, all that lie before being no larger; puts those up to it in place.
double selectFrom(std::vector<double>& values, std::size_t from, double p) {
  const auto [below, share] = placeOf(p, values.size());
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(below);
  const auto first = values.begin() + static_cast<std::ptrdiff_t>(std::min(from, below));
  std::nth_element(first, at, values.end());
  const auto next = std::min_element(at + 1, values.end());
  return next == values.end() ? *at : between(*at, *next, share);
}

} // namespace

double quantileOfSorted(const std::vector<double>& ascending, double p) {
  const auto [below, share] = placeOf(p, ascending.size());
  const std::size_t above = std::min(below + 1, ascending.size() - 1);
  return between(ascending[below], ascending[above], share);
}

double quantile(std::vector<double> values, double p) {
  return selectFrom(values, 0, p);
}

std::optional<Quartiles> quartiles(std::vector<double> values) {
  if (values.empty()) {
    return std::nullopt;
  }
  Quartiles q;
  q.low = selectFrom(values, 0, 0.25);
  q.median = selectFrom(values, placeOf(0.25, values.size()).below, 0.5);
  q.high = selectFrom(values, placeOf(0.5, values.size()).below, 0.75);
  return q;
}

std::optional<double> medianOf(std::vector<double> values) {
  if (values.empty()) {
    return std::nullopt;
  }
  return selectFrom(values, 0, 0.5);
}

} // namespace afterbeat
