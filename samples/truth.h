/// Writes what is true of a sample, for tests and for whoever checks another program with it.
#pragma once

#include "samples/story.h"

#include <string>

namespace afterbeat::samples {

/// The truth as JSON, one key a line: window, compressions, pauses, shocks, the heart's rhythm, and
/// the expected figures under the measures' ids (seconds, shares 0 to 1), added up from what the
/// story said.
[[nodiscard]] std::string truthJson(const Record& record, const Truth& truth);

} // namespace afterbeat::samples
