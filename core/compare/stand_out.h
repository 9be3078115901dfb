/// Worth a look: records whose figures stand out, each with the reason. Records, never people: no
/// team or site is counted or named here.
#pragma once

#include "core/compare/kinds.h"
#include "core/guideline/profile.h"

namespace afterbeat {

enum class StandOutRule : std::uint8_t {
  /// The device was set to adult for a child, or the other way round, as the record itself says.
  settingDiffers,
  /// The longest pause before a shock is not below the profile's limit.
  preShockPause,
  /// The longest pause is over the profile's limit and nothing recorded explains it.
  unexplainedPause,
  /// A shock that was advised or charged was not given.
  shockWithheld,
  /// A figure lies beyond three times the quartile range from the quartiles of its own kind: "far
  /// out" in Tukey, Exploratory Data Analysis, 1977 (from memory). For lengths of time, which lean
  /// to the long side, on the logarithms where all are above 0.
  farOut,
  /// Nothing in the record shows compressions.
  noEvidence,
};

[[nodiscard]] std::string_view ruleSource(StandOutRule rule);

/// A rule that holds for more than this share of a kind's records singles none out: it is what is
/// usual there, a matter for the picture over time. Asked of `kLeastForFarOut` records or more, of
/// fewer the larger share, of fewer than `kLeastForSummary` not at all; common practice, no source.
inline constexpr double kUsualShare = 0.25, kUsualShareOfFew = 0.5;

struct StandOutReason {
  StandOutRule rule = StandOutRule::farOut;
  /// The figure; meaningless for `settingDiffers` and `noEvidence`.
  MeasureId measure = MeasureId::arrestTime;
  Saying saying;
  /// Holds for so many records of the kind that it names none by itself.
  bool usual = false;
};

struct StandOut {
  std::uint32_t place = 0;
  /// At least one of them is not usual.
  std::vector<StandOutReason> reasons;
};

/// "Far out" is asked of a measure with at least this many values; common practice, no source.
inline constexpr std::size_t kLeastForFarOut = 20;

/// The records that stand out, those with most reasons (usual ones apart) first, among equals the
/// latest day first, then in the order of the chosen. Each kind is held against its own: mixed
/// kinds are allowed.
[[nodiscard]] std::vector<StandOut> worthALook(const Season& season, const Chosen& chosen,
                                               const Profile& profile);

/// Rules that hold for so many records of one kind that they name none; refused where kinds are
/// mixed. Takes as long as `worthALook`.
[[nodiscard]] tl::expected<std::vector<Saying>, SeasonRefusal>
usualHere(const Season& season, const Chosen& chosen, const Profile& profile);

} // namespace afterbeat
