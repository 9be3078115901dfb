#include "core/statistics/rank_test.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace afterbeat {
namespace {

/// What the ranks of all values give: each group's sum, and what ties take from the variance.
struct Ranks {
  std::vector<double> sum;
  std::vector<double> size;
  double all = 0;
  /// Sum over ties of t^3 - t.
  double ties = 0;
};

struct Ranked {
  double value;
  int group;
};

/// The values from `begin` to `end` are equal: all get the middle of their ranks.
void addTie(const std::vector<Ranked>& sorted, std::size_t begin, std::size_t end, Ranks& ranks) {
  const auto t = static_cast<double>(end - begin);
  const double rank = static_cast<double>(begin + end + 1) / 2;
  ranks.ties += t * t * t - t;
  for (std::size_t i = begin; i < end; ++i) {
    ranks.sum[static_cast<std::size_t>(sorted[i].group)] += rank;
    ranks.size[static_cast<std::size_t>(sorted[i].group)] += 1;
  }
}

Ranks ranksOf(std::vector<Ranked> values, int groups) {
  std::sort(values.begin(), values.end(),
            [](const Ranked& a, const Ranked& b) { return a.value < b.value; });
  Ranks ranks;
  ranks.sum.resize(static_cast<std::size_t>(groups));
  ranks.size.resize(static_cast<std::size_t>(groups));
  ranks.all = static_cast<double>(values.size());
  for (std::size_t begin = 0; begin < values.size();) {
    std::size_t end = begin + 1;
    while (end < values.size() && values[end].value == values[begin].value) {
      ++end;
    }
    addTie(values, begin, end, ranks);
    begin = end;
  }
  return ranks;
}

/// Chance of a rank sum so far from its expectation, for group `g` against the rest.
double chance(const Ranks& ranks, std::size_t g) {
  const double a = ranks.size[g], b = ranks.all - a, n = ranks.all;
  if (a == 0 || b == 0) {
    return 1;
  }
  const double pairs = ranks.sum[g] - a * (a + 1) / 2;
  const double variance = a * b / 12 * (n + 1 - ranks.ties / (n * (n - 1)));
  if (variance <= 0) {
    return 1;
  }
  // Half a pair is taken off, past the middle too, as is usual: the chance is then held to 1.
  const double off = std::fabs(pairs - a * b / 2) - 0.5;
  return std::min(1.0, std::erfc(off / std::sqrt(2 * variance)));
}

} // namespace

double rankTest(const std::vector<double>& one, const std::vector<double>& other) {
  std::vector<Ranked> values;
  values.reserve(one.size() + other.size());
  for (const double v : one) {
    values.push_back({v, 0});
  }
  for (const double v : other) {
    values.push_back({v, 1});
  }
  return chance(ranksOf(std::move(values), 2), 0);
}

std::vector<double> rankTestAgainstOthers(const std::vector<double>& values,
                                          const std::vector<int>& group, int groups) {
  assert(values.size() == group.size());
  std::vector<Ranked> counted;
  counted.reserve(values.size());
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (group[i] >= 0) {
      counted.push_back({values[i], group[i]});
    }
  }
  const Ranks ranks = ranksOf(std::move(counted), groups);
  std::vector<double> chances;
  for (std::size_t g = 0; g < static_cast<std::size_t>(groups); ++g) {
    chances.push_back(chance(ranks, g));
  }
  return chances;
}

std::vector<double> holm(const std::vector<double>& chances) {
  std::vector<std::size_t> order(chances.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(),
            [&](std::size_t a, std::size_t b) { return chances[a] < chances[b]; });
  std::vector<double> corrected(chances.size());
  double least = 0;
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto left = static_cast<double>(chances.size() - i);
    least = std::max(least, std::min(1.0, left * chances[order[i]]));
    corrected[order[i]] = least;
  }
  return corrected;
}

} // namespace afterbeat
