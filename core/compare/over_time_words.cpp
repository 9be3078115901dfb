#include "core/compare/over_time_parts.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace over_time {
namespace {

Amount count(std::size_t n) {
  return {static_cast<double>(n), AmountKind::count};
}

/// A day as far as it is known.
DayOrMonth dayOf(const OverTime& chart, std::chrono::sys_days day) {
  return {day, chart.monthsOnly};
}

Saying beyondWords(const OverTime& chart, const RuleHit& hit) {
  const TimePoint& point = chart.points[hit.first];
  const std::vector<SayingPart> parts{dayOf(chart, point.firstDay), amountOf(chart, point.value)};
  return hit.above ? Saying{"%1: %2 lies above the upper limit: chance alone would rarely reach "
                            "it. Look at what was special.",
                            parts}
                   : Saying{"%1: %2 lies below the lower limit: chance alone would rarely reach "
                            "it. Look at what was special.",
                            parts};
}

Saying runWords(const OverTime& chart, const RuleHit& hit) {
  const std::vector<SayingPart> parts{
      count(hit.found), dayOf(chart, chart.points[hit.first].firstDay),
      dayOf(chart, chart.points[hit.last].lastDay), count(hit.expected)};
  return hit.above
             ? Saying{"%1 points in a row lie above the line, from %2 to %3; chance explains up to "
                      "%4. Something lasting may have changed.",
                      parts}
             : Saying{"%1 points in a row lie below the line, from %2 to %3; chance explains up to "
                      "%4. Something lasting may have changed.",
                      parts};
}

Saying zoneWords(const OverTime& chart, const RuleHit& hit) {
  const std::vector<SayingPart> parts{dayOf(chart, chart.points[hit.first].firstDay),
                                      dayOf(chart, chart.points[hit.last].lastDay)};
  return hit.above ? Saying{"From %1 to %2 more points lie high above the line than chance would "
                            "often put there.",
                            parts}
                   : Saying{"From %1 to %2 more points lie far below the line than chance would "
                            "often put there.",
                            parts};
}

} // namespace

Amount amountOf(const OverTime& chart, double value) {
  if (const auto* of = std::get_if<ValueOf>(&chart.settings.subject)) {
    return afterbeat::amountOf(of->measure, value);
  }
  return {value, chart.chart == ChartKind::shares ? AmountKind::share : AmountKind::plain};
}

Saying words(const OverTime& chart, const RuleHit& hit) {
  switch (hit.rule) {
  case SignalRule::beyondLimits:
    return beyondWords(chart, hit);
  case SignalRule::longRun:
    return runWords(chart, hit);
  case SignalRule::fewCrossings:
    return {"Crossings of the line from %1 to %2: %3; chance would make at least %4. Something may "
            "have moved slowly or in steps.",
            {dayOf(chart, chart.points[hit.first].firstDay),
             dayOf(chart, chart.points[hit.last].lastDay), count(hit.found), count(hit.expected)}};
  case SignalRule::eightInARow: {
    RuleHit run = hit;
    run.expected = 7;
    return runWords(chart, run);
  }
  case SignalRule::twoOfThree:
  case SignalRule::fourOfFive:
    break;
  }
  return zoneWords(chart, hit);
}

namespace {

Saying pointWords(const OverTime& chart) {
  const bool each = chart.settings.period == Period::record;
  const auto& subject = chart.settings.subject;
  if (const auto* of = std::get_if<ValueOf>(&subject)) {
    return each ? Saying{"%1. Each record counts once.", {of->measure}}
                : Saying{"%1. Each point is the middle of the records of its time.", {of->measure}};
  }
  if (const auto* with = std::get_if<RecordsWith>(&subject)) {
    const std::vector<SayingPart> parts{with->measure,
                                        afterbeat::amountOf(with->measure, with->limit)};
    return with->atLeast ? Saying{"%1: share of the records with %2 or more.", parts}
                         : Saying{"%1: share of the records below %2.", parts};
  }
  if (const auto* share = std::get_if<CountedShare>(&subject)) {
    return {"%1, all that was counted in the records of its time taken together.",
            {share->measure}};
  }
  if (const auto* counted = std::get_if<CountedFor>(&subject)) {
    return {
        "%1 for every %2 of: %3.",
        {counted->count, afterbeat::amountOf(counted->exposure, counted->per), counted->exposure}};
  }
  return {"Share of the records in which a shock was given.", {}};
}

Saying lineWords(const OverTime& chart) {
  if (chart.chart == ChartKind::run) {
    return {"The line is the middle of all points: half lie above it, half below.", {}};
  }
  return {"The line is the mean; between the two limits points move by chance alone.", {}};
}

SayingPart nameOf(const MarkedStep& step) {
  if (step.words.empty()) {
    return Term{"marked day"};
  }
  return step.words;
}

Saying stepWords(const OverTime& chart, const StepChange& change) {
  const MarkedStep& step = chart.settings.steps[change.step];
  const std::vector<SayingPart> parts{dayOf(chart, step.day), nameOf(step),
                                      amountOf(chart, change.before),
                                      amountOf(chart, change.after)};
  return change.clear
             ? Saying{"From %1 (%2): %4, before %3. That is more than chance explains; what caused "
                      "it this picture cannot say.",
                      parts}
             : Saying{"From %1 (%2): %4, before %3. Chance alone could explain that.", parts};
}

/// Why nothing is compared at a step; empty: it is compared, or lies before all points.
std::optional<Saying> notCompared(const OverTime& chart, std::size_t index) {
  const MarkedStep& step = chart.settings.steps[index];
  const std::vector<SayingPart> parts{dayOf(chart, step.day), nameOf(step)};
  const bool compared =
      std::any_of(chart.changes.begin(), chart.changes.end(),
                  [index](const StepChange& change) { return change.step == index; });
  if (compared || chart.points.empty() || step.day <= chart.points.front().firstDay) {
    return std::nullopt;
  }
  const bool begins =
      std::any_of(chart.segments.begin(), chart.segments.end(),
                  [index](const ChartSegment& segment) { return segment.step == index; });
  if (begins) {
    return Saying{
        "From %1 (%2): fewer than five values before or after it, so nothing is compared.", parts};
  }
  return step.day > chart.points.back().lastDay
             ? Saying{"From %1 (%2): no point lies after it.", parts}
             : Saying{"From %1 (%2): no point lies between it and the next marked day.", parts};
}

/// With fewer points silence is said to mean little; common practice.
constexpr std::size_t kManyPoints = 60;

/// Whether anything changed.
void addVerdict(const OverTime& chart, std::vector<Saying>& all) {
  for (const StepChange& change : chart.changes) {
    all.push_back(stepWords(chart, change));
  }
  for (std::size_t step = 0; step < chart.settings.steps.size(); ++step) {
    if (auto saying = notCompared(chart, step)) {
      all.push_back(std::move(*saying));
    }
  }
  for (const ChartSignal& signal : chart.signals) {
    all.push_back(signal.saying);
  }
  const bool asked = std::any_of(chart.segments.begin(), chart.segments.end(),
                                 [](const ChartSegment& segment) { return !segment.tooFew; });
  if (!asked && !chart.points.empty()) {
    all.push_back({"Points: %1. With fewer than %2 nothing can be said of a change.",
                   {count(chart.points.size()), count(kLeastPointsForSignals)}});
  } else if (asked && chart.signals.empty()) {
    all.push_back(
        chart.changes.empty()
            ? Saying{"No sign of a change: chance alone explains how these points lie.", {}}
            : Saying{"Beside that no sign of a change: chance alone explains how the "
                     "points lie.",
                     {}});
    if (chart.points.size() < kManyPoints) {
      all.push_back({"With %1 points a real change can go unseen.", {count(chart.points.size())}});
    }
  }
}

/// How many points chance alone puts beyond the limits, where that is likely at least one.
void addChance(const OverTime& chart, std::vector<Saying>& all) {
  constexpr double kBeyond = 0.0027; // of normal values, beyond three deviations
  std::size_t limited = 0;
  for (const TimePoint& point : chart.points) {
    limited += point.upper ? 1U : 0U;
  }
  const double expected = kBeyond * static_cast<double>(limited);
  if (expected >= 0.5) {
    all.push_back({"Of so many points chance alone puts about %1 beyond the limits.",
                   {Amount{std::round(expected), AmountKind::count}}});
  }
}

void addCautions(const OverTime& chart, std::vector<Saying>& all) {
  addChance(chart, all);
  std::size_t few = 0;
  bool provisional = false, skewed = false;
  for (const ChartSegment& segment : chart.segments) {
    few += segment.tooFew ? 1U : 0U;
    provisional = provisional || segment.provisional;
    skewed = skewed || segment.skewed;
  }
  const bool run = chart.chart == ChartKind::run;
  if (few > 0 && few < chart.segments.size()) {
    all.push_back(
        {run ? "Of the stretches between marked days those with fewer than %1 points have "
               "no signals: %2 of %3."
             : "Of the stretches between marked days those with fewer than %1 points have "
               "no limits and no signals: %2 of %3.",
         {count(kLeastPointsForSignals), count(few), count(chart.segments.size())}});
  }
  if (provisional) {
    all.push_back({"Limits of fewer than %1 points may still move.", {count(kFirmPoints)}});
  }
  if (skewed) {
    all.push_back({"The values lean to one side: a point beyond a limit says less here. The run "
                   "chart asks nothing of how values are spread.",
                   {}});
  }
}

SayingPart medianOrNone(const Beside& beside) {
  if (beside.median) {
    return afterbeat::amountOf(beside.measure, *beside.median);
  }
  return Term{"too few for a middle"};
}

/// What the drawn share says little without, stretch by stretch.
void addBeside(const OverTime& chart, std::vector<Saying>& all) {
  bool first = true;
  for (const ChartSegment& segment : chart.segments) {
    if (segment.beside.size() != 2) {
      continue;
    }
    if (first) {
      all.push_back(
          {"This share alone says little: how long it took and how many shocks were given "
           "stand beside it.",
           {}});
      first = false;
    }
    const Beside &one = segment.beside[0], &other = segment.beside[1];
    all.push_back({"From %1 to %2 (middles): %3 %4, %5 %6.",
                   {dayOf(chart, chart.points[segment.firstPoint].firstDay),
                    dayOf(chart, chart.points[segment.lastPoint].lastDay), one.measure,
                    medianOrNone(one), other.measure, medianOrNone(other)}});
  }
}

void addMissing(const OverTime& chart, std::vector<Saying>& all) {
  if (chart.missing.notRecorded > 0) {
    all.push_back({"Records in which it is not recorded: %1.", {count(chart.missing.notRecorded)}});
  }
  if (chart.missing.notApplicable > 0) {
    all.push_back(
        {"Records to which it does not apply: %1.", {count(chart.missing.notApplicable)}});
  }
  if (chart.withoutDay > 0) {
    all.push_back({"Records without a day, which are in no point: %1.", {count(chart.withoutDay)}});
  }
}

} // namespace
} // namespace over_time

std::vector<Saying> words(const OverTime& chart) {
  using namespace over_time;
  std::vector<Saying> all;
  addVerdict(chart, all);
  all.push_back(pointWords(chart));
  all.push_back(lineWords(chart));
  addBeside(chart, all);
  addCautions(chart, all);
  addMissing(chart, all);
  return all;
}

std::string_view ruleWords(SignalRule rule) {
  switch (rule) {
  case SignalRule::beyondLimits:
    return "A point beyond the limits";
  case SignalRule::longRun:
    return "A longer run on one side of the line than chance explains";
  case SignalRule::fewCrossings:
    return "Fewer crossings of the line than chance explains";
  case SignalRule::twoOfThree:
    return "Two of three points beyond two deviations on one side";
  case SignalRule::fourOfFive:
    return "Four of five points beyond one deviation on one side";
  case SignalRule::eightInARow:
    return "Eight points in a row on one side of the line";
  }
  return "";
}

std::string_view ruleSource(SignalRule rule) {
  switch (rule) {
  case SignalRule::beyondLimits:
    return "Shewhart, Economic Control of Quality of Manufactured Product, 1931 (from memory)";
  case SignalRule::longRun:
  case SignalRule::fewCrossings:
    return "Anhøj and Olesen, PLoS ONE 2014;9:e113825 (read in a secondary publication)";
  default:
    return "Western Electric, Statistical Quality Control Handbook, 1956 (from memory)";
  }
}

} // namespace afterbeat
