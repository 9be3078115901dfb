/// Seasons of invented rescues and drills around the lake, with effects that are known because the
/// plan says so.
#pragma once

#include "core/compare/season.h"

#include <array>
#include <string_view>

namespace afterbeat::samples {

/// What happens over a season, and what is made to differ in it. The same plan gives the same
/// season.
struct SeasonPlan {
  std::uint64_t seed = 1;
  std::size_t records = 400;
  /// Days of the first and the last record; all others between, in order.
  std::chrono::sys_days firstDay = std::chrono::year(2024) / 1 / 1;
  std::chrono::sys_days lastDay = std::chrono::year(2025) / 12 / 31;
  /// Shares of drills, of tests, and of records that say neither; the rest are rescues.
  double drills = 0.4, tests = 0, unstated = 0;
  /// Share of the records whose call, team, day or depth (each apart) is not recorded, and of those
  /// that show no compressions.
  double missing = 0.1;
  /// At this site (a place in `kLakeSites`) attaching electrodes takes `slowTimes` as long; -1:
  /// nowhere.
  int slowSite = -1;
  double slowTimes = 1.8;
  /// From this day on the time from a shock's advice to the shock is `trainingTimes` of what it
  /// was.
  std::optional<std::chrono::sys_days> training = {};
  double trainingTimes = 0.6;
};

/// Where records come from.
inline constexpr std::array<std::string_view, 6> kLakeSites{
    "Bathing jetty",   "Ferry terminal, east pier", "Lake steamer landing",
    "North boathouse", "South boathouse",           "Upper lake, hill station",
};

} // namespace afterbeat::samples
