/// How often the program finds in made-up seasons what their plan put there, and what it did not.
#pragma once

#include <cstddef>

namespace afterbeat {

/// Of so many seasons each, in how many.
struct EffectRates {
  int seasons = 0;
  /// Nothing differs: any site is named as different; a step marked where nothing happened is
  /// called clear; the run chart raises a signal; the share chart of records does.
  int siteNamedFalsely = 0, stepCalledClearFalsely = 0, runSignalFalsely = 0,
      shareSignalFalsely = 0;
  /// Nothing differs: any site is named in any of eleven figures, each asked as one of eleven; the
  /// same, each asked as if it were alone.
  int namedInAReportFalsely = 0, namedInAReportUncorrected = 0;
  /// One site takes 1.8 times as long for electrodes: it is named as slower; another site is named
  /// as slower; another site is named as different either way.
  int slowSiteNamed = 0, otherNamedSlower = 0, otherNamedAtAll = 0;
  /// It is, asked as one of eleven figures.
  int slowSiteNamedInAReport = 0;
  /// From the middle on shocks follow advice in 0.6 of the time: the marked step is called clear
  /// and shorter; unmarked, the run chart raises a signal.
  int stepCalledClear = 0, runSignal = 0;
};

/// `records` rescues and drills together; rescues are looked at.
[[nodiscard]] EffectRates countEffects(int seasons, std::size_t records);

/// The number that a count of `n` chances of `p` each exceeds in fewer than one of a thousand
/// cases.
[[nodiscard]] int mostByChance(int n, double p);
/// The number that it stays below in fewer than one of a thousand cases.
[[nodiscard]] int leastByChance(int n, double p);

} // namespace afterbeat
