/// Where something was new in a season.
#pragma once

#include <chrono>
#include <string>

namespace afterbeat {

/// From this day on something was new.
struct MarkedStep {
  std::chrono::sys_days day;
  /// The user's own: "new training from here".
  std::string words;
  friend bool operator==(const MarkedStep&, const MarkedStep&) = default;
};

} // namespace afterbeat
