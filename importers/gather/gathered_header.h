/// The header of a gathered record: what the sources say together.
#pragma once

#include "importers/gather/source_clocks.h"

namespace afterbeat {

/// Puts the sources' headers together: what the first one says that says anything; what a later
/// one says otherwise is added to `problems`. The kind is the first one stated by a source (an
/// importer's assumption gives way). No parts, no id, no clock.
[[nodiscard]] Header gatheredFacts(const std::vector<GatherSource>& sources,
                                   std::vector<Problem>& problems);

/// Sets `recorded` and `clock` of a record whose sources' zeros lie at `offsets`: from the first
/// source whose clock can be believed, carried to the axis's zero, else the first that names one.
/// Where no source does, 1970-01-01 with an unset clock, as the log's header must hold one.
void setGatheredClock(Header& header, const std::vector<GatherSource>& sources,
                      const Placement& placement, std::vector<Problem>& problems);

} // namespace afterbeat
