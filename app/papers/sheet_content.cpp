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

SheetSection deviceSection(const Record& record, const Words& say) {
  const DeviceFacts& device = record.header.device;
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Device")), {}};
  QStringList known;
  QStringList unknown;
  const std::string kind = device.maker + (device.maker.empty() ? "" : " ") + device.model;
  if (!device.label.empty()) {
    known << ownText(device.label, 90);
  }
  if (!kind.empty()) {
    known << ownText(kind, 70);
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

QString made(const Record& record, const SheetOptions& options, const Words& say) {
  QStringList parts{QStringLiteral("Afterbeat " AFTERBEAT_VERSION)};
  if (!record.header.id.empty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "record %1")).arg(ownText(record.header.id, 60));
  }
  if (!options.fileName.isEmpty()) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "file %1"))
                 .arg(ownText(options.fileName.toStdString(), 60));
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
  content.labelOfDate = say(QT_TRANSLATE_NOOP("Papers", "Date"));
  content.labelOfPlace = say(QT_TRANSLATE_NOOP("Papers", "Place"));
  content.recordLine = recordLine(record, say);
  content.bands = bands(record, say);
  const auto upper = largeFigures(record, figures, options, say);
  std::copy(upper.begin(), upper.end(), content.figures.begin());
  content.figures[4] = handsOffFigure(record, figures, say);
  content.figures[5] = circulationFigure(record, figures, say);
  content.sections = sheetSections(record, figures, say);
  content.notices = sheetNotices(record, figures, say);
  if (!record.header.kind) {
    content.ticks = {say(QT_TRANSLATE_NOOP("Papers", "rescue")),
                     say(QT_TRANSLATE_NOOP("Papers", "drill")),
                     say(QT_TRANSLATE_NOOP("Papers", "test"))};
  }
  content.device = deviceSection(record, say);
  content.caution =
      say(QT_TRANSLATE_NOOP("Papers", "This sheet does not replace your own assessment. "
                                      "Local protocol and licensed practice go first."));
  content.notes = sheetNotes(record, figures, say);
  content.made = made(record, options, say);
  if (!options.fileSha256.isEmpty()) {
    content.checksum =
        say(QT_TRANSLATE_NOOP("Papers", "SHA-256 of the file: %1")).arg(options.fileSha256);
  }
  if (figures.window) {
    content.rowsCaption = say(QT_TRANSLATE_NOOP("Papers", "One row is two minutes, from %1 on"))
                              .arg(windowBeginWords(record, figures, say));
  }
  if (options.told) {
    tell(content, *options.told, record.header.kind == RecordKind::drill, say);
  }
  return content;
}

QStringList leftToPen(const SheetContent& content) {
  QStringList all;
  if (content.date.isEmpty()) {
    all << content.labelOfDate;
  }
  if (content.site.isEmpty()) {
    all << content.labelOfPlace;
  }
  for (const SheetFigure& figure : content.figures) {
    if (figure.value.isEmpty()) {
      all << figure.title;
    }
  }
  const auto add = [&](const SheetSection& section) {
    for (const SheetLine& line : section.lines) {
      for (const QString& label : line.blanks) {
        all << QStringLiteral("%1: %2").arg(section.title, label);
      }
    }
  };
  std::for_each(content.sections.begin(), content.sections.end(), add);
  add(content.device);
  return all;
}

} // namespace afterbeat::papers
