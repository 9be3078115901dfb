/// One waveform: where its samples lie in time and what they mean.
#pragma once

#include "core/record/time.h"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// The raw value that stands for "no sample here".
inline constexpr std::int16_t kMissingSample = std::numeric_limits<std::int16_t>::min();

/// A stretch of samples without a gap: sample `first + i` of the channel at `t` + i / rate.
struct SampleBlock {
  Time t{};
  std::size_t first = 0;
  std::size_t count = 0;
};

/// A waveform channel. Physical value = raw x scale + offset, in `unit`.
struct Channel {
  std::string id;
  /// `ecg`, `impedance`, `acceleration`, `depth`, `force`, `capnogram`, `pleth` or another word.
  std::string quantity;
  /// UCUM, e.g. `mV`.
  std::string unit;
  double rateHz = 0;
  double scale = 1;
  double offset = 0;
  std::string label;
  /// `int16le`; with any other value the channel is kept and not drawn.
  std::string encoding = "int16le";
  /// False: nothing can be drawn from it (unknown encoding, no usable rate).
  bool drawable = true;
  /// Keys of the header's channel object this program does not know: `"key":value,...`.
  std::string otherKeys;
  /// Raw samples of all blocks, one after the other.
  std::vector<std::int16_t> samples;
  /// In time order, not overlapping; continuous neighbours are joined.
  std::vector<SampleBlock> blocks;
  /// The earliest and the latest `t` of a usable `samples` line of this channel; empty if none.
  std::optional<Time> firstLine, lastLine;

  /// Physical value of a raw one; NaN for a missing sample.
  [[nodiscard]] double physical(std::int16_t raw) const {
    return raw == kMissingSample ? std::numeric_limits<double>::quiet_NaN()
                                 : static_cast<double>(raw) * scale + offset;
  }
  /// The moment of sample `i` of a block.
  [[nodiscard]] Time timeOf(const SampleBlock& block, std::size_t i) const {
    return block.t + Duration{std::llround(static_cast<double>(i) * 1e6 / rateHz)};
  }
};

} // namespace afterbeat
