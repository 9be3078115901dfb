#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/sections.h"
#include "core/signal/ecg/quality_parts.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat {

namespace {

constexpr double kFastHz = 30, kSlowHz = 1;
constexpr double kLeastRateHz = 100;
constexpr double kFastMv = 0.05, kFastShare = 0.3;
constexpr double kSwingMv = 5;

/// Seconds of ECG, of which most are quiet and soon looked through: only where the fast part is
/// large, or the ECG itself swings, are the other bands looked at, from two seconds before.
class Seconds {
public:
  explicit Seconds(double rateHz)
      : looksAtFast_(rateHz >= kLeastRateHz),
        slow_(butterworth(2, Band::lowPass, 0, kSlowHz, rateHz)) {
    if (looksAtFast_) {
      fast_ = Cascade(butterworth(2, Band::highPass, kFastHz, 0, rateHz));
      middle_ = butterworth(2, Band::bandPass, kSlowHz, kFastHz, rateHz);
    }
  }

  /// Whether the next second, without missing samples, is noisy.
  bool isNoisy(std::span<const double> second) {
    if (recent_.empty()) {
      fast_.settle(second.front());
      recent_.assign(2 * second.size(), second.front());
      ranges_.fill({second.front(), second.front()});
    }
    const std::size_t before = recent_.size();
    recent_.insert(recent_.end(), second.begin(), second.end());
    std::rotate(ranges_.begin(), ranges_.begin() + 1, ranges_.end());
    ranges_.back() = rangeOf(second);
    const bool fast = isFast(second);
    const bool swings = hasSwing(second.size());
    recent_.erase(recent_.begin(), recent_.end() - static_cast<std::ptrdiff_t>(before));
    return fast || swings;
  }

private:
  struct Range {
    double low = 0, high = 0;
  };
  static Range rangeOf(std::span<const double> values) {
    Range out{values.front(), values.front()};
    for (const double value : values) {
      out.low = value < out.low ? value : out.low;
      out.high = value > out.high ? value : out.high;
    }
    return out;
  }

  static std::ptrdiff_t above(std::span<const double> values, double limit) {
    return std::count_if(values.begin(), values.end(),
                         [limit](double value) { return std::fabs(value) > limit; });
  }

  /// What a filter makes of the newest `count` samples; it settles on those before.
  std::span<const double> newest(const std::vector<Section>& sections, std::size_t count) {
    other_ = recent_;
    Cascade filter(sections);
    filter.settle(other_.front());
    filter.run(other_);
    return std::span(other_).last(count);
  }

  bool hasSwing(std::size_t count) {
    Range all = ranges_.front();
    for (const Range& one : ranges_) {
      all.low = std::min(all.low, one.low);
      all.high = std::max(all.high, one.high);
    }
    if (all.high - all.low <= kSwingMv) {
      return false;
    }
    const Range slow = rangeOf(newest(slow_, count));
    return slow.high - slow.low > kSwingMv;
  }

  bool isFast(std::span<const double> second) {
    if (!looksAtFast_) {
      return false;
    }
    piece_.assign(second.begin(), second.end());
    fast_.run(piece_);
    const auto half = static_cast<std::ptrdiff_t>(piece_.size() / 2);
    if (above(piece_, kFastMv) <= half) {
      return false;
    }
    double squares = 0;
    for (const double value : newest(middle_, second.size())) {
      squares += value * value;
    }
    const double effective = std::sqrt(squares / static_cast<double>(second.size()));
    return above(piece_, std::max(kFastMv, kFastShare * effective)) > half;
  }

  bool looksAtFast_;
  Cascade fast_;
  std::vector<Section> middle_, slow_;
  std::vector<double> piece_, recent_, other_;
  /// Of the second and the two before it.
  std::array<Range, 3> ranges_{};
};

} // namespace

void findNoise(const SignalView& ecg, std::vector<FaultyStretch>& out) {
  const auto second = static_cast<std::size_t>(std::ceil(ecg.rateHz));
  if (!canDesign(2, Band::lowPass, 0, kSlowHz, ecg.rateHz) || ecg.values.size() < second) {
    return;
  }
  Seconds seconds(ecg.rateHz);
  StretchCollector noise(ecg, SignalFault::noise, 0);
  std::vector<double> piece;
  double last = 0;
  for (std::size_t begin = 0; begin < ecg.values.size(); begin += second) {
    const auto count = std::min(second, ecg.values.size() - begin);
    const auto from = ecg.values.subspan(begin, count);
    piece.assign(from.begin(), from.end());
    if (bridgeMissing(piece) == count) {
      std::fill(piece.begin(), piece.end(), last);
    }
    last = piece.back();
    if (seconds.isNoisy(piece)) {
      noise.add(begin, begin + count);
    }
  }
  noise.moveTo(out);
}

} // namespace afterbeat
