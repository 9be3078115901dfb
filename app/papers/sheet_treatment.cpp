#include "app/papers/computed_length.h"
#include "app/papers/facts.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace afterbeat::papers {

namespace {

QString compressionsWords(const Figures& figures, const Words& say) {
  const Measure& arrest = figures[MeasureId::arrestTime];
  const Measure& off = figures[MeasureId::handsOffTime];
  if (figures.evidence == Evidence::none || !arrest.value || !off.value) {
    return {};
  }
  // The whole less what is printed as hands off, so that the two add up.
  const auto whole = [](const Measure& measure) {
    return std::chrono::seconds{std::llround(seconds(computedLength(*measure.value)))};
  };
  const QString time = say.length(whole(arrest) - whole(off));
  const Measure& count = figures[MeasureId::compressions];
  if (count.value && figures.evidence == Evidence::compressions) {
    return say(QT_TRANSLATE_NOOP("Papers", "%1 chest compressions, hands on the chest for %2"))
        .arg(say.number(*count.value), time);
  }
  return say(QT_TRANSLATE_NOOP("Papers", "Chest compressions for %1 (not all recorded singly)"))
      .arg(time);
}

QString breathsWords(const Figures& figures, const Words& say) {
  const Measure& breaths = figures[MeasureId::ventilations];
  if (!breaths.value) {
    return {};
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

/// One medicine in one dose, as often as it was given.
struct Given {
  QString what;
  std::vector<Time> at;
};

std::vector<Given> medication(const Record& record, const Words& say) {
  std::vector<Given> all;
  for (const Entry& entry : record.entries) {
    const auto* given = entry.hasTime ? entry.complete<entry::Medication>() : nullptr;
    if (given == nullptr) {
      continue;
    }
    const QString what = given->text.empty() ? say(QT_TRANSLATE_NOOP("Papers", "not named"))
                                             : ownText(given->text, 36);
    const auto same = std::find_if(all.begin(), all.end(), [&](const Given& one) {
      return one.what.compare(what, Qt::CaseInsensitive) == 0;
    });
    if (same != all.end()) {
      same->at.push_back(entry.t);
    } else {
      all.push_back({what, {entry.t}});
    }
  }
  for (Given& one : all) {
    std::sort(one.at.begin(), one.at.end());
  }
  // The one given last decides what comes next: it stands first where room ends.
  std::stable_sort(all.begin(), all.end(),
                   [](const Given& a, const Given& b) { return a.at.back() > b.at.back(); });
  return all;
}

/// "adrenaline 1 mg 09:21:10"; of several the number, the first and the last.
QString givenWords(const Record& record, const Given& given, const Words& say) {
  if (given.at.size() == 1) {
    return QStringLiteral("%1 %2").arg(given.what, momentWords(record, given.at.front(), say));
  }
  //: A medicine, how many times, the first and the last time.
  return say(QT_TRANSLATE_NOOP("Papers", "%1 × %2: first %3, last %4"))
      .arg(given.at.size())
      .arg(given.what, momentWords(record, given.at.front(), say),
           momentWords(record, given.at.back(), say));
}

QString medicationWords(const Record& record, const Words& say) {
  /// About what two lines hold beside the airway.
  constexpr qsizetype kLetters = 110;
  QStringList parts;
  int shown = 0;
  qsizetype letters = 0;
  for (const Given& given : medication(record, say)) {
    parts << givenWords(record, given, say);
    letters += parts.last().size();
    shown += letters <= kLetters || shown == 0 ? 1 : 0;
  }
  return parts.isEmpty()
             ? QString()
             : say(QT_TRANSLATE_NOOP("Papers", "Medication: %1")).arg(shortened(parts, shown, say));
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
  const QString compressions = compressionsWords(figures, say);
  const QString breaths = breathsWords(figures, say);
  const QString airway = airwayWords(record, say);
  const auto leave = [&](const QStringList& labels) {
    section.lines.push_back({SheetLine::Kind::blank, {}, labels});
  };
  if (compressions.isEmpty()) {
    leave({say(QT_TRANSLATE_NOOP("Papers", "Chest compressions from")),
           say(QT_TRANSLATE_NOOP("Papers", "to"))});
  }
  QStringList known{compressions, breaths};
  known.removeAll(QString());
  add(known.join(QStringLiteral(" · ")));
  if (breaths.isEmpty()) {
    leave({airway.isEmpty() ? say(QT_TRANSLATE_NOOP("Papers", "Breaths, airway"))
                            : say(QT_TRANSLATE_NOOP("Papers", "Breaths"))});
  } else if (airway.isEmpty()) {
    leave({say(QT_TRANSLATE_NOOP("Papers", "Airway"))});
  }
  add(shockWords(record, figures, say));
  const QString medicines = medicationWords(record, say);
  add(medicines.isEmpty() ? airway
      : airway.isEmpty()  ? medicines
                          : QStringLiteral("%1 · %2").arg(airway, medicines));
  section.lines.push_back(
      {SheetLine::Kind::blank,
       {},
       {medicines.isEmpty() ? say(QT_TRANSLATE_NOOP("Papers", "Medication, anything else given"))
                            : say(QT_TRANSLATE_NOOP("Papers", "Anything else given"))}});
  return section;
}

} // namespace afterbeat::papers
