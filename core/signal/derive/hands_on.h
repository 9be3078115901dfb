/// Compressions and breaths from all the channels of a record together.
#pragma once

#include "core/signal/derive/derive.h"

namespace afterbeat {

/// Compressions of the channels of a record: depth tells most, then acceleration, force, impedance
/// (common practice, no source). A lower one fills only what none of the better ones could judge.
struct HandsFound {
  std::vector<Entry> entries;
  /// Empty: no channel that could tell.
  std::optional<SignalCoverage> coverage;
  /// Stretches that at least one channel could judge, merged.
  std::vector<Interval> judged;
};
[[nodiscard]] HandsFound compressionsOf(const Record& record);

/// Breaths of the impedance channels; `compressions` are those of the record. `judged` stays empty.
[[nodiscard]] HandsFound breathsOf(const Record& record, std::span<const Time> compressions);

/// `excluded: not_observed` for what lies between the first and the last sign of the rescue
/// (electrodes, analysis, shock, hands on) and was judged by no channel, where nobody else says
/// that hands were on; stretches of at least 1 s.
[[nodiscard]] std::vector<Entry> notObserved(const Record& record,
                                             const std::vector<Entry>& compressions,
                                             const std::vector<Interval>& judged);

} // namespace afterbeat
