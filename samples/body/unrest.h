/// What disturbs a signal: hiss, wandering, resonances, jolts. All of it from dice, additions and
/// multiplications, the same on every machine. Each has dice of its own, seeded by those it is made
/// with, so that it does not matter in which order they are asked.
#pragma once

#include "samples/dice.h"

#include <cstddef>
#include <vector>

namespace afterbeat::samples::body {

/// About normal, mean 0 and deviation 1, never beyond 5: quicker than `Dice::normal`.
[[nodiscard]] double grain(Dice& dice);

/// Hiss below a corner frequency, mean 0 and deviation 1 in the long run.
class Hiss {
public:
  /// `cornerHz` > 0; at half the rate and above it is white.
  Hiss(double cornerHz, double rateHz, Dice& seeds);
  double next();

private:
  Dice dice_;
  double keep_, fresh_, value_ = 0;
};

/// Hiss around one frequency, like something heavy on springs that is shaken: mean 0, deviation 1.
class Resonance {
public:
  /// `widthHz`: between the points of half power.
  Resonance(double hz, double widthHz, double rateHz, Dice& seeds);
  double next();
  /// From here on around another frequency.
  void tune(double hz);

private:
  Dice dice_;
  double rateHz_, keep_, fresh_;
  double cosine_ = 1, sine_ = 0, real_ = 0, imaginary_ = 0;
};

/// A slow walk around 0 that is pulled back: deviation 1, forgets itself in `seconds`.
class Walk {
public:
  Walk(double seconds, double rateHz, Dice& seeds) : hiss_(1 / (kTwoPi * seconds), rateHz, seeds) {}
  double next() { return hiss_.next(); }

private:
  static constexpr double kTwoPi = 6.283185307179586;
  Hiss hiss_;
};

/// A floor of a vehicle that drives: the body bounces on its springs at 1.2 to 2.1 Hz (three tenths
/// of the power), the wheels hop at 9 to 14 Hz (nearly half), the rest is road and engine. It
/// drives now harder, now softer. Deviation about 1. Shares are the author's guess.
class Vehicle {
public:
  Vehicle(double rateHz, Dice& seeds);
  double next();

private:
  Resonance bounce_, hop_, engine_;
  Hiss road_;
  Walk strength_;
};

/// Something that happens at once and fades: an electrode that is pulled, a cable that swings.
struct Jolt {
  double s = 0;
  /// A share of the usual, either sign.
  double size = 0;
  /// Seconds in which it fades to a third.
  double fade = 1;
};

/// Jolts in time order between `from` and `to`, so many a minute on average.
[[nodiscard]] std::vector<Jolt> joltsBetween(double from, double to, double perMinute, Dice& dice);

/// The sum of jolts along a time that goes in equal steps.
class Jolted {
public:
  Jolted(const std::vector<Jolt>& jolts, double rateHz) : jolts_(&jolts), rateHz_(rateHz) {}
  double next(double s);

private:
  struct Fading {
    double aim, value, keep;
  };
  const std::vector<Jolt>* jolts_;
  double rateHz_;
  std::size_t next_ = 0;
  std::vector<Fading> fading_;
};

/// About exp(-x^2 / 2), and 0 from |x| = 4 on.
[[nodiscard]] double bell(double x);

/// From 0 (x <= 0) smoothly to 1 (x >= 1).
[[nodiscard]] double ramp(double x);

} // namespace afterbeat::samples::body
