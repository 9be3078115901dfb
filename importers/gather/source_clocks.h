/// What the clocks of several sources say about each other.
#pragma once

#include "importers/gather/gather.h"

namespace afterbeat {

/// A source's clock at its own t = 0.
struct SourceClock {
  /// Corrected by the clock's known offset; empty where it cannot be believed.
  std::optional<WallTime> wall;
  /// Reading since midnight, where there is no date.
  std::optional<Duration> timeOfDay;

  [[nodiscard]] bool known() const { return wall || timeOfDay; }
};

[[nodiscard]] SourceClock clockOf(const Imported& source);

/// How one clock was set against the other.
enum class ClockComparison : unsigned char {
  instants,      ///< both with date and zone
  localReadings, ///< both with a date, a zone is missing
  timesOfDay,    ///< a date is missing: nearest within 12 h
};

struct ClockDifference {
  Duration value{};
  ClockComparison how = ClockComparison::instants;
};

/// The second clock's t = 0 minus the first one's; nothing if one of them is not known.
[[nodiscard]] std::optional<ClockDifference> difference(const SourceClock& first,
                                                        const SourceClock& second);

/// Where each source's zero lies on the axis of the first.
struct Placement {
  std::vector<Duration> offsets;
  /// Index of the source whose clock the gathered record keeps; empty if none has one.
  std::optional<std::size_t> clockSource;
};

/// Given offsets as they are; others from the clocks, against the first source above that has one;
/// 0 where there are none, or where they are too far apart to be right. Says which.
[[nodiscard]] Placement place(const std::vector<GatherSource>& sources,
                              std::vector<Problem>& problems);

/// "+12.5 s".
[[nodiscard]] std::string shownOffset(Duration offset);

} // namespace afterbeat
