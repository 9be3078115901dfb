/// Where two sets of figures differ, in words.
#pragma once

#include "core/measures/figures.h"

#include <string>

namespace afterbeat::reference {

/// The first field in which `got` differs from `expected`; empty if none does. Numbers may differ
/// by the rounding of a double. Not compared: `working`, `coverage`, texts of notices.
[[nodiscard]] std::string firstDifference(const Figures& expected, const Figures& got);

} // namespace afterbeat::reference
