#include "core/signal/ecg/quality_parts.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

constexpr double kLeastRateHz = 200;
/// A needle is up and back within the first time each, by this share of its height, and what was
/// before it, as far as the second time, varies by less than the rest. The sharpest QRS complex
/// does not rise by half as fast.
constexpr double kWidth = 0.008, kAround = 0.020, kShare = 0.75;
constexpr double kLeastMv = 0.3, kTimesUsual = 8;
/// How fast the idea of what is usual follows, and the mark left around a needle; seconds.
constexpr double kMemory = 2, kMark = 0.02, kJoin = 2;

/// Whether sample `i` leaves a quiet stretch and comes back at once. What follows may be anything:
/// a pacing pulse is followed by the complex it sets off.
bool isNeedle(std::span<const double> values, std::size_t i, std::size_t width,
              std::size_t around) {
  const auto before = values.subspan(i - around, around - width + 1);
  const auto [low, high] = std::minmax_element(before.begin(), before.end());
  const double out = values[i] - (*low + *high) / 2;
  const double back = values[i] - values[i + width];
  return *high - *low <= (1 - kShare) * std::fabs(out) && out * back > 0 &&
         std::fabs(back) >= kShare * std::fabs(out) && std::fabs(out) >= kLeastMv;
}

} // namespace

void findNeedles(const SignalView& ecg, std::vector<FaultyStretch>& out) {
  if (ecg.rateHz < kLeastRateHz) {
    return;
  }
  const auto& values = ecg.values;
  const auto width = static_cast<std::size_t>(std::lround(kWidth * ecg.rateHz));
  const auto around = static_cast<std::size_t>(std::lround(kAround * ecg.rateHz));
  const auto mark = static_cast<std::size_t>(std::lround(kMark * ecg.rateHz));
  const double forget = 1 / (kMemory * ecg.rateHz);
  const double keep = 1 - forget;
  StretchCollector needles(ecg, SignalFault::spikes, kJoin * ecg.rateHz);
  double usual = 0;
  for (std::size_t i = around; i + around < values.size(); ++i) {
    const double height = std::fabs(values[i] - (values[i - width] + values[i + width]) / 2);
    if (!(height >= 0)) {
      continue;
    }
    if (height >= kLeastMv && height >= kTimesUsual * usual && isNeedle(values, i, width, around)) {
      needles.add(i - mark, i + mark + 1);
    }
    // One needle does not make needles usual.
    usual = keep * usual + forget * std::min(height, kLeastMv);
  }
  needles.moveTo(out);
}

} // namespace afterbeat
