/// Compressions and breaths from all the channels of a record together.
#pragma once

#include "core/signal/derive/derive.h"

namespace afterbeat {

/// Entries, and how much of the record they speak for.
struct HandsFound {
  std::vector<Entry> entries;
  /// Empty: no channel that could tell.
  std::optional<SignalCoverage> coverage;
  /// Stretches that could be judged, merged.
  std::vector<Interval> judged;
};
/// Compressions as `handsFrom` says, without its other entries.
[[nodiscard]] HandsFound compressionsOf(const Record& record);

/// Breaths of the first impedance channel; `compressions` are those of the record.
[[nodiscard]] HandsFound breathsOf(const Record& record, std::span<const Time> compressions);

/// `excluded: not_observed` for what lies between the first and the last sign of the rescue
/// (electrodes, analysis, shock, hands on) and was judged by no channel, where nobody else says
/// that hands were on; stretches of at least 0.5 s.
[[nodiscard]] std::vector<Entry> notObserved(const Record& record,
                                             const std::vector<Entry>& compressions,
                                             const std::vector<Interval>& judged);

} // namespace afterbeat
