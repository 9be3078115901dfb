#include "app/papers/debrief_words.h"
#include "app/papers/computed_length.h"

#include "app/papers/facts.h"

#include <QCoreApplication>

#include <cmath>

namespace afterbeat::papers::debrief {

namespace {

enum class Unit : std::uint8_t { seconds, share, perMinute, millimetres };

Unit unitOf(DebriefRule rule) {
  switch (rule) {
  case DebriefRule::handsOff:
  case DebriefRule::halves:
  case DebriefRule::rateSteady:
  case DebriefRule::release:
    return Unit::share;
  case DebriefRule::rate:
    return Unit::perMinute;
  case DebriefRule::depth:
    return Unit::millimetres;
  default:
    return Unit::seconds;
  }
}

QString lengthText(double s, const Words& say) {
  return say.length(computedLength(s));
}

/// With a decimal where the whole number would stand on the wrong side of a limit.
QString number(const Finding& finding, double scale, const Words& say) {
  const Range target{finding.target.low * scale, finding.target.high * scale};
  const double value = finding.value * scale;
  const bool tells = meets(std::round(value), finding.aim, target) == finding.within;
  return say.number(value, tells ? 0 : 1);
}

QString share(const Finding& finding, const Words& say) {
  const double whole = std::round(finding.value * 100);
  const bool tells = meets(whole / 100, finding.aim, finding.target) == finding.within;
  return tells ? say.percent(finding.value)
               : say(QT_TRANSLATE_NOOP("Papers", "%1 %")).arg(say.number(finding.value * 100, 1));
}

QString shockSentence(const Finding& finding, const QString& figure, const Words& say) {
  const bool before = finding.rule == DebriefRule::beforeShock;
  if (!finding.within) {
    return (before
                ? say(QT_TRANSLATE_NOOP("Papers", "Before shock %1 hands were off for %2."))
                : say(QT_TRANSLATE_NOOP("Papers", "After shock %1 hands were back on after %2.")))
        .arg(finding.shock)
        .arg(figure);
  }
  if (finding.of == 1) {
    return (before
                ? say(QT_TRANSLATE_NOOP("Papers", "Hands were off for only %1 before the shock."))
                : say(QT_TRANSLATE_NOOP("Papers", "After the shock hands were back on within %1.")))
        .arg(figure);
  }
  return (before
              ? say(QT_TRANSLATE_NOOP("Papers",
                                      "Hands were never off for more than %1 before a shock."))
              : say(QT_TRANSLATE_NOOP("Papers", "After every shock hands were back on within %1.")))
      .arg(figure);
}

QString pauseSentence(const Finding& finding, const Figures& figures, const QString& figure,
                      const Words& say) {
  if (finding.within) {
    return say(QT_TRANSLATE_NOOP("Papers", "No pause between compressions lasted longer than %1."))
        .arg(figure);
  }
  return say(QT_TRANSLATE_NOOP("Papers", "The longest pause lasted %1: %2."))
      .arg(figure, causeWords(*finding.pause, figures, say));
}

QString rateSentence(const Finding& finding, const Words& say) {
  const QString rate = say.number(finding.value);
  if (finding.within) {
    return say(QT_TRANSLATE_NOOP(
                   "Papers",
                   "Compressions kept the pace: %1 a minute on average, %2 within target."))
        .arg(rate, say.percent(*finding.beside));
  }
  return (finding.value > finding.target.high
              ? say(QT_TRANSLATE_NOOP("Papers",
                                      "Compressions were faster than the target: %1 a minute."))
              : say(QT_TRANSLATE_NOOP("Papers",
                                      "Compressions were slower than the target: %1 a minute.")))
      .arg(number(finding, 1, say));
}

QString depthSentence(const Finding& finding, const Words& say) {
  if (finding.within) {
    return say(QT_TRANSLATE_NOOP(
                   "Papers", "Compressions were deep enough: %1 mm on average, %2 within target."))
        .arg(say.number(finding.value), say.percent(*finding.beside));
  }
  return (finding.value > finding.target.high
              ? say(QT_TRANSLATE_NOOP(
                    "Papers", "Compressions went deeper than the target: %1 mm on average."))
              : say(QT_TRANSLATE_NOOP(
                    "Papers", "Compressions were less deep than the target: %1 mm on average.")))
      .arg(number(finding, 1, say));
}

QString halvesSentence(const Finding& finding, const QString& figure, const Words& say) {
  return (finding.within
              ? say(QT_TRANSLATE_NOOP("Papers", "It got better: hands were off for %1 of the first "
                                                "half and only %2 of the second."))
              : say(QT_TRANSLATE_NOOP("Papers", "It got harder: hands were off for %1 of the first "
                                                "half and %2 of the second.")))
      .arg(say.percent(*finding.beside), figure);
}

QString shareSentence(const Finding& finding, const QString& figure, const Words& say) {
  if (finding.rule == DebriefRule::rateSteady) {
    return say(QT_TRANSLATE_NOOP(
                   "Papers",
                   "The pace changed a lot: %1 of the compressions came within the target rate."))
        .arg(figure);
  }
  if (finding.rule == DebriefRule::release) {
    return (finding.within
                ? say(QT_TRANSLATE_NOOP("Papers",
                                        "The chest came all the way up after %1 of compressions."))
                : say(QT_TRANSLATE_NOOP(
                      "Papers", "The chest came all the way up after %1 of compressions; after "
                                "the others some weight stayed on it.")))
        .arg(figure);
  }
  return (finding.within
              ? say(QT_TRANSLATE_NOOP("Papers", "Hands stayed on: they were off the chest for only "
                                                "%1 of the time."))
              : say(QT_TRANSLATE_NOOP("Papers", "Hands were off the chest for %1 of the time.")))
      .arg(figure);
}

QString wayText(DebriefRule rule, const Words& say) {
  switch (rule) {
  case DebriefRule::firstShock:
    return say(QT_TRANSLATE_NOOP("Papers", "The first shock came %1 after power-on."));
  case DebriefRule::electrodes:
    return say(QT_TRANSLATE_NOOP("Papers", "The electrodes were on %1 after power-on."));
  case DebriefRule::firstCompression:
    return say(
        QT_TRANSLATE_NOOP("Papers", "The first compression came %1 after the electrodes were on."));
  default:
    return {};
  }
}

} // namespace

QString figureFor(const Finding& finding, const Words& say) {
  switch (unitOf(finding.rule)) {
  case Unit::share:
    return share(finding, say);
  case Unit::perMinute:
    return say(QT_TRANSLATE_NOOP("Papers", "%1/min")).arg(number(finding, 1, say));
  case Unit::millimetres:
    return say(QT_TRANSLATE_NOOP("Papers", "%1 mm")).arg(number(finding, 1, say));
  case Unit::seconds:
    break;
  }
  const bool tells =
      meets(std::round(finding.value), finding.aim, finding.target) == finding.within;
  return tells ? lengthText(finding.value, say)
               : say(QT_TRANSLATE_NOOP("Papers", "%1 s")).arg(say.number(finding.value, 1));
}

QString targetFor(const Finding& finding, const Words& say) {
  const Range& target = finding.target;
  switch (unitOf(finding.rule)) {
  case Unit::share:
    return finding.aim == Aim::atLeast
               ? say(QT_TRANSLATE_NOOP("Papers", "target at least %1")).arg(say.percent(target.low))
               : say(QT_TRANSLATE_NOOP("Papers", "target at most %1"))
                     .arg(say.percent(target.high));
  case Unit::perMinute:
    return say(QT_TRANSLATE_NOOP("Papers", "target %1–%2 a minute"))
        .arg(say.plainNumber(target.low), say.plainNumber(target.high));
  case Unit::millimetres:
    return say(QT_TRANSLATE_NOOP("Papers", "target %1–%2 mm"))
        .arg(say.plainNumber(target.low), say.plainNumber(target.high));
  case Unit::seconds:
    break;
  }
  return (finding.aim == Aim::below ? say(QT_TRANSLATE_NOOP("Papers", "target below %1 s"))
                                    : say(QT_TRANSLATE_NOOP("Papers", "target at most %1 s")))
      .arg(say.plainNumber(target.high));
}

QString sentenceFor(const Finding& finding, const Figures& figures, const Words& say) {
  const QString figure = figureFor(finding, say);
  switch (finding.rule) {
  case DebriefRule::longestPause:
    return pauseSentence(finding, figures, figure, say);
  case DebriefRule::beforeShock:
  case DebriefRule::afterShock:
    return shockSentence(finding, figure, say);
  case DebriefRule::rate:
    return rateSentence(finding, say);
  case DebriefRule::depth:
    return depthSentence(finding, say);
  case DebriefRule::halves:
    return halvesSentence(finding, figure, say);
  case DebriefRule::breaths:
    return (finding.within
                ? say(QT_TRANSLATE_NOOP("Papers", "Breaths were quick: no pause for them lasted "
                                                  "longer than %1."))
                : say(QT_TRANSLATE_NOOP("Papers", "The longest pause for breaths lasted %1.")))
        .arg(figure);
  case DebriefRule::adviceToShock:
    return say(QT_TRANSLATE_NOOP("Papers", "Shock %1 came %2 after it was advised."))
        .arg(finding.shock)
        .arg(figure);
  case DebriefRule::firstShock:
  case DebriefRule::electrodes:
  case DebriefRule::firstCompression:
    return wayText(finding.rule, say).arg(figure);
  default:
    return shareSentence(finding, figure, say);
  }
}

QStringList notTold(const Record& record, const Figures& figures, const Words& say) {
  QStringList parts;
  if (figures.evidence == Evidence::none) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "hands on and off, pace and depth"));
  } else {
    if (total(figures.arrest) < kLeastArrest) {
      parts << say(
          QT_TRANSLATE_NOOP("Papers", "hands on and off (less than a minute was recorded)"));
    }
    if (figures[MeasureId::compressionRate].status != Status::ok) {
      parts << say(QT_TRANSLATE_NOOP("Papers", "the pace of compressions"));
    }
    if (figures[MeasureId::compressionDepth].status != Status::ok) {
      parts << say(QT_TRANSLATE_NOOP("Papers", "the depth of compressions"));
    }
  }
  if (figures[MeasureId::ventilations].status != Status::ok) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "breaths"));
  }
  if (figures[MeasureId::shocksDelivered].status != Status::ok) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "shocks"));
  }
  if (lostLines(record) > 0) {
    parts << say(QT_TRANSLATE_NOOP("Papers", "what stood in the lines that were lost (a pause may "
                                             "be shorter than it looks)"));
  }
  return parts;
}

} // namespace afterbeat::papers::debrief
