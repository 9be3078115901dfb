#include "app/papers/facts.h"
#include "app/papers/sheet_content.h"
#include "core/measures/derived_use.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::papers {

namespace {

bool readFromLog(const Record& record) {
  return std::any_of(record.entries.begin(), record.entries.end(),
                     [](const Entry& entry) { return entry.line > 0; });
}

/// What the device said about itself, with its time.
QStringList faultNotices(const Record& record, const Words& say) {
  QStringList faults;
  for (const Entry& entry : record.entries) {
    QString what;
    if (const auto* fault = entry.complete<entry::Fault>()) {
      what = ownText(fault->text.empty() ? fault->code : fault->text, 60);
    } else if (const auto* test = entry.complete<entry::SelfTest>(); test && !*test->passed) {
      what = say(QT_TRANSLATE_NOOP("Papers", "self-test failed"));
    } else {
      continue;
    }
    faults << QStringLiteral("%1 (%2)").arg(what, momentWords(record, entry.t, say));
  }
  constexpr int kMost = 2;
  return faults.isEmpty()
             ? faults
             : QStringList{say(QT_TRANSLATE_NOOP("Papers", "The device reported a fault: %1"))
                               .arg(shortened(faults, kMost, say))};
}

/// Hands on the chest or a shock after the device was switched off: the times contradict each
/// other.
QString afterOffNotice(const Record& record, const Figures& figures, const Words& say) {
  constexpr Duration kWorthSaying{1'000'000};
  const auto off = lastPowerOff(record);
  if (!off || !figures.window || figures.window->end - *off < kWorthSaying) {
    return {};
  }
  return say(QT_TRANSLATE_NOOP("Papers", "The record goes on for %1 after the device was switched "
                                         "off."))
      .arg(say.length(printedBetween(record, *off, figures.window->end)));
}

QString clockNote(const Record& record, const Words& say) {
  const ClockFacts& clock = record.header.clock;
  switch (clockTrust(record)) {
  case ClockTrust::none:
    return say(
        QT_TRANSLATE_NOOP("Papers", "The device clock was not set: there are no clock times."));
  case ClockTrust::checked: {
    const QString against = clock.against.empty()
                                ? say(QT_TRANSLATE_NOOP("Papers", "another clock"))
                                : ownText(clock.against, 40);
    const Duration offset = clock.offset.value_or(Duration{});
    if (offset == Duration{0}) {
      return say(QT_TRANSLATE_NOOP("Papers", "Clock compared with %1: no difference."))
          .arg(against);
    }
    return say(QT_TRANSLATE_NOOP("Papers",
                                 "Clock compared with %1; the difference of %2 is corrected."))
        .arg(against, say.length(offset));
  }
  case ClockTrust::deviceOnly:
    break;
  }
  return clock.state == ClockState::zoneUnknown
             ? say(QT_TRANSLATE_NOOP("Papers",
                                     "Device clock not checked, time zone not known: times "
                                     "are the device's own."))
             : say(QT_TRANSLATE_NOOP("Papers",
                                     "Device clock not checked: times are the device's own."));
}

/// From when to when the figures are counted, and why they end there.
QString countedNote(const Record& record, const Figures& figures, const Words& say) {
  const bool toEnd = figures.settings.windowEnd == WindowEnd::recordEnd;
  return (toEnd ? say(QT_TRANSLATE_NOOP("Papers", "Counted from %1 to %2 (end of the record)."))
                : say(QT_TRANSLATE_NOOP(
                      "Papers", "Counted from %1 to %2 (last compression, shock or analysis).")))
      .arg(windowBeginWords(record, figures, say), momentWords(record, figures.window->end, say));
}

/// Where what the crew reads about hands or breaths is read off waveforms; empty where it is not.
QStringList derivedNotices(const Record& record, const Figures& figures, const Words& say) {
  const DerivedUse use = derivedUse(record, figures);
  const auto quality = [&say](const DerivedShare& share) {
    return say.number(100 * share.quality.value_or(0));
  };
  QStringList all;
  if (use.compressions.any()) {
    all << say(QT_TRANSLATE_NOOP("Papers",
                                 "Hands off, rate and depth are derived from signals, not from the "
                                 "device's own entries (mean quality %1 %): a reviewer's aid."))
               .arg(quality(use.compressions));
  }
  if (use.ventilations.any()) {
    all << say(QT_TRANSLATE_NOOP("Papers", "Breaths are derived from signals (mean quality %1 %)."))
               .arg(quality(use.ventilations));
  }
  return all;
}

} // namespace

QStringList sheetNotices(const Record& record, const Figures& figures, const Words& say) {
  QStringList all;
  const PatientCategory set = settingHistory(record).last;
  const PatientCategory patient = record.header.patient;
  if (set != PatientCategory::unknown && patient != PatientCategory::unknown && set != patient) {
    all << say(QT_TRANSLATE_NOOP("Papers",
                                 "The device was set to “%1”; the patient is recorded as “%2”."))
               .arg(categoryText(set, say), categoryText(patient, say));
  }
  if (record.seal.present && !record.seal.matches) {
    all << say(QT_TRANSLATE_NOOP(
        "Papers", "The file does not match its checksum: it was damaged or edited."));
  }
  if (!record.seal.present && readFromLog(record)) {
    all << say(QT_TRANSLATE_NOOP(
        "Papers", "The recording stopped without being closed; what came after is not known."));
  }
  if (record.header.derivedFrom) {
    const double problems = record.header.derivedFrom->problems.value_or(0);
    all << (problems > 0
                ? say(QT_TRANSLATE_NOOP(
                          "Papers", "This record was salvaged from a damaged file (%1 problems)."))
                      .arg(say.number(problems))
                : say(QT_TRANSLATE_NOOP("Papers",
                                        "This record was written again from another file.")));
  }
  if (const int lost = lostLines(record); lost > 0) {
    all << say(QT_TRANSLATE_NOOP("Papers",
                                 "Lines of the recording that could not be read: %1. Shocks "
                                 "and compressions may be missing, times may be wrong."))
               .arg(say.number(lost));
  }
  if (record.otherRecordsInFile > 0) {
    all << say(QT_TRANSLATE_NOOP(
                   "Papers", "The file holds other recordings, which are not on this sheet: %1."))
               .arg(say.number(record.otherRecordsInFile));
  }
  all << derivedNotices(record, figures, say);
  if (const QString after = afterOffNotice(record, figures, say); !after.isEmpty()) {
    all << after;
  }
  all << faultNotices(record, say);
  if (!record.header.kind) {
    all << say(QT_TRANSLATE_NOOP(
        "Papers",
        "The file does not say whether this was a rescue, a drill or a test: tick what it was."));
  }
  if (record.header.madeUp) {
    all << say(QT_TRANSLATE_NOOP("Papers", "The file had no usable header; one was made up."));
  }
  return all;
}

QStringList sheetNotes(const Record& record, const Figures& figures, const Words& say) {
  const Profile& profile = figures.settings.profile;
  QStringList all;
  all << clockNote(record, say);
  if (figures.window) {
    all << countedNote(record, figures, say);
  }
  if (figures.evidence != Evidence::none) {
    all << say(QT_TRANSLATE_NOOP("Papers", "Hands off: pauses longer than %1 s count in full."))
               .arg(say.plainNumber(seconds(figures.settings.pauseThreshold)));
  }
  if (!profile.ratePerMin) {
    all << say(QT_TRANSLATE_NOOP("Papers", "Targets: %1.")).arg(profileText(profile, say));
  } else {
    all << say(QT_TRANSLATE_NOOP("Papers", "Target %1 to %2 a minute: %3."))
               .arg(say.plainNumber(profile.ratePerMin->value.low),
                    say.plainNumber(profile.ratePerMin->value.high),
                    sourceWords(profile, profile.ratePerMin->source, say));
  }
  if (figures.excludedLength > Duration{0}) {
    all << say(QT_TRANSLATE_NOOP("Papers", "Left out of the figures: %1."))
               .arg(say.length(figures.excludedLength));
  }
  if (figures.evidence == Evidence::segments || figures.evidence == Evidence::both) {
    all << say(QT_TRANSLATE_NOOP(
        "Papers", "Compressions are recorded as stretches, not all of them one by one."));
  }
  all << say(QT_TRANSLATE_NOOP("Papers", "A ruled line stands for what was not recorded."));
  all << say(QT_TRANSLATE_NOOP("Papers", "Corrections: none."));
  return all;
}

} // namespace afterbeat::papers
