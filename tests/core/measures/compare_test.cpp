/// The figures against the slow reference, and what must hold for any record, on random records.
///
/// The seed is fixed; RC_PARAMS ("seed=7 max_success=20000") overrides it, AFTERBEAT_CASES is the
/// number of random records of each property, AFTERBEAT_NO_SHRINK leaves a found example as it is.
#include "tests/core/measures/difference.h"
#include "tests/core/measures/random_record.h"
#include "tests/core/measures/reference.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <string>

namespace afterbeat {
namespace {

using reference::firstDifference;
using reference::recordOf;
using reference::Scenario;
using reference::settingsOf;

/// RapidCheck reads its settings when the first property is checked.
const bool kSeeded = [] {
  const char* cases = std::getenv("AFTERBEAT_CASES");
  std::string params = "seed=20260314 max_success=";
  params += cases != nullptr ? cases : "8000";
  params += std::getenv("AFTERBEAT_NO_SHRINK") != nullptr ? " noshrink=1" : "";
  setenv("RC_PARAMS", params.c_str(), 0);
  return true;
}();

void expectSame(const Figures& expected, const Figures& got, const std::string& what) {
  const std::string difference = firstDifference(expected, got);
  if (!difference.empty()) {
    RC_FAIL(what + ": " + difference);
  }
}

RC_GTEST_PROP(Figures, agreeWithTheReference, ()) {
  const Scenario scenario = *reference::scenarios();
  const Record record = recordOf(scenario);
  const FigureSettings settings = settingsOf(scenario);
  expectSame(reference::computeFigures(record, settings), computeFigures(record, settings),
             "against the reference");
}

/// A comparison is worth what it compares: every cause, every evidence and every state that a
/// measure can have must come up, many times.
TEST(RandomRecords, reachEveryState) {
  std::map<std::string, int> seen;
  int records = 0;
  EXPECT_TRUE(rc::check("collects states", [&seen, &records] {
    const Scenario scenario = *reference::scenarios();
    const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
    ++records;
    ++seen["evidence " + std::string(name(f.evidence))];
    for (const Pause& p : f.pauses) {
      ++seen["cause " + std::string(name(p.cause))];
    }
    for (const NotCounted& n : f.notCounted) {
      ++seen["not counted " + std::string(name(n.why))];
    }
    for (const Measure& m : f.measures) {
      ++seen[std::string(measureInfo(m.id).name) + " " + std::string(name(m.status))];
    }
    seen["two arrest intervals"] += f.arrest.size() > 1 ? 1 : 0;
    seen["two minutes"] += f.minutes.size() > 1 ? 1 : 0;
    seen["two circulation intervals"] += f.circulation.size() > 1 ? 1 : 0;
    seen["a closed cycle"] += f.cycles.size() > 2 ? 1 : 0;
    seen["no window"] += f.window ? 0 : 1;
    seen["peri-shock pause"] += f[MeasureId::periShockPauseWorst].value.value_or(0) > 0 ? 1 : 0;
  }));
  const int least = records / 160;
  for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
    const std::string id(measureInfo(static_cast<MeasureId>(i)).name);
    EXPECT_GE(seen[id + " ok"], least) << id;
    // Without an analysis that was used, the wait from advice to shock is never said to be missing.
    EXPECT_GE(seen[id + " not_recorded"], id.rfind("advice_to_shock", 0) == 0 ? 0 : least) << id;
  }
  for (const char* state : {"evidence none",
                            "evidence compressions",
                            "evidence segments",
                            "evidence both",
                            "cause shock",
                            "cause analysis",
                            "cause before_first",
                            "cause after_last",
                            "cause breaths",
                            "cause breaths_long",
                            "cause no_reason_recorded",
                            "not counted before_window",
                            "not counted after_window",
                            "not counted circulation_returned",
                            "not counted not_rescue",
                            "not counted not_trusted",
                            "not counted not_observed",
                            "hands_off_fraction not_applicable",
                            "compression_rate not_applicable",
                            "compression_rate_in_range not_applicable",
                            "compression_depth not_applicable",
                            "compression_depth_in_range not_applicable",
                            "full_release not_applicable",
                            "ventilations_per_minute not_applicable",
                            "pauses_over_limit not_applicable",
                            "pre_shock_pause_median not_applicable",
                            "post_shock_pause_worst not_applicable",
                            "peri_shock_pause_median not_applicable",
                            "energy_total not_applicable",
                            "advice_to_shock_median not_applicable",
                            "circulation_time not_applicable",
                            "two arrest intervals",
                            "two minutes",
                            "two circulation intervals",
                            "a closed cycle",
                            "no window",
                            "peri-shock pause"}) {
    EXPECT_GE(seen[state], least) << state;
  }
}

// ---- what must hold for any record, whatever the definitions

void shift(Time& t, Duration by) {
  t += by;
}
void shift(Interval& i, Duration by) {
  i.begin += by;
  i.end += by;
}
template <typename T>
void shift(std::optional<T>& t, Duration by) {
  if (t) {
    shift(*t, by);
  }
}

Record shifted(Record record, Duration by) {
  for (Entry& e : record.entries) {
    shift(e.t, by);
    shift(e.end, by);
  }
  for (Channel& channel : record.channels) {
    for (SampleBlock& block : channel.blocks) {
      shift(block.t, by);
    }
    shift(channel.firstLine, by);
    shift(channel.lastLine, by);
  }
  return record;
}

Figures shifted(Figures f, Duration by) {
  shift(f.window, by);
  shift(f.lastActivity, by);
  for (Time& t : f.compressions) {
    shift(t, by);
  }
  for (std::vector<Interval>* list : {&f.handsOn, &f.arrest, &f.circulation}) {
    for (Interval& i : *list) {
      shift(i, by);
    }
  }
  for (NotCounted& n : f.notCounted) {
    shift(n.stretch, by);
  }
  for (Pause& p : f.pauses) {
    shift(p.stretch, by);
  }
  for (ShockFigures& s : f.shocks) {
    shift(s.t, by);
  }
  for (MinuteRow& m : f.minutes) {
    shift(m.epoch, by);
  }
  for (CycleRow& c : f.cycles) {
    shift(c.stretch, by);
  }
  return f;
}

RC_GTEST_PROP(Figures, aShiftOfAllTimesChangesTimesAlone, ()) {
  const Scenario scenario = *reference::scenarios();
  const Record record = recordOf(scenario);
  const FigureSettings settings = settingsOf(scenario);
  const Duration by{*rc::gen::inRange(-500'000'000, 500'000'000)};
  expectSame(shifted(computeFigures(record, settings), by),
             computeFigures(shifted(record, by), settings),
             "shifted by " + std::to_string(by.count()) + " us");
}

RC_GTEST_PROP(Figures, aRecordCutInTwoAndMergedIsTheSame, ()) {
  Scenario scenario = *reference::scenarios();
  scenario.oneStream = true;
  const Record whole = recordOf(scenario);
  const FigureSettings settings = settingsOf(scenario);
  const int cutMs = scenario.beginMs + *rc::gen::inRange(0, scenario.spanMs);
  Record merged = whole;
  for (Entry& e : merged.entries) {
    e.part = e.t < Time{std::chrono::milliseconds{cutMs}} ? 0 : 1;
  }
  expectSame(computeFigures(whole, settings), computeFigures(merged, settings),
             "cut at " + std::to_string(cutMs) + " ms and merged");
}

RC_GTEST_PROP(Figures, aMarkChangesNothing, ()) {
  const Scenario scenario = *reference::scenarios();
  const Record record = recordOf(scenario);
  const FigureSettings settings = settingsOf(scenario);
  Record marked = record;
  Entry mark;
  mark.t = Time{std::chrono::milliseconds{*rc::gen::inRange(-100'000, 500'000)}};
  mark.data = entry::Mark{"look at this", "a colleague"};
  const auto place = std::upper_bound(marked.entries.begin(), marked.entries.end(), mark,
                                      [](const Entry& a, const Entry& b) { return a.t < b.t; });
  const auto index = static_cast<std::size_t>(place - marked.entries.begin());
  marked.entries.insert(place, mark);
  Figures expected = computeFigures(record, settings);
  for (std::vector<std::size_t>* list : {&expected.compressionEntries, &expected.cprEntries}) {
    for (std::size_t& i : *list) {
      i += i >= index ? 1U : 0U;
    }
  }
  expectSame(expected, computeFigures(marked, settings), "with a mark");
}

RC_GTEST_PROP(Figures, aLargerThresholdNeverFindsMoreHandsOff, ()) {
  const Scenario scenario = *reference::scenarios();
  const Record record = recordOf(scenario);
  FigureSettings small = settingsOf(scenario), large = small;
  const int a = *rc::gen::inRange(500, 5001), b = *rc::gen::inRange(500, 5001);
  small.pauseThreshold = std::chrono::milliseconds{std::min(a, b)};
  large.pauseThreshold = std::chrono::milliseconds{std::max(a, b)};
  const Figures less = computeFigures(record, large), more = computeFigures(record, small);
  RC_ASSERT(less[MeasureId::handsOffTime].status == more[MeasureId::handsOffTime].status);
  RC_ASSERT(less[MeasureId::handsOffTime].value.value_or(0) <=
            more[MeasureId::handsOffTime].value.value_or(0));
  RC_ASSERT(less.pauses.size() <= more.pauses.size());
}

RC_GTEST_PROP(Figures, handsOffAndCompressionFractionMakeOne, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  const Measure &off = f[MeasureId::handsOffFraction], &on = f[MeasureId::chestCompressionFraction];
  RC_ASSERT(off.status == on.status);
  if (off.value) {
    RC_ASSERT(on.value.has_value());
    RC_ASSERT(std::abs(*off.value + *on.value - 1) < 1e-12);
    RC_ASSERT(*off.value >= 0);
    RC_ASSERT(*off.value <= 1);
  }
}

RC_GTEST_PROP(Figures, pausesLieInArrestIntervalsAndDoNotOverlap, ()) {
  const Scenario scenario = *reference::scenarios();
  const FigureSettings settings = settingsOf(scenario);
  const Figures f = computeFigures(recordOf(scenario), settings);
  double sum = 0;
  for (std::size_t i = 0; i < f.pauses.size(); ++i) {
    const Interval& p = f.pauses[i].stretch;
    RC_ASSERT(p.end - p.begin > settings.pauseThreshold);
    RC_ASSERT((i == 0 || f.pauses[i - 1].stretch.end <= p.begin));
    RC_ASSERT(std::any_of(f.arrest.begin(), f.arrest.end(),
                          [&](const Interval& a) { return a.begin <= p.begin && p.end <= a.end; }));
    sum += seconds(p.end - p.begin);
  }
  RC_ASSERT(std::abs(sum - f[MeasureId::handsOffTime].value.value_or(0)) < 1e-6);
}

/// Every measure keeps the promises of its type, and its working is in the record's time.
RC_GTEST_PROP(Figures, everyMeasureKeepsItsPromises, ()) {
  const Scenario scenario = *reference::scenarios();
  const Figures f = computeFigures(recordOf(scenario), settingsOf(scenario));
  RC_ASSERT(f.measures.size() == static_cast<std::size_t>(MeasureId::count_));
  for (const Measure& m : f.measures) {
    RC_ASSERT(m.value.has_value() == (m.status == Status::ok));
    RC_ASSERT(m.numerator.has_value() == m.denominator.has_value());
    RC_ASSERT((!m.value || std::isfinite(*m.value)));
    for (const WorkingPart& part : m.working) {
      RC_ASSERT(!label(part).empty());
    }
  }
}

} // namespace
} // namespace afterbeat
