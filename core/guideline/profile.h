/// Targets a figure is held against: one guideline, every value with its source and mark.
#pragma once

#include "core/record/entry.h"
#include "core/record/phrase.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat {

/// How sure we are of a value: `read` in the source itself, read in a `secondary` publication, or
/// from `memory` (check the source).
enum class SourceMark : std::uint8_t { read, secondary, memory };

/// Where a value comes from.
struct Citation {
  std::string text;
  SourceMark mark = SourceMark::memory;
};

/// A range, limits included.
struct Range {
  double low = 0, high = 0;
  [[nodiscard]] bool holds(double v) const { return v >= low && v <= high; }
};

template <typename T>
struct Target {
  T value{};
  Citation source;
};

/// A depth target. "About" targets have words and no range, so that no share is computed.
struct DepthTarget {
  /// Millimetres.
  std::optional<Range> range;
  /// E.g. "about 50 mm, a third of the chest".
  std::string words;
};

/// A guideline profile. Fields that a user's own file leaves out stay empty: no target.
struct Profile {
  /// E.g. "european-2021".
  std::string id;
  std::string name;
  std::optional<Target<Range>> ratePerMin;
  std::map<PatientCategory, Target<DepthTarget>> depth;
  std::optional<Target<double>> fractionLeast, fractionTarget;
  /// Seconds; a pause of exactly the limit is within it.
  std::optional<Target<double>> breathPauseLimit, pauseLimit;
  /// Seconds; a pre-shock pause should stay below.
  std::optional<Target<double>> preShockPauseLimit;
  /// Leaning up to this counts as full release, mm.
  std::optional<Target<double>> leaningLimitMm;
  /// Seconds from one analysis to the next.
  std::optional<Target<double>> cycleLength;
  /// Compressions to breaths, in words: "30:2".
  std::map<PatientCategory, Target<std::string>> ratio;
  /// Breaths a minute with an advanced airway, per category. low = high: the source names a single
  /// figure; show it as "about", and judge nothing against a range of zero width.
  std::map<PatientCategory, Target<Range>> advancedAirwayBreaths;
  /// Everything else worth showing: words with a source.
  std::vector<Target<std::string>> remarks;
};

/// The profiles that come with the program, oldest first within a family.
[[nodiscard]] const std::vector<Profile>& builtInProfiles();

/// The profile used where none is chosen.
[[nodiscard]] const Profile& defaultProfile();

/// A built-in profile by id; null if there is none.
[[nodiscard]] const Profile* builtInProfile(std::string_view id);

/// Reads a profile from JSON (`resources/guidelines/README.md` describes it); the error is a
/// sentence that names the key, to be translated at the edge (context "Importers").
[[nodiscard]] tl::expected<Profile, Phrase> parseProfile(std::string_view json);

/// The profile as JSON that `parseProfile` reads back to the same profile; a start for a file of
/// one's own.
[[nodiscard]] std::string profileJson(const Profile& profile);

/// "read in the source", "read in a secondary publication", "from memory, check the source".
[[nodiscard]] std::string_view markWords(SourceMark mark);

} // namespace afterbeat
