/// What a debrief can speak of: figures of one record held against their targets, rule by rule.
///
/// Rules, conditions and ranking: resources/definitions/debrief.md.
#pragma once

#include "core/measures/figures.h"

#include <optional>
#include <string_view>
#include <vector>

namespace afterbeat::papers {

/// The rules; of two findings equally far from their targets the one named first here goes first.
enum class DebriefRule : std::uint8_t {
  handsOff,
  longestPause,
  beforeShock,
  afterShock,
  firstShock,
  firstCompression,
  rate,
  rateSteady,
  depth,
  release,
  breaths,
  halves,
  electrodes,
  adviceToShock,
  bestMinute,
  count_ ///< number of rules, not one of them
};

/// "hands_off", as in the definitions.
[[nodiscard]] std::string_view ruleName(DebriefRule rule);

/// On which side of its limits a figure should lie.
enum class Aim : std::uint8_t { atMost, below, atLeast, inRange };

/// A figure beside its target.
struct Finding {
  DebriefRule rule = DebriefRule::handsOff;
  /// Seconds, a share from 0 to 1, a minute or millimetres, as the rule has it.
  double value = 0;
  Aim aim = Aim::atMost;
  /// The limit is `high` for `atMost` and `below`, `low` for `atLeast`.
  Range target;
  /// Empty: common practice, no source.
  std::optional<Citation> source;
  bool within = false;
  /// Within: from 0 at the limit to 1 at the best there is (of a mean: by the share that lies in
  /// its range). Beyond: by how many times the limit (or half of the range).
  double away = 0;
  /// The stretch to show, inside the record.
  Interval moment;
  /// The delivered shock it speaks of; 0: none.
  int shock = 0;
  /// How many shocks or pauses it was taken from.
  int of = 0;
  /// Of `longestPause`.
  std::optional<Pause> pause;
  /// Share in range beside a mean; the first half's share beside the second's; the seconds of an
  /// analysis inside a pause.
  std::optional<double> beside;
};

/// Whether a value lies where it should.
[[nodiscard]] bool meets(double value, Aim aim, const Range& target);
/// How far a value is from its limit, as `Finding::away`; nothing where the target has no size that
/// could be compared with (a limit of zero, a range of one point).
[[nodiscard]] std::optional<double> awayFrom(double value, Aim aim, const Range& target);

/// Targets that no guideline states: common practice, no source.
inline constexpr double kAfterShockLimit = 5, kFirstShockLimit = 90, kElectrodesLimit = 60,
                        kAdviceToShockLimit = 15, kReleaseLeast = 0.9, kSteadyLeast = 0.6,
                        kPraiseLeast = 0.8;
/// Less beyond the target than this is as good as at it.
inline constexpr double kNearMiss = 0.05;
/// Too little to speak of hands on and off: less than this without circulation.
inline constexpr Duration kLeastArrest{60'000'000};
/// Too few to speak of a rate, a depth or of release.
inline constexpr double kLeastCompressions = 30;

/// Every rule that the record has evidence for, in the order of the rules; `bestMinute` apart.
[[nodiscard]] std::vector<Finding> debriefFindings(const Record& record, const Figures& figures);

/// The whole minute with the largest share of hands on, and that share: an effort that is visible
/// in the record, without a target; nothing where no minute is whole.
struct BestMinute {
  Interval stretch;
  Duration handsOn{}, of{};
};
[[nodiscard]] std::optional<BestMinute> bestMinute(const Figures& figures);

/// What is chosen, at most three each, nothing in two of them; indices into the findings.
struct DebriefChoice {
  std::vector<std::size_t> well, practise;
  /// Nothing lies within its target: the one nearest to it, unless it is all there is to practise.
  std::optional<std::size_t> nearest;
  /// The best minute is shown beside fewer than two things that went well, unless hands on the
  /// chest are one of them.
  bool effort = false;
};
[[nodiscard]] DebriefChoice chooseDebrief(const std::vector<Finding>& findings);

} // namespace afterbeat::papers
