#include "app/window/figures/reasons.h"

#include "app/papers/facts.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// An end of a time between two events: its words, and whether the record knows it.
struct End {
  const char* words;
  bool known;
};

/// All ends that a measure can have, looked up once.
struct Ends {
  Ends(const Record& record, const Figures& figures)
      : powerOn{QT_TRANSLATE_NOOP("afterbeat::window", "device on"),
                papers::firstOf<entry::PowerOn>(record).has_value()},
        electrodes{QT_TRANSLATE_NOOP("afterbeat::window", "electrodes attached"),
                   papers::firstElectrodes(record).has_value()},
        collapse{QT_TRANSLATE_NOOP("afterbeat::window", "the collapse"),
                 papers::firstMilestone(record, "collapse").has_value()},
        call{QT_TRANSLATE_NOOP("afterbeat::window", "the call"),
             papers::firstMilestone(record, "call_received").has_value()},
        arrived{QT_TRANSLATE_NOOP("afterbeat::window", "the device's arrival"),
                papers::firstMilestone(record, "device_arrived").has_value()},
        handsOn{QT_TRANSLATE_NOOP("afterbeat::window", "the first hands on"),
                !figures.handsOn.empty()},
        analysis{QT_TRANSLATE_NOOP("afterbeat::window", "an analysis"),
                 papers::firstOf<entry::Analysis>(record).has_value()},
        shock{QT_TRANSLATE_NOOP("afterbeat::window", "a shock that was given"),
              papers::firstDelivered(figures) != nullptr},
        returned{QT_TRANSLATE_NOOP("afterbeat::window", "the return of circulation"),
                 figures[MeasureId::circulationTime].status != Status::notRecorded} {}

  End powerOn, electrodes, collapse, call, arrived, handsOn, analysis, shock, returned;
};

std::pair<End, End> endsOf(MeasureId id, const Ends& all) {
  switch (id) {
  case MeasureId::powerOnToFirstShock:
    return {all.powerOn, all.shock};
  case MeasureId::electrodesToFirstShock:
    return {all.electrodes, all.shock};
  case MeasureId::collapseToFirstShock:
    return {all.collapse, all.shock};
  case MeasureId::callToFirstShock:
    return {all.call, all.shock};
  case MeasureId::firstHandsOnToFirstShock:
    return {all.handsOn, all.shock};
  case MeasureId::powerOnToElectrodes:
    return {all.powerOn, all.electrodes};
  case MeasureId::powerOnToFirstHandsOn:
    return {all.powerOn, all.handsOn};
  case MeasureId::electrodesToFirstAnalysis:
    return {all.electrodes, all.analysis};
  case MeasureId::collapseToFirstHandsOn:
    return {all.collapse, all.handsOn};
  case MeasureId::callToFirstHandsOn:
    return {all.call, all.handsOn};
  case MeasureId::callToDeviceArrived:
    return {all.call, all.arrived};
  default:
    return {all.collapse, all.returned};
  }
}

QString betweenReason(MeasureId id, const Record& record, const Figures& figures) {
  const auto [from, to] = endsOf(id, Ends(record, figures));
  QStringList missing;
  for (const End& end : {from, to}) {
    if (!end.known) {
      missing << tr(end.words);
    }
  }
  return tr("not in the record: %1").arg(words().list(missing));
}

const char* compressionReason(MeasureId id, Status status, const Figures& figures) {
  const bool notApplicable = status == Status::notApplicable;
  switch (id) {
  case MeasureId::compressionRate:
  case MeasureId::compressionRateInRange:
    if (notApplicable) {
      return figures.settings.profile.ratePerMin
                 ? QT_TRANSLATE_NOOP("afterbeat::window",
                                     "no two compressions close enough for a rate")
                 : QT_TRANSLATE_NOOP("afterbeat::window",
                                     "the guideline has no range for the rate");
    }
    return figures.evidence == Evidence::none
               ? QT_TRANSLATE_NOOP("afterbeat::window", "no compressions were recorded")
               : QT_TRANSLATE_NOOP("afterbeat::window", "the recorded stretches carry no rate");
  case MeasureId::compressionDepth:
    return notApplicable ? QT_TRANSLATE_NOOP("afterbeat::window",
                                             "no compression that counts carries a depth")
                         : QT_TRANSLATE_NOOP("afterbeat::window", "no compression carries a depth");
  case MeasureId::compressionDepthInRange:
    return notApplicable ? QT_TRANSLATE_NOOP("afterbeat::window",
                                             "the guideline has no range for this patient")
                         : QT_TRANSLATE_NOOP("afterbeat::window", "no compression carries a depth");
  case MeasureId::fullRelease:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "no compression says whether the chest was released");
  default:
    return QT_TRANSLATE_NOOP("afterbeat::window", "no single compressions were recorded");
  }
}

const char* shockReason(MeasureId id, Status status) {
  switch (id) {
  case MeasureId::shocksDelivered:
  case MeasureId::shocksWithheld:
  case MeasureId::shocksUnknown:
  case MeasureId::analyses:
  case MeasureId::analysesAdvisingShock:
    return QT_TRANSLATE_NOOP("afterbeat::window",
                             "none was noted, and no defibrillator's own recording is "
                             "part of this record");
  case MeasureId::energyTotal:
    return status == Status::notApplicable
               ? QT_TRANSLATE_NOOP("afterbeat::window", "no shock was given")
               : QT_TRANSLATE_NOOP("afterbeat::window",
                                   "not every shock that was given carries its energy");
  case MeasureId::adviceToShockMedian:
  case MeasureId::adviceToShockWorst:
    return QT_TRANSLATE_NOOP("afterbeat::window", "no shock followed an analysis that advised it");
  default:
    return status == Status::notRecorded
               ? QT_TRANSLATE_NOOP("afterbeat::window", "no compressions were recorded")
               : QT_TRANSLATE_NOOP("afterbeat::window",
                                   "no shock was given with hands on around it");
  }
}

const char* otherReason(MeasureId id, Status status, const Figures& figures) {
  const bool notApplicable = status == Status::notApplicable;
  switch (id) {
  case MeasureId::ventilations:
  case MeasureId::ventilationsPerMinute:
    return notApplicable ? QT_TRANSLATE_NOOP("afterbeat::window", "no time counts in this record")
                         : QT_TRANSLATE_NOOP("afterbeat::window", "no breath was recorded");
  case MeasureId::circulationTime:
  case MeasureId::longestCirculation:
    return notApplicable
               ? QT_TRANSLATE_NOOP("afterbeat::window",
                                   "circulation returned when the window had ended")
               : QT_TRANSLATE_NOOP("afterbeat::window", "no return of circulation was noted");
  case MeasureId::timeOn:
    return QT_TRANSLATE_NOOP("afterbeat::window", "switching on was not recorded");
  case MeasureId::pausesOverLimit:
    if (notApplicable) {
      return QT_TRANSLATE_NOOP("afterbeat::window", "the guideline has no limit for pauses");
    }
    break;
  default:
    break;
  }
  if (!figures.window) {
    return QT_TRANSLATE_NOOP("afterbeat::window", "nothing in the record begins a rescue");
  }
  return figures.evidence == Evidence::none
             ? QT_TRANSLATE_NOOP("afterbeat::window", "no compressions were recorded")
             : QT_TRANSLATE_NOOP("afterbeat::window", "no time counts in this record");
}

} // namespace

QString reasonWords(MeasureId id, const Record& record, const Figures& figures) {
  const Status status = figures[id].status;
  if (status == Status::ok) {
    return {};
  }
  if (id >= MeasureId::powerOnToFirstShock && id <= MeasureId::collapseToCirculationReturned) {
    return betweenReason(id, record, figures);
  }
  if (id >= MeasureId::compressions && id <= MeasureId::fullRelease) {
    return tr(compressionReason(id, status, figures));
  }
  if (id >= MeasureId::preShockPauseMedian && id <= MeasureId::adviceToShockWorst) {
    return tr(shockReason(id, status));
  }
  return tr(otherReason(id, status, figures));
}

QString leftOutWords(MeasureId id, const Figures& figures) {
  QStringList parts;
  if (figures[id].status != Status::ok) {
    return {};
  }
  for (const Coverage& coverage : figures.coverage) {
    const bool share =
        id == MeasureId::compressionDepthInRange && coverage.id == MeasureId::compressionDepth;
    if ((coverage.id == id || share) && coverage.used < coverage.of) {
      parts << (coverage.id == MeasureId::compressionRate ? tr("known for %1 of %2 s")
                                                          : tr("known for %1 of %2 compressions"))
                   .arg(words().plainNumber(coverage.used), words().plainNumber(coverage.of));
    }
  }
  if (measureInfo(id).dependsOnThreshold) {
    parts << tr("pause: longer than %1 s")
                 .arg(words().plainNumber(seconds(figures.settings.pauseThreshold)));
  }
  if (figures[id].denominator && figures.excludedLength > Duration::zero()) {
    parts << tr("%1 excluded").arg(lengthWords(figures.excludedLength));
  }
  return parts.join(QStringLiteral(" · "));
}

} // namespace afterbeat::window
