/// Clock times as devices and people write them (RFC 3339), and the clock time of a moment.
#pragma once

#include "core/record/time.h"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace afterbeat {

struct Record;

/// An instant on some clock, with the offset from UTC that the writer stated.
struct WallTime {
  /// Microseconds since 1970-01-01T00:00:00 UTC.
  std::chrono::sys_time<Duration> utc{};
  /// Local time minus UTC.
  std::chrono::minutes zone{0};
  /// False where written with `-00:00`: the local time is known, its zone is not.
  bool zoneKnown = true;

  /// The local reading as if it were UTC, for display.
  [[nodiscard]] std::chrono::sys_time<Duration> local() const { return utc + zone; }
  friend bool operator==(const WallTime&, const WallTime&) = default;
};

/// RFC 3339 date-time; nothing if it is not one. Leap seconds (:60) read as the next second.
[[nodiscard]] std::optional<WallTime> parseWallTime(std::string_view text);

/// RFC 3339 with as many decimals as needed (none, 3 or 6).
[[nodiscard]] std::string formatWallTime(const WallTime& time);

/// "09:12:30", local, rounded down to the second.
[[nodiscard]] std::string formatClock(const WallTime& time);

/// "2026-03-14", local.
[[nodiscard]] std::string formatDate(const WallTime& time);

/// What stands behind a record's clock times.
enum class ClockTrust {
  /// No clock time can be given (no usable `recorded`, or the clock was never set).
  none,
  /// The device's own clock, checked by nobody.
  deviceOnly,
  /// Compared with another clock; `offset` is applied.
  checked,
};

/// How far the record's clock times can be trusted. A `clock_set` entry makes an unset clock known.
[[nodiscard]] ClockTrust clockTrust(const Record& record);

/// The clock time of `t`: the header's `recorded`, or the last `clock_set` entry where there is
/// one, carried along the record's axis, corrected by `clock.offset_s`. Nothing where the trust is
/// `none`.
[[nodiscard]] std::optional<WallTime> wallTimeAt(const Record& record, Time t);

} // namespace afterbeat
