#include "core/measures/measure_values.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// Median and worst of one length per delivered shock.
struct ShockLength {
  MeasureId median, worst;
  std::optional<Duration> ShockFigures::*length;
  WorkingKind kind;
};

/// Where the length lies on the record's axis.
WorkingPart partOf(const ShockFigures& shock, WorkingKind kind) {
  const Duration none{};
  WorkingPart part{shock.t, shock.t, kind, static_cast<double>(shock.number)};
  switch (kind) {
  case WorkingKind::preShockPause:
    part.from -= shock.pre.value_or(none);
    break;
  case WorkingKind::postShockPause:
    part.to += shock.post.value_or(none);
    break;
  case WorkingKind::periShockPause:
    part.from -= shock.pre.value_or(none);
    part.to += shock.post.value_or(none);
    break;
  case WorkingKind::adviceToShock:
    part.from -= shock.adviceToShock.value_or(none);
    break;
  default:
    break;
  }
  return part;
}

void addMedianAndWorst(const Figures& figures, const ShockLength& what,
                       std::vector<Measure>& into) {
  std::vector<double> values;
  std::vector<WorkingPart> parts;
  for (const ShockFigures& shock : figures.shocks) {
    if (const auto& length = shock.*what.length) {
      values.push_back(seconds(*length));
      parts.push_back(partOf(shock, what.kind));
    }
  }
  if (values.empty()) {
    into.push_back(notApplicable(what.median));
    into.push_back(notApplicable(what.worst));
    return;
  }
  const auto worst = std::max_element(values.begin(), values.end());
  const WorkingPart worstPart = parts[static_cast<std::size_t>(worst - values.begin())];
  into.push_back(recorded(what.median, median(values), parts));
  into.push_back(recorded(what.worst, *worst, {worstPart}));
}

void addPauses(const Figures& figures, std::vector<Measure>& into) {
  const ShockLength kinds[] = {{MeasureId::preShockPauseMedian, MeasureId::preShockPauseWorst,
                                &ShockFigures::pre, WorkingKind::preShockPause},
                               {MeasureId::postShockPauseMedian, MeasureId::postShockPauseWorst,
                                &ShockFigures::post, WorkingKind::postShockPause},
                               {MeasureId::periShockPauseMedian, MeasureId::periShockPauseWorst,
                                &ShockFigures::peri, WorkingKind::periShockPause}};
  for (const ShockLength& kind : kinds) {
    if (figures.evidence == Evidence::none) {
      into.push_back(notRecorded(kind.median));
      into.push_back(notRecorded(kind.worst));
    } else {
      addMedianAndWorst(figures, kind, into);
    }
  }
}

/// A shock whose delivery the record does not state; without a time it is in no figure.
bool deliveryUnknown(const Entry& entry) {
  const auto* shock = std::get_if<entry::Shock>(&entry.data);
  return shock != nullptr && entry.hasTime && !shock->delivered;
}

/// Whether a defibrillator's own recording is part of the record [S3]: only then does "none" follow
/// from no entry.
bool defibrillatorRecorded(const Record& record) {
  return std::any_of(record.entries.begin(), record.entries.end(), [](const Entry& entry) {
    if (entry.source != Source::device) {
      return false;
    }
    return deliveryUnknown(entry) || entry.complete<entry::PowerOn>() != nullptr ||
           entry.complete<entry::PowerOff>() != nullptr ||
           entry.complete<entry::Electrodes>() != nullptr ||
           entry.complete<entry::PatientMode>() != nullptr ||
           entry.complete<entry::Analysis>() != nullptr ||
           entry.complete<entry::Charge>() != nullptr || entry.complete<entry::Shock>() != nullptr;
  });
}

/// What was noted is counted whoever noted it; that there was none needs a device's recording [S3].
Measure countOf(MeasureId id, bool covered, std::vector<WorkingPart> parts) {
  const auto n = static_cast<double>(parts.size());
  return covered || n > 0 ? recorded(id, n, std::move(parts)) : notRecorded(id);
}

void addShockCounts(const Record& record, bool covered, std::vector<Measure>& into) {
  std::vector<WorkingPart> delivered;
  std::vector<WorkingPart> withheld;
  std::vector<WorkingPart> unknown;
  double energy = 0;
  bool energyKnown = true;
  for (const Entry& entry : record.entries) {
    if (deliveryUnknown(entry)) {
      unknown.push_back({entry.t, entry.t, WorkingKind::shockUnknown, {}});
      continue;
    }
    const auto* shock = entry.complete<entry::Shock>();
    if (shock == nullptr) {
      continue;
    }
    if (*shock->delivered) {
      const auto number = static_cast<double>(delivered.size() + 1);
      delivered.push_back({entry.t, entry.t, WorkingKind::shock, number});
      energyKnown = energyKnown && shock->energyJ.has_value();
      energy += shock->energyJ.value_or(0);
    } else {
      withheld.push_back({entry.t, entry.t, WorkingKind::shockWithheld, {}});
    }
  }
  into.push_back(countOf(MeasureId::shocksDelivered, covered, delivered));
  into.push_back(countOf(MeasureId::shocksWithheld, covered, withheld));
  into.push_back(countOf(MeasureId::shocksUnknown, covered, unknown));
  if (delivered.empty()) {
    into.push_back(notApplicable(MeasureId::energyTotal));
  } else {
    into.push_back(energyKnown ? recorded(MeasureId::energyTotal, energy, delivered)
                               : notRecorded(MeasureId::energyTotal));
  }
}

void addAnalyses(const Record& record, bool covered, std::vector<Measure>& into) {
  std::vector<WorkingPart> all;
  std::vector<WorkingPart> advising;
  for (const Entry& entry : record.entries) {
    if (const auto* analysis = entry.complete<entry::Analysis>()) {
      all.push_back({entry.t, entry.lastTime(), WorkingKind::analysis, {}});
      if (analysis->advice == Advice::shock) {
        advising.push_back(all.back());
      }
    }
  }
  const bool adviceKnown = covered || !all.empty();
  into.push_back(countOf(MeasureId::analyses, covered, std::move(all)));
  into.push_back(countOf(MeasureId::analysesAdvisingShock, adviceKnown, std::move(advising)));
}

} // namespace

std::vector<Measure> shockMeasures(const Record& record, const Figures& figures) {
  std::vector<Measure> result;
  const bool covered = defibrillatorRecorded(record);
  addPauses(figures, result);
  addShockCounts(record, covered, result);
  addAnalyses(record, covered, result);
  addMedianAndWorst(figures,
                    {MeasureId::adviceToShockMedian, MeasureId::adviceToShockWorst,
                     &ShockFigures::adviceToShock, WorkingKind::adviceToShock},
                    result);
  return result;
}

} // namespace afterbeat
