/// A season as files, to try taking them in.
#pragma once

#include "samples/season/plan.h"

#include <string>

namespace afterbeat::samples {

/// The bytes of one record's event log, and the name of its file.
struct SeasonFile {
  std::string name, bytes;
};

/// Record number `index` of a plan.
[[nodiscard]] SeasonFile seasonFile(const SeasonPlan& plan, std::size_t index);

} // namespace afterbeat::samples
