/// Over 200 made-up seasons of 300 records: what the plan put there is found, what it did not is
/// not. Limits are binomial: passed by chance in fewer than one of a thousand runs were the stated
/// chances right. Those are the 5 % of a clear difference, and for signals the sum of what their
/// rules grant chance: 5 % each for run and crossings, 0.27 % a point for the limits.
#include "tests/outside/season_effects.h"

#include <gtest/gtest.h>

#include <cstdio>

namespace afterbeat {
namespace {

constexpr int kSeasons = 200;

const EffectRates& rates() {
  static const EffectRates counted = countEffects(kSeasons, 300);
  return counted;
}

void expectAtMost(const char* what, int count, double chance) {
  std::printf("%-50s %3d of %d, chance alone up to %d\n", what, count, kSeasons,
              mostByChance(kSeasons, chance));
  EXPECT_LE(count, mostByChance(kSeasons, chance)) << what;
}

void expectAtLeast(const char* what, int count, double promised) {
  std::printf("%-50s %3d of %d, promised at least %d\n", what, count, kSeasons,
              leastByChance(kSeasons, promised));
  EXPECT_GE(count, leastByChance(kSeasons, promised)) << what;
}

TEST(Seasons, WhatIsNotThereIsNotFound) {
  expectAtMost("any site named where none differs", rates().siteNamedFalsely, 0.05);
  expectAtMost("any site named in any of eleven figures of a report", rates().namedInAReportFalsely,
               0.05);
  expectAtMost("a step called clear where nothing happened", rates().stepCalledClearFalsely, 0.05);
  expectAtMost("a signal in a steady run chart", rates().runSignalFalsely, 0.10);
  expectAtMost("a signal in a steady share chart of 24 months", rates().shareSignalFalsely,
               0.10 + 24 * 0.0027);
  expectAtMost("another site named where one is slow", rates().otherNamedAtAll, 0.05);
}

// The promise stands in resources/definitions/compare.md.
TEST(Seasons, WhatIsThereIsFound) {
  expectAtLeast("a slow site named as slower", rates().slowSiteNamed, 0.99);
  expectAtLeast("the same, among eleven figures", rates().slowSiteNamedInAReport, 0.99);
  expectAtLeast("a training that helped called clear", rates().stepCalledClear, 0.99);
  expectAtLeast("a training nobody marked gives a signal", rates().runSignal, 0.9);
}

TEST(BinomialLimits, AreThoseOfTables) {
  // Mean 10, deviation 3.08: 21 is passed in 0.05 %, 20 in 0.14 % (Pascal's triangle).
  EXPECT_EQ(mostByChance(200, 0.05), 21);
  EXPECT_EQ(leastByChance(10, 0.5), 1);
  EXPECT_EQ(mostByChance(10, 0.5), 9);
}

} // namespace
} // namespace afterbeat
