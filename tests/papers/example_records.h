/// Records made by hand for the tests of paper and rows. All of it is invented.
#pragma once

#include "core/measures/figures.h"
#include "core/record/record.h"

#include <string>

namespace afterbeat::test {

/// Builds a record entry by entry; `done` sorts it and sets its last time.
class RecordBuilder {
public:
  /// A rescue at the ferry terminal, clock set and unchecked, recorded 2026-03-14 09:12:30.
  RecordBuilder();
  RecordBuilder& at(double t, EntryData data);
  RecordBuilder& from(double t, double end, EntryData data);
  /// Compressions at a steady rate, first and last included.
  RecordBuilder& compressions(double from, double to, double perMinute);
  /// Cycles of 30 compressions and two breaths in between.
  RecordBuilder& thirtyToTwo(double from, double to, double perMinute, double pause);
  RecordBuilder& analysis(double from, double to, Advice advice);
  RecordBuilder& shock(double t, std::optional<bool> delivered, std::optional<double> joules);
  RecordBuilder& remark(double t, const std::string& text);
  [[nodiscard]] Record done();
  Record record;
};

/// Three shocks, breaths, circulation returned; eleven minutes. As full as a usual one gets.
[[nodiscard]] Record fullRescue();
/// Power on and nothing more.
[[nodiscard]] Record emptyRecord();
/// An observer's notes alone: no device.
[[nodiscard]] Record notesOnly();
/// Child setting, no shock advised, none given.
[[nodiscard]] Record childWithoutShock();
[[nodiscard]] Record drill();
/// Cut off by power loss, clock never set.
[[nodiscard]] Record cutOff();
/// Everything at once and very much of it: 30 analyses, 12 shocks, long names, many medications.
[[nodiscard]] Record overfull();
/// `hours` of compressions with a pause in every minute.
[[nodiscard]] Record longRescue(double hours);
/// Thirty seconds.
[[nodiscard]] Record shortRecord();
/// Everything the rows can show, close together.
[[nodiscard]] Record crowded();

} // namespace afterbeat::test
