#include "core/measures/first_events.h"
#include "core/measures/measure_values.h"
#include "core/measures/window.h"

#include <algorithm>

namespace afterbeat {
namespace {

void keepFirst(std::optional<Time>& first, Time t) {
  if (!first || t < *first) {
    first = t;
  }
}

void noteMilestone(const std::string& what, Time t, FirstEvents& first) {
  if (what == "collapse") {
    keepFirst(first.collapse, t);
  } else if (what == "call_received") {
    keepFirst(first.call, t);
  } else if (what == "device_arrived") {
    keepFirst(first.deviceArrived, t);
  }
}

} // namespace

FirstEvents firstEvents(const Record& record, const Figures& figures) {
  FirstEvents first;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::PowerOn>() != nullptr) {
      keepFirst(first.powerOn, entry.t);
    } else if (const auto* electrodes = entry.complete<entry::Electrodes>()) {
      if (electrodes->state == ElectrodeState::attached) {
        keepFirst(first.electrodes, entry.t);
      }
    } else if (entry.complete<entry::Analysis>() != nullptr) {
      keepFirst(first.analysis, entry.t);
    } else if (const auto* shock = entry.complete<entry::Shock>()) {
      if (shock->delivered.value_or(false)) {
        keepFirst(first.shock, entry.t);
      }
    } else if (const auto* circulation = entry.complete<entry::Circulation>()) {
      if (circulation->state == CirculationState::returned) {
        keepFirst(first.circulationReturned, entry.t);
      }
    } else if (const auto* milestone = entry.complete<entry::Milestone>()) {
      noteMilestone(milestone->what, entry.t, first);
    }
  }
  if (!figures.handsOn.empty()) {
    first.handsOn = figures.handsOn.front().begin;
  }
  return first;
}

namespace {

Measure between(MeasureId id, std::optional<Time> from, std::optional<Time> to) {
  if (!from || !to) {
    return notRecorded(id);
  }
  return recorded(id, seconds(*to - *from),
                  {{std::min(*from, *to), std::max(*from, *to), WorkingKind::fromTo, {}}});
}

/// Periods the device was on; while it is on, another `power_on` changes nothing.
std::vector<Interval> onPeriods(const Record& record) {
  std::vector<Interval> periods;
  bool on = false;
  for (const Entry& entry : record.entries) {
    if (!on && entry.complete<entry::PowerOn>() != nullptr) {
      periods.push_back({entry.t, entry.t});
      on = true;
    } else if (on && entry.complete<entry::PowerOff>() != nullptr) {
      periods.back().end = entry.t;
      on = false;
    }
  }
  if (on) {
    periods.back().end = *latestForTimeOn(record);
  }
  return periods;
}

bool returnedRecorded(const Record& record) {
  return std::any_of(record.entries.begin(), record.entries.end(), [](const Entry& entry) {
    const auto* circulation = entry.complete<entry::Circulation>();
    return circulation != nullptr && circulation->state == CirculationState::returned;
  });
}

std::vector<WorkingPart> partsOf(const std::vector<Interval>& stretches, WorkingKind kind) {
  std::vector<WorkingPart> parts;
  for (const Interval& stretch : stretches) {
    parts.push_back({stretch.begin, stretch.end, kind, {}});
  }
  return parts;
}

} // namespace

std::vector<Measure> betweenEvents(const Record& record, const Figures& figures) {
  const FirstEvents first = firstEvents(record, figures);
  return {
      between(MeasureId::powerOnToFirstShock, first.powerOn, first.shock),
      between(MeasureId::electrodesToFirstShock, first.electrodes, first.shock),
      between(MeasureId::collapseToFirstShock, first.collapse, first.shock),
      between(MeasureId::callToFirstShock, first.call, first.shock),
      between(MeasureId::firstHandsOnToFirstShock, first.handsOn, first.shock),
      between(MeasureId::powerOnToElectrodes, first.powerOn, first.electrodes),
      between(MeasureId::powerOnToFirstHandsOn, first.powerOn, first.handsOn),
      between(MeasureId::electrodesToFirstAnalysis, first.electrodes, first.analysis),
      between(MeasureId::collapseToFirstHandsOn, first.collapse, first.handsOn),
      between(MeasureId::callToFirstHandsOn, first.call, first.handsOn),
      between(MeasureId::callToDeviceArrived, first.call, first.deviceArrived),
      between(MeasureId::collapseToCirculationReturned, first.collapse, first.circulationReturned),
  };
}

std::vector<Measure> circulationAndOnTime(const Record& record, const Figures& figures) {
  std::vector<Measure> result;
  if (figures.circulation.empty()) {
    const bool returned = returnedRecorded(record);
    for (const MeasureId id : {MeasureId::circulationTime, MeasureId::longestCirculation}) {
      result.push_back(returned ? notApplicable(id) : notRecorded(id));
    }
  } else {
    const auto all = merged(figures.circulation);
    result.push_back(recorded(MeasureId::circulationTime, seconds(total(all)),
                              partsOf(all, WorkingKind::circulation)));
    const auto longest = std::max_element(
        figures.circulation.begin(), figures.circulation.end(),
        [](const Interval& a, const Interval& b) { return a.length() < b.length(); });
    result.push_back(recorded(MeasureId::longestCirculation, seconds(longest->length()),
                              partsOf({*longest}, WorkingKind::circulation)));
  }
  const auto on = onPeriods(record);
  result.push_back(on.empty() ? notRecorded(MeasureId::timeOn)
                              : recorded(MeasureId::timeOn, seconds(total(on)),
                                         partsOf(on, WorkingKind::onPeriod)));
  return result;
}

} // namespace afterbeat
