#include "samples/body/unrest.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::samples::body {

namespace {

constexpr double kPi = 3.141592653589793;

/// What is kept of a value from one sample to the next so that it forgets itself with this corner.
double keepOf(double cornerHz, double rateHz) {
  return std::max(0.0, 1 - 2 * kPi * cornerHz / (rateHz + kPi * cornerHz));
}

} // namespace

double grain(Dice& dice) {
  // Eight numbers of 16 bits out of two of 64, summed: deviation 65536 sqrt(8 / 12).
  std::uint64_t sum = 0;
  for (int i = 0; i < 2; ++i) {
    const std::uint64_t bits = dice.next();
    sum += (bits & 0xffffU) + (bits >> 16U & 0xffffU) + (bits >> 32U & 0xffffU) + (bits >> 48U);
  }
  constexpr double kMiddle = 4 * 65535.0, kDeviation = 53510.3;
  return (static_cast<double>(sum) - kMiddle) / kDeviation;
}

Hiss::Hiss(double cornerHz, double rateHz, Dice& seeds)
    : dice_(seeds.next()), keep_(keepOf(cornerHz, rateHz)), fresh_(std::sqrt(1 - keep_ * keep_)) {}

double Hiss::next() {
  value_ = keep_ * value_ + fresh_ * grain(dice_);
  return value_;
}

Resonance::Resonance(double hz, double widthHz, double rateHz, Dice& seeds)
    : dice_(seeds.next()), rateHz_(rateHz), keep_(std::clamp(1 - kPi * widthHz / rateHz, 0.0, 1.0)),
      fresh_(std::sqrt(1 - keep_ * keep_)) {
  tune(hz);
}

void Resonance::tune(double hz) {
  cosine_ = sineOfTurns(hz / rateHz_ + 0.25);
  sine_ = sineOfTurns(hz / rateHz_);
}

double Resonance::next() {
  const double real = keep_ * (cosine_ * real_ - sine_ * imaginary_) + fresh_ * grain(dice_);
  imaginary_ = keep_ * (sine_ * real_ + cosine_ * imaginary_) + fresh_ * grain(dice_);
  real_ = real;
  return real_;
}

Vehicle::Vehicle(double rateHz, Dice& seeds)
    : bounce_(seeds.between(1.2, 2.1), 0.5, rateHz, seeds),
      hop_(seeds.between(9, 14), 3, rateHz, seeds),
      engine_(seeds.between(24, 33), 0.4, rateHz, seeds), road_(25, rateHz, seeds),
      strength_(6, rateHz, seeds) {}

double Vehicle::next() {
  // Mean square of the strength: 0.9^2 + 0.43^2 = 1.
  const double strength = std::clamp(0.9 + 0.43 * strength_.next(), 0.1, 2.5);
  return strength *
         (0.55 * bounce_.next() + 0.68 * hop_.next() + 0.2 * engine_.next() + 0.44 * road_.next());
}

std::vector<Jolt> joltsBetween(double from, double to, double perMinute, Dice& dice) {
  std::vector<Jolt> jolts;
  const double mean = (to - from) / 60 * perMinute;
  // Many small chances: close enough to Poisson.
  const int chances = static_cast<int>(100 + 10 * mean);
  for (int i = 0; i < chances; ++i) {
    const double chance = dice.between(0, 1), s = dice.between(from, to);
    const double side = dice.between(0, 1) < 0.5 ? -1 : 1, size = side * dice.between(0.3, 1);
    const double fade = dice.between(0.2, 2.5);
    if (chance < mean / chances) {
      jolts.push_back({s, size, fade});
    }
  }
  std::sort(jolts.begin(), jolts.end(), [](const Jolt& a, const Jolt& b) { return a.s < b.s; });
  return jolts;
}

double Jolted::next(double s) {
  while (next_ < jolts_->size() && (*jolts_)[next_].s <= s) {
    const Jolt& jolt = (*jolts_)[next_++];
    fading_.push_back({jolt.size, 0, std::max(0.0, 1 - 1 / (jolt.fade * rateHz_))});
  }
  double sum = 0;
  const double rise = std::min(1.0, 12 / rateHz_); // nothing that is pulled jumps in no time
  for (auto& one : fading_) {
    one.value += rise * (one.aim - one.value);
    one.aim *= one.keep;
    sum += one.value;
  }
  std::erase_if(fading_, [](const Fading& f) {
    return std::fabs(f.aim) < 1e-4 && std::fabs(f.value) < 1e-4;
  });
  return sum;
}

double bell(double x) {
  const double q = 1 - x * x / 16;
  if (q <= 0) {
    return 0;
  }
  const double q2 = q * q, q4 = q2 * q2;
  return q4 * q4;
}

double ramp(double x) {
  x = std::clamp(x, 0.0, 1.0);
  return x * x * x * (10 + x * (6 * x - 15));
}

} // namespace afterbeat::samples::body
