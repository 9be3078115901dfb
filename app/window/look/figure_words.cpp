#include "app/window/look/figure_words.h"

#include "app/papers/said.h"
#include "app/window/look/look.h"

#include <QCoreApplication>

#include <algorithm>

#include <cmath>
#include <cstdlib>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// "3:07" or "1:02:07" from the record's zero.
QString recordTime(Time t) {
  const auto whole = static_cast<long long>(std::floor(std::fabs(seconds(t))));
  const QString sign = t < Time{} ? QStringLiteral("−") : QString();
  const QString tail = QStringLiteral("%1:%2")
                           .arg(whole / 60 % 60, whole >= 3600 ? 2 : 1, 10, QLatin1Char('0'))
                           .arg(whole % 60, 2, 10, QLatin1Char('0'));
  return sign + (whole >= 3600 ? QStringLiteral("%1:").arg(whole / 3600) : QString()) + tail;
}

QString tenthOf(long long microseconds) {
  const long long inSecond = ((microseconds % 1'000'000) + 1'000'000) % 1'000'000;
  return words().number(0.0, 1).mid(1, 1) + QString::number(inSecond / 100'000);
}

bool isShare(MeasureId id) {
  switch (id) {
  case MeasureId::handsOffFraction:
  case MeasureId::chestCompressionFraction:
  case MeasureId::compressionRateInRange:
  case MeasureId::compressionDepthInRange:
  case MeasureId::fullRelease:
    return true;
  default:
    return false;
  }
}

/// Number of the first delivered shock inside a stretch; 0 if there is none.
int shockIn(const Interval& stretch, const Figures& figures) {
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number > 0 && stretch.holds(shock.t)) {
      return shock.number;
    }
  }
  return 0;
}

/// The parts that need no look at the figures; as `label` says them in English.
QString kindWords(const WorkingPart& part) {
  const QString n = part.n ? words().number(*part.n) : QString();
  switch (part.kind) {
  case WorkingKind::arrestInterval:
    return tr("time without circulation");
  case WorkingKind::pause:
    return tr("pause");
  case WorkingKind::pauseForAnalysis:
    return tr("taken away: analysis, or advice to shock");
  case WorkingKind::compressionRun:
    return part.n == 1.0 ? tr("1 compression") : tr("%1 compressions").arg(n);
  case WorkingKind::cprStretch:
    return part.n ? tr("compressions at %1 a minute").arg(n)
                  : tr("compressions, rate not recorded");
  case WorkingKind::ventilation:
    return tr("breath");
  case WorkingKind::shock:
    return tr("shock %1").arg(n);
  case WorkingKind::shockWithheld:
    return tr("shock not given");
  case WorkingKind::shockUnknown:
    return tr("shock, delivery unknown");
  case WorkingKind::preShockPause:
    return tr("before shock %1").arg(n);
  case WorkingKind::postShockPause:
    return tr("after shock %1").arg(n);
  case WorkingKind::periShockPause:
    return tr("around shock %1").arg(n);
  case WorkingKind::analysis:
    return tr("analysis");
  case WorkingKind::adviceToShock:
    return tr("advice to shock %1").arg(n);
  case WorkingKind::fromTo:
    return tr("from the one to the other");
  case WorkingKind::circulation:
    return tr("circulation");
  case WorkingKind::onPeriod:
    return tr("device on");
  }
  return {};
}

QString shockWords(const ShockFigures& shock) {
  if (shock.number > 0) {
    return tr("shock %1").arg(shock.number);
  }
  return shock.delivered ? tr("shock not given") : tr("shock, delivery unknown");
}

} // namespace

QString momentWords(const Record& record, Time t, bool tenths) {
  return Moments(record).words(t, tenths);
}

QString Moments::clock(Time t, bool tenths) const {
  if (!zero_) {
    return {};
  }
  WallTime wall = *zero_;
  wall.utc += t.time_since_epoch();
  const QString clock = QString::fromStdString(formatClock(wall));
  return tenths ? clock + tenthOf(wall.local().time_since_epoch().count()) : clock;
}

QString Moments::onRecord(Time t, bool tenths) {
  return tenths ? recordTime(t) + tenthOf(std::llabs(t.time_since_epoch().count())) : recordTime(t);
}

QString lengthWords(Duration length) {
  if (std::llabs(length.count()) < 60'000'000) {
    return tr("%1 s").arg(words().number(seconds(length), 1));
  }
  return words().length(length);
}

QString valueWords(const Measure& measure) {
  if (measure.status == Status::notRecorded) {
    return tr("not recorded");
  }
  if (measure.status == Status::notApplicable || !measure.value) {
    return tr("does not apply");
  }
  const double value = *measure.value;
  const std::string_view unit = measureInfo(measure.id).unit;
  if (isShare(measure.id)) {
    return words().percent(value);
  }
  if (unit == "s") {
    return lengthWords(Duration{std::llround(value * 1e6)});
  }
  if (unit == "1") {
    return words().number(value);
  }
  if (unit == "/min") {
    return tr("%1 a minute").arg(words().number(value, 1));
  }
  return QStringLiteral("%1 %2").arg(words().number(value, unit == "mm" ? 1 : 0),
                                     QString::fromUtf8(unit.data(), int(unit.size())));
}

QString titleWords(MeasureId id) {
  return papers::titleOf(id, words());
}

QString definitionWords(MeasureId id) {
  return papers::definitionOf(id, words()) + QLatin1Char('\n') + papers::sourceOf(id, words());
}

QString causeWords(const Pause& pause, const Figures& figures) {
  switch (pause.cause) {
  case PauseCause::shock:
    return tr("shock %1").arg(shockIn(pause.stretch, figures));
  case PauseCause::analysis:
    return tr("analysis");
  case PauseCause::beforeFirst:
    return tr("before the first compressions");
  case PauseCause::afterLast:
    return tr("after the last compressions");
  case PauseCause::breaths:
    return tr("breaths");
  case PauseCause::breathsLong:
    return tr("breaths, longer than the limit");
  case PauseCause::noReasonRecorded:
    return tr("no reason recorded");
  }
  return {};
}

const Pause* pauseAround(const Figures& figures, const Interval& stretch) {
  // Pauses are sorted and share no time.
  const auto after =
      std::upper_bound(figures.pauses.begin(), figures.pauses.end(), stretch.begin,
                       [](Time t, const Pause& pause) { return t < pause.stretch.begin; });
  const Pause* before = after == figures.pauses.begin() ? nullptr : &*(after - 1);
  return before && before->stretch.end >= stretch.end ? before : nullptr;
}

QString partWords(const WorkingPart& part, const Figures& figures) {
  if (part.kind == WorkingKind::pause) {
    if (const Pause* pause = pauseAround(figures, {part.from, part.to})) {
      return causeWords(*pause, figures);
    }
  }
  return kindWords(part);
}

PointedAt pointedAt(const Figures& figures, Time t, Duration reach) {
  const ShockFigures* nearest = nullptr;
  for (const ShockFigures& shock : figures.shocks) {
    const auto away = [t](const ShockFigures& s) { return std::chrono::abs(s.t - t); };
    if (away(shock) <= reach && (!nearest || away(shock) < away(*nearest))) {
      nearest = &shock;
    }
  }
  if (nearest) {
    return {{nearest->t, nearest->t}, shockWords(*nearest)};
  }
  for (const Pause& pause : figures.pauses) {
    if (pause.stretch.holds(t)) {
      return {pause.stretch,
              tr("pause of %1: %2")
                  .arg(lengthWords(pause.stretch.length()), causeWords(pause, figures))};
    }
  }
  return {{t, t}, {}};
}

QString patientWords(PatientCategory category) {
  switch (category) {
  case PatientCategory::adult:
    return tr("adult");
  case PatientCategory::child:
    return tr("child");
  case PatientCategory::infant:
    return tr("infant");
  case PatientCategory::unknown:
    break;
  }
  return tr("adult or child not recorded");
}

QString kindWords(const std::optional<RecordKind>& kind) {
  if (!kind) {
    return tr("rescue or drill not stated");
  }
  switch (*kind) {
  case RecordKind::rescue:
    return tr("rescue");
  case RecordKind::drill:
    return tr("drill");
  case RecordKind::test:
    return tr("test");
  }
  return {};
}

} // namespace afterbeat::window
