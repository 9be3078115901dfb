/// Pauses: gaps without hands on that are long enough to count, and why they were.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat {

/// Fills `pauses` from the arrest intervals and the hands-on evidence in `figures`.
void fillPauses(const Record& record, Figures& figures);

} // namespace afterbeat
