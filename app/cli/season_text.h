/// A season as text for a terminal.
#pragma once

#include "app/papers/season/season_report.h"

#include <string>

namespace afterbeat::cli {

/// The marked days; each kind for itself: its figures, its sites in the order of names, what the
/// report draws over time, where the time goes, what is worth a look, and its records; at the end
/// what all of it was computed with.
[[nodiscard]] std::string seasonText(const Season& season, const Chosen& chosen,
                                     const papers::ReportSettings& settings);

} // namespace afterbeat::cli
