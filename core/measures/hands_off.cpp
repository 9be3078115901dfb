#include "core/measures/evidence.h"
#include "core/measures/measure_values.h"
#include "core/measures/shocks.h"

#include <algorithm>

namespace afterbeat {
namespace {

std::vector<WorkingPart> pauseParts(const Figures& figures) {
  std::vector<WorkingPart> parts;
  for (const Pause& pause : figures.pauses) {
    parts.push_back({pause.stretch.begin, pause.stretch.end, WorkingKind::pause, {}});
  }
  return parts;
}

std::vector<WorkingPart> arrestParts(const Figures& figures) {
  std::vector<WorkingPart> parts;
  for (const Interval& arrest : figures.arrest) {
    parts.push_back({arrest.begin, arrest.end, WorkingKind::arrestInterval, {}});
  }
  return parts;
}

/// Analyses, and the way from an analysis to the shock that used it.
std::vector<Interval> analysisAndShockTime(const Record& record) {
  std::vector<Interval> stretches;
  std::vector<Time> delivered;
  for (const Entry& entry : record.entries) {
    const auto* shock = entry.complete<entry::Shock>();
    if (entry.complete<entry::Analysis>() != nullptr) {
      stretches.push_back(spanOf(entry));
    } else if (shock != nullptr && shock->delivered.value_or(false)) {
      delivered.push_back(entry.t);
    }
  }
  const auto advice = adviceUsed(record);
  for (std::size_t i = 0; i < delivered.size(); ++i) {
    if (advice[i]) {
      stretches.push_back({*advice[i], delivered[i]});
    }
  }
  return merged(std::move(stretches));
}

Measure adjusted(const Record& record, const Figures& figures, Duration handsOff) {
  const std::vector<Interval> taken = analysisAndShockTime(record);
  std::vector<WorkingPart> parts = pauseParts(figures);
  Duration sum = handsOff;
  for (const Pause& pause : figures.pauses) {
    sum -= overlap(pause.stretch, taken);
    // Merged stretches are in time order and apart: those before the pause are passed over.
    const auto first =
        std::partition_point(taken.begin(), taken.end(), [&pause](const Interval& stretch) {
          return stretch.end <= pause.stretch.begin;
        });
    for (auto stretch = first; stretch != taken.end() && stretch->begin < pause.stretch.end;
         ++stretch) {
      const Interval shared{std::max(stretch->begin, pause.stretch.begin),
                            std::min(stretch->end, pause.stretch.end)};
      if (shared.begin < shared.end) {
        parts.push_back({shared.begin, shared.end, WorkingKind::pauseForAnalysis, {}});
      }
    }
  }
  return recorded(MeasureId::adjustedHandsOffTime, seconds(sum), std::move(parts));
}

Measure longest(const Figures& figures) {
  const auto it = std::max_element(
      figures.pauses.begin(), figures.pauses.end(),
      [](const Pause& a, const Pause& b) { return a.stretch.length() < b.stretch.length(); });
  if (it == figures.pauses.end()) {
    return recorded(MeasureId::longestPause, 0);
  }
  return recorded(MeasureId::longestPause, seconds(it->stretch.length()),
                  {{it->stretch.begin, it->stretch.end, WorkingKind::pause, {}}});
}

Measure overLimit(const Figures& figures) {
  const auto& limit = figures.settings.profile.pauseLimit;
  if (!limit) {
    return notApplicable(MeasureId::pausesOverLimit);
  }
  std::vector<WorkingPart> parts;
  for (const Pause& pause : figures.pauses) {
    if (pause.stretch.length() > durationFromSeconds(limit->value)) {
      parts.push_back({pause.stretch.begin, pause.stretch.end, WorkingKind::pause, {}});
    }
  }
  const auto n = static_cast<double>(parts.size());
  return recorded(MeasureId::pausesOverLimit, n, std::move(parts));
}

} // namespace

std::vector<Measure> handsOffMeasures(const Record& record, const Figures& figures) {
  std::vector<Measure> result;
  const double arrest = seconds(total(figures.arrest));
  result.push_back(figures.window ? recorded(MeasureId::arrestTime, arrest, arrestParts(figures))
                                  : notRecorded(MeasureId::arrestTime));
  if (figures.evidence == Evidence::none || !figures.window) {
    for (const MeasureId id :
         {MeasureId::handsOffTime, MeasureId::handsOffFraction, MeasureId::chestCompressionFraction,
          MeasureId::adjustedHandsOffTime, MeasureId::longestPause, MeasureId::pausesOverLimit}) {
      result.push_back(notRecorded(id));
    }
    return result;
  }
  Duration off{};
  for (const Pause& pause : figures.pauses) {
    off += pause.stretch.length();
  }
  const double handsOff = seconds(off);
  const double handsOn = seconds(total(figures.arrest) - off);
  result.push_back(recorded(MeasureId::handsOffTime, handsOff, pauseParts(figures)));
  result.push_back(ratio(MeasureId::handsOffFraction, handsOff, arrest, pauseParts(figures)));
  result.push_back(
      ratio(MeasureId::chestCompressionFraction, handsOn, arrest, pauseParts(figures)));
  result.push_back(adjusted(record, figures, off));
  result.push_back(longest(figures));
  result.push_back(overLimit(figures));
  return result;
}

} // namespace afterbeat
