#include "app/papers/computed_length.h"
#include "app/papers/facts.h"
#include "app/papers/rows_model.h"
#include "app/papers/sheet_content.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace afterbeat::papers {

namespace {

SheetLine text(const QString& words) {
  return {SheetLine::Kind::text, words, {}};
}
SheetLine strong(const QString& words) {
  return {SheetLine::Kind::strong, words, {}};
}
SheetLine blank(const QStringList& labels, const QString& known = {}) {
  return {SheetLine::Kind::blank, known, labels};
}

QString dotted(const QStringList& parts) {
  return parts.join(QStringLiteral(" · "));
}

QString capital(QString words) {
  if (!words.isEmpty()) {
    words[0] = words[0].toUpper();
  }
  return words;
}

SheetSection patientSection(const Record& record, const Words& say) {
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Patient")), {}};
  const Header& header = record.header;
  QStringList known;
  QStringList unknown{say(QT_TRANSLATE_NOOP("Papers", "Name"))};
  if (header.patient != PatientCategory::unknown) {
    known << capital(categoryText(header.patient, say));
  } else {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Adult or child"));
  }
  if (header.ageYears) {
    known << say(QT_TRANSLATE_NOOP("Papers", "%1 years")).arg(say.plainNumber(*header.ageYears));
  } else {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Age"));
  }
  if (header.sex.empty()) {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Sex"));
  }
  if (!header.sex.empty()) {
    known << (header.sex == "female" ? say(QT_TRANSLATE_NOOP("Papers", "female"))
              : header.sex == "male" ? say(QT_TRANSLATE_NOOP("Papers", "male"))
                                     : ownText(header.sex, 20));
  }
  section.lines.push_back(blank(unknown, known.join(QStringLiteral(", "))));
  return section;
}

/// "first shock 09:13:23 (after 53 s)".
QString eventWords(const Record& record, const char* english, Time t, const Words& say) {
  const auto on = firstOf<entry::PowerOn>(record);
  const QString words = say(english).arg(momentWords(record, t, say));
  if (clockTrust(record) == ClockTrust::none || !on || t <= *on) {
    return words;
  }
  //: A clock time, and how long after the device was switched on: "first shock 09:13:23 (after 53
  //: s)".
  return say(QT_TRANSLATE_NOOP("Papers", "%1 (after %2)"))
      .arg(words, say.length(printedBetween(record, *on, t)));
}

QStringList deviceTimes(const Record& record, const Figures& figures, const Words& say) {
  QStringList parts;
  const auto on = firstOf<entry::PowerOn>(record);
  if (on && clockTrust(record) != ClockTrust::none) {
    parts << eventWords(record, QT_TRANSLATE_NOOP("Papers", "device on %1"), *on, say);
  }
  if (const auto electrodes = firstElectrodes(record)) {
    parts << eventWords(record, QT_TRANSLATE_NOOP("Papers", "electrodes on %1"), *electrodes, say);
  }
  if (const auto analysis = firstOf<entry::Analysis>(record)) {
    parts << eventWords(record, QT_TRANSLATE_NOOP("Papers", "first analysis %1"), *analysis, say);
  }
  if (const ShockFigures* shock = firstDelivered(figures)) {
    parts << eventWords(record, QT_TRANSLATE_NOOP("Papers", "first shock %1"), shock->t, say);
  }
  return parts;
}

/// What people noted before and beside the device, in its order, with who noted it where that is an
/// observer; the handover and the end of efforts have places of their own.
QStringList milestones(const Record& record, const Words& say) {
  std::vector<const Entry*> noted;
  for (const Entry& entry : record.entries) {
    const auto* milestone = entry.hasTime ? entry.complete<entry::Milestone>() : nullptr;
    if (milestone != nullptr && milestone->what != "handover" &&
        milestone->what != "efforts_ended") {
      noted.push_back(&entry);
    }
  }
  std::stable_sort(noted.begin(), noted.end(),
                   [](const Entry* a, const Entry* b) { return a->t < b->t; });
  QStringList parts;
  for (const Entry* entry : noted) {
    const QString what =
        ownText(milestoneWords(entry->complete<entry::Milestone>()->what, say).toStdString(), 40);
    parts << QStringLiteral("%1 %2").arg(what, momentWords(record, entry->t, say)) +
                 observerWords(*entry, say);
  }
  constexpr qsizetype kMost = 8;
  return parts.size() <= kMost ? parts : QStringList{shortened(parts, kMost, say)};
}

/// "from collapse: to first shock 5 min 5 s", and the other lengths a crew asks for first.
QStringList fromCollapse(const Record& record, const Figures& figures, const Words& say) {
  const auto collapse = firstMilestone(record, "collapse");
  if (!collapse) {
    return {};
  }
  QStringList parts;
  const auto add = [&](MeasureId id, const char* english) {
    const Measure& measure = figures[id];
    if (measure.value && *measure.value >= 0) {
      const Time to = measure.working.empty() ? *collapse + computedLength(*measure.value)
                                              : measure.working.back().to;
      parts << say(english).arg(say.length(printedBetween(record, *collapse, to)));
    }
  };
  add(MeasureId::collapseToFirstHandsOn,
      QT_TRANSLATE_NOOP("Papers", "to first recorded compression %1"));
  add(MeasureId::collapseToFirstShock, QT_TRANSLATE_NOOP("Papers", "to first shock %1"));
  add(MeasureId::collapseToCirculationReturned,
      QT_TRANSLATE_NOOP("Papers", "to return of circulation %1"));
  if (!parts.isEmpty()) {
    parts.front() = say(QT_TRANSLATE_NOOP("Papers", "from collapse: %1")).arg(parts.front());
  }
  return parts;
}

SheetSection timeSection(const Record& record, const Figures& figures, const Words& say) {
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Time")), {}};
  QStringList unknown;
  if (!firstMilestone(record, "collapse")) {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Collapse at"));
  }
  if (!firstMilestone(record, "call_received")) {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Call received at"));
  }
  if (!unknown.isEmpty()) {
    section.lines.push_back(blank(unknown));
  }
  const QStringList times = deviceTimes(record, figures, say);
  for (const QStringList& known :
       {milestones(record, say), times, fromCollapse(record, figures, say)}) {
    if (!known.isEmpty()) {
      section.lines.push_back(text(capital(dotted(known))));
    }
  }
  if (times.isEmpty()) {
    section.lines.push_back(blank({say(QT_TRANSLATE_NOOP("Papers", "Device switched on at")),
                                   say(QT_TRANSLATE_NOOP("Papers", "First shock at"))}));
  }
  return section;
}

QString adviceWords(Advice advice, const Words& say) {
  switch (advice) {
  case Advice::shock:
    return say(QT_TRANSLATE_NOOP("Papers", "shock advised"));
  case Advice::noShock:
    return say(QT_TRANSLATE_NOOP("Papers", "no shock"));
  case Advice::inconclusive:
    break;
  }
  return say(QT_TRANSLATE_NOOP("Papers", "inconclusive"));
}

std::vector<Advice> adviceHistory(const Record& record) {
  std::vector<Advice> history;
  for (const Entry& entry : record.entries) {
    const auto* analysis = entry.complete<entry::Analysis>();
    if (analysis != nullptr && analysis->advice) {
      history.push_back(*analysis->advice);
    }
  }
  return history;
}

/// "Five analyses: shock advised, ..."; many of them counted by kind, with the last one; empty: not
/// recorded.
QString analysesWords(const Record& record, const Figures& figures, const Words& say) {
  const auto history = adviceHistory(record);
  if (history.empty()) {
    return figures[MeasureId::analyses].value && coversDeviceOn(record)
               ? say(QT_TRANSLATE_NOOP("Papers", "No rhythm analysis in this record"))
               : QString();
  }
  const int count = static_cast<int>(history.size());
  if (count == 1) {
    return say(QT_TRANSLATE_NOOP("Papers", "One analysis: %1"))
        .arg(adviceWords(history.front(), say));
  }
  QStringList parts;
  constexpr int kListed = 6;
  if (count <= kListed) {
    for (const Advice advice : history) {
      parts << adviceWords(advice, say);
    }
    return say(QT_TRANSLATE_NOOP("Papers", "%1 analyses: %2"))
        .arg(capital(say.count(count)), parts.join(QStringLiteral(", ")));
  }
  for (const Advice kind : {Advice::shock, Advice::noShock, Advice::inconclusive}) {
    if (const auto many = std::count(history.begin(), history.end(), kind); many > 0) {
      parts << QStringLiteral("%1 × %2").arg(many).arg(adviceWords(kind, say));
    }
  }
  return say(QT_TRANSLATE_NOOP("Papers", "%1 analyses: %2; the last: %3"))
      .arg(capital(say.count(count)), parts.join(QStringLiteral(", ")),
           adviceWords(history.back(), say));
}

/// Utstein's words for the cause in the reader's language; any other as it stands.
QString causeOfArrest(const std::string& cause, const Words& say) {
  static constexpr std::array kKnown{
      QT_TRANSLATE_NOOP("Papers", "presumed cardiac"), QT_TRANSLATE_NOOP("Papers", "medical"),
      QT_TRANSLATE_NOOP("Papers", "trauma"),           QT_TRANSLATE_NOOP("Papers", "drug overdose"),
      QT_TRANSLATE_NOOP("Papers", "drowning"),         QT_TRANSLATE_NOOP("Papers", "electrocution"),
      QT_TRANSLATE_NOOP("Papers", "asphyxia"),
  };
  const QString words = ownText(cause, 40).replace(QLatin1Char('_'), QLatin1Char(' '));
  const auto known = std::find_if(kKnown.begin(), kKnown.end(),
                                  [&](const char* word) { return words == QLatin1String(word); });
  return known != kKnown.end() ? say(*known) : words;
}

SheetSection eventSection(const Record& record, const Figures& figures, const Words& say) {
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "What happened")), {}};
  const EventFacts& event = record.header.event;
  QStringList known;
  QStringList unknown;
  if (event.witnessed == "bystander") {
    known << say(QT_TRANSLATE_NOOP("Papers", "the collapse was seen by a bystander"));
  } else if (event.witnessed == "crew") {
    known << say(QT_TRANSLATE_NOOP("Papers", "the collapse was seen by the crew"));
  } else if (event.witnessed == "no") {
    known << say(QT_TRANSLATE_NOOP("Papers", "nobody saw the collapse"));
  } else {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "Seen by"));
  }
  if (event.bystanderCpr == "true" || event.bystanderCpr == "yes") {
    known << say(QT_TRANSLATE_NOOP("Papers", "bystanders gave compressions"));
  } else if (event.bystanderCpr == "false" || event.bystanderCpr == "no") {
    known << say(QT_TRANSLATE_NOOP("Papers", "no compressions by bystanders"));
  } else {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "First help by"));
  }
  if (!event.cause.empty()) {
    known << say(QT_TRANSLATE_NOOP("Papers", "cause as recorded: %1"))
                 .arg(causeOfArrest(event.cause, say));
  }
  if (!unknown.isEmpty()) {
    section.lines.push_back(blank(unknown));
  }
  if (!known.isEmpty()) {
    section.lines.push_back(text(capital(dotted(known))));
  }
  const QString analyses = analysesWords(record, figures, say);
  section.lines.push_back(analyses.isEmpty()
                              ? blank({say(QT_TRANSLATE_NOOP("Papers", "What the device advised"))})
                              : text(analyses));
  return section;
}

QStringList qualityWords(const Figures& figures, const Words& say) {
  QStringList parts;
  const Measure& longest = figures[MeasureId::longestPause];
  const Pause* pause = longestPause(figures);
  if (longest.value && pause != nullptr) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "longest pause %1, %2"))
                 .arg(say.length(pause->stretch.length()), causeWords(*pause, figures, say));
  } else if (longest.value) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "no pause longer than %1 s"))
                 .arg(say.plainNumber(seconds(figures.settings.pauseThreshold)));
  } else {
    parts << say(QT_TRANSLATE_NOOP("Papers", "longest pause: not recorded"));
  }
  const Measure& rate = figures[MeasureId::compressionRate];
  parts << (rate.value ? say(QT_TRANSLATE_NOOP("Papers", "compressions at %1 a minute"))
                             .arg(say.number(*rate.value))
                       : say(QT_TRANSLATE_NOOP("Papers", "compression rate: not recorded")));
  const Measure& inRange = figures[MeasureId::compressionRateInRange];
  if (const auto& target = figures.settings.profile.ratePerMin; inRange.value && target) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "rate within %1–%2 a minute: %3"))
                 .arg(say.plainNumber(target->value.low), say.plainNumber(target->value.high),
                      say.percent(*inRange.value));
  }
  if (const Measure& depth = figures[MeasureId::compressionDepth]; depth.value) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "mean depth %1 mm")).arg(say.number(*depth.value));
  }
  if (const Measure& release = figures[MeasureId::fullRelease]; release.value) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "full release after %1"))
                 .arg(say.percent(*release.value));
  }
  return parts;
}

/// "Efforts ended 09:41:10 (noted by an observer)"; empty where nobody noted it.
QString effortsWords(const Record& record, const Words& say) {
  for (const Entry& entry : record.entries) {
    const auto* milestone = entry.hasTime ? entry.complete<entry::Milestone>() : nullptr;
    if (milestone != nullptr && milestone->what == "efforts_ended") {
      return say(QT_TRANSLATE_NOOP("Papers", "Efforts ended %1"))
                 .arg(momentWords(record, entry.t, say)) +
             observerWords(entry, say);
    }
  }
  return {};
}

SheetSection findingsSection(const Record& record, const Figures& figures, const Words& say) {
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Findings")), {}};
  // Nothing measured is nothing to tell: a row of "not recorded" would only cost room.
  if (figures.evidence != Evidence::none) {
    section.lines.push_back(text(capital(dotted(qualityWords(figures, say)))));
  }
  if (const QString ended = effortsWords(record, say); !ended.isEmpty()) {
    section.lines.push_back(strong(ended));
  }
  return section;
}

SheetSection handedOverSection(const Record& record, const Words& say) {
  SheetSection section{say(QT_TRANSLATE_NOOP("Papers", "Handed over")), {}};
  QStringList unknown{say(QT_TRANSLATE_NOOP("Papers", "To"))};
  const auto at = firstMilestone(record, "handover");
  if (!at) {
    unknown << say(QT_TRANSLATE_NOOP("Papers", "At"));
  }
  section.lines.push_back(blank(
      unknown, at ? say(QT_TRANSLATE_NOOP("Papers", "At %1")).arg(momentWords(record, *at, say))
                  : QString()));
  return section;
}

} // namespace

std::vector<SheetSection> sheetSections(const Record& record, const Figures& figures,
                                        const Words& say) {
  std::vector<SheetSection> all{patientSection(record, say),
                                timeSection(record, figures, say),
                                eventSection(record, figures, say),
                                findingsSection(record, figures, say),
                                treatmentSection(record, figures, say),
                                handedOverSection(record, say)};
  std::erase_if(all, [](const SheetSection& section) { return section.lines.empty(); });
  return all;
}

} // namespace afterbeat::papers
