#include "core/signal/rhythm/judge.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

using namespace rhythm_limits;

/// Own log-odds count up to this.
constexpr double kMostLogOdds = 6;
/// What a window counts at most that a rule makes organised.
constexpr double kRuleLogOdds = -3;
/// Neighbours on each side that take part.
constexpr std::size_t kNeighbours = 2;

/// Noise hides what stands in a window unless beats stand out of it all the same.
constexpr double kLikeDespiteNoise = 0.8;
constexpr double kClearlyShockable = 3;
constexpr double kRegular = 0.8;

/// A few clear beats far apart: most seconds are flat, and still it is no asystole.
bool hasRareBeats(const WindowMeasures& m) {
  return m.beats >= 3 && m.beatRatePerMin <= 60 && m.of(RhythmFeature::likeBeats) >= 0.9 &&
         m.largestMv >= 2 * kAsystoleMv;
}

/// A second of rest, which neither fibrillation nor a fast tachycardia has.
bool rests(const WindowMeasures& m) {
  return m.smallestMv < kAsystoleMv && m.smallestMv < 0.25 * m.largestMv;
}

void smooth(std::span<RhythmWindow> windows) {
  const auto usable = [&](std::size_t i) {
    return windows[i].obstacle == RhythmReason::none && !isFlat(windows[i].measures);
  };
  for (std::size_t i = 0; i < windows.size(); ++i) {
    double sum = windows[i].logOdds, count = 1;
    for (const bool forwards : {false, true}) {
      for (std::size_t k = 1; k <= kNeighbours; ++k) {
        if (forwards ? i + k >= windows.size() : k > i) {
          break;
        }
        const auto other = forwards ? i + k : i - k;
        if (!usable(other)) {
          break;
        }
        sum += windows[other].logOdds;
        ++count;
      }
    }
    windows[i].smoothedLogOdds = sum / count;
  }
}

/// Rhythms that the model knows too little of.
bool isOrganisedByRule(const WindowMeasures& m) {
  return isSlowAndRegular(m) || hasSlowLikeBeats(m) || hasNarrowComplexes(m);
}

/// What forbids a judgement, beyond the window's obstacle.
RhythmReason doubtAbout(const RhythmWindow& w) {
  const auto& m = w.measures;
  const bool organised = !isFlat(m) && w.smoothedLogOdds < 0;
  if (w.doubt == RhythmReason::noise && organised &&
      m.of(RhythmFeature::likeBeats) >= kLikeDespiteNoise) {
    return RhythmReason::none;
  }
  // A pacemaker goes on in fibrillation; without it, beats may be all its pulses.
  if (w.doubt == RhythmReason::pacingSpikes && !isFlat(m) &&
      w.smoothedLogOdds >= kClearlyShockable) {
    return RhythmReason::none;
  }
  if (w.doubt == RhythmReason::none && !isFlat(m) && m.crossingHz > kFastestHz) {
    return RhythmReason::noise;
  }
  return w.doubt;
}

void decide(RhythmWindow& w) {
  const auto say = [&w](RhythmKind is, RhythmReason reason) {
    w.is = is;
    w.reason = reason;
  };
  const auto& m = w.measures;
  if (w.obstacle != RhythmReason::none) {
    say(RhythmKind::unclear, w.obstacle);
  } else if (const auto doubt = doubtAbout(w); doubt != RhythmReason::none) {
    say(RhythmKind::unclear, doubt);
  } else if (isFlat(m)) {
    say(RhythmKind::asystole, RhythmReason::none);
  } else if (m.amplitudeMv < kAsystoleMv) {
    say(RhythmKind::organised, RhythmReason::none);
  } else if (std::fabs(w.smoothedLogOdds) < kUndecided) {
    say(RhythmKind::unclear, RhythmReason::undecided);
  } else if (w.smoothedLogOdds < 0) {
    say(RhythmKind::organised, RhythmReason::none);
  } else if (rests(m)) {
    say(RhythmKind::unclear, RhythmReason::undecided);
  } else if (m.amplitudeMv < kCoarseMv) {
    say(RhythmKind::unclear, RhythmReason::betweenFibrillationAndAsystole);
  } else {
    say(RhythmKind::shockable, RhythmReason::none);
  }
}

} // namespace

std::string_view wordsOf(RhythmReason reason) {
  switch (reason) {
  case RhythmReason::none:
    return "";
  case RhythmReason::compressions:
    return "chest compressions";
  case RhythmReason::electrodes:
    return "electrodes";
  case RhythmReason::saturation:
    return "saturation";
  case RhythmReason::noise:
    return "noise";
  case RhythmReason::pacingSpikes:
    return "pacing spikes";
  case RhythmReason::tooShort:
    return "too short";
  case RhythmReason::betweenFibrillationAndAsystole:
    return "between fibrillation and asystole";
  case RhythmReason::undecided:
    return "neither clearly shockable nor clearly not";
  case RhythmReason::samplingRate:
    return "too few samples a second";
  }
  return "";
}

bool isFlat(const WindowMeasures& window) {
  return window.amplitudeMv < kAsystoleMv && !hasRareBeats(window);
}

bool hasSlowLikeBeats(const WindowMeasures& window) {
  return window.beats >= 3 && window.of(RhythmFeature::likeBeats) >= 0.93 &&
         window.beatRatePerMin <= 130;
}

bool hasNarrowComplexes(const WindowMeasures& window) {
  const auto repeats = [](const Repetition& repeat) {
    return repeat.correlation >= 0.6 && repeat.ratePerMin < 230;
  };
  return window.sharpness >= 30 && window.of(RhythmFeature::restlessness) < 0.15 &&
         repeats(window.repeat) && repeats(window.slopeRepeat);
}

bool isRegular(const WindowMeasures& window) {
  return window.repeat.correlation >= kRegular;
}

bool isSlowAndRegular(const WindowMeasures& window) {
  const auto& repeat = window.repeat;
  return isRegular(window) &&
         repeat.ratePerMin < kShockableRatePerMin - 150 * (1 - repeat.correlation);
}

void judgeWindows(std::span<RhythmWindow> windows, const RhythmModel& model) {
  for (auto& w : windows) {
    w.logOdds = std::clamp(model.logOdds(w.measures), -kMostLogOdds, kMostLogOdds);
    if (isOrganisedByRule(w.measures)) {
      w.wideAndFast = w.logOdds > 0 && !hasNarrowComplexes(w.measures);
      w.logOdds = std::min(w.logOdds, kRuleLogOdds);
    }
  }
  smooth(windows);
  for (auto& w : windows) {
    decide(w);
  }
}

double organisedRate(const WindowMeasures& window) {
  if (window.slopeRepeat.correlation >= 0.5) {
    return window.slopeRepeat.ratePerMin;
  }
  return window.beatRatePerMin;
}

} // namespace afterbeat
