#include "app/papers/computed_length.h"
#include "app/papers/facts.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

/// About what two lines hold beside the airway.
constexpr qsizetype kLettersOfMedication = 84;

QString compressionsWords(const Figures& figures, const Words& say) {
  const Measure& arrest = figures[MeasureId::arrestTime];
  const Measure& off = figures[MeasureId::handsOffTime];
  if (figures.evidence == Evidence::none || !arrest.value || !off.value) {
    return say(QT_TRANSLATE_NOOP("Papers", "Chest compressions: not recorded"));
  }
  const QString time = say.length(computedLength(*arrest.value - *off.value));
  const Measure& count = figures[MeasureId::compressions];
  if (count.value && figures.evidence == Evidence::compressions) {
    return say(QT_TRANSLATE_NOOP("Papers", "%1 chest compressions in %2 with hands on"))
        .arg(say.number(*count.value), time);
  }
  return say(QT_TRANSLATE_NOOP("Papers", "Chest compressions for %1 (not all recorded singly)"))
      .arg(time);
}

QString breathsWords(const Figures& figures, const Words& say) {
  const Measure& breaths = figures[MeasureId::ventilations];
  if (!breaths.value) {
    return say(QT_TRANSLATE_NOOP("Papers", "breaths: not recorded"));
  }
  const int count = static_cast<int>(*breaths.value);
  return count == 1 ? say(QT_TRANSLATE_NOOP("Papers", "one breath"))
                    : say(QT_TRANSLATE_NOOP("Papers", "%1 breaths")).arg(count);
}

QString shockWords(const Record& record, const Figures& figures, const Words& say) {
  QStringList times;
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number > 0) {
      times << momentWords(record, shock.t, say);
    }
  }
  if (times.isEmpty()) {
    return {};
  }
  const int most = clockTrust(record) == ClockTrust::none ? 4 : 6;
  return say(QT_TRANSLATE_NOOP("Papers", "Shocks: %1")).arg(shortened(times, most, say));
}

QString medicationWords(const Record& record, const Words& say) {
  QStringList given;
  int shown = 0;
  qsizetype letters = 0;
  for (const Entry& entry : record.entries) {
    if (const auto* medication = entry.complete<entry::Medication>(); medication && entry.hasTime) {
      const QString what = medication->text.empty() ? say(QT_TRANSLATE_NOOP("Papers", "not named"))
                                                    : ownText(medication->text, 36);
      given << QStringLiteral("%1 %2").arg(what, momentWords(record, entry.t, say));
      letters += given.last().size();
      shown += letters <= kLettersOfMedication || shown == 0 ? 1 : 0;
    }
  }
  return given.isEmpty()
             ? QString()
             : say(QT_TRANSLATE_NOOP("Papers", "Medication: %1")).arg(shortened(given, shown, say));
}

QString airwayName(AirwayDevice device, const Words& say) {
  switch (device) {
  case AirwayDevice::none:
    return say(QT_TRANSLATE_NOOP("Papers", "no device"));
  case AirwayDevice::mask:
    return say(QT_TRANSLATE_NOOP("Papers", "mask"));
  case AirwayDevice::supraglottic:
    return say(QT_TRANSLATE_NOOP("Papers", "supraglottic airway"));
  case AirwayDevice::tube:
    break;
  }
  return say(QT_TRANSLATE_NOOP("Papers", "tube"));
}

/// The airway in place at the end, and since when.
QString airwayWords(const Record& record, const Words& say) {
  std::optional<AirwayDevice> last;
  Time since{};
  for (const Entry& entry : record.entries) {
    const auto* airway = entry.complete<entry::Airway>();
    if (airway != nullptr && airway->device && airway->device != last) {
      last = airway->device;
      since = entry.t;
    }
  }
  return last ? say(QT_TRANSLATE_NOOP("Papers", "Airway: %1, %2"))
                    .arg(airwayName(*last, say), momentWords(record, since, say))
              : QString();
}

} // namespace

QString shortened(const QStringList& parts, int most, const Words& say) {
  if (parts.size() <= most) {
    return parts.join(QStringLiteral(", "));
  }
  return say(QT_TRANSLATE_NOOP("Papers", "%1 and %2 more"))
      .arg(parts.mid(0, most).join(QStringLiteral(", ")))
      .arg(parts.size() - most);
}

QString ownText(const std::string& text, int most) {
  const QString words = plainText(text);
  return words.size() <= most
             ? words
             : plainText((words.left(most - 1).trimmed() + QStringLiteral("…")).toStdString());
}

SheetSection treatmentSection(const Record& record, const Figures& figures, const Words& say) {
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Treatment")), {}};
  const auto add = [&](const QString& words) {
    if (!words.isEmpty()) {
      section.lines.push_back({SheetLine::Kind::text, words, {}});
    }
  };
  add(QStringLiteral("%1 · %2").arg(compressionsWords(figures, say), breathsWords(figures, say)));
  add(shockWords(record, figures, say));
  const QString medication = medicationWords(record, say);
  const QString airway = airwayWords(record, say);
  add(medication.isEmpty() ? airway
      : airway.isEmpty()   ? medication
                           : QStringLiteral("%1 · %2").arg(airway, medication));
  section.lines.push_back(
      {SheetLine::Kind::blank,
       {},
       {medication.isEmpty() ? say(QT_TRANSLATE_NOOP("Papers", "Medication, anything else given"))
                             : say(QT_TRANSLATE_NOOP("Papers", "Anything else given"))}});
  return section;
}

} // namespace afterbeat::papers
