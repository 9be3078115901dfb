/// Which compressions count, and when hands were on the chest.
#pragma once

#include "core/measures/interval.h"
#include "core/record/record.h"

#include <vector>

namespace afterbeat {

/// The compressions that every measure uses: rules [K1] to [K3] of the definitions.
struct KeptCompressions {
  /// Indices into `Record::entries`, in time order.
  std::vector<std::size_t> entries;
  /// The same as moments.
  std::vector<Time> times;
  /// How many were dropped as detected twice.
  int doubleDetections = 0;
};

/// Chooses one source at a time and drops double detections.
[[nodiscard]] KeptCompressions keptCompressions(const Record& record);

/// `cpr` stretches without a kept compression inside, as indices into `Record::entries`.
[[nodiscard]] std::vector<std::size_t> countedCpr(const Record& record,
                                                  const std::vector<Time>& kept);

/// Kept compressions (as points) and counted stretches, merged.
[[nodiscard]] std::vector<Interval> handsOn(const Record& record, const std::vector<Time>& kept,
                                            const std::vector<std::size_t>& cprEntries);

/// The span of an entry: [t, end], or the moment itself.
[[nodiscard]] inline Interval spanOf(const Entry& entry) {
  return {entry.t, entry.lastTime()};
}

} // namespace afterbeat
