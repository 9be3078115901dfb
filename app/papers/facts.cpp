#include "app/papers/facts.h"
#include "app/papers/computed_length.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::papers {

std::optional<Time> firstMilestone(const Record& record, const char* what) {
  for (const Entry& entry : record.entries) {
    const auto* milestone = entry.hasTime ? entry.complete<entry::Milestone>() : nullptr;
    if (milestone != nullptr && milestone->what == what) {
      return entry.t;
    }
  }
  return std::nullopt;
}

std::optional<Time> firstElectrodes(const Record& record) {
  for (const Entry& entry : record.entries) {
    const auto* electrodes = entry.hasTime ? entry.complete<entry::Electrodes>() : nullptr;
    if (electrodes != nullptr && electrodes->state == ElectrodeState::attached) {
      return entry.t;
    }
  }
  return std::nullopt;
}

QString sinceStartWords(const Record& record, Time t, const Words& say) {
  const auto on = firstOf<entry::PowerOn>(record);
  const Duration since = t - on.value_or(Time{});
  if (since < Duration{0}) {
    return (on ? say(QT_TRANSLATE_NOOP("Papers", "%1 before power-on"))
               : say(QT_TRANSLATE_NOOP("Papers", "%1 before the record begins")))
        .arg(say.length(-since));
  }
  return (on ? say(QT_TRANSLATE_NOOP("Papers", "%1 after power-on"))
             : say(QT_TRANSLATE_NOOP("Papers", "%1 after the record begins")))
      .arg(say.length(since));
}

QString momentWords(const Record& record, Time t, const Words& say) {
  if (clockTrust(record) != ClockTrust::none) {
    if (const auto wall = wallTimeAt(record, t)) {
      return say.clock(*wall);
    }
  }
  return sinceStartWords(record, t, say);
}

Duration printedBetween(const Record& record, Time from, Time to) {
  const bool clock = clockTrust(record) != ClockTrust::none;
  const auto first = clock ? wallTimeAt(record, from) : std::nullopt;
  const auto last = clock ? wallTimeAt(record, to) : std::nullopt;
  if (first && last) {
    return std::chrono::floor<std::chrono::seconds>(last->local()) -
           std::chrono::floor<std::chrono::seconds>(first->local());
  }
  const Time on = firstOf<entry::PowerOn>(record).value_or(Time{});
  const auto whole = [&](Time t) { return std::llround(seconds(t - on)); };
  return std::chrono::seconds{whole(to) - whole(from)};
}

std::optional<Time> lastPowerOff(const Record& record) {
  std::optional<Time> off;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::PowerOff>() != nullptr) {
      off = entry.t;
    } else if (entry.complete<entry::PowerOn>() != nullptr) {
      off.reset();
    }
  }
  return off;
}

TimeOnWords timeOnWords(const Record& record, const Figures& figures, const Words& say) {
  constexpr Duration kMinutesAlone{600'000'000};
  const Measure& on = figures[MeasureId::timeOn];
  // Switched on and nothing more: no length is known, least of all nought.
  if (on.value.value_or(0) <= 0) {
    return {};
  }
  const auto begin = firstOf<entry::PowerOn>(record);
  const auto end = lastPowerOff(record);
  const bool once = begin && end && on.working.size() == 1;
  const Duration length = once ? printedBetween(record, *begin, *end) : computedLength(*on.value);
  // Below ten minutes the seconds matter, above they only cost reading time.
  return {length < kMinutesAlone ? say.length(length) : say.shortLength(length), !end};
}

bool isPartial(const Record& record) {
  return lostLines(record) > 0 || (!record.seal.present && !coversDeviceOn(record));
}

QString causeWords(const Pause& pause, const Figures& figures, const Words& say) {
  QStringList numbers;
  for (const ShockFigures& shock : figures.shocks) {
    if (shock.number > 0 && pause.stretch.holds(shock.t)) {
      numbers << QString::number(shock.number);
    }
  }
  switch (pause.cause) {
  case PauseCause::shock:
    return numbers.size() > 1
               ? say(QT_TRANSLATE_NOOP("Papers", "around shocks %1")).arg(say.list(numbers))
               : say(QT_TRANSLATE_NOOP("Papers", "around shock %1")).arg(numbers.value(0));
  case PauseCause::analysis:
    return say(QT_TRANSLATE_NOOP("Papers", "for an analysis"));
  case PauseCause::beforeFirst:
    return say(QT_TRANSLATE_NOOP("Papers", "before the first compression"));
  case PauseCause::afterLast:
    return say(QT_TRANSLATE_NOOP("Papers", "after the last compression"));
  case PauseCause::breaths:
  case PauseCause::breathsLong:
    return say(QT_TRANSLATE_NOOP("Papers", "for breaths"));
  case PauseCause::noReasonRecorded:
    break;
  }
  return say(QT_TRANSLATE_NOOP("Papers", "no reason recorded"));
}

const Pause* longestPause(const Figures& figures) {
  const auto longest = std::max_element(
      figures.pauses.begin(), figures.pauses.end(),
      [](const Pause& a, const Pause& b) { return a.stretch.length() < b.stretch.length(); });
  return longest == figures.pauses.end() ? nullptr : &*longest;
}

const ShockFigures* firstDelivered(const Figures& figures) {
  const auto found = std::find_if(figures.shocks.begin(), figures.shocks.end(),
                                  [](const ShockFigures& shock) { return shock.number > 0; });
  return found == figures.shocks.end() ? nullptr : &*found;
}

const ShockFigures* lastDelivered(const Figures& figures) {
  const auto found = std::find_if(figures.shocks.rbegin(), figures.shocks.rend(),
                                  [](const ShockFigures& shock) { return shock.number > 0; });
  return found == figures.shocks.rend() ? nullptr : &*found;
}

bool coversDeviceOn(const Record& record) {
  bool begins = false;
  bool on = false;
  for (const Entry& entry : record.entries) {
    if (entry.complete<entry::PowerOn>() != nullptr) {
      begins = true;
      on = true;
    } else if (entry.complete<entry::PowerOff>() != nullptr) {
      on = false;
    }
  }
  return begins && (!on || record.seal.present) && record.otherRecordsInFile == 0 &&
         lostLines(record) == 0;
}

int lostLines(const Record& record) {
  const auto kept =
      std::count_if(record.entries.begin(), record.entries.end(), [](const Entry& entry) {
        return std::holds_alternative<entry::Unreadable>(entry.data);
      });
  return record.lostLines + static_cast<int>(kept);
}

ShockCount countShocks(const Record& record, const Figures& figures) {
  ShockCount count;
  const Measure& delivered = figures[MeasureId::shocksDelivered];
  const bool covered = coversDeviceOn(record);
  count.mayBeMore = !record.seal.present && !covered;
  count.linesLost = lostLines(record) > 0;
  count.deviceRecorded = delivered.status == Status::ok;
  if (delivered.value) {
    const int given = static_cast<int>(*delivered.value);
    if (given > 0 || covered) {
      count.given = given;
    }
  }
  for (const ShockFigures& shock : figures.shocks) {
    count.unknown += !shock.delivered ? 1 : 0;
    count.withheld += shock.delivered && !*shock.delivered ? 1 : 0;
  }
  if (count.unknown > 0 && count.given == 0) {
    count.given.reset(); // one of them may have been given: neither "0" nor "none"
  }
  return count;
}

QString markText(SourceMark mark, const Words& say) {
  switch (mark) {
  case SourceMark::read:
    return say(QT_TRANSLATE_NOOP("Papers", "read in the source"));
  case SourceMark::secondary:
    return say(QT_TRANSLATE_NOOP("Papers", "read in a secondary publication"));
  case SourceMark::memory:
    break;
  }
  return say(QT_TRANSLATE_NOOP("Papers", "from memory, check the source"));
}

QString profileText(const Profile& profile, const Words& say) {
  static constexpr std::array kOwn{
      QT_TRANSLATE_NOOP("Papers", "European guidelines 2021"),
      QT_TRANSLATE_NOOP("Papers", "European guidelines 2025"),
      QT_TRANSLATE_NOOP("Papers", "American guidelines 2020"),
      QT_TRANSLATE_NOOP("Papers", "American guidelines 2025"),
  };
  const auto found =
      std::find_if(kOwn.begin(), kOwn.end(), [&](const char* own) { return profile.name == own; });
  return found != kOwn.end() ? say(*found) : plainText(profile.name);
}

QString sourceWords(const Profile& profile, const Citation& source, const Words& say) {
  const QString name = profileText(profile, say);
  return source.mark == SourceMark::read
             ? name
             : QStringLiteral("%1 (%2)").arg(name, markText(source.mark, say));
}

QString citationWords(const Profile& profile, const Citation& source, const Words& say) {
  const QString whole = plainText(source.text).section(QLatin1Char(';'), 0, 0).trimmed();
  if (whole.isEmpty()) {
    return sourceWords(profile, source, say);
  }
  // Who and where are enough to find it; the title stands in the working.
  const QStringList parts = whole.split(QStringLiteral(", "));
  const QString words =
      parts.size() > 2 ? QStringLiteral("%1, %2").arg(parts.front(), parts.back()) : whole;
  return source.mark == SourceMark::read
             ? words
             : QStringLiteral("%1 (%2)").arg(words, markText(source.mark, say));
}

bool adultTargetsHold(const Record& record) {
  const PatientCategory patient = record.header.patient;
  const PatientCategory category =
      patient != PatientCategory::unknown ? patient : settingHistory(record).last;
  return category != PatientCategory::child && category != PatientCategory::infant;
}

QString categoryText(PatientCategory category, const Words& say) {
  switch (category) {
  case PatientCategory::adult:
    return say(QT_TRANSLATE_NOOP("Papers", "adult"));
  case PatientCategory::child:
    return say(QT_TRANSLATE_NOOP("Papers", "child"));
  case PatientCategory::infant:
    return say(QT_TRANSLATE_NOOP("Papers", "infant"));
  case PatientCategory::unknown:
    break;
  }
  return {};
}

QString notRecordedText(const Words& say) {
  return say(QT_TRANSLATE_NOOP("Papers", "not recorded"));
}

Verdict verdictIn(const std::optional<double>& value, const Range& range) {
  return !value                ? Verdict::none
         : *value < range.low  ? Verdict::below
         : *value > range.high ? Verdict::above
                               : Verdict::within;
}

Verdict rateVerdict(const Figures& figures) {
  const auto& target = figures.settings.profile.ratePerMin;
  return target ? verdictIn(figures[MeasureId::compressionRate].value, target->value)
                : Verdict::none;
}

namespace {

/// The log of a device that neither closed it nor was switched off; a person's notes just end.
bool stoppedWhileOn(const Record& record) {
  bool device = false, off = false;
  for (const Entry& entry : record.entries) {
    device = device || entry.source == Source::device;
    off = entry.complete<entry::PowerOff>() != nullptr ||
          (off && entry.complete<entry::PowerOn>() == nullptr);
  }
  return device && !off && !record.seal.present;
}

} // namespace

std::optional<Time> brokeOffAt(const Record& record, const Figures& figures) {
  if (!countShocks(record, figures).deviceRecorded || !stoppedWhileOn(record)) {
    return std::nullopt;
  }
  std::optional<Time> last;
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && !entry.incomplete) {
      last = std::max(last.value_or(entry.t), entry.lastTime());
    }
  }
  return last;
}

} // namespace afterbeat::papers
