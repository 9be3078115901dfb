/// A season as text for a terminal.
#pragma once

#include "core/compare/season.h"
#include "core/guideline/profile.h"

#include <string>

namespace afterbeat::cli {

/// Each kind for itself: its figures, its sites in the order of names, where the time goes, what is
/// worth a look, and its records.
[[nodiscard]] std::string seasonText(const Season& season, const Chosen& chosen,
                                     const Profile& profile);

} // namespace afterbeat::cli
