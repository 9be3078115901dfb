/// What a detector found in one waveform, and what it could not see.
#pragma once

#include "core/measures/interval.h"
#include "core/record/entry.h"

#include <vector>

namespace afterbeat {

/// Why a stretch of a signal cannot be used.
enum class SignalFault : std::uint8_t {
  /// No samples: a gap between blocks or missing values.
  missing,
  /// The electrodes are off, or the sensor does not lie on the patient.
  off,
  /// Contact too poor to trust the values.
  poorContact,
  /// Clipped at a rail.
  saturated,
  /// Pacing spikes or other needles.
  spikes,
  /// Noise that hides what is looked for.
  noise,
};

/// A stretch that a detector did not use, and why.
struct FaultyStretch {
  Interval where;
  SignalFault fault = SignalFault::missing;
  friend bool operator==(const FaultyStretch&, const FaultyStretch&) = default;
};

/// Entries read off one channel. Every entry has `source` derived and a `quality` from 0 (a guess)
/// to 1 (beyond doubt).
struct Findings {
  /// In time order.
  std::vector<Entry> entries;
  /// In time order, not overlapping within a kind of fault.
  std::vector<FaultyStretch> unusable;
  /// From the channel's first sample to its last, and how much of it could be judged.
  Duration length{}, judged{};
};

} // namespace afterbeat
