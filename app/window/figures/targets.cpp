#include "app/window/figures/targets.h"

#include "app/papers/facts.h"
#include "app/papers/rows_model.h"
#include "app/window/look/look.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QString plain(double value) {
  return words().plainNumber(value);
}

Verdict atMost(const std::optional<double>& value, double limit) {
  return !value ? Verdict::none : *value > limit ? Verdict::above : Verdict::within;
}

using Shown = std::optional<TargetShown>;

Shown shareTarget(bool handsOn, const Record& record, const Figures& figures) {
  const Profile& profile = figures.settings.profile;
  const auto& target = profile.fractionTarget ? profile.fractionTarget : profile.fractionLeast;
  if (!target || !papers::adultTargetsHold(record)) {
    return std::nullopt;
  }
  if (!handsOn) {
    const double most = 1 - target->value;
    return TargetShown{tr("target at most %1").arg(words().percent(most)), target->source,
                       atMost(figures[MeasureId::handsOffFraction].value, most)};
  }
  const auto& share = figures[MeasureId::chestCompressionFraction].value;
  return TargetShown{tr("target at least %1").arg(words().percent(target->value)), target->source,
                     !share                   ? Verdict::none
                     : *share < target->value ? Verdict::below
                                              : Verdict::within};
}

Shown rateTarget(const Figures& figures, bool judged) {
  const auto& target = figures.settings.profile.ratePerMin;
  if (!target) {
    return std::nullopt;
  }
  return TargetShown{
      tr("target %1–%2 a minute").arg(plain(target->value.low), plain(target->value.high)),
      target->source, judged ? papers::rateVerdict(figures) : Verdict::none};
}

Shown depthTarget(const Record& record, const Figures& figures, bool judged) {
  const auto& all = figures.settings.profile.depth;
  const auto it = all.find(categoryForTargets(record));
  if (it == all.end()) {
    return std::nullopt;
  }
  const DepthTarget& target = it->second.value;
  if (!target.range) {
    return TargetShown{tr("target %1").arg(papers::plainText(target.words)), it->second.source,
                       Verdict::none};
  }
  return TargetShown{
      tr("target %1–%2 mm").arg(plain(target.range->low), plain(target.range->high)),
      it->second.source,
      judged ? papers::verdictIn(figures[MeasureId::compressionDepth].value, *target.range)
             : Verdict::none};
}

bool advancedAirway(const Record& record) {
  return std::any_of(record.entries.begin(), record.entries.end(), [](const Entry& entry) {
    const auto* airway = entry.complete<entry::Airway>();
    return airway != nullptr &&
           (airway->device == AirwayDevice::supraglottic || airway->device == AirwayDevice::tube);
  });
}

Shown breathTarget(const Record& record, const Figures& figures) {
  const auto& all = figures.settings.profile.advancedAirwayBreaths;
  const auto it = all.find(categoryForTargets(record));
  if (it == all.end() || !advancedAirway(record)) {
    return std::nullopt;
  }
  const Range& range = it->second.value;
  if (range.low == range.high) {
    // A single figure is no range: nothing is judged against it.
    return TargetShown{tr("target about %1 a minute with an advanced airway").arg(plain(range.low)),
                       it->second.source, Verdict::none};
  }
  return TargetShown{
      tr("target %1–%2 a minute with an advanced airway").arg(plain(range.low), plain(range.high)),
      it->second.source, papers::verdictIn(figures[MeasureId::ventilationsPerMinute].value, range)};
}

Shown longestPauseTarget(const Record& record, const Figures& figures) {
  const Profile& profile = figures.settings.profile;
  const Pause* longest = papers::longestPause(figures);
  const PauseCause cause = longest != nullptr ? longest->cause : PauseCause::noReasonRecorded;
  const auto limit = papers::limitFor(profile, cause);
  if (!limit || (cause == PauseCause::beforeFirst && !papers::adultTargetsHold(record))) {
    return std::nullopt;
  }
  const bool breaths = profile.breathPauseLimit &&
                       (cause == PauseCause::breaths || cause == PauseCause::breathsLong);
  return TargetShown{tr("target at most %1 s").arg(plain(*limit)),
                     (breaths ? profile.breathPauseLimit : profile.pauseLimit)->source,
                     atMost(figures[MeasureId::longestPause].value, *limit)};
}

Shown pausesOverTarget(const Figures& figures) {
  const auto& limit = figures.settings.profile.pauseLimit;
  if (!limit) {
    return std::nullopt;
  }
  return TargetShown{tr("target none longer than %1 s").arg(plain(limit->value)), limit->source,
                     atMost(figures[MeasureId::pausesOverLimit].value, 0)};
}

Shown preShockTarget(MeasureId id, const Figures& figures) {
  const auto& limit = figures.settings.profile.preShockPauseLimit;
  if (!limit) {
    return std::nullopt;
  }
  const auto& value = figures[id].value;
  return TargetShown{tr("target below %1 s").arg(plain(limit->value)), limit->source,
                     !value                  ? Verdict::none
                     : *value < limit->value ? Verdict::within
                                             : Verdict::above};
}

Shown releaseTarget(const Figures& figures) {
  const auto& limit = figures.settings.profile.leaningLimitMm;
  if (!limit) {
    return std::nullopt;
  }
  return TargetShown{tr("released: leaning at most %1 mm").arg(plain(limit->value)), limit->source,
                     Verdict::none};
}

} // namespace

std::optional<TargetShown> targetOf(MeasureId id, const Record& record, const Figures& figures) {
  switch (id) {
  case MeasureId::handsOffFraction:
    return shareTarget(false, record, figures);
  case MeasureId::chestCompressionFraction:
    return shareTarget(true, record, figures);
  case MeasureId::compressionRate:
    return rateTarget(figures, true);
  case MeasureId::compressionRateInRange:
    return rateTarget(figures, false);
  case MeasureId::compressionDepth:
    return depthTarget(record, figures, true);
  case MeasureId::compressionDepthInRange:
    return depthTarget(record, figures, false);
  case MeasureId::fullRelease:
    return releaseTarget(figures);
  case MeasureId::ventilationsPerMinute:
    return breathTarget(record, figures);
  case MeasureId::longestPause:
    return longestPauseTarget(record, figures);
  case MeasureId::pausesOverLimit:
    return pausesOverTarget(figures);
  case MeasureId::preShockPauseMedian:
  case MeasureId::preShockPauseWorst:
    return preShockTarget(id, figures);
  default:
    return std::nullopt;
  }
}

QString verdictWords(Verdict verdict) {
  switch (verdict) {
  case Verdict::none:
    return {};
  case Verdict::within:
    return tr("within the target");
  case Verdict::below:
    return tr("below the target");
  case Verdict::above:
    break;
  }
  return tr("beyond the target");
}

QString citationWords(const Citation& source) {
  const QString mark = papers::markText(source.mark, words());
  return source.text.empty() ? mark : tr("%1 – %2").arg(papers::plainText(source.text), mark);
}

PatientCategory categoryForTargets(const Record& record) {
  if (record.header.patient != PatientCategory::unknown) {
    return record.header.patient;
  }
  PatientCategory only = PatientCategory::unknown;
  for (const Entry& entry : record.entries) {
    const auto* mode = entry.complete<entry::PatientMode>();
    if (mode == nullptr || *mode->category == PatientCategory::unknown) {
      continue;
    }
    if (only != PatientCategory::unknown && only != *mode->category) {
      return PatientCategory::unknown;
    }
    only = *mode->category;
  }
  return only;
}

} // namespace afterbeat::window
