/// What people write into the time column of their notes.
#pragma once

#include "core/record/time.h"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// One cell of a time column, as written.
struct TimeCell {
  /// How many numbers with colons between them; 1: seconds.
  int fields = 1;
  /// 95 and 95.5; 1:35 as minutes and seconds; 0:01:35.5 as hours, minutes and seconds.
  Duration elapsed{};
  /// 14:05 as hours and minutes, 14:05:30 with seconds, since midnight; empty if it is no time of
  /// day.
  std::optional<Duration> clock;
  /// Written with AM, PM, "Uhr" or a date: it can only be a time of day.
  bool surelyClock = false;
  std::optional<std::chrono::year_month_day> date;
  /// Local time minus UTC, where the cell states it.
  std::optional<std::chrono::minutes> zone;
};

/// Reads a cell; nothing if it is no time.
[[nodiscard]] std::optional<TimeCell> parseTimeCell(std::string_view text);

/// Reads 2026-03-14, 14.03.2026, 14/03/2026 (day first unless that cannot be); nothing if it is no
/// date.
[[nodiscard]] std::optional<std::chrono::year_month_day> parseDateCell(std::string_view text);

/// What the numbers of a whole time column are.
enum class TimeMeaning : unsigned char { elapsed, clock };

/// Decides for a column. Clock times: if a cell has AM, PM, "Uhr" or a date, if the notes have a
/// date column, if the heading says so (clock, Uhrzeit, time of day). Otherwise time since the
/// notes' own zero: if the heading says so (elapsed, seconds, ...), if a cell is a plain number of
/// seconds, or if all cells have two fields (minutes and seconds). Three fields are clock times if
/// the first of them reads one hour or more, else hours, minutes and seconds since the zero.
[[nodiscard]] TimeMeaning decideTimes(std::string_view heading, const std::vector<TimeCell>& cells,
                                      bool hasDateColumn);

/// Clock readings since midnight, in the order of the file, as lengths from the first one's
/// midnight. A reading more than 12 h before the one above belongs to the next day; one more than
/// 12 h after it, to the day before (if that is not before the first day).
[[nodiscard]] std::vector<Duration> unwrapClock(const std::vector<Duration>& readings);

} // namespace afterbeat
