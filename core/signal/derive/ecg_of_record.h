/// The ECG of a record, read piece by piece: three hours of it never lie in memory as numbers.
#pragma once

#include "core/record/record.h"
#include "core/signal/ecg/quality.h"
#include "core/signal/rhythm/hints.h"

#include <optional>
#include <span>
#include <vector>

namespace afterbeat {

/// An ECG channel and what is wrong with it.
struct EcgChannel {
  std::size_t index = 0;
  /// To mV.
  double factor = 1;
  Rails rails;
  std::vector<FaultyStretch> faults;
  /// From the first sample to the last, and how much of it is without a fault.
  Duration length{}, judged{};
};

/// The lead with the most that is without a fault; of equals the first. Empty: no ECG in a unit
/// that is known.
[[nodiscard]] std::optional<EcgChannel> bestEcg(const Record& record);

/// Samples of a channel from `from` to before `to`, within the block that holds `from`, or the last
/// that begins before it; none where there is none.
struct EcgPart {
  std::vector<double> values;
  Time begin{};
  double rateHz = 0;
  [[nodiscard]] SignalView view() const { return {begin, rateHz, values}; }
};
[[nodiscard]] EcgPart ecgBetween(const Record& record, const EcgChannel& ecg, Time from, Time to);

/// Hints over the whole channel, with the heart's beats for the rates.
[[nodiscard]] RhythmHints hintsOf(const Record& record, const EcgChannel& ecg,
                                  std::span<const Time> compressions,
                                  std::span<const Interval> cpr);

} // namespace afterbeat
