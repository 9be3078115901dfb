#include "app/papers/debrief_parts.h"
#include "app/papers/facts.h"
#include "app/papers/rows_model.h"
#include "core/measures/evidence.h"

#include <algorithm>

namespace afterbeat::papers::debrief {

namespace {

/// Share of a minute without circulation in which hands were off.
double handsOffShare(const MinuteRow& row) {
  return seconds(*row.handsOff) / seconds(row.arrest);
}

/// The minute with the most (or the least) hands off, the first of equals; the window without one.
Interval minuteByHandsOff(const Figures& figures, bool most) {
  const MinuteRow* found = nullptr;
  for (const MinuteRow* row : wholeMinutes(figures)) {
    const bool better = found == nullptr || (most ? handsOffShare(*row) > handsOffShare(*found)
                                                  : handsOffShare(*row) < handsOffShare(*found));
    if (better) {
      found = row;
    }
  }
  return found != nullptr ? found->epoch : *figures.window;
}

const std::optional<Target<double>>& shareTarget(const Profile& profile) {
  return profile.fractionTarget ? profile.fractionTarget : profile.fractionLeast;
}

void addHandsOff(const Figures& figures, std::vector<Finding>& all) {
  const auto& target = shareTarget(figures.settings.profile);
  const Measure& share = figures[MeasureId::handsOffFraction];
  if (!target || share.status != Status::ok) {
    return;
  }
  Finding finding = begin(DebriefRule::handsOff, *share.value, Aim::atMost, {0, 1 - target->value});
  finding.source = target->source;
  if (Finding* added = add(all, finding)) {
    added->moment = minuteByHandsOff(figures, !added->within);
  }
}

/// Seconds of a stretch in which the device analysed the rhythm.
double analysisInside(const Record& record, const Interval& stretch) {
  std::vector<Interval> analyses;
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && entry.complete<entry::Analysis>() != nullptr) {
      analyses.push_back(spanOf(entry));
    }
  }
  return seconds(overlap(stretch, merged(std::move(analyses))));
}

/// Of a pause beyond its limit: what the device's analysis took of it is not the team's to shorten.
/// Only what remains says how far beyond it is.
void setAnalysisApart(const Record& record, Finding& finding) {
  const double analysis = analysisInside(record, finding.moment);
  finding.beside = analysis;
  if (!finding.within) {
    const double own = finding.value - analysis;
    finding.away = own > finding.target.high ? *awayFrom(own, finding.aim, finding.target) : 0;
  }
}

/// The longest pause between compressions: what lies before the first or after the last is no pause
/// between them.
void addLongestPause(const Record& record, const Figures& figures, std::vector<Finding>& all) {
  const Pause* longest = nullptr;
  for (const Pause& pause : figures.pauses) {
    const bool between = !figures.handsOn.empty() &&
                         pause.stretch.begin >= figures.handsOn.front().begin &&
                         pause.stretch.end <= figures.handsOn.back().end;
    if (between && (longest == nullptr || pause.stretch.length() > longest->stretch.length())) {
      longest = &pause;
    }
  }
  if (longest == nullptr) {
    return;
  }
  const Profile& profile = figures.settings.profile;
  const auto limit = limitFor(profile, longest->cause);
  if (!limit) {
    return;
  }
  const bool breaths =
      longest->cause == PauseCause::breaths || longest->cause == PauseCause::breathsLong;
  Finding finding = begin(DebriefRule::longestPause, seconds(longest->stretch.length()),
                          Aim::atMost, {0, *limit});
  finding.source =
      (breaths && profile.breathPauseLimit ? profile.breathPauseLimit : profile.pauseLimit)->source;
  finding.moment = longest->stretch;
  finding.pause = *longest;
  if (Finding* added = add(all, finding)) {
    setAnalysisApart(record, *added);
  }
}

/// The longest pause of one side over all delivered shocks.
void addAroundShocks(const Figures& figures, DebriefRule rule, MeasureId worst, MeasureId median,
                     Finding finding, std::vector<Finding>& all) {
  const Measure& measure = figures[worst];
  if (measure.status != Status::ok || measure.working.empty()) {
    return;
  }
  const WorkingPart& part = measure.working.front();
  finding.rule = rule;
  finding.value = *measure.value;
  finding.moment = {part.from, part.to};
  finding.shock = static_cast<int>(part.n.value_or(0));
  finding.of = static_cast<int>(figures[median].working.size());
  add(all, finding);
}

void addShockPauses(const Record& record, const Figures& figures, std::vector<Finding>& all) {
  if (const auto& limit = figures.settings.profile.preShockPauseLimit) {
    Finding finding;
    finding.aim = Aim::below;
    finding.target = {0, limit->value};
    finding.source = limit->source;
    const std::size_t before = all.size();
    addAroundShocks(figures, DebriefRule::beforeShock, MeasureId::preShockPauseWorst,
                    MeasureId::preShockPauseMedian, finding, all);
    if (all.size() > before) {
      setAnalysisApart(record, all.back());
    }
  }
  Finding finding;
  finding.target = {0, kAfterShockLimit};
  addAroundShocks(figures, DebriefRule::afterShock, MeasureId::postShockPauseWorst,
                  MeasureId::postShockPauseMedian, finding, all);
  if (figures.evidence == Evidence::none) {
    finding.target = {0, kAdviceToShockLimit};
    addAroundShocks(figures, DebriefRule::adviceToShock, MeasureId::adviceToShockWorst,
                    MeasureId::adviceToShockMedian, finding, all);
  }
}

/// A length between two events, where it is not negative.
void addFromTo(const Figures& figures, DebriefRule rule, MeasureId id, double limit,
               std::vector<Finding>& all) {
  const Measure& measure = figures[id];
  if (measure.status != Status::ok || *measure.value < 0 || measure.working.empty()) {
    return;
  }
  Finding finding = begin(rule, *measure.value, Aim::atMost, {0, limit});
  finding.moment = {measure.working.front().from, measure.working.front().to};
  add(all, finding);
}

/// No analysis before the first shock said anything but "shock": the way to it was free.
bool shockWasDueAtOnce(const Record& record, const Figures& figures) {
  const ShockFigures* first = firstDelivered(figures);
  return first != nullptr &&
         std::none_of(record.entries.begin(), record.entries.end(), [&](const Entry& entry) {
           const auto* analysis = entry.complete<entry::Analysis>();
           return analysis != nullptr && entry.t < first->t && analysis->advice != Advice::shock;
         });
}

/// From electrodes on to the first compression, where nothing lies between that asks for hands off.
/// Only where it took too long: many devices see compressions through their electrodes alone, so
/// that those which begin at once may well have begun before.
void addFirstCompression(const Record& record, const Figures& figures, std::vector<Finding>& all) {
  const auto electrodes = firstElectrodes(record);
  const auto& limit = figures.settings.profile.pauseLimit;
  if (!electrodes || !limit || figures.handsOn.empty() || !figures.window ||
      figures.window->begin != *electrodes || figures.handsOn.front().begin <= *electrodes) {
    return;
  }
  const Interval way{*electrodes, figures.handsOn.front().begin};
  for (const Entry& entry : record.entries) {
    const bool asksForHandsOff = entry.complete<entry::Analysis>() != nullptr ||
                                 entry.complete<entry::Shock>() != nullptr ||
                                 entry.complete<entry::Excluded>() != nullptr ||
                                 entry.complete<entry::Circulation>() != nullptr ||
                                 entry.complete<entry::Ventilation>() != nullptr;
    if (asksForHandsOff && entry.hasTime && spanOf(entry).touches(way)) {
      return;
    }
  }
  Finding finding =
      begin(DebriefRule::firstCompression, seconds(way.length()), Aim::atMost, {0, limit->value});
  finding.source = limit->source;
  finding.moment = way;
  if (!meets(finding.value, finding.aim, finding.target)) {
    add(all, finding);
  }
}

void addBreaths(const Figures& figures, std::vector<Finding>& all) {
  const auto& limit = figures.settings.profile.breathPauseLimit;
  const Pause* longest = nullptr;
  int count = 0;
  for (const Pause& pause : figures.pauses) {
    if (pause.cause == PauseCause::breaths || pause.cause == PauseCause::breathsLong) {
      ++count;
      if (longest == nullptr || pause.stretch.length() > longest->stretch.length()) {
        longest = &pause;
      }
    }
  }
  if (!limit || count < 2) {
    return;
  }
  Finding finding = begin(DebriefRule::breaths, seconds(longest->stretch.length()), Aim::atMost,
                          {0, limit->value});
  finding.source = limit->source;
  finding.moment = longest->stretch;
  finding.of = count;
  add(all, finding);
}

/// Hands off in the second half of the minutes against the first: only a change of at least five
/// points that ends within the target (better) or beyond it (worse) says something.
void addHalves(const Figures& figures, std::vector<Finding>& all) {
  constexpr std::size_t kLeastMinutes = 4;
  constexpr double kChange = 0.05;
  const auto& target = shareTarget(figures.settings.profile);
  const auto minutes = wholeMinutes(figures);
  if (!target || minutes.size() < kLeastMinutes) {
    return;
  }
  const std::size_t middle = minutes.size() - minutes.size() / 2;
  const auto share = [&](std::size_t from, std::size_t to) {
    Duration off{}, arrest{};
    for (std::size_t i = from; i < to; ++i) {
      off += *minutes[i]->handsOff;
      arrest += minutes[i]->arrest;
    }
    return seconds(off) / seconds(arrest);
  };
  const double before = share(0, middle), after = share(middle, minutes.size());
  Finding finding = begin(DebriefRule::halves, after, Aim::atMost, {0, 1 - target->value});
  const bool within = meets(after, finding.aim, finding.target);
  if (within ? before - after < kChange : after - before < kChange) {
    return;
  }
  finding.source = target->source;
  finding.moment = {minutes[middle]->epoch.begin, minutes.back()->epoch.end};
  finding.beside = before;
  add(all, finding);
}

} // namespace

void addPauseFindings(const Record& record, const Figures& figures, std::vector<Finding>& all) {
  if (!figures.window) {
    return;
  }
  if (handsKnown(figures)) {
    addLongestPause(record, figures, all);
    addBreaths(figures, all);
    if (adultTargetsHold(record)) {
      addHandsOff(figures, all);
      addHalves(figures, all);
      addFirstCompression(record, figures, all);
    }
  }
  addShockPauses(record, figures, all);
  if (shockWasDueAtOnce(record, figures)) {
    addFromTo(figures, DebriefRule::firstShock, MeasureId::powerOnToFirstShock, kFirstShockLimit,
              all);
  }
  addFromTo(figures, DebriefRule::electrodes, MeasureId::powerOnToElectrodes, kElectrodesLimit,
            all);
}

} // namespace afterbeat::papers::debrief
