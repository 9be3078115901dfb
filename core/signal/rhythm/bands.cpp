#include "core/signal/rhythm/bands.h"

#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/resample.h"
#include "core/signal/dsp/sections.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace afterbeat {

namespace {

/// Samples of the slope's average.
constexpr std::size_t kSlopeSpan = 13;
/// A piece of a long signal, and what is added at its edges for the filters to settle.
constexpr std::size_t kPiece = 240 * kRhythmSecond;
constexpr std::size_t kSettle = 16 * kRhythmSecond;
/// Samples of a recording taken at a time.
constexpr std::size_t kTaken = 16384;

std::vector<double> slopeOf(std::span<const double> wide) {
  const auto n = wide.size();
  std::vector<double> squares(n, 0.0), slope(n, 0.0);
  for (std::size_t i = 1; i < n; ++i) {
    const double d = (wide[i] - wide[i - 1]) * kRhythmRateHz;
    squares[i] = d * d;
  }
  constexpr auto half = kSlopeSpan / 2;
  for (std::size_t i = 0; i < n; ++i) {
    const auto begin = i < half ? 0 : i - half;
    const auto end = std::min(n, i + half + 1);
    double sum = 0;
    for (auto k = begin; k < end; ++k) {
      sum += squares[k];
    }
    slope[i] = std::sqrt(sum / static_cast<double>(end - begin));
  }
  return slope;
}

} // namespace

RhythmBands rhythmBands(std::span<const double> values) {
  static const auto wide = butterworth(2, Band::bandPass, 1, 30, kRhythmRateHz);
  static const auto above = butterworth(2, Band::highPass, 2, 0, kRhythmRateHz);
  static const auto qrs = butterworth(2, Band::bandPass, 13, 16.5, kRhythmRateHz);
  RhythmBands bands;
  bands.wide.assign(values.begin(), values.end());
  bands.qrs = bands.wide;
  filterBothWays(wide, bands.wide);
  bands.narrow = bands.wide;
  filterBothWays(above, bands.narrow);
  Cascade forwards(qrs);
  forwards.settle(values.empty() ? 0 : values.front());
  forwards.run(bands.qrs);
  bands.slope = slopeOf(bands.wide);
  return bands;
}

std::vector<double> atRhythmRate(const SignalView& run) {
  std::vector<double> out;
  out.reserve(static_cast<std::size_t>(static_cast<double>(run.values.size()) * kRhythmRateHz /
                                       run.rateHz) +
              2);
  Resampler resampler(run.rateHz, kRhythmRateHz);
  std::vector<double> piece;
  auto rest = run.values;
  while (!rest.empty()) {
    auto count = std::min(rest.size(), kTaken);
    // A hole is bridged as a whole: no piece ends in one.
    while (count < rest.size() && !isMeasured(rest[count - 1])) {
      ++count;
    }
    piece.assign(rest.begin(), rest.begin() + static_cast<std::ptrdiff_t>(count));
    for (double& value : piece) {
      value = isMeasured(value) ? value : std::numeric_limits<double>::quiet_NaN();
    }
    bridgeMissing(piece);
    resampler.run(piece, out);
    rest = rest.subspan(count);
  }
  resampler.finish(out);
  return out;
}

void eachPieceOfBands(std::span<const double> values, std::size_t beyond,
                      const std::function<void(const RhythmBands& bands, std::size_t first,
                                               std::size_t begin, std::size_t end)>& take) {
  for (std::size_t begin = 0; begin < values.size(); begin += kPiece) {
    const auto end = std::min(values.size(), begin + kPiece);
    const auto first = begin < kSettle ? 0 : begin - kSettle;
    const auto last = std::min(values.size(), end + beyond + kSettle);
    take(rhythmBands(values.subspan(first, last - first)), first, begin, end);
  }
}

} // namespace afterbeat
