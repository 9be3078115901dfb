/// Shocks, the pauses around them, and the analysis each one used.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat {

/// For each delivered shock (in `Figures::shocks` order of delivered ones) the end of the analysis
/// it used; empty where it used none. Rule [P3].
[[nodiscard]] std::vector<std::optional<Time>> adviceUsed(const Record& record);

/// Fills `shocks`.
void fillShocks(const Record& record, Figures& figures);

} // namespace afterbeat
