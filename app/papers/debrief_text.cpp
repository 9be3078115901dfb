#include "app/papers/debrief.h"
#include "app/papers/facts.h"

#include <QCoreApplication>

namespace afterbeat::papers {

namespace {

QString lineText(const DebriefLine& line, const Words& say) {
  QStringList after;
  if (!line.target.isEmpty()) {
    after << line.target;
  }
  if (!line.when.isEmpty()) {
    after << say(QT_TRANSLATE_NOOP("Papers", "to be seen from %1")).arg(line.when);
  }
  return QStringLiteral("- %1%2").arg(
      line.text,
      after.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(after.join(QStringLiteral("; "))));
}

void addColumn(QStringList& text, const QString& heading, const QString& note,
               const std::vector<DebriefLine>& lines, const Words& say) {
  if (note.isEmpty() && lines.empty()) {
    return;
  }
  text << QString() << heading;
  if (!note.isEmpty()) {
    text << note;
  }
  for (const DebriefLine& line : lines) {
    text << lineText(line, say);
  }
}

QString firstLine(const Record& record, const Words& say) {
  QStringList parts{say(QT_TRANSLATE_NOOP("Papers", "Debrief"))};
  if (const auto begin = wallTimeAt(record, Time{});
      begin && clockTrust(record) != ClockTrust::none) {
    parts << say.date(*begin);
  }
  if (!record.header.site.empty()) {
    parts << plainText(record.header.site);
  }
  if (record.header.kind == RecordKind::drill) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "DRILL"));
  }
  if (record.header.synthetic) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "SYNTHETIC"));
  }
  return parts.join(QStringLiteral(" · "));
}

} // namespace

QString debriefText(const DebriefShown& shown, const Record& record, const Figures& figures,
                    const Words& say) {
  QStringList text{firstLine(record, say)};
  if (!shown.nothing.isEmpty()) {
    text << QString() << shown.nothing;
  }
  addColumn(text, wentWellHeading(say), shown.wellNote, shown.well, say);
  addColumn(text, practiseHeading(say), shown.practiseNote, shown.practise, say);
  text << QString() << questionsHeading(say);
  for (const QString& question : shown.questions) {
    text << QStringLiteral("- ") + question;
  }
  if (!shown.cannotTell.isEmpty()) {
    text << QString() << shown.cannotTell;
  }
  text << QString()
       << say(QT_TRANSLATE_NOOP("Papers",
                                "Pauses longer than %1 s count. Targets: %2. Local protocol and "
                                "licensed practice go first."))
              .arg(say.plainNumber(seconds(figures.settings.pauseThreshold)),
                   profileText(figures.settings.profile, say));
  return text.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace afterbeat::papers
