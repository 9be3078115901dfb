#include "tests/outside/season_effects.h"

#include "core/compare/filter.h"
#include "core/compare/over_time.h"
#include "core/compare/spread.h"
#include "samples/season/made_season.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

using samples::MadeSeason;
using samples::SeasonPlan;

constexpr auto kElectrodes = MeasureId::powerOnToElectrodes;
constexpr auto kAdvice = MeasureId::adviceToShockMedian;
constexpr int kSlowSite = 3;
const std::chrono::sys_days kMiddle = std::chrono::year(2025) / 1 / 1;

/// As many as a report asks.
const std::vector<MeasureId> kFigures{
    kElectrodes,
    kAdvice,
    MeasureId::callToFirstShock,
    MeasureId::powerOnToFirstShock,
    MeasureId::longestPause,
    MeasureId::preShockPauseMedian,
    MeasureId::postShockPauseMedian,
    MeasureId::compressionRate,
    MeasureId::compressionRateInRange,
    MeasureId::handsOffFraction,
    MeasureId::arrestTime,
};

MadeSeason made(SeasonPlan plan, std::size_t records, int seed) {
  plan.records = records;
  plan.seed = static_cast<std::uint64_t>(seed);
  std::vector<MeasureId> columns = kFigures;
  columns.push_back(MeasureId::shocksDelivered); // stands beside the share hands were off
  return MadeSeason(plan, columns);
}

struct Named {
  bool slow = false, otherSlower = false, other = false;
  [[nodiscard]] bool any() const { return slow || other; }
};

Named sitesNamed(const Season& season, MeasureId figure = kElectrodes,
                 std::size_t figuresAsked = 1) {
  const Chosen rescues = ofKind(season, everything(season), RecordKind::rescue);
  SpreadSettings settings;
  settings.bootstrap.resamples = 1; // no interval is looked at
  settings.figuresAsked = figuresAsked;
  const Spread bySite = spread(season, rescues, figure, GroupBy::site, settings).value();
  Named named;
  for (const SpreadGroup& group : bySite.groups) {
    if (!group.against || !group.against->clear) {
      continue;
    }
    const bool slower = group.against->medianHere > group.against->medianOthers;
    if (group.name == samples::kLakeSites[kSlowSite] && slower) {
      named.slow = true;
    } else {
      named.other = true;
      named.otherSlower = named.otherSlower || slower;
    }
  }
  return named;
}

bool namedInAReport(const Season& season, std::size_t figuresAsked) {
  return std::any_of(kFigures.begin(), kFigures.end(), [&](MeasureId figure) {
    return sitesNamed(season, figure, figuresAsked).any();
  });
}

OverTime chartOf(const Season& season, OverTimeSettings settings, bool marked) {
  if (marked) {
    settings.steps = {{kMiddle, "new training from here"}};
  }
  return overTime(season, ofKind(season, everything(season), RecordKind::rescue), settings).value();
}

bool stepClear(const Season& season) {
  const auto chart = chartOf(season, {ValueOf{kAdvice}}, true);
  return !chart.changes.empty() && chart.changes.front().clear;
}

bool stepShorter(const Season& season) {
  const auto chart = chartOf(season, {ValueOf{kAdvice}}, true);
  return !chart.changes.empty() && chart.changes.front().clear &&
         chart.changes.front().after < chart.changes.front().before;
}

bool runSignal(const Season& season) {
  return !chartOf(season, {ValueOf{kAdvice}}, false).signals.empty();
}

bool shareSignal(const Season& season) {
  return !chartOf(season, {RecordsWith{kElectrodes, false, 30}, ChartKind::shares, Period::month},
                  false)
              .signals.empty();
}

/// Chance of at most `k`.
double upTo(int k, int n, double p) {
  double chance = 0;
  for (int i = 0; i <= k; ++i) {
    chance += std::exp(std::lgamma(n + 1.0) - std::lgamma(i + 1.0) - std::lgamma(n - i + 1.0) +
                       i * std::log(p) + (n - i) * std::log1p(-p));
  }
  return chance;
}

} // namespace

int mostByChance(int n, double p) {
  int k = 0;
  while (1 - upTo(k, n, p) >= 0.001) {
    ++k;
  }
  return k;
}

int leastByChance(int n, double p) {
  int k = n;
  while (k > 0 && upTo(k - 1, n, p) >= 0.001) {
    --k;
  }
  return k;
}

EffectRates countEffects(int seasons, std::size_t records) {
  EffectRates rates;
  rates.seasons = seasons;
  SeasonPlan nothing, slow, trained;
  slow.slowSite = kSlowSite;
  trained.training = kMiddle;
  for (int seed = 1; seed <= seasons; ++seed) {
    const MadeSeason plain = made(nothing, records, seed);
    rates.siteNamedFalsely += sitesNamed(plain.season()).any() ? 1 : 0;
    rates.namedInAReportFalsely += namedInAReport(plain.season(), kFigures.size()) ? 1 : 0;
    rates.namedInAReportUncorrected += namedInAReport(plain.season(), 1) ? 1 : 0;
    rates.stepCalledClearFalsely += stepClear(plain.season()) ? 1 : 0;
    rates.runSignalFalsely += runSignal(plain.season()) ? 1 : 0;
    rates.shareSignalFalsely += shareSignal(plain.season()) ? 1 : 0;
    const MadeSeason withSlow = made(slow, records, seed + 10'000);
    const Named named = sitesNamed(withSlow.season());
    rates.slowSiteNamed += named.slow ? 1 : 0;
    rates.slowSiteNamedInAReport +=
        sitesNamed(withSlow.season(), kElectrodes, kFigures.size()).slow ? 1 : 0;
    rates.otherNamedSlower += named.otherSlower ? 1 : 0;
    rates.otherNamedAtAll += named.other ? 1 : 0;
    const MadeSeason withTraining = made(trained, records, seed + 20'000);
    rates.stepCalledClear += stepShorter(withTraining.season()) ? 1 : 0;
    rates.runSignal += runSignal(withTraining.season()) ? 1 : 0;
  }
  return rates;
}

} // namespace afterbeat
