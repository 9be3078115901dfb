#include "app/papers/debrief_words.h"

#include <QCoreApplication>

namespace afterbeat::papers::debrief {

namespace {

/// Questions about what went well and about what to practise; %1: the moment, %2: the figure, %3:
/// the shock.
struct Questions {
  const char* well;
  const char* practise;
};

Questions questionsOf(DebriefRule rule) {
  switch (rule) {
  case DebriefRule::handsOff:
    return {QT_TRANSLATE_NOOP("Papers", "What helped to keep hands on the chest?"),
            QT_TRANSLATE_NOOP("Papers", "What took hands off the chest in the minute from %1?")};
  case DebriefRule::longestPause:
    return {
        QT_TRANSLATE_NOOP("Papers", "What kept every pause this short?"),
        QT_TRANSLATE_NOOP("Papers", "What was happening around %1, when hands were off for %2?")};
  case DebriefRule::beforeShock:
    return {QT_TRANSLATE_NOOP("Papers",
                              "What was prepared so that hands could stay on until the shock?"),
            QT_TRANSLATE_NOOP("Papers",
                              "What was happening at %1, before shock %3, while hands were off?")};
  case DebriefRule::afterShock:
    return {QT_TRANSLATE_NOOP("Papers", "How did you know when to go on after the shock?"),
            QT_TRANSLATE_NOOP("Papers", "After shock %3, at %1: what were you waiting for?")};
  case DebriefRule::firstShock:
    return {QT_TRANSLATE_NOOP("Papers", "What made the first shock come this soon?"),
            QT_TRANSLATE_NOOP("Papers", "Which step between power-on and the first shock took "
                                        "longest, and what would make it easier?")};
  case DebriefRule::firstCompression:
    return {nullptr,
            QT_TRANSLATE_NOOP("Papers", "Around %1, before the first compression: what could have "
                                        "run side by side?")};
  case DebriefRule::rate:
    return {QT_TRANSLATE_NOOP("Papers", "What kept the pace: counting, a metronome, a song?"),
            QT_TRANSLATE_NOOP("Papers", "Around %1: what did you keep the pace by, and could you "
                                        "hear it?")};
  case DebriefRule::rateSteady:
    return {nullptr, QT_TRANSLATE_NOOP("Papers", "What made the pace change around %1?")};
  default:
    return {nullptr, nullptr};
  }
}

Questions otherQuestionsOf(const Finding& finding) {
  switch (finding.rule) {
  case DebriefRule::depth:
    return {QT_TRANSLATE_NOOP("Papers",
                              "How did it feel to press this deep, and for how long could "
                              "you keep it up?"),
            finding.value > finding.target.high
                ? QT_TRANSLATE_NOOP("Papers", "How did you know around %1 that it was deep enough?")
                : QT_TRANSLATE_NOOP("Papers", "What made it hard to press deeper around %1: the "
                                              "ground, the height, tired arms?")};
  case DebriefRule::release:
    return {QT_TRANSLATE_NOOP("Papers", "What helped to come all the way up?"),
            QT_TRANSLATE_NOOP("Papers", "How tired were you around %1, and what would help to come "
                                        "all the way up?")};
  case DebriefRule::breaths:
    return {QT_TRANSLATE_NOOP("Papers", "How did compressions and breaths fit together so well?"),
            QT_TRANSLATE_NOOP("Papers",
                              "What made the breaths around %1 take %2: the mask, the head, "
                              "waiting for each other?")};
  case DebriefRule::halves:
    return {QT_TRANSLATE_NOOP("Papers", "What became easier as time went on?"),
            QT_TRANSLATE_NOOP("Papers", "What changed after %1: tired arms, changing over, the "
                                        "room?")};
  case DebriefRule::electrodes:
    return {QT_TRANSLATE_NOOP("Papers", "What helped to have the electrodes on this soon?"),
            QT_TRANSLATE_NOOP("Papers", "What was in the way of the electrodes: clothes, wet skin, "
                                        "room to kneel?")};
  case DebriefRule::adviceToShock:
    return {QT_TRANSLATE_NOOP("Papers", "How did everybody know to stand clear?"),
            QT_TRANSLATE_NOOP("Papers", "What happened between the advice and shock %3?")};
  default:
    return questionsOf(finding.rule);
  }
}

} // namespace

QString questionFor(const Finding& finding, const QString& when, const Words& say) {
  const Questions questions = otherQuestionsOf(finding);
  const char* question = finding.within ? questions.well : questions.practise;
  if (question == nullptr) {
    return {};
  }
  QString text = say(question);
  // Not every question names all three: no `arg`, which would complain.
  text.replace(QStringLiteral("%1"), when);
  text.replace(QStringLiteral("%2"), figureFor(finding, say));
  text.replace(QStringLiteral("%3"), QString::number(finding.shock));
  return text;
}

} // namespace afterbeat::papers::debrief
