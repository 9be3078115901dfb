/// Smallest and largest sample of any stretch of a waveform, quickly: what a screen needs to draw
/// three hours in a few hundred pixels without losing a spike.
#pragma once

#include "core/record/channel.h"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace afterbeat {

/// Smallest and largest of some raw samples. Missing samples take no part.
struct MinMax {
  std::int16_t low = std::numeric_limits<std::int16_t>::max();
  std::int16_t high = std::numeric_limits<std::int16_t>::min();

  /// No sample was there.
  [[nodiscard]] bool empty() const { return low > high; }
  void add(std::int16_t raw) {
    if (raw != kMissingSample) {
      low = raw < low ? raw : low;
      high = raw > high ? raw : high;
    }
  }
  void add(const MinMax& o) {
    low = o.low < low ? o.low : low;
    high = o.high > high ? o.high : high;
  }
  friend bool operator==(const MinMax&, const MinMax&) = default;
};

/// Levels of ready minima and maxima over one run of raw samples. Bins are tied to the sample's
/// index, so that the same samples always share a bin, however a view is shifted.
class MinMaxPyramid {
public:
  /// Samples in a bin of the lowest level, and bins of a level in one of the next.
  static constexpr std::size_t kLowestBin = 16;
  static constexpr std::size_t kFanOut = 4;

  MinMaxPyramid() = default;
  /// Builds all levels; the samples must outlive the pyramid. The result does not depend on
  /// `threads`.
  explicit MinMaxPyramid(std::span<const std::int16_t> samples, unsigned threads = 1);

  [[nodiscard]] std::size_t sampleCount() const { return samples_.size(); }

  /// Over samples [begin, end), cut to what there is.
  [[nodiscard]] MinMax over(std::size_t begin, std::size_t end) const;

private:
  void addFrom(std::size_t level, std::size_t begin, std::size_t end, MinMax& into) const;

  std::span<const std::int16_t> samples_;
  /// levels_[k][i] covers samples [i, i + 1) x kLowestBin x kFanOut^k; a last bin may be short.
  std::vector<std::vector<MinMax>> levels_;
};

/// The same as `MinMaxPyramid::over`, sample by sample: the plain reference.
[[nodiscard]] MinMax minMaxOf(std::span<const std::int16_t> samples, std::size_t begin,
                              std::size_t end);

} // namespace afterbeat
