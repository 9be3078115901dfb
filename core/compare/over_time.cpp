#include "core/compare/over_time.h"

#include "core/compare/over_time_parts.h"
#include "core/statistics/quantile.h"
#include "core/statistics/rank_test.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace over_time {
namespace {

/// The numbers of one segment's points.
struct Numbers {
  std::vector<double> value, with, of;
};

Numbers numbersOf(const OverTime& chart, const ChartSegment& segment) {
  Numbers numbers;
  for (std::size_t i = segment.firstPoint; i <= segment.lastPoint; ++i) {
    const TimePoint& point = chart.points[i];
    numbers.value.push_back(point.value);
    numbers.with.push_back(point.with);
    numbers.of.push_back(point.of);
  }
  return numbers;
}

ChartLimits limitsOf(const OverTime& chart, const Numbers& numbers) {
  const bool countedWithin = std::holds_alternative<CountedShare>(chart.settings.subject) ||
                             std::holds_alternative<CountedFor>(chart.settings.subject);
  const auto dispersion =
      countedWithin && numbers.value.size() > 1 ? Dispersion::widened : Dispersion::counts;
  switch (chart.chart) {
  case ChartKind::shares:
    return shareLimits(numbers.with, numbers.of, dispersion);
  case ChartKind::counts:
    return countLimits(numbers.with, numbers.of, dispersion);
  case ChartKind::individuals:
    if (numbers.value.size() > 1) {
      return individualsLimits(numbers.value);
    }
    break;
  case ChartKind::run:
    break;
  }
  ChartLimits centreOnly;
  centreOnly.centre = *medianOf(numbers.value);
  return centreOnly;
}

/// Whether one end is clearly longer than the other: Kelly's coefficient of the outer tenths,
/// (high - 2 median + low) / (high - low), beyond 0.2 either way; common practice. A single outlier
/// does not make it so.
bool leansAside(const std::vector<double>& values) {
  const double low = quantile(values, 0.1), high = quantile(values, 0.9);
  const double middle = *medianOf(values);
  return high > low && std::abs(high - 2 * middle + low) > 0.2 * (high - low);
}

SignalRules rulesOf(const OverTime& chart) {
  if (!chart.settings.rules.empty()) {
    return chart.settings.rules;
  }
  return chart.chart == ChartKind::run ? runChartRules() : controlChartRules();
}

/// Where no value lies below 0 none can be asked to; shares end at 1.
struct Bounds {
  std::optional<double> least, most;
};

Bounds boundsOf(const OverTime& chart) {
  const auto* of = std::get_if<ValueOf>(&chart.settings.subject);
  if (of == nullptr) {
    return {}; // sums have their bounds in their limits
  }
  const bool anyBelow = std::any_of(chart.points.begin(), chart.points.end(),
                                    [](const TimePoint& point) { return point.value < 0; });
  Bounds bounds;
  bounds.least = anyBelow ? std::nullopt : std::optional(0.0);
  bounds.most = amountKind(of->measure) == AmountKind::share ? std::optional(1.0) : std::nullopt;
  return bounds;
}

void fillSegment(std::size_t index, OverTime& chart) {
  ChartSegment& segment = chart.segments[index];
  const Numbers numbers = numbersOf(chart, segment);
  const ChartLimits limits = limitsOf(chart, numbers);
  const std::size_t n = numbers.value.size();
  segment.centre = limits.centre;
  segment.widened = limits.widened;
  segment.tooFew = n < kLeastPointsForSignals;
  if (segment.tooFew) {
    return;
  }
  const bool limited = chart.chart != ChartKind::run;
  segment.provisional = limited && n < kFirmPoints;
  segment.skewed = chart.chart == ChartKind::individuals && leansAside(numbers.value);
  const Bounds bounds = boundsOf(chart);
  for (std::size_t i = 0; limited && i < n; ++i) {
    TimePoint& point = chart.points[segment.firstPoint + i];
    point.lower = std::max(limits.lower(i), bounds.least.value_or(limits.lower(i)));
    point.upper = std::min(limits.upper(i), bounds.most.value_or(limits.upper(i)));
  }
  auto hits = findSignals(numbers.value, limits.centre, limits.deviation, rulesOf(chart));
  for (RuleHit& hit : hits) {
    hit.first += segment.firstPoint;
    hit.last += segment.firstPoint;
    chart.signals.push_back({hit, index, words(chart, hit)});
  }
}

/// The values that are compared at a step: the records' own, or the points' where they are sums.
std::vector<double> comparedValues(const std::vector<Taken>& taken, const OverTime& chart,
                                   const ChartSegment& segment) {
  std::vector<double> values;
  for (std::size_t i = segment.firstPoint; i <= segment.lastPoint; ++i) {
    const TimePoint& point = chart.points[i];
    if (chart.chart == ChartKind::shares || chart.chart == ChartKind::counts) {
      values.push_back(point.value);
      continue;
    }
    for (std::uint32_t r = 0; r < point.recordCount; ++r) {
      values.push_back(taken[point.firstRecord + r].given.value);
    }
  }
  return values;
}

void fillChange(const std::vector<Taken>& taken, std::size_t segment, OverTime& chart) {
  const ChartSegment& before = chart.segments[segment - 1];
  const ChartSegment& after = chart.segments[segment];
  const auto valuesBefore = comparedValues(taken, chart, before);
  const auto valuesAfter = comparedValues(taken, chart, after);
  if (valuesBefore.size() < kLeastForSummary || valuesAfter.size() < kLeastForSummary) {
    return;
  }
  StepChange change;
  change.step = *after.step;
  change.before = before.centre;
  change.after = after.centre;
  change.chance = rankTest(valuesBefore, valuesAfter);
  change.clear = change.chance < 0.05;
  chart.changes.push_back(change);
}

} // namespace

void fillSegments(const std::vector<Taken>& taken, OverTime& chart) {
  for (std::size_t i = 0; i < chart.points.size(); ++i) {
    const std::size_t steps = taken[chart.points[i].firstRecord].steps;
    const std::size_t earlier = i == 0 ? 0 : taken[chart.points[i - 1].firstRecord].steps;
    if (i == 0 || steps != earlier) {
      ChartSegment segment;
      segment.firstPoint = i;
      if (steps > 0) {
        segment.step = steps - 1;
      }
      chart.segments.push_back(segment);
    }
    chart.segments.back().lastPoint = i;
  }
  for (std::size_t s = 0; s < chart.segments.size(); ++s) {
    fillSegment(s, chart);
    if (s > 0) {
      fillChange(taken, s, chart);
    }
  }
}

} // namespace over_time

namespace {

std::optional<MeasureId> measureOf(const ChartSubject& subject) {
  if (const auto* value = std::get_if<ValueOf>(&subject)) {
    return value->measure;
  }
  if (const auto* with = std::get_if<RecordsWith>(&subject)) {
    return with->measure;
  }
  const auto* share = std::get_if<CountedShare>(&subject);
  return share != nullptr ? std::optional(share->measure) : std::nullopt;
}

void addBeside(const Season& season, OverTime& chart) {
  const auto measure = measureOf(chart.settings.subject);
  for (ChartSegment& segment : chart.segments) {
    if (!measure) {
      return;
    }
    const TimePoint& first = chart.points[segment.firstPoint];
    const TimePoint& last = chart.points[segment.lastPoint];
    segment.beside = besideOf(*measure, season,
                              Chosen(chart.records.begin() + first.firstRecord,
                                     chart.records.begin() + last.firstRecord + last.recordCount));
  }
}

} // namespace

tl::expected<OverTime, SeasonRefusal> overTime(const Season& season, const Chosen& chosen,
                                               const OverTimeSettings& settings) {
  const auto kind = oneKind(season, chosen);
  if (!kind) {
    return tl::unexpected(kind.error());
  }
  OverTime chart;
  chart.settings = settings;
  const bool yesOrNo = std::holds_alternative<RecordsWith>(settings.subject) ||
                       std::holds_alternative<RecordsWithShock>(settings.subject);
  if (yesOrNo && settings.period == Period::record) {
    chart.settings.period = Period::month;
  }
  chart.kind = *kind;
  auto& steps = chart.settings.steps;
  std::stable_sort(steps.begin(), steps.end(),
                   [](const MarkedStep& a, const MarkedStep& b) { return a.day < b.day; });
  const over_time::Subject subject(season, settings.subject);
  if (!subject.hasCounts()) {
    return tl::unexpected(SeasonRefusal{SeasonRefusal::Why::noCounts, {}});
  }
  std::vector<over_time::Taken> taken;
  for (const std::uint32_t place : chosen) {
    const auto given = subject.of(place);
    const auto& day = season.records[place].day;
    if (!given) {
      chart.missing.add(given.error());
    } else if (!day) {
      ++chart.withoutDay;
    } else {
      const auto after = std::upper_bound(
          steps.begin(), steps.end(), *day,
          [](std::chrono::sys_days d, const MarkedStep& step) { return d < step.day; });
      taken.push_back({*day, static_cast<std::size_t>(after - steps.begin()), place, *given});
    }
  }
  // Within a day by place in the season: whoever sorted a table does not change the chart.
  std::sort(taken.begin(), taken.end(), [](const auto& a, const auto& b) {
    return a.day != b.day ? a.day < b.day : a.place < b.place;
  });
  over_time::fillPoints(taken, subject, chart);
  over_time::fillSegments(taken, chart);
  addBeside(season, chart);
  return chart;
}

ChartKind usualChart(MeasureId id) {
  switch (amountKind(id)) {
  case AmountKind::share:
    return ChartKind::shares;
  case AmountKind::perMinute:
  case AmountKind::millimetres:
    return ChartKind::individuals;
  default:
    return id == MeasureId::pausesOverLimit ? ChartKind::counts : ChartKind::run;
  }
}

} // namespace afterbeat
