#include "app/window/signals/feature_words.h"

#include "app/window/look/look.h"
#include "app/window/signals/hint_working.h"
#include "app/window/signals/rhythms.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cmath>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// The core's names, here for their translation.
[[maybe_unused]] constexpr std::array kNames{
    QT_TRANSLATE_NOOP("afterbeat::window", "Leakage of the fibrillation filter"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Slow repeating beats"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Likeness of the beats"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Large samples between 13 and 16.5 Hz"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Evenness of the amplitude"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Threshold crossing sample count"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Complexity"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Lowest autocorrelation"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Median to 98th percentile of the slope"),
    QT_TRANSLATE_NOOP("afterbeat::window", "Slow repeating waves")};

/// With a true minus.
QString plainNumber(double value) {
  const QString number = words().number(std::fabs(value), 2);
  return value < -0.005 ? QStringLiteral("−") + number : number;
}

/// With its sign, also of a positive number.
QString signedNumber(double value, int decimals) {
  const QString number = words().number(std::fabs(value), decimals);
  const bool zero = std::fabs(value) < 0.5 * std::pow(10.0, -decimals);
  return (zero ? QString() : value > 0 ? QStringLiteral("+") : QStringLiteral("−")) + number;
}

QString speaksFor(double share) {
  // A tenth of a unit of log-odds moves a probability by a fortieth at most.
  constexpr double kNothing = 0.1;
  if (std::fabs(share) < kNothing) {
    return tr("neither");
  }
  return share > 0 ? tr("shockable") : tr("not shockable");
}

QString rateWords(const Repetition& repeat) {
  return repeat.correlation > 0
             ? tr("%1 a minute (correlation %2)")
                   .arg(words().number(repeat.ratePerMin), words().number(repeat.correlation, 2))
             : tr("none");
}

QString millivolts(double value) {
  return words().number(value, 2);
}

/// The rules beside the model that had a say.
QStringList rulesOf(const RhythmWindow& window) {
  using namespace rhythm_limits;
  const WindowMeasures& measures = window.measures;
  QStringList rules;
  if (window.is == RhythmKind::asystole) {
    rules << tr("Nearly all of it is below %1 mV: asystole, whatever its shape.")
                 .arg(millivolts(kAsystoleMv));
  } else if (window.is == RhythmKind::organised && measures.amplitudeMv < kAsystoleMv) {
    rules << tr("Clear beats, alike and far apart, stand out of a flat line: organised.");
  } else if (window.wideAndFast) {
    rules << tr("Wide, but it repeats itself at less than %1 a minute, or its beats are alike and "
                "slow: a rule counts this window as organised.")
                 .arg(words().number(kShockableRatePerMin));
  } else if (isSlowAndRegular(measures) || hasSlowLikeBeats(measures) ||
             hasNarrowComplexes(measures)) {
    rules << tr("Regular and slow, beats alike and slow, or narrow complexes: a rule counts this "
                "window as organised.");
  }
  if (window.reason == RhythmReason::betweenFibrillationAndAsystole) {
    rules << tr("Its amplitude lies between %1 and %2 mV.")
                 .arg(millivolts(kAsystoleMv), millivolts(kCoarseMv));
  } else if (window.reason == RhythmReason::undecided && window.smoothedLogOdds >= kUndecided) {
    rules << tr("Waves that rest for a second are not called shockable.");
  }
  if (window.doubt != RhythmReason::none && window.reason != window.doubt) {
    rules << tr("A doubt, %1, does not change the decision.")
                 .arg(rhythmReasonWords(std::string(wordsOf(window.doubt))));
  }
  return rules;
}

} // namespace

std::vector<FeatureShown> featuresOf(const RhythmWindow& window) {
  std::vector<std::pair<double, FeatureShown>> all;
  for (std::size_t i = 0; i < kRhythmFeatures; ++i) {
    const auto feature = static_cast<RhythmFeature>(i);
    const FeatureWeight& weight = rhythmModel().weights[i];
    const double value = window.measures.of(feature);
    const double share = weight.speaksFor(value);
    all.push_back({std::fabs(share),
                   {tr(std::string(nameOf(feature)).c_str()), plainNumber(value),
                    plainNumber(weight.limit), speaksFor(share), signedNumber(share, 2)}});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<FeatureShown> features;
  for (auto& [size, feature] : all) {
    features.push_back(std::move(feature));
  }
  return features;
}

QString factWords(const RhythmWindow& window) {
  const WindowMeasures& measures = window.measures;
  QStringList lines{tr("Amplitude in a second, peak to peak: %1 mV (median), %2 to %3 mV.")
                        .arg(words().number(measures.amplitudeMv, 2),
                             words().number(measures.smallestMv, 2),
                             words().number(measures.largestMv, 2)),
                    tr("The ECG repeats itself: %1; its slopes: %2.")
                        .arg(rateWords(measures.repeat), rateWords(measures.slopeRepeat))};
  if (measures.beats > 1) {
    lines << tr("Peaks taken for beats: %1, at %2 a minute.")
                 .arg(measures.beats)
                 .arg(words().number(measures.beatRatePerMin));
  }
  lines << tr("Log-odds of shockable: %1 of this window alone, %2 with its neighbours; nearer to 0 "
              "than %3 is no decision.")
               .arg(signedNumber(window.logOdds, 2), signedNumber(window.smoothedLogOdds, 2),
                    words().number(rhythm_limits::kUndecided, 1));
  return lines.join(QLatin1Char('\n'));
}

QString decisionWords(const RhythmWindow& window) {
  QStringList sentences{tr("Decision: %1.").arg(rhythmWords(window.is))};
  if (window.is == RhythmKind::unclear && window.reason != RhythmReason::none) {
    sentences << tr("Reason: %1.").arg(rhythmReasonWords(std::string(wordsOf(window.reason))));
  }
  if (window.obstacle == RhythmReason::none) {
    sentences << rulesOf(window);
  }
  return sentences.join(QLatin1Char(' '));
}

} // namespace afterbeat::window
