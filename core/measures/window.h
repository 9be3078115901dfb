/// The part of a record that counts: resuscitation window, circulation and arrest intervals.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat {

/// Earliest and latest time of the entries that can end the record (setting `record_end`); empty if
/// there is none. Samples lines count with their `t`.
[[nodiscard]] std::optional<Interval> recordSpan(const Record& record);

/// Latest time of any entry but milestones and marks: where an on-period without `power_off` ends.
[[nodiscard]] std::optional<Time> latestForTimeOn(const Record& record);

/// Fills `window`, `lastActivity`, `circulation`, `arrest`, `notCounted`, `excludedLength` from the
/// record and the hands-on evidence already in `figures`.
void fillWindow(const Record& record, Figures& figures);

} // namespace afterbeat
