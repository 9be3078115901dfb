#include "core/measures/pauses.h"

#include "core/measures/evidence.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// Gaps of one arrest interval [G1].
std::vector<Interval> gapsOf(const Interval& arrest, const std::vector<Interval>& handsOn) {
  std::vector<Interval> gaps;
  Time cursor = arrest.begin;
  auto it = std::lower_bound(handsOn.begin(), handsOn.end(), arrest.begin,
                             [](const Interval& h, Time t) { return h.end < t; });
  for (; it != handsOn.end() && it->begin <= arrest.end; ++it) {
    if (it->begin > cursor) {
      gaps.push_back({cursor, it->begin});
    }
    cursor = std::max(cursor, it->end);
  }
  if (cursor < arrest.end) {
    gaps.push_back({cursor, arrest.end});
  }
  return gaps;
}

/// What happened in the record that can be the cause of a pause.
struct Happenings {
  std::vector<Time> shocks, breaths;
  std::vector<Interval> analyses;
};

Happenings happenings(const Record& record) {
  Happenings result;
  for (const Entry& entry : record.entries) {
    const auto* shock = entry.complete<entry::Shock>();
    if (shock != nullptr && shock->delivered.value_or(false)) {
      result.shocks.push_back(entry.t);
    } else if (entry.complete<entry::Ventilation>() != nullptr) {
      result.breaths.push_back(entry.t);
    } else if (entry.complete<entry::Analysis>() != nullptr) {
      result.analyses.push_back(spanOf(entry));
    }
  }
  return result;
}

/// `moments` in time order.
bool anyInside(const std::vector<Time>& moments, const Interval& stretch) {
  const auto it = std::lower_bound(moments.begin(), moments.end(), stretch.begin);
  return it != moments.end() && *it <= stretch.end;
}

PauseCause causeOf(const Interval& gap, const Happenings& what, const Figures& figures) {
  if (anyInside(what.shocks, gap)) {
    return PauseCause::shock;
  }
  if (std::any_of(what.analyses.begin(), what.analyses.end(),
                  [&](const Interval& analysis) { return analysis.touches(gap); })) {
    return PauseCause::analysis;
  }
  if (figures.handsOn.front().begin > gap.begin) {
    return PauseCause::beforeFirst;
  }
  if (figures.handsOn.back().end < gap.end) {
    return PauseCause::afterLast;
  }
  if (anyInside(what.breaths, gap)) {
    const auto& limit = figures.settings.profile.breathPauseLimit;
    const bool within = !limit || gap.length() <= durationFromSeconds(limit->value);
    return within ? PauseCause::breaths : PauseCause::breathsLong;
  }
  return PauseCause::noReasonRecorded;
}

} // namespace

void fillPauses(const Record& record, Figures& figures) {
  if (figures.evidence == Evidence::none) {
    return;
  }
  const Happenings what = happenings(record);
  for (const Interval& arrest : figures.arrest) {
    for (const Interval& gap : gapsOf(arrest, figures.handsOn)) {
      if (gap.length() > figures.settings.pauseThreshold) {
        figures.pauses.push_back({gap, causeOf(gap, what, figures)});
      }
    }
  }
}

} // namespace afterbeat
