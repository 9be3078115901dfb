/// The words of the profile files, shared by the reader and the writer of profiles.
#pragma once

#include "core/guideline/profile.h"

#include <array>
#include <utility>

namespace afterbeat::profilejson {

/// Keys of a profile that hold one number with its source, and what a number must be to make sense.
struct NumberKey {
  std::string_view key;
  std::optional<Target<double>> Profile::*field;
  int low, high;
};

inline constexpr std::array<NumberKey, 7> kNumberKeys{{
    {"compression_fraction_least", &Profile::fractionLeast, 0, 1},
    {"compression_fraction_target", &Profile::fractionTarget, 0, 1},
    {"breath_pause_limit_s", &Profile::breathPauseLimit, 0, 600},
    {"pause_limit_s", &Profile::pauseLimit, 0, 600},
    {"pre_shock_pause_limit_s", &Profile::preShockPauseLimit, 0, 600},
    {"leaning_limit_mm", &Profile::leaningLimitMm, 0, 100},
    {"cycle_length_s", &Profile::cycleLength, 10, 3600},
}};

inline constexpr std::array<std::pair<std::string_view, PatientCategory>, 3> kCategories{{
    {"adult", PatientCategory::adult},
    {"child", PatientCategory::child},
    {"infant", PatientCategory::infant},
}};

inline constexpr std::array<std::pair<std::string_view, SourceMark>, 3> kMarks{{
    {"read", SourceMark::read},
    {"secondary", SourceMark::secondary},
    {"memory", SourceMark::memory},
}};

} // namespace afterbeat::profilejson
