#include "samples/body/heart.h"

#include <algorithm>

namespace afterbeat::samples::body {

namespace {

/// Mean height of hiss of deviation 1 around one frequency is 1.25; smoothing takes a tenth.
constexpr double kHeight = 1.1 / 1.25;

/// How far before and after its main wave a beat reaches, s.
constexpr double kReachBefore = 0.4, kReachAfter = 0.9;

// Forms after textbook lengths: P 0.1 s, QRS 0.08 to 0.1 s narrow, 0.14 to 0.18 s wide, QT with the
// square root of the interval. From memory.

std::vector<Hump> narrow(Dice& dice, double interval) {
  const double root = std::sqrt(std::clamp(interval, 0.25, 1.5));
  const double pr = std::min(dice.between(0.14, 0.18), 0.35 * interval);
  return {{-pr, 0.02, 0.02, dice.between(0.07, 0.15)},
          {-0.026, 0.007, 0.007, -dice.between(0.05, 0.12)},
          {0, 0.010, 0.011, dice.between(0.8, 1.2)},
          {0.028, 0.009, 0.010, -dice.between(0.12, 0.32)},
          {0.29 * root, 0.055 * root, 0.035 * root, dice.between(0.18, 0.34)}};
}

std::vector<Hump> wide(Dice& dice, double interval, bool conducted) {
  const double root = std::sqrt(std::clamp(interval, 0.3, 1.5));
  std::vector<Hump> form{{-0.02, 0.024, 0.022, dice.between(0.3, 0.5)},
                         {0.035, 0.024, 0.028, dice.between(0.22, 0.45)},
                         {0.105, 0.02, 0.024, -dice.between(0.12, 0.35)},
                         {0.33 * root, 0.07 * root, 0.05 * root, -dice.between(0.15, 0.32)}};
  if (conducted) {
    form.push_back({-0.19, 0.022, 0.022, dice.between(0.06, 0.12)});
  }
  return form;
}

std::vector<Hump> tachycardia(Dice& dice, double interval) {
  const double side = dice.between(0, 1) < 0.5 ? -1 : 1, wave = side * dice.between(0.8, 1.5);
  return {{0, 0.12 * interval, 0.11 * interval, wave},
          {0.1 * interval, 0.05 * interval, 0.05 * interval, -0.2 * wave},
          {0.45 * interval, 0.16 * interval, 0.13 * interval, -dice.between(0.4, 0.7) * wave}};
}

std::vector<Hump> agonal(Dice& dice) {
  return {{0, 0.05, 0.07, dice.between(0.25, 0.5)},
          {0.2, 0.05, 0.06, -dice.between(0.08, 0.2)},
          {0.45, 0.1, 0.09, -dice.between(0.05, 0.15)}};
}

double heightOf(const std::vector<Hump>& form, double d) {
  double sum = 0;
  for (const Hump& h : form) {
    const double x = (d - h.at) / (d < h.at ? h.before : h.after);
    if (x > -4 && x < 4) {
      sum += h.height * bell(x);
    }
  }
  return sum;
}

} // namespace

Fibrillation::Fibrillation(double rateHz, Dice& seeds)
    : rateHz_(rateHz), pointed_(seeds.between(-0.22, 0.22)), middle_(seeds.between(4.6, 5.8)),
      smooth_(std::min(1.0, 80 / rateHz)), main_(middle_, 0.9, rateHz, seeds),
      above_(1.6 * middle_, 1.8, rateHz, seeds), below_(0.6 * middle_, 1, rateHz, seeds),
      drift_(6, rateHz, seeds), strength_(4, rateHz, seeds) {}

double Fibrillation::next(double amplitude) {
  const double drift = drift_.next();
  if (--untilTuned_ < 0) {
    untilTuned_ = static_cast<int>(rateHz_ / 8);
    const double slower = amplitude < 0.2 ? 0.75 + amplitude : 1; // 0.1 mV: four fifths
    const double hz = slower * std::clamp(middle_ + 0.5 * drift, 3.2, 7.0);
    main_.tune(hz);
    above_.tune(1.6 * hz);
    below_.tune(0.6 * hz);
  }
  const double strength = std::clamp(1 + 0.2 * strength_.next(), 0.5, 1.6);
  const double sum = (main_.next() + 0.45 * above_.next() + 0.3 * below_.next()) / 1.14;
  // The fronts are broad: no waves of 20 Hz and more.
  once_ += smooth_ * (sum + pointed_ * (sum * sum - 1) - once_);
  twice_ += smooth_ * (once_ - twice_);
  return kHeight * amplitude * strength * twice_;
}

Heart::Heart(const Body& body, double rateHz)
    : rhythm_(body.rhythm), seeds_(diceFor(body, 10)), fibrillation_(rateHz, seeds_) {
  Dice dice = diceFor(body, 9);
  for (const auto& rhythm : rhythm_) {
    addBeats(rhythm, dice);
  }
}

void Heart::addBeats(const TrueRhythm& rhythm, Dice& dice) {
  const bool beating = rhythm.is == RhythmKind::organised || rhythm.is == RhythmKind::shockable;
  if (!beating || rhythm.rate <= 0) {
    return;
  }
  const double interval = 60 / rhythm.rate;
  double unsteady = 0.012;
  if (rhythm.is == RhythmKind::shockable) {
    forms_.push_back(tachycardia(dice, interval));
  } else if (!rhythm.wide) {
    forms_.push_back(narrow(dice, interval));
  } else if (rhythm.rate < 25) {
    forms_.push_back(agonal(dice));
    unsteady = 0.2;
  } else {
    forms_.push_back(wide(dice, interval, rhythm.rate >= 50));
    unsteady = 0.025;
  }
  const double breath = dice.between(3, 6); // seconds of a breath, which the beats follow a little
  double s = seconds(rhythm.from) + dice.between(0.2, 0.2 + 0.5 * interval);
  while (s < seconds(rhythm.to)) {
    beats_.push_back({s, 1 + 0.04 * dice.normal(), forms_.size() - 1});
    const double swing = rhythm.wide ? 0 : 0.02 * sineOfTurns(s / breath);
    s += interval * std::max(0.4, 1 + swing + unsteady * dice.normal());
  }
}

double Heart::next(double s) {
  while (at_ < rhythm_.size() && seconds(rhythm_[at_].to) <= s) {
    ++at_;
  }
  while (firstBeat_ < beats_.size() && beats_[firstBeat_].s + kReachAfter < s) {
    ++firstBeat_;
  }
  double mv = 0;
  for (std::size_t i = firstBeat_; i < beats_.size() && beats_[i].s - kReachBefore < s; ++i) {
    mv += beats_[i].size * heightOf(forms_[beats_[i].form], s - beats_[i].s);
  }
  if (at_ < rhythm_.size() && seconds(rhythm_[at_].from) <= s) {
    const TrueRhythm& now = rhythm_[at_];
    if (now.is == RhythmKind::shockable && now.rate <= 0) {
      mv += ramp((s - seconds(now.from)) / 0.4) * fibrillation_.next(now.amplitude);
    }
  }
  return mv;
}

double Pulse::at(double s) {
  while (first_ < beats_.size() && beats_[first_] + 1 < s) {
    ++first_;
  }
  double sum = 0;
  for (std::size_t i = first_; i < beats_.size() && beats_[i] < s; ++i) {
    const double d = s - beats_[i] - 0.25; // the wave comes a quarter of a second after the beat
    sum += bell(d / (d < 0 ? 0.06 : 0.12));
  }
  return sum;
}

std::vector<double> beatsOf(const Body& body) {
  const Heart heart(body, 250);
  std::vector<double> moments;
  for (const Beat& beat : heart.beats()) {
    moments.push_back(beat.s);
  }
  return moments;
}

} // namespace afterbeat::samples::body
