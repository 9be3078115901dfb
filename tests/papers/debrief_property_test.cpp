/// What holds for the debrief of any record.
#include "app/papers/debrief.h"
#include "tests/core/measures/random_record.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <set>

namespace afterbeat::papers {
namespace {

/// RapidCheck reads its settings when the first property is checked.
const bool kSeeded = [] {
  setenv("RC_PARAMS", "seed=20260314 max_success=1500", 0);
  return true;
}();

/// What samples there are decides nothing here.
reference::Scenario withoutSamples(reference::Scenario scenario) {
  scenario.samples = false;
  return scenario;
}

/// Random records are seconds long: slowed down they last for minutes.
Record stretched(Record record, int times) {
  if (record.lastTime) {
    record.lastTime = Time{record.lastTime->time_since_epoch() * times};
  }
  for (Entry& entry : record.entries) {
    entry.t = Time{entry.t.time_since_epoch() * times};
    if (entry.end) {
      entry.end = Time{entry.end->time_since_epoch() * times};
    }
  }
  return record;
}

/// The measures a rule reads its figure from; empty: pauses or minutes.
std::optional<MeasureId> measureOf(DebriefRule rule) {
  switch (rule) {
  case DebriefRule::handsOff:
    return MeasureId::handsOffFraction;
  case DebriefRule::beforeShock:
    return MeasureId::preShockPauseWorst;
  case DebriefRule::afterShock:
    return MeasureId::postShockPauseWorst;
  case DebriefRule::firstShock:
    return MeasureId::powerOnToFirstShock;
  case DebriefRule::rate:
    return MeasureId::compressionRate;
  case DebriefRule::rateSteady:
    return MeasureId::compressionRateInRange;
  case DebriefRule::depth:
    return MeasureId::compressionDepth;
  case DebriefRule::release:
    return MeasureId::fullRelease;
  case DebriefRule::electrodes:
    return MeasureId::powerOnToElectrodes;
  case DebriefRule::adviceToShock:
    return MeasureId::adviceToShockWorst;
  default:
    return std::nullopt;
  }
}

bool rightSide(const Finding& f) {
  switch (f.aim) {
  case Aim::atMost:
    return f.value <= f.target.high;
  case Aim::below:
    return f.value < f.target.high;
  case Aim::atLeast:
    return f.value >= f.target.low;
  case Aim::inRange:
    return f.target.low <= f.value && f.value <= f.target.high;
  }
  return false;
}

/// From the first to the last moment that an entry speaks of.
std::optional<Interval> extent(const Record& record) {
  std::optional<Interval> all;
  for (const Entry& entry : record.entries) {
    if (entry.hasTime) {
      const Interval own{entry.t, entry.lastTime()};
      all = all ? Interval{std::min(all->begin, own.begin), std::max(all->end, own.end)} : own;
    }
  }
  if (all && record.lastTime) {
    all->end = std::max(all->end, *record.lastTime);
  }
  return all;
}

void checkFinding(const Finding& finding, const Record& record, const Figures& figures) {
  RC_ASSERT(finding.within == rightSide(finding));
  RC_ASSERT(finding.away >= 0);
  if (const auto id = measureOf(finding.rule)) {
    RC_ASSERT(figures[*id].status == Status::ok);
    RC_ASSERT(*figures[*id].value == finding.value);
  } else {
    RC_ASSERT(figures.evidence != Evidence::none);
  }
  const auto whole = extent(record);
  RC_ASSERT(whole.has_value());
  RC_ASSERT(finding.moment.begin <= finding.moment.end);
  RC_ASSERT(finding.moment.begin >= whole->begin);
  RC_ASSERT(finding.moment.end <= whole->end);
}

RC_GTEST_PROP(DebriefOfAnyRecord, IsChosenFromTheRightSide, ()) {
  const auto scenario = withoutSamples(*reference::scenarios());
  const Record record = stretched(reference::recordOf(scenario), *rc::gen::element(1, 1, 7, 23));
  const Figures figures = computeFigures(record, reference::settingsOf(scenario));
  const auto findings = debriefFindings(record, figures);
  for (const Finding& finding : findings) {
    checkFinding(finding, record, figures);
  }
  const DebriefChoice choice = chooseDebrief(findings);
  RC_CLASSIFY(!choice.well.empty(), "something went well");
  RC_CLASSIFY(!choice.practise.empty(), "something to practise");
  RC_ASSERT(choice.well.size() <= 3);
  RC_ASSERT(choice.practise.size() <= 3);
  std::set<DebriefRule> rules;
  std::size_t chosen = 0;
  for (const std::size_t i : choice.well) {
    RC_ASSERT(findings[i].within);
    rules.insert(findings[i].rule);
    ++chosen;
  }
  for (const std::size_t i : choice.practise) {
    RC_ASSERT(!findings[i].within);
    rules.insert(findings[i].rule);
    ++chosen;
  }
  if (choice.nearest) {
    RC_ASSERT(choice.well.empty());
    RC_ASSERT(!findings[*choice.nearest].within);
    rules.insert(findings[*choice.nearest].rule);
    ++chosen;
  }
  RC_ASSERT(rules.size() == chosen);
}

RC_GTEST_PROP(DebriefOfAnyRecord, HasWordsForEverything, ()) {
  const auto scenario = withoutSamples(*reference::scenarios());
  const Record record = stretched(reference::recordOf(scenario), *rc::gen::element(1, 1, 7, 23));
  const Figures figures = computeFigures(record, reference::settingsOf(scenario));
  const Debrief debrief = makeDebrief(record, figures, Words{});
  RC_ASSERT(debrief.well.size() <= 3);
  RC_ASSERT(debrief.practise.size() <= 3);
  RC_ASSERT(debrief.questions.size() >= 3);
  RC_ASSERT(debrief.questions.size() <= 5);
  for (const auto* column : {&debrief.well, &debrief.practise}) {
    for (const DebriefItem& item : *column) {
      RC_ASSERT(!item.figure.isEmpty());
      RC_ASSERT(item.sentence.endsWith('.'));
      RC_ASSERT(!item.sentence.contains("%1") && !item.sentence.contains("%2"));
      RC_ASSERT(item.target.isEmpty() == (item.kind == DebriefKind::effort));
      RC_ASSERT(item.source.isEmpty() == item.target.isEmpty());
    }
  }
  for (const QString& question : debrief.questions) {
    RC_ASSERT(question.endsWith('?'));
    RC_ASSERT(!question.contains("%1"));
  }
  if (debrief.well.empty()) {
    RC_ASSERT(!debrief.wellNote.isEmpty() || !debrief.nothing.isEmpty());
  }
  if (debrief.practise.empty()) {
    RC_ASSERT(!debrief.practiseNote.isEmpty() || !debrief.nothing.isEmpty());
  }
}

/// The same record told later gives the same debrief.
RC_GTEST_PROP(DebriefOfAnyRecord, DoesNotDependOnTheAxis, ()) {
  const auto scenario = withoutSamples(*reference::scenarios());
  const Record record = stretched(reference::recordOf(scenario), *rc::gen::element(1, 1, 7, 23));
  const FigureSettings settings = reference::settingsOf(scenario);
  constexpr Duration kLater{77'000'001};
  Record later = record;
  if (later.lastTime) {
    *later.lastTime += kLater;
  }
  for (Entry& entry : later.entries) {
    entry.t += kLater;
    if (entry.end) {
      *entry.end += kLater;
    }
  }
  const auto now = debriefFindings(record, computeFigures(record, settings));
  const auto then = debriefFindings(later, computeFigures(later, settings));
  RC_ASSERT(now.size() == then.size());
  for (std::size_t i = 0; i < now.size(); ++i) {
    RC_ASSERT(now[i].rule == then[i].rule);
    RC_ASSERT(now[i].value == then[i].value);
    RC_ASSERT(now[i].moment.begin + kLater == then[i].moment.begin);
    RC_ASSERT(now[i].moment.end + kLater == then[i].moment.end);
  }
}

} // namespace
} // namespace afterbeat::papers
