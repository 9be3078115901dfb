#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/sections.h"
#include "core/signal/ecg/quality_parts.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

constexpr double kFastHz = 30, kSlowHz = 1;
constexpr double kLeastRateHz = 100;
constexpr double kFastMv = 0.05, kFastShare = 0.3;
constexpr double kSwingMv = 5;

/// The three bands of the ECG, a second at a time.
class Bands {
public:
  explicit Bands(double rateHz)
      : looksAtFast_(rateHz >= kLeastRateHz),
        slow_(butterworth(2, Band::lowPass, 0, kSlowHz, rateHz)) {
    if (looksAtFast_) {
      fast_ = Cascade(butterworth(2, Band::highPass, kFastHz, 0, rateHz));
      middle_ = Cascade(butterworth(2, Band::bandPass, kSlowHz, kFastHz, rateHz));
    }
  }

  void settle(double value) {
    fast_.settle(value);
    middle_.settle(value);
    slow_.settle(value);
  }

  /// Whether the next second, without missing samples, is noisy.
  bool isNoisy(std::span<const double> second) {
    return static_cast<int>(hasSwing(second)) + static_cast<int>(isFast(second)) > 0;
  }

private:
  bool hasSwing(std::span<const double> second) {
    piece_.assign(second.begin(), second.end());
    slow_.run(piece_);
    const auto [low, high] = std::minmax_element(piece_.begin(), piece_.end());
    return *high - *low > kSwingMv;
  }

  bool isFast(std::span<const double> second) {
    if (!looksAtFast_) {
      return false;
    }
    piece_.assign(second.begin(), second.end());
    middle_.run(piece_);
    double squares = 0;
    for (const double value : piece_) {
      squares += value * value;
    }
    const double effective = std::sqrt(squares / static_cast<double>(piece_.size()));
    piece_.assign(second.begin(), second.end());
    fast_.run(piece_);
    const double least = std::max(kFastMv, kFastShare * effective);
    const auto above = std::count_if(piece_.begin(), piece_.end(),
                                     [least](double value) { return std::fabs(value) > least; });
    return 2 * above > static_cast<std::ptrdiff_t>(piece_.size());
  }

  bool looksAtFast_;
  Cascade fast_, middle_, slow_;
  std::vector<double> piece_;
};

} // namespace

void findNoise(const SignalView& ecg, std::vector<FaultyStretch>& out) {
  const auto second = static_cast<std::size_t>(std::ceil(ecg.rateHz));
  if (!canDesign(2, Band::lowPass, 0, kSlowHz, ecg.rateHz) || ecg.values.size() < second) {
    return;
  }
  Bands bands(ecg.rateHz);
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
    if (begin == 0) {
      bands.settle(piece.front());
    }
    last = piece.back();
    if (bands.isNoisy(piece)) {
      noise.add(begin, begin + count);
    }
  }
  noise.moveTo(out);
}

} // namespace afterbeat
