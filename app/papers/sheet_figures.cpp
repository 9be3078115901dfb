#include "app/papers/facts.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>

namespace afterbeat::papers {

namespace {

SheetFigure onFigure(const Record& record, const Figures& figures, const Words& say) {
  SheetFigure figure;
  figure.title = say(QT_TRANSLATE_NOOP("Papers", "Device on for"));
  const Measure& on = figures[MeasureId::timeOn];
  const TimeOnWords words = timeOnWords(record, figures, say);
  figure.value = words.length;
  if (figure.value.isEmpty()) {
    return figure;
  }
  if (words.atLeast) {
    figure.doubt = say(QT_TRANSLATE_NOOP("Papers", "at least"));
  }
  const bool clock = clockTrust(record) != ClockTrust::none;
  const auto begin = firstOf<entry::PowerOn>(record);
  const auto end = lastPowerOff(record);
  if (clock && begin && end) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "on %1, off %2"))
                        .arg(momentWords(record, *begin, say), momentWords(record, *end, say));
  } else if (clock && begin) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "on %1")).arg(momentWords(record, *begin, say));
  } else {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "clock times not known"));
  }
  if (!end) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "switching off not recorded"));
  }
  if (on.working.size() > 1) {
    figure.notes
        << say(QT_TRANSLATE_NOOP("Papers", "in %1 periods, added up")).arg(on.working.size());
  }
  return figure;
}

/// "150 J, 200 J, 200 J"; many of the same together: "150 J, 11 × 200 J".
QString energies(const Figures& figures, const Words& say) {
  struct Group {
    std::optional<double> joules;
    int count = 0;
  };
  std::vector<Group> groups;
  int shocks = 0;
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number > 0) {
      ++shocks;
      if (groups.empty() || groups.back().joules != shock.energyJ) {
        groups.push_back({shock.energyJ, 0});
      }
      ++groups.back().count;
    }
  }
  const bool known = std::any_of(groups.begin(), groups.end(),
                                 [](const Group& group) { return group.joules.has_value(); });
  if (!known) {
    return shocks > 0 ? say(QT_TRANSLATE_NOOP("Papers", "energy not recorded")) : QString();
  }
  QStringList parts;
  for (const Group& group : groups) {
    const QString one = group.joules ? say(QT_TRANSLATE_NOOP("Papers", "%1 J"))
                                           .arg(say.plainNumber(std::round(*group.joules)))
                                     : QStringLiteral("? J");
    if (shocks > 3 && group.count > 1) {
      parts << QStringLiteral("%1 × %2").arg(group.count).arg(one);
    } else {
      for (int i = 0; i < group.count; ++i) {
        parts << one;
      }
    }
  }
  return shortened(parts, 4, say);
}

SheetFigure shocksFigure(const Record& record, const Figures& figures, const Words& say) {
  SheetFigure figure;
  figure.title = say(QT_TRANSLATE_NOOP("Papers", "Shocks given"));
  const ShockCount count = countShocks(record, figures);
  if (count.given) {
    figure.value = QString::number(*count.given);
    if (count.linesLost || count.mayBeMore) {
      figure.doubt = say(QT_TRANSLATE_NOOP("Papers", "at least"));
    }
  }
  // The energy belongs to the shocks that were given, so it stands directly below their number.
  if (const QString joules = energies(figures, say); !joules.isEmpty()) {
    figure.notes << joules;
  }
  if (count.unknown > 0) {
    figure.notes << (count.given
                         ? say(QT_TRANSLATE_NOOP("Papers", "%1 more: delivery not recorded"))
                         : say(QT_TRANSLATE_NOOP("Papers", "%1 noted, delivery not recorded")))
                        .arg(count.unknown);
  }
  // A number says "at least" already, and the framed sentences say why.
  if (count.linesLost && !count.given) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "lines were lost: may be more"));
  } else if (count.mayBeMore && !count.given && count.unknown == 0 && count.deviceRecorded &&
             figures[MeasureId::timeOn].value.value_or(0) > 0) {
    // Not for a record of a single moment: "none until then" would be a comfort without ground.
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "none until recording broke off"));
  }
  if (count.withheld > 0) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "%1 prepared, not given")).arg(count.withheld);
  }
  return figure;
}

/// "11 min before printing": only where the clock was checked and the moment of printing is known.
QString beforePrinting(const Record& record, Time t, const SheetOptions& options,
                       const Words& say) {
  if (clockTrust(record) != ClockTrust::checked || options.printedAt.isEmpty()) {
    return {};
  }
  const QDateTime printed = QDateTime::fromString(options.printedAt.left(16).replace('T', ' '),
                                                  QStringLiteral("yyyy-MM-dd HH:mm"));
  const auto wall = wallTimeAt(record, t);
  if (!printed.isValid() || !wall) {
    return {};
  }
  const QDateTime shock =
      QDateTime::fromString(QString::fromStdString(formatDate(*wall) + ' ' + formatClock(*wall)),
                            QStringLiteral("yyyy-MM-dd HH:mm:ss"));
  const qint64 minutes = shock.secsTo(printed) / 60;
  constexpr qint64 kHalfADay = 12 * 60;
  return minutes >= 0 && minutes <= kHalfADay
             ? say(QT_TRANSLATE_NOOP("Papers", "%1 min before printing")).arg(minutes)
             : QString();
}

SheetFigure lastShockFigure(const Record& record, const Figures& figures,
                            const SheetOptions& options, const Words& say) {
  SheetFigure figure;
  figure.title = say(QT_TRANSLATE_NOOP("Papers", "Last shock"));
  const ShockFigures* last = lastDelivered(figures);
  if (last == nullptr) {
    if (countShocks(record, figures).given) {
      figure.value = say(QT_TRANSLATE_NOOP("Papers", "none"));
    }
    return figure;
  }
  const bool clock = clockTrust(record) != ClockTrust::none;
  const QString partial =
      isPartial(record) ? say(QT_TRANSLATE_NOOP("Papers", "the last recorded")) : QString();
  if (clock) {
    figure.value = momentWords(record, last->t, say);
    figure.doubt = partial;
  } else {
    const auto on = firstOf<entry::PowerOn>(record);
    figure.value = say.length(printedBetween(record, on.value_or(Time{}), last->t));
    // As loud as a doubt, or the length would read as an age.
    figure.doubt = on ? say(QT_TRANSLATE_NOOP("Papers", "after power-on"))
                      : say(QT_TRANSLATE_NOOP("Papers", "after the record begins"));
  }
  if (!clock && !partial.isEmpty()) {
    figure.notes << partial;
  }
  if (record.lastTime && *record.lastTime > last->t) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "%1 before the record ends"))
                        .arg(say.length(printedBetween(record, last->t, *record.lastTime)));
  }
  if (const QString printed = beforePrinting(record, last->t, options, say); !printed.isEmpty()) {
    figure.notes << printed;
  }
  return figure;
}

} // namespace

QString settingValue(PatientCategory category, const Words& say) {
  switch (category) {
  case PatientCategory::adult:
    return say(QT_TRANSLATE_NOOP("Papers", "Adult"));
  case PatientCategory::child:
    return say(QT_TRANSLATE_NOOP("Papers", "Child"));
  case PatientCategory::infant:
    return say(QT_TRANSLATE_NOOP("Papers", "Infant"));
  case PatientCategory::unknown:
    break;
  }
  return {};
}

namespace {

SheetFigure settingFigure(const Record& record, const Words& say) {
  SheetFigure figure;
  figure.title = say(QT_TRANSLATE_NOOP("Papers", "Device setting"));
  const SettingHistory history = settingHistory(record);
  const PatientCategory patient = record.header.patient;
  if (history.last == PatientCategory::unknown) {
    figure.value = settingValue(patient, say);
    if (!figure.value.isEmpty()) {
      figure.notes << say(QT_TRANSLATE_NOOP("Papers", "as recorded for the patient"))
                   << say(QT_TRANSLATE_NOOP("Papers", "device setting not recorded"));
    }
    return figure;
  }
  figure.value = settingValue(history.last, say);
  if (history.changes == 0) {
    figure.notes << say(QT_TRANSLATE_NOOP("Papers", "not changed"));
  } else {
    figure.notes
        << say(QT_TRANSLATE_NOOP("Papers", "changed %1"))
               .arg(momentWords(record, *history.changedAt, say))
        << say(QT_TRANSLATE_NOOP("Papers", "before: %1")).arg(categoryText(history.before, say));
  }
  if (patient != PatientCategory::unknown && patient != history.last) {
    figure.notes.prepend(
        say(QT_TRANSLATE_NOOP("Papers", "patient recorded as %1")).arg(categoryText(patient, say)));
  }
  return figure;
}

} // namespace

SettingHistory settingHistory(const Record& record) {
  SettingHistory history;
  for (const Entry& entry : record.entries) {
    const auto* mode = entry.complete<entry::PatientMode>();
    if (mode == nullptr || !mode->category || *mode->category == PatientCategory::unknown ||
        *mode->category == history.last) {
      continue;
    }
    if (history.last != PatientCategory::unknown) {
      ++history.changes;
      history.before = history.last;
      history.changedAt = entry.t;
    }
    history.last = *mode->category;
  }
  return history;
}

std::array<SheetFigure, 4> largeFigures(const Record& record, const Figures& figures,
                                        const SheetOptions& options, const Words& say) {
  std::array<SheetFigure, 4> all{onFigure(record, figures, say), shocksFigure(record, figures, say),
                                 lastShockFigure(record, figures, options, say),
                                 settingFigure(record, say)};
  for (SheetFigure& figure : all) {
    figure.unknown = notRecordedText(say);
  }
  return all;
}

} // namespace afterbeat::papers
