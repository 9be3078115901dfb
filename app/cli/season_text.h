/// A season as text for a terminal.
#pragma once

#include "core/compare/season.h"
#include "core/measures/figures.h"

#include <string>

namespace afterbeat::cli {

/// Each kind for itself: its figures, its sites in the order of names, where the time goes, what is
/// worth a look, and its records; at the end what all of it was computed with.
[[nodiscard]] std::string seasonText(const Season& season, const Chosen& chosen,
                                     const FigureSettings& settings);

} // namespace afterbeat::cli
