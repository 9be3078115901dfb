#include "core/record/wall_clock.h"

#include "core/record/record.h"

#include <fmt/format.h>

namespace afterbeat {

namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::minutes;

/// Takes digits and signs off the front of a text.
class Cursor {
public:
  explicit Cursor(std::string_view text) : rest_(text) {}

  /// Exactly `digits` decimal digits as a number.
  std::optional<int> number(std::size_t digits) {
    if (rest_.size() < digits) {
      return std::nullopt;
    }
    int value = 0;
    for (std::size_t i = 0; i < digits; ++i) {
      if (!isDigit(rest_[i])) {
        return std::nullopt;
      }
      value = value * 10 + (rest_[i] - '0');
    }
    rest_.remove_prefix(digits);
    return value;
  }

  /// Takes the next character if it is one of `any`; 0 if it is not.
  char oneOf(std::string_view any) {
    if (rest_.empty() || any.find(rest_.front()) == std::string_view::npos) {
      return 0;
    }
    const char taken = rest_.front();
    rest_.remove_prefix(1);
    return taken;
  }

  /// Decimals of a second as whole microseconds (further ones are cut off); nothing without any.
  std::optional<Duration> decimals() {
    std::int64_t micros = 0;
    std::size_t count = 0;
    while (count < rest_.size() && isDigit(rest_[count])) {
      if (count < 6) {
        micros = micros * 10 + (rest_[count] - '0');
      }
      ++count;
    }
    if (count == 0) {
      return std::nullopt;
    }
    for (std::size_t i = count; i < 6; ++i) {
      micros *= 10;
    }
    rest_.remove_prefix(count);
    return Duration{micros};
  }

  [[nodiscard]] bool atEnd() const { return rest_.empty(); }

private:
  static bool isDigit(char c) { return c >= '0' && c <= '9'; }
  std::string_view rest_;
};

std::optional<std::chrono::sys_days> takeDate(Cursor& cursor) {
  const auto year = cursor.number(4);
  if (!year || cursor.oneOf("-") == 0) {
    return std::nullopt;
  }
  const auto month = cursor.number(2);
  if (!month || cursor.oneOf("-") == 0) {
    return std::nullopt;
  }
  const auto day = cursor.number(2);
  if (!day) {
    return std::nullopt;
  }
  const std::chrono::year_month_day date{std::chrono::year{*year},
                                         std::chrono::month{static_cast<unsigned>(*month)},
                                         std::chrono::day{static_cast<unsigned>(*day)}};
  return date.ok() ? std::optional{std::chrono::sys_days{date}} : std::nullopt;
}

std::optional<Duration> takeTimeOfDay(Cursor& cursor) {
  const auto hour = cursor.number(2);
  if (!hour || *hour > 23 || cursor.oneOf(":") == 0) {
    return std::nullopt;
  }
  const auto minute = cursor.number(2);
  if (!minute || *minute > 59 || cursor.oneOf(":") == 0) {
    return std::nullopt;
  }
  const auto second = cursor.number(2);
  if (!second || *second > 60) {
    return std::nullopt;
  }
  Duration time = hours{*hour} + minutes{*minute} + std::chrono::seconds{*second};
  if (cursor.oneOf(".") != 0) {
    const auto part = cursor.decimals();
    if (!part) {
      return std::nullopt;
    }
    time += *part;
  }
  return time;
}

struct Zone {
  minutes offset{0};
  bool known = true;
};

std::optional<Zone> takeZone(Cursor& cursor) {
  if (cursor.oneOf("Zz") != 0) {
    return Zone{};
  }
  const char sign = cursor.oneOf("+-");
  const auto hour = sign != 0 ? cursor.number(2) : std::nullopt;
  if (!hour || *hour > 23 || cursor.oneOf(":") == 0) {
    return std::nullopt;
  }
  const auto minute = cursor.number(2);
  if (!minute || *minute > 59) {
    return std::nullopt;
  }
  const minutes size = hours{*hour} + minutes{*minute};
  return Zone{sign == '-' ? -size : size, !(sign == '-' && size.count() == 0)};
}

struct LocalParts {
  std::chrono::year_month_day date;
  std::chrono::hh_mm_ss<Duration> time;
};

LocalParts localParts(const WallTime& wall) {
  const auto day = std::chrono::floor<days>(wall.local());
  return {std::chrono::year_month_day{day}, std::chrono::hh_mm_ss<Duration>{wall.local() - day}};
}

/// What the device's clock is believed from: a moment on the record's axis and its reading.
struct Anchor {
  Time t{};
  WallTime wall;
};

/// The last usable `clock_set`, else the header's `recorded` unless the clock was never set and
/// nobody compared it with another.
std::optional<Anchor> anchorOf(const Record& record) {
  std::optional<Anchor> found;
  for (const Entry& e : record.entries) {
    const auto* set = e.complete<entry::ClockSet>();
    if (set == nullptr || !e.hasTime) {
      continue;
    }
    if (const auto wall = parseWallTime(set->wall)) {
      found = Anchor{e.t, *wall};
    }
  }
  if (found) {
    return found;
  }
  const Header& header = record.header;
  if (!header.recorded || (header.clock.state == ClockState::unset && !header.clock.offset)) {
    return std::nullopt;
  }
  return Anchor{Time{}, *header.recorded};
}

} // namespace

std::optional<WallTime> parseWallTime(std::string_view text) {
  Cursor cursor(text);
  const auto date = takeDate(cursor);
  if (!date || cursor.oneOf("Tt") == 0) {
    return std::nullopt;
  }
  const auto time = takeTimeOfDay(cursor);
  if (!time) {
    return std::nullopt;
  }
  const auto zone = takeZone(cursor);
  if (!zone || !cursor.atEnd()) {
    return std::nullopt;
  }
  return WallTime{*date + *time - zone->offset, zone->offset, zone->known};
}

std::string formatWallTime(const WallTime& time) {
  const auto [date, clock] = localParts(time);
  const auto micros = clock.subseconds().count();
  std::string text = fmt::format("{}T{:02}:{:02}:{:02}", formatDate(time), clock.hours().count(),
                                 clock.minutes().count(), clock.seconds().count());
  if (micros % 1000 != 0) {
    text += fmt::format(".{:06}", micros);
  } else if (micros != 0) {
    text += fmt::format(".{:03}", micros / 1000);
  }
  if (!time.zoneKnown) {
    return text + "-00:00";
  }
  if (time.zone.count() == 0) {
    return text + "Z";
  }
  const auto size = std::chrono::abs(time.zone).count();
  return text +
         fmt::format("{}{:02}:{:02}", time.zone.count() < 0 ? '-' : '+', size / 60, size % 60);
}

std::string formatClock(const WallTime& time) {
  const auto clock = localParts(time).time;
  return fmt::format("{:02}:{:02}:{:02}", clock.hours().count(), clock.minutes().count(),
                     clock.seconds().count());
}

std::string formatDate(const WallTime& time) {
  const auto date = localParts(time).date;
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

ClockTrust clockTrust(const Record& record) {
  if (!anchorOf(record)) {
    return ClockTrust::none;
  }
  return record.header.clock.offset ? ClockTrust::checked : ClockTrust::deviceOnly;
}

std::optional<WallTime> wallTimeAt(const Record& record, Time t) {
  auto anchor = anchorOf(record);
  if (!anchor) {
    return std::nullopt;
  }
  anchor->wall.utc += (t - anchor->t) + record.header.clock.offset.value_or(Duration{});
  return anchor->wall;
}

} // namespace afterbeat
