/// Sorting records by what is known of them or by a measure.
#pragma once

#include "core/compare/season.h"

#include <variant>

namespace afterbeat {

/// What is known of a record and can be sorted by.
enum class Fact : std::uint8_t {
  day,
  site,
  team,
  device,
  file,
  id,
  kind,
  evidence,
  hadShock,
  longestPauseCause,
  version,
};

struct Order {
  std::variant<Fact, MeasureId> by = Fact::day;
  bool descending = false;
  friend bool operator==(const Order&, const Order&) = default;
};

/// Sorts. Records without a value come last either way; records that are equal keep their order.
/// Names in any letter case. The measures that may not rank records alone are named by
/// `neverAlone` (companions.h): show those beside them.
void sortBy(const Season& season, Chosen& chosen, const Order& order);

} // namespace afterbeat
