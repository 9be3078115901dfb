/// How a measure is spread over sites, teams or quarters: every record a point.
#pragma once

#include "core/compare/companions.h"
#include "core/compare/kinds.h"
#include "core/statistics/bootstrap.h"
#include "core/statistics/quantile.h"

namespace afterbeat {

enum class GroupBy : std::uint8_t { nothing, site, team, quarter };

struct Quarter {
  int year = 0;
  /// 1 to 4.
  int number = 1;
  friend auto operator<=>(const Quarter&, const Quarter&) = default;
};

[[nodiscard]] Quarter quarterOf(std::chrono::sys_days day);

struct SpreadPoint {
  std::uint32_t place = 0;
  double value = 0;
};

/// A group's values against those of the other groups together, without the groups that were found
/// to differ more clearly before: otherwise one slow site would make all others "faster than
/// elsewhere".
struct AgainstOthers {
  double medianHere = 0, medianOthers = 0;
  std::size_t others = 0;
  /// Chance of ranks as one-sided as these were the groups alike (`rankTest`), corrected for the
  /// number of groups compared (`holm`) and of figures asked at once.
  double chance = 1;
  /// `chance` below `kClearChance`.
  bool clear = false;
};

/// A chance below this is called a clear difference; common practice.
inline constexpr double kClearChance = 0.05;

struct SpreadGroup {
  /// Site or team; empty: not recorded, or not grouped so.
  std::string name;
  /// Where grouped by quarter; empty: day not recorded.
  std::optional<Quarter> quarter;
  /// In the order of the chosen records.
  std::vector<SpreadPoint> points;
  Missing missing;
  /// Fewer than five values: points only, all below is empty.
  bool tooFew = false;
  std::optional<Quartiles> quartiles;
  std::optional<MedianInterval> interval;
  /// For sites and teams with enough values where enough others are left to compare with.
  std::optional<AgainstOthers> against;
  std::vector<Beside> beside;
};

struct Spread {
  MeasureId measure = MeasureId::arrestTime;
  StatedKind kind;
  GroupBy by = GroupBy::nothing;
  /// In the order of names or of time; what is not recorded last. Never in the order of values.
  std::vector<SpreadGroup> groups;
  Missing missing;
  BootstrapSettings bootstrap;
};

struct SpreadSettings {
  BootstrapSettings bootstrap{};
  /// This figure is one of so many that are asked for differences at once, as in a report: each
  /// chance then counts so many times (Bonferroni), or one of twenty would differ by chance alone.
  std::size_t figuresAsked = 1;
};

/// Refused where the chosen records are of several kinds.
[[nodiscard]] tl::expected<Spread, SeasonRefusal> spread(const Season& season, const Chosen& chosen,
                                                         MeasureId measure, GroupBy by,
                                                         const SpreadSettings& settings = {});

/// For under the picture: which groups differ clearly, and what is missing.
[[nodiscard]] std::vector<Saying> words(const Spread& spread);
/// Which groups differ clearly in which of these figures, by group; or that none does. `spreads`
/// are of the same records, grouped alike and asked at once. Empty: nothing could be compared.
[[nodiscard]] std::vector<Saying> whereGroupsDiffer(const std::vector<Spread>& spreads);
/// Of one group: its median with interval, or that there are too few.
[[nodiscard]] Saying words(const Spread& spread, const SpreadGroup& group);
/// Published median and quartiles, where there are some and the records are rescues.
[[nodiscard]] std::optional<Saying> referenceWords(const Spread& spread);

} // namespace afterbeat
