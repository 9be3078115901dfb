/// Time on a record's own axis: whole microseconds from the header's `recorded` instant.
///
/// Everything that compares times compares integers, so that "0.6 s apart" is exactly
/// 100 per minute and a tie is a tie.
#pragma once

#include <chrono>
#include <cmath>
#include <cstdint>
#include <optional>

namespace afterbeat {

/// The axis a record's times belong to (a tag; it is never read as a clock).
struct RecordAxis {};

/// A length of time, whole microseconds, may be negative.
using Duration = std::chrono::microseconds;

/// A moment on the record's axis, whole microseconds, may be negative (before power-on).
using Time = std::chrono::time_point<RecordAxis, Duration>;

/// The largest |t| a log may hold, in seconds.
inline constexpr double kLargestSeconds = 1e6;

/// `s` seconds as a length: llround(s x 1e6) in IEEE double; nothing if not finite or |s| > 1e6.
inline std::optional<Duration> durationFromSeconds(double s) {
  if (!(std::fabs(s) <= kLargestSeconds)) {
    return std::nullopt;
  }
  return Duration{std::llround(s * 1e6)};
}

/// `s` seconds from the record's zero as a moment; nothing if not finite or |s| > 1e6.
inline std::optional<Time> timeFromSeconds(double s) {
  const auto d = durationFromSeconds(s);
  return d ? std::optional<Time>{Time{*d}} : std::nullopt;
}

/// Seconds of a length.
constexpr double seconds(Duration d) {
  return static_cast<double>(d.count()) / 1e6;
}

/// Seconds from the record's zero.
constexpr double seconds(Time t) {
  return seconds(t.time_since_epoch());
}

} // namespace afterbeat
