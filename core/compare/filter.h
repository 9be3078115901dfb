/// Which records of a season are meant.
#pragma once

#include "core/compare/season.h"

#include <array>
#include <string>
#include <string_view>

namespace afterbeat {

/// What the typed words find a kind and a cause by; the reader's own language goes here.
struct FilterWords {
  /// rescue, drill, test, not stated.
  std::array<std::string, 4> kinds{"rescue", "drill", "test", "kind not stated"};
  /// In the order of `PauseCause`; last: no pause counts.
  std::array<std::string, 8> causes{
      "shock",   "analysis",     "before first compressions", "after last compressions",
      "breaths", "long breaths", "no reason recorded",        ""};
  std::string withShock = "with a shock", withoutShock = "without a shock";
};

struct Filter {
  /// Words apart from each other; all must be found, in any letter case, each in one of: site,
  /// team, device, file, id, day ("2026-04-17"), kind, cause of the longest pause. Also periods and
  /// whether there was a shock (`typedWords`).
  std::string words;
  std::optional<RecordKind> kind;
  /// Both included; a record without a day is in no period.
  std::optional<std::chrono::sys_days> firstDay, lastDay;
  /// A record that does not show it is in neither.
  std::optional<bool> hadShock;
  std::optional<PauseCause> longestPauseCause;
  /// Exactly; an empty name means "not recorded".
  std::optional<std::string> site, team;
  friend bool operator==(const Filter&, const Filter&) = default;
};

/// The records that fit, in the season's order.
[[nodiscard]] Chosen matching(const Season& season, const Filter& filter,
                              const FilterWords& words = {});

/// All records of a season.
[[nodiscard]] Chosen everything(const Season& season);

/// Appends `text` (UTF-8) in small letters: Latin, Greek and Cyrillic; all else as it stands.
void appendFolded(std::string& to, std::string_view text);

} // namespace afterbeat
