#include "app/papers/sheet_content.h"

#include "app/papers/facts.h"

#include <QCoreApplication>

#include <algorithm>

namespace afterbeat::papers {

namespace {

/// The first group of the record's UUID: enough to tell records of one day apart.
QString shortId(const Record& record) {
  const QString id = QString::fromStdString(record.header.id);
  return id.section(QLatin1Char(':'), -1).section(QLatin1Char('-'), 0, 0).left(12);
}

QString subtitle(const Record& record, const Words& say) {
  switch (record.header.kind.value_or(RecordKind::rescue)) {
  case RecordKind::drill:
    return say(QT_TRANSLATE_NOOP("Papers", "Training: what was recorded during a drill"));
  case RecordKind::test:
    return say(QT_TRANSLATE_NOOP("Papers", "Test of a device: no patient"));
  case RecordKind::rescue:
    break;
  }
  return say(QT_TRANSLATE_NOOP("Papers", "Cardiac arrest: what device and helpers recorded"));
}

QStringList bands(const Record& record, const Words& say) {
  QStringList all;
  if (record.header.kind == RecordKind::drill) {
    all << say(QT_TRANSLATE_NOOP("Papers", "DRILL – not a real patient"));
  }
  if (record.header.kind == RecordKind::test) {
    all << say(QT_TRANSLATE_NOOP("Papers", "TEST – not a real patient"));
  }
  if (record.header.synthetic) {
    all << say(QT_TRANSLATE_NOOP("Papers", "SYNTHETIC – invented data"));
  }
  return all;
}

QString recordLine(const Record& record, const Words& say) {
  QStringList parts;
  if (const QString id = shortId(record); !id.isEmpty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "record %1")).arg(id);
  }
  if (!record.header.device.label.empty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "device %1"))
                 .arg(ownText(record.header.device.label, 40));
  }
  return parts.join(QStringLiteral(" · "));
}

QString dateOf(const Record& record, const Figures& figures, const Words& say) {
  const Time begin = figures.window ? figures.window->begin : Time{};
  if (clockTrust(record) == ClockTrust::none) {
    return {};
  }
  const auto wall = wallTimeAt(record, firstOf<entry::PowerOn>(record).value_or(begin));
  return wall ? say.date(*wall) : QString();
}

bool readFromLog(const Record& record) {
  return std::any_of(record.entries.begin(), record.entries.end(),
                     [](const Entry& entry) { return entry.line > 0; });
}

QStringList notices(const Record& record, const Words& say) {
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
  if (!record.header.kind) {
    all << say(QT_TRANSLATE_NOOP(
        "Papers", "The file does not say whether this was a rescue, a drill or a test."));
  }
  if (record.header.madeUp) {
    all << say(QT_TRANSLATE_NOOP("Papers", "The file had no usable header; one was made up."));
  }
  return all;
}

SheetSection deviceSection(const Record& record, const Words& say) {
  const DeviceFacts& device = record.header.device;
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Device")), {}};
  QStringList known;
  QStringList unknown;
  const std::string kind = device.maker + (device.maker.empty() ? "" : " ") + device.model;
  if (!device.label.empty()) {
    known << ownText(device.label, 60);
  }
  if (!kind.empty()) {
    known << ownText(kind, 40);
  }
  if (!device.serial.empty()) {
    known << say(QT_TRANSLATE_NOOP("Papers", "serial number %1")).arg(ownText(device.serial, 40));
  } else {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Serial number"));
  }
  if (device.returnTo.empty()) {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Return to"));
  }
  if (!known.isEmpty()) {
    QString words = known.join(QStringLiteral(" · "));
    words[0] = words[0].toUpper();
    section.lines.push_back({SheetLine::Kind::text, words, {}});
  }
  if (!device.returnTo.empty()) {
    section.lines.push_back(
        {SheetLine::Kind::text,
         say(QT_TRANSLATE_NOOP("Papers", "Return to: %1")).arg(ownText(device.returnTo, 160)),
         {}});
  }
  if (!unknown.isEmpty()) {
    section.lines.push_back({SheetLine::Kind::blank, {}, unknown});
  }
  return section;
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
    return say(QT_TRANSLATE_NOOP("Papers",
                                 "Clock compared with %1; the difference of %2 is corrected."))
        .arg(against, say.length(clock.offset.value_or(Duration{})));
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

QStringList notes(const Record& record, const Figures& figures, const Words& say) {
  const Profile& profile = figures.settings.profile;
  QStringList all;
  all << clockNote(record, say);
  all << say(QT_TRANSLATE_NOOP("Papers", "Hands off: pauses longer than %1 s count in full."))
             .arg(say.plainNumber(seconds(figures.settings.pauseThreshold)));
  if (profile.ratePerMin) {
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

QString made(const Record& record, const SheetOptions& options, const Words& say) {
  QStringList parts{QStringLiteral("Afterbeat " AFTERBEAT_VERSION)};
  if (!record.header.id.empty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "record %1")).arg(ownText(record.header.id, 60));
  }
  if (!options.fileName.isEmpty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "file %1"))
                 .arg(ownText(options.fileName.toStdString(), 60));
  }
  if (!options.fileSha256.isEmpty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "checksum %1…%2"))
                 .arg(options.fileSha256.left(8), options.fileSha256.right(4));
  }
  if (!options.printedAt.isEmpty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "printed %1")).arg(options.printedAt);
  }
  return parts.join(QStringLiteral(" · "));
}

} // namespace

SheetContent makeSheetContent(const Record& record, const Figures& figures,
                              const SheetOptions& options, const Words& say) {
  SheetContent content;
  content.title = say(QT_TRANSLATE_NOOP("Papers", "Handover"));
  content.subtitle = subtitle(record, say);
  content.date = dateOf(record, figures, say);
  content.site = ownText(record.header.site, 200);
  content.recordLine = recordLine(record, say);
  content.bands = bands(record, say);
  content.figures = largeFigures(record, figures, options, say);
  content.sections = sheetSections(record, figures, say);
  content.notices = notices(record, say);
  content.device = deviceSection(record, say);
  content.caution =
      say(QT_TRANSLATE_NOOP("Papers", "This sheet does not replace your own assessment. "
                                      "Local protocol and licensed practice go first."));
  content.notes = notes(record, figures, say);
  content.made = made(record, options, say);
  if (!options.fileSha256.isEmpty()) {
    content.checksum =
        say(QT_TRANSLATE_NOOP("Papers", "SHA-256 of the file: %1")).arg(options.fileSha256);
  }
  return content;
}

} // namespace afterbeat::papers
