#include "core/statistics/signal_rules.h"

#include "core/statistics/control_chart.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

/// A mean of equal values may be off them by a last digit: what is nearer to the centre than this
/// lies on it.
double nothingOff(double centre) {
  return 1e-9 * std::max(1.0, std::fabs(centre));
}

/// The points off the centre: their places and sides.
struct Sides {
  std::vector<std::size_t> place;
  std::vector<bool> above;
};

Sides sidesOf(const std::vector<double>& values, double centre) {
  Sides sides;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (std::fabs(values[i] - centre) > nothingOff(centre)) {
      sides.place.push_back(i);
      sides.above.push_back(values[i] > centre);
    }
  }
  return sides;
}

void findLongRun(const Sides& sides, std::vector<RuleHit>& hits) {
  const std::size_t n = sides.place.size();
  if (n < kLeastPointsForSignals) {
    return;
  }
  std::size_t bestBegin = 0, best = 0;
  for (std::size_t begin = 0; begin < n;) {
    std::size_t end = begin + 1;
    while (end < n && sides.above[end] == sides.above[begin]) {
      ++end;
    }
    if (end - begin > best) {
      best = end - begin;
      bestBegin = begin;
    }
    begin = end;
  }
  const std::size_t expected = longestRunExpected(n);
  if (best > expected) {
    hits.push_back({SignalRule::longRun, sides.place[bestBegin], sides.place[bestBegin + best - 1],
                    best, expected, sides.above[bestBegin]});
  }
}

void findFewCrossings(const Sides& sides, std::size_t points, std::vector<RuleHit>& hits) {
  const std::size_t n = sides.place.size();
  if (n < kLeastPointsForSignals) {
    return;
  }
  std::size_t crossings = 0;
  for (std::size_t i = 1; i < n; ++i) {
    crossings += sides.above[i] != sides.above[i - 1] ? 1U : 0U;
  }
  const std::size_t expected = fewestCrossingsExpected(n);
  if (crossings < expected) {
    hits.push_back({SignalRule::fewCrossings, 0, points - 1, crossings, expected, false});
  }
}

/// `need` of `span` points in a row lie more than `deviations` off the centre, on one side. Hits
/// that share a point are one.
struct Zone {
  SignalRule rule;
  std::size_t need, span;
  double deviations;
};

void findInZone(const std::vector<double>& values, double centre,
                const std::vector<double>& deviation, const Zone& zone, bool above,
                std::vector<RuleHit>& hits) {
  const auto beyond = [&](std::size_t i) {
    const double off = above ? values[i] - centre : centre - values[i];
    // The run rule asks for no limits and works without deviations.
    const double far = zone.deviations > 0 ? zone.deviations * deviation[i] : 0;
    return off > far + nothingOff(centre);
  };
  std::size_t inside = 0;
  RuleHit* open = nullptr;
  for (std::size_t i = 0; i < values.size(); ++i) {
    inside += beyond(i) ? 1U : 0U;
    if (i >= zone.span) {
      inside -= beyond(i - zone.span) ? 1U : 0U;
    }
    if (inside < zone.need || !beyond(i)) {
      continue;
    }
    std::size_t first = i + 1 >= zone.span ? i + 1 - zone.span : 0;
    while (!beyond(first)) {
      ++first;
    }
    if (open == nullptr || open->last < first) {
      hits.push_back({zone.rule, first, i, 0, 0, above});
      open = &hits.back();
    }
    open->last = i;
    open->found = open->last - open->first + 1;
  }
}

} // namespace

SignalRules runChartRules() {
  return {SignalRule::longRun, SignalRule::fewCrossings};
}

SignalRules controlChartRules() {
  return {SignalRule::beyondLimits, SignalRule::longRun, SignalRule::fewCrossings};
}

SignalRules westernElectricRules() {
  return {SignalRule::beyondLimits, SignalRule::twoOfThree, SignalRule::fourOfFive,
          SignalRule::eightInARow};
}

std::size_t longestRunExpected(std::size_t n) {
  return n == 0 ? 0 : static_cast<std::size_t>(std::lround(std::log2(n) + 3));
}

std::size_t fewestCrossingsExpected(std::size_t n) {
  if (n < 2) {
    return 0;
  }
  const std::size_t chances = n - 1;
  double logarithm = -static_cast<double>(chances) * std::log(2.0), reached = std::exp(logarithm);
  std::size_t k = 0;
  while (reached < 0.05 && k < chances) {
    logarithm += std::log(static_cast<double>(chances - k) / static_cast<double>(k + 1));
    reached += std::exp(logarithm);
    ++k;
  }
  return k;
}

std::vector<RuleHit> findSignals(const std::vector<double>& values, double centre,
                                 const std::vector<double>& deviation, const SignalRules& rules) {
  std::vector<RuleHit> hits;
  if (values.size() < kLeastPointsForSignals) {
    return hits;
  }
  const Sides sides = sidesOf(values, centre);
  const auto zone = [&](const Zone& z) {
    if (z.deviations == 0 || !deviation.empty()) {
      findInZone(values, centre, deviation, z, true, hits);
      findInZone(values, centre, deviation, z, false, hits);
    }
  };
  for (const SignalRule rule : rules) {
    switch (rule) {
    case SignalRule::beyondLimits:
      zone({rule, 1, 1, kLimitDeviations});
      break;
    case SignalRule::longRun:
      findLongRun(sides, hits);
      break;
    case SignalRule::fewCrossings:
      findFewCrossings(sides, values.size(), hits);
      break;
    case SignalRule::twoOfThree:
      zone({rule, 2, 3, 2});
      break;
    case SignalRule::fourOfFive:
      zone({rule, 4, 5, 1});
      break;
    case SignalRule::eightInARow:
      zone({rule, 8, 8, 0});
      break;
    }
  }
  return hits;
}

} // namespace afterbeat
