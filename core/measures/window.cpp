#include "core/measures/window.h"

#include "core/measures/evidence.h"

#include <algorithm>

namespace afterbeat {
namespace {

void widen(std::optional<Interval>& span, Time from, Time to) {
  if (!span) {
    span = Interval{from, to};
  } else {
    span->begin = std::min(span->begin, from);
    span->end = std::max(span->end, to);
  }
}

void widenBySamples(const Record& record, std::optional<Interval>& span) {
  for (const Channel& channel : record.channels) {
    for (const SampleBlock& block : channel.blocks) {
      widen(span, block.t, block.t);
    }
    if (channel.firstLine && channel.lastLine) {
      widen(span, *channel.firstLine, *channel.lastLine);
    }
  }
}

template <typename... Excepted>
std::optional<Interval> spanExcept(const Record& record) {
  std::optional<Interval> span;
  for (const Entry& entry : record.entries) {
    if (!entry.incomplete && !(std::holds_alternative<Excepted>(entry.data) || ...)) {
      widen(span, entry.t, entry.lastTime());
    }
  }
  widenBySamples(record, span);
  return span;
}

bool isDelivered(const Entry& entry) {
  const auto* shock = entry.complete<entry::Shock>();
  return shock != nullptr && shock->delivered.value_or(false);
}

bool isAttached(const Entry& entry) {
  const auto* electrodes = entry.complete<entry::Electrodes>();
  return electrodes != nullptr && electrodes->state == ElectrodeState::attached;
}

bool isCirculation(const Entry& entry, CirculationState state) {
  const auto* circulation = entry.complete<entry::Circulation>();
  return circulation != nullptr && circulation->state == state;
}

/// Begin of the window, and the last activity, as one span each; entries are in time order.
void findWindow(const Record& record, Figures& figures) {
  std::optional<Interval> begins;
  std::optional<Interval> activity;
  if (!figures.handsOn.empty()) {
    widen(begins, figures.handsOn.front().begin, figures.handsOn.front().begin);
    widen(activity, figures.handsOn.back().end, figures.handsOn.back().end);
  }
  for (const Entry& entry : record.entries) {
    const bool analysis = entry.complete<entry::Analysis>() != nullptr;
    const bool delivered = isDelivered(entry);
    if (analysis || delivered || isAttached(entry)) {
      widen(begins, entry.t, entry.t);
    }
    if (analysis || delivered) {
      widen(activity, entry.lastTime(), entry.lastTime());
    }
  }
  if (!begins) {
    return;
  }
  if (activity) {
    figures.lastActivity = activity->end;
  }
  Time end = figures.lastActivity.value_or(begins->begin);
  if (figures.settings.windowEnd == WindowEnd::recordEnd) {
    end = std::max(end, recordSpan(record)->end);
  }
  figures.window = Interval{begins->begin, end};
}

/// Moments that end a circulation interval, sorted.
std::vector<Time> circulationEnds(const Record& record, const Figures& figures) {
  std::vector<Time> ends = figures.compressions;
  for (const std::size_t i : figures.cprEntries) {
    ends.push_back(record.entries[i].t);
  }
  for (const Entry& entry : record.entries) {
    if (isDelivered(entry) || isCirculation(entry, CirculationState::lost)) {
      ends.push_back(entry.t);
    }
  }
  if (figures.window) {
    ends.push_back(figures.window->end);
  }
  std::sort(ends.begin(), ends.end());
  return ends;
}

void findCirculation(const Record& record, Figures& figures) {
  std::vector<Time> ends;
  for (const Entry& entry : record.entries) {
    if (!isCirculation(entry, CirculationState::returned)) {
      continue;
    }
    if (figures.circulation.empty()) {
      ends = circulationEnds(record, figures);
    }
    const auto end = std::upper_bound(ends.begin(), ends.end(), entry.t);
    if (end != ends.end()) {
      figures.circulation.push_back({entry.t, *end});
    }
  }
}

NotCountedReason reasonOf(ExclusionReason why) {
  switch (why) {
  case ExclusionReason::notRescue:
    return NotCountedReason::notRescue;
  case ExclusionReason::notTrusted:
    return NotCountedReason::notTrusted;
  case ExclusionReason::notObserved:
    return NotCountedReason::notObserved;
  }
  return NotCountedReason::notObserved;
}

/// Adds what a stretch takes out of the window, if anything.
void addNotCounted(Figures& figures, const Interval& stretch, NotCountedReason why) {
  const Interval inside{std::max(stretch.begin, figures.window->begin),
                        std::min(stretch.end, figures.window->end)};
  if (inside.begin < inside.end) {
    figures.notCounted.push_back({inside, why});
  }
}

void findArrest(const Record& record, Figures& figures) {
  std::vector<Interval> holes = figures.circulation;
  std::vector<Interval> excluded;
  for (const Interval& stretch : figures.circulation) {
    addNotCounted(figures, stretch, NotCountedReason::circulationReturned);
  }
  for (const Entry& entry : record.entries) {
    if (const auto* exclusion = entry.complete<entry::Excluded>()) {
      holes.push_back(spanOf(entry));
      excluded.push_back(spanOf(entry));
      addNotCounted(figures, spanOf(entry), reasonOf(*exclusion->why));
    }
  }
  figures.excludedLength = overlap(*figures.window, merged(std::move(excluded)));
  figures.arrest = withoutInteriors(*figures.window, merged(std::move(holes)));
  std::stable_sort(
      figures.notCounted.begin(), figures.notCounted.end(),
      [](const NotCounted& a, const NotCounted& b) { return a.stretch.begin < b.stretch.begin; });
}

/// What lies outside the window goes before and after what is inside.
void addOutside(const Record& record, Figures& figures) {
  const auto span = recordSpan(record);
  if (!span) {
    return;
  }
  if (span->begin < figures.window->begin) {
    figures.notCounted.insert(figures.notCounted.begin(), {{span->begin, figures.window->begin},
                                                           NotCountedReason::beforeWindow});
  }
  if (span->end > figures.window->end) {
    figures.notCounted.push_back({{figures.window->end, span->end}, NotCountedReason::afterWindow});
  }
}

} // namespace

std::optional<Interval> recordSpan(const Record& record) {
  return spanExcept<entry::Milestone, entry::Mark, entry::Pads, entry::SelfTest, entry::Battery,
                    entry::Unreadable>(record);
}

std::optional<Time> latestForTimeOn(const Record& record) {
  const auto span = spanExcept<entry::Milestone, entry::Mark, entry::Unreadable>(record);
  return span ? std::optional<Time>{span->end} : std::nullopt;
}

void fillWindow(const Record& record, Figures& figures) {
  findWindow(record, figures);
  findCirculation(record, figures);
  if (!figures.window) {
    return;
  }
  findArrest(record, figures);
  addOutside(record, figures);
}

} // namespace afterbeat
