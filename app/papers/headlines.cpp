#include "app/papers/headlines.h"
#include "app/papers/computed_length.h"

#include "app/papers/facts.h"
#include "app/papers/rows_model.h"

#include <QCoreApplication>

namespace afterbeat::papers {

namespace {

Headline begin(MeasureId id, const char* title, const Figures& figures, const Words& say) {
  Headline headline;
  headline.id = id;
  headline.title = say(title);
  headline.recorded = figures[id].status == Status::ok;
  headline.value = figures[id].status == Status::notApplicable
                       ? say(QT_TRANSLATE_NOOP("Papers", "not applicable"))
                       : notRecordedText(say);
  return headline;
}

/// "Hands off: 33 %, 2 min 52 s of 8 min 40 s; target at most 20 %, European guidelines 2021."
void close(Headline& headline) {
  QString sentence = QStringLiteral("%1: %2").arg(headline.title, headline.value);
  if (!headline.note.isEmpty()) {
    sentence += QStringLiteral(", ") + headline.note;
  }
  if (!headline.target.isEmpty()) {
    sentence += QStringLiteral("; ") + headline.target;
    if (!headline.source.isEmpty()) {
      sentence += QStringLiteral(", ") + headline.source;
    }
  }
  headline.sentence = sentence + QLatin1Char('.');
}

Duration lengthOf(const Measure& measure) {
  return computedLength(measure.value.value_or(0));
}

QString ownSource(MeasureId id) {
  const std::string_view source = measureInfo(id).source;
  return QString::fromUtf8(source.data(), static_cast<qsizetype>(source.size()));
}

Headline timeOnHeadline(const Record& record, const Figures& figures, const Words& say) {
  Headline headline =
      begin(MeasureId::timeOn, QT_TRANSLATE_NOOP("Papers", "Device on for"), figures, say);
  headline.source = ownSource(MeasureId::timeOn);
  // Switched on and nothing more: no length is known.
  const TimeOnWords words = timeOnWords(record, figures, say);
  headline.recorded = !words.length.isEmpty();
  if (headline.recorded) {
    headline.value = words.length;
    if (words.atLeast) {
      headline.note = say(QT_TRANSLATE_NOOP("Papers", "at least: the end was not recorded"));
    } else if (const auto on = firstOf<entry::PowerOn>(record);
               on && clockTrust(record) != ClockTrust::none) {
      headline.note =
          say(QT_TRANSLATE_NOOP("Papers", "from %1")).arg(momentWords(record, *on, say));
    }
  }
  return headline;
}

Headline shocksHeadline(const Record& record, const Figures& figures, const Words& say) {
  Headline headline =
      begin(MeasureId::shocksDelivered, QT_TRANSLATE_NOOP("Papers", "Shocks given"), figures, say);
  headline.source = ownSource(MeasureId::shocksDelivered);
  const ShockCount count = countShocks(record, figures);
  headline.recorded = count.given.has_value();
  headline.value = count.given ? QString::number(*count.given) : notRecordedText(say);
  // What makes the number doubtful stands first: the end of a long note may be cut.
  QStringList notes;
  if (count.linesLost && count.given) {
    notes << say(QT_TRANSLATE_NOOP("Papers", "may be more: lines were lost"));
  } else if (count.mayBeMore && count.given) {
    notes << say(QT_TRANSLATE_NOOP("Papers", "may be more: recording broke off"));
  }
  if (count.withheld > 0) {
    notes << say(QT_TRANSLATE_NOOP("Papers", "%1 prepared, not given")).arg(count.withheld);
  }
  if (const ShockFigures* last = lastDelivered(figures)) {
    notes << say(QT_TRANSLATE_NOOP("Papers", "last %1")).arg(momentWords(record, last->t, say));
  }
  if (count.unknown > 0) {
    notes << (count.given ? say(QT_TRANSLATE_NOOP("Papers", "%1 more: delivery not recorded"))
                          : say(QT_TRANSLATE_NOOP("Papers", "%1 noted, delivery not recorded")))
                 .arg(count.unknown);
  }
  headline.note = notes.join(QStringLiteral(", "));
  return headline;
}

Headline handsOffHeadline(const Record& record, const Figures& figures, const Words& say) {
  const Profile& profile = figures.settings.profile;
  Headline headline =
      begin(MeasureId::handsOffFraction, QT_TRANSLATE_NOOP("Papers", "Hands off"), figures, say);
  const Measure& share = figures[MeasureId::handsOffFraction];
  if (headline.recorded) {
    headline.value = say.percent(*share.value);
    headline.note = say(QT_TRANSLATE_NOOP("Papers", "%1 of %2"))
                        .arg(say.length(computedLength(share.numerator.value_or(0))),
                             say.length(computedLength(share.denominator.value_or(0))));
  }
  const auto& target = profile.fractionTarget ? profile.fractionTarget : profile.fractionLeast;
  if (target && adultTargetsHold(record)) {
    headline.target =
        say(QT_TRANSLATE_NOOP("Papers", "target at most %1")).arg(say.percent(1 - target->value));
    headline.source = citationWords(profile, target->source, say);
    headline.beyondTarget = headline.recorded && *share.value > 1 - target->value;
  }
  return headline;
}

Headline firstShockHeadline(const Figures& figures, const Words& say) {
  const bool fromPower = figures[MeasureId::powerOnToFirstShock].status == Status::ok ||
                         figures[MeasureId::electrodesToFirstShock].status != Status::ok;
  const MeasureId id =
      fromPower ? MeasureId::powerOnToFirstShock : MeasureId::electrodesToFirstShock;
  Headline headline = begin(id, QT_TRANSLATE_NOOP("Papers", "To the first shock"), figures, say);
  headline.source = ownSource(id);
  const Measure& given = figures[MeasureId::shocksDelivered];
  if (headline.recorded) {
    headline.value = say.length(lengthOf(figures[id]));
    headline.note = fromPower ? say(QT_TRANSLATE_NOOP("Papers", "from device on"))
                              : say(QT_TRANSLATE_NOOP("Papers", "from electrodes on"));
  } else if (given.value && *given.value == 0) {
    headline.value = say(QT_TRANSLATE_NOOP("Papers", "no shock given"));
  }
  return headline;
}

Headline rateHeadline(const Figures& figures, const Words& say) {
  const Profile& profile = figures.settings.profile;
  Headline headline = begin(MeasureId::compressionRateInRange,
                            QT_TRANSLATE_NOOP("Papers", "Rate in range"), figures, say);
  if (headline.recorded) {
    headline.value = say.percent(*figures[MeasureId::compressionRateInRange].value);
  }
  if (const Measure& rate = figures[MeasureId::compressionRate]; rate.value) {
    const Verdict verdict = rateVerdict(figures);
    headline.beyondTarget =
        headline.recorded && (verdict == Verdict::below || verdict == Verdict::above);
    headline.note =
        (verdict == Verdict::above ? say(QT_TRANSLATE_NOOP("Papers", "mean %1 a minute: too fast"))
         : verdict == Verdict::below
             ? say(QT_TRANSLATE_NOOP("Papers", "mean %1 a minute: too slow"))
             : say(QT_TRANSLATE_NOOP("Papers", "mean %1 a minute")))
            .arg(say.number(*rate.value));
  }
  if (profile.ratePerMin) {
    headline.target = say(QT_TRANSLATE_NOOP("Papers", "target %1–%2 a minute"))
                          .arg(say.plainNumber(profile.ratePerMin->value.low),
                               say.plainNumber(profile.ratePerMin->value.high));
    headline.source = citationWords(profile, profile.ratePerMin->source, say);
  }
  return headline;
}

Headline longestPauseHeadline(const Record& record, const Figures& figures, const Words& say) {
  const Profile& profile = figures.settings.profile;
  Headline headline =
      begin(MeasureId::longestPause, QT_TRANSLATE_NOOP("Papers", "Longest pause"), figures, say);
  const Pause* longest = longestPause(figures);
  if (headline.recorded && longest != nullptr) {
    headline.value = say.length(longest->stretch.length());
    headline.note = causeWords(*longest, figures, say);
  } else if (headline.recorded) {
    headline.value = say(QT_TRANSLATE_NOOP("Papers", "no pause"));
    headline.note = say(QT_TRANSLATE_NOOP("Papers", "none longer than %1 s"))
                        .arg(say.plainNumber(seconds(figures.settings.pauseThreshold)));
  }
  const PauseCause cause = longest != nullptr ? longest->cause : PauseCause::noReasonRecorded;
  const bool holds = cause != PauseCause::beforeFirst || adultTargetsHold(record);
  if (const auto limit = holds ? limitFor(profile, cause) : std::nullopt) {
    const bool breaths = profile.breathPauseLimit &&
                         (cause == PauseCause::breaths || cause == PauseCause::breathsLong);
    const auto& target = breaths ? profile.breathPauseLimit : profile.pauseLimit;
    headline.target =
        say(QT_TRANSLATE_NOOP("Papers", "target at most %1 s")).arg(say.plainNumber(*limit));
    headline.source = citationWords(profile, target->source, say);
    headline.beyondTarget =
        headline.recorded && longest != nullptr && seconds(longest->stretch.length()) > *limit;
  }
  return headline;
}

} // namespace

std::vector<Headline> headlines(const Record& record, const Figures& figures, const Words& words) {
  std::vector<Headline> all{
      timeOnHeadline(record, figures, words),
      shocksHeadline(record, figures, words),
      handsOffHeadline(record, figures, words),
      firstShockHeadline(figures, words),
      rateHeadline(figures, words),
      longestPauseHeadline(record, figures, words),
  };
  for (Headline& headline : all) {
    close(headline);
  }
  return all;
}

} // namespace afterbeat::papers
