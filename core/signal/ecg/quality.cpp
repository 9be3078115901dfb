#include "core/signal/ecg/quality.h"

#include "core/signal/ecg/quality_parts.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

constexpr double kJoinHoles = 0.1;
constexpr double kFlat = 1, kFlatMv = 1e-3;

void findMissing(const SignalView& ecg, std::vector<FaultyStretch>& out) {
  StretchCollector missing(ecg, SignalFault::missing, kJoinHoles * ecg.rateHz);
  for (std::size_t i = 0; i < ecg.values.size(); ++i) {
    if (std::isnan(ecg.values[i])) {
      missing.add(i, i + 1);
    }
  }
  missing.moveTo(out);
}

bool atRail(double value, const Rails& rails) {
  return (rails.high && value >= *rails.high) || (rails.low && value <= *rails.low);
}

void findSaturated(const SignalView& ecg, const Rails& rails, std::vector<FaultyStretch>& out) {
  if (!rails.high && !rails.low) {
    return;
  }
  StretchCollector saturated(ecg, SignalFault::saturated, kJoinHoles * ecg.rateHz);
  for (std::size_t i = 0; i < ecg.values.size(); ++i) {
    if (atRail(ecg.values[i], rails)) {
      saturated.add(i, i + 1);
    }
  }
  saturated.moveTo(out);
}

void findFlat(const SignalView& ecg, const Rails& rails, std::vector<FaultyStretch>& out) {
  StretchCollector off(ecg, SignalFault::off, 0);
  const auto& values = ecg.values;
  const double least = std::max(2.0, kFlat * ecg.rateHz);
  std::size_t begin = 0;
  for (std::size_t i = 1; i <= values.size(); ++i) {
    if (i < values.size() && std::fabs(values[i] - values[begin]) <= kFlatMv) {
      continue;
    }
    if (static_cast<double>(i - begin) >= least && !atRail(values[begin], rails)) {
      off.add(begin, i);
    }
    begin = i;
  }
  off.moveTo(out);
}

} // namespace

std::vector<FaultyStretch> ecgFaults(const SignalView& ecg, const Rails& rails) {
  std::vector<FaultyStretch> out;
  findMissing(ecg, out);
  findSaturated(ecg, rails, out);
  findFlat(ecg, rails, out);
  findNeedles(ecg, out);
  findNoise(ecg, out);
  std::stable_sort(out.begin(), out.end(), [](const FaultyStretch& a, const FaultyStretch& b) {
    return a.where.begin < b.where.begin;
  });
  return out;
}

std::vector<FaultyStretch> ecgFaults(const SignalView& ecg) {
  RailLearner learner(ecg.rateHz);
  learner.add(ecg.values);
  return ecgFaults(ecg, learner.rails());
}

bool hasFault(std::span<const FaultyStretch> faults, const Interval& where,
              std::initializer_list<SignalFault> kinds) {
  return std::any_of(faults.begin(), faults.end(), [&](const FaultyStretch& stretch) {
    return stretch.where.begin < where.end && where.begin < stretch.where.end &&
           std::find(kinds.begin(), kinds.end(), stretch.fault) != kinds.end();
  });
}

} // namespace afterbeat
