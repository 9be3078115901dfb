#include "app/window/signals/shock_words.h"

#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/signals/rhythms.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QString obstacleWords(EcgObstacle why) {
  switch (why) {
  case EcgObstacle::notRecorded:
    return tr("no ECG was recorded here");
  case EcgObstacle::rateTooLow:
    return tr("too few samples a second");
  case EcgObstacle::missingSamples:
    return tr("missing samples");
  case EcgObstacle::saturated:
    return tr("saturation");
  case EcgObstacle::electrodesOff:
    return tr("electrodes off");
  case EcgObstacle::spikes:
    return tr("pacing spikes");
  case EcgObstacle::noise:
    return tr("noise");
  case EcgObstacle::compressions:
    return tr("chest compressions");
  case EcgObstacle::notFibrillation:
    return tr("no fibrillation");
  case EcgObstacle::rhythmUnclear:
    break;
  }
  return tr("rhythm unclear");
}

} // namespace

QString beforeShockWords(const ShockRhythm& shock) {
  if (!shock.before) {
    return tr("not told: %1").arg(obstacleWords(shock.before.error()));
  }
  return shock.before->coarse() ? tr("coarse fibrillation") : tr("fine fibrillation");
}

QString afterShockWords(const ShockRhythm& shock) {
  switch (shock.after) {
  case AfterShock::ended:
    return tr("fibrillation ended within 5 s");
  case AfterShock::wentOn:
    return tr("fibrillation went on");
  case AfterShock::notKnown:
    break;
  }
  if (!shock.whyNotKnown) {
    return tr("not known");
  }
  const QString why =
      shock.reason.empty() ? obstacleWords(*shock.whyNotKnown) : rhythmReasonWords(shock.reason);
  return tr("not known: %1").arg(why);
}

QString followedWords(const ShockRhythm& shock) {
  if (!shock.followed) {
    return tr("nothing clear");
  }
  QString words = rhythmWords(*shock.followed);
  if (shock.followedRatePerMin) {
    words += QLatin1Char(' ') + afterbeat::window::words().number(*shock.followedRatePerMin);
  }
  if (shock.returned) {
    words += QStringLiteral(", ") +
             tr("fibrillation again after %1").arg(lengthWords(*shock.returned - shock.shock));
  }
  return words;
}

QString shockTip(const ShockRhythm& shock) {
  QStringList lines{tr("Before the shock: %1").arg(beforeShockWords(shock))};
  if (shock.before) {
    lines << tr("amplitude %1 mV, dominant frequency %2 Hz, AMSA %3 mV·Hz")
                 .arg(words().number(shock.before->amplitudeMv, 2),
                      words().number(shock.before->dominantHz, 1),
                      words().number(shock.before->amsaMvHz, 1));
  }
  lines << tr("After it: %1").arg(afterShockWords(shock))
        << tr("Then: %1").arg(followedWords(shock)) << tr("derived from the ECG") << cautionWords();
  return lines.join(QLatin1Char('\n'));
}

const ShockRhythm* judgedAt(const std::vector<ShockRhythm>& shocks, Time t) {
  const auto found =
      std::lower_bound(shocks.begin(), shocks.end(), t,
                       [](const ShockRhythm& one, Time moment) { return one.shock < moment; });
  return found != shocks.end() && found->shock == t ? &*found : nullptr;
}

} // namespace afterbeat::window
