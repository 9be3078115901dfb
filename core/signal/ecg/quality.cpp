#include "core/signal/ecg/quality.h"

#include "core/signal/ecg/quality_parts.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

constexpr double kJoinHoles = 0.1;
constexpr double kFlat = 1, kFlatMv = 1e-3;

/// Looks at whole pieces at once: nearly all of them miss nothing.
void findMissing(const SignalView& ecg, std::vector<FaultyStretch>& out) {
  constexpr std::size_t kPiece = 256;
  StretchCollector missing(ecg, SignalFault::missing, kJoinHoles * ecg.rateHz);
  for (std::size_t begin = 0; begin < ecg.values.size(); begin += kPiece) {
    const std::size_t end = std::min(ecg.values.size(), begin + kPiece);
    unsigned holes = 0;
    for (std::size_t i = begin; i < end; ++i) {
      holes += std::isnan(ecg.values[i]) ? 1U : 0U;
    }
    for (std::size_t i = begin; holes > 0 && i < end; ++i) {
      if (std::isnan(ecg.values[i])) {
        missing.add(i, i + 1);
        --holes;
      }
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

/// A flat stretch is so long that it must hold one of the places looked at, half its length apart,
/// and the sample after it.
void findFlat(const SignalView& ecg, const Rails& rails, std::vector<FaultyStretch>& out) {
  StretchCollector off(ecg, SignalFault::off, 0);
  const auto& values = ecg.values;
  const auto least =
      std::max<std::size_t>(4, static_cast<std::size_t>(std::ceil(kFlat * ecg.rateHz)));
  std::size_t end = 0;
  for (std::size_t place = 0; place + 1 < values.size(); place += least / 2) {
    const auto isSame = [&values, place](std::size_t i) {
      return std::fabs(values[i] - values[place]) <= kFlatMv;
    };
    if (place < end || !isSame(place + 1) || atRail(values[place], rails)) {
      continue;
    }
    std::size_t begin = place;
    while (begin > end && isSame(begin - 1)) {
      --begin;
    }
    std::size_t last = place + 1;
    while (last < values.size() && isSame(last)) {
      ++last;
    }
    if (last - begin >= least) {
      off.add(begin, last);
      end = last;
    }
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
