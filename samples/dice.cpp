#include "samples/dice.h"

#include <cmath>

namespace afterbeat::samples {

std::uint64_t Dice::next() {
  state_ += 0x9e3779b97f4a7c15U;
  std::uint64_t z = state_;
  z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31U);
}

double Dice::between(double low, double high) {
  return low + (high - low) * (static_cast<double>(next() >> 11U) * 0x1p-53);
}

double Dice::normal() {
  double sum = -6;
  for (int i = 0; i < 12; ++i) {
    sum += between(0, 1);
  }
  return sum;
}

double sineOfTurns(double x) {
  constexpr double kTwoPi = 6.283185307179586;
  double turn = x - std::floor(x + 0.5); // -1/2 to 1/2
  if (turn > 0.25) {
    turn = 0.5 - turn;
  } else if (turn < -0.25) {
    turn = -0.5 - turn;
  }
  const double a = kTwoPi * turn, s = a * a;
  return a * (1 + s * (-1.0 / 6 + s * (1.0 / 120 + s * (-1.0 / 5040 + s * (1.0 / 362880)))));
}

// (1 - x^2)^4: its first three derivatives vanish at the edges, so that an acceleration made from
// it has no steps.
double hill(double x) {
  const double q = 1 - x * x;
  return q <= 0 ? 0 : q * q * q * q;
}

double hillSlope(double x) {
  const double q = 1 - x * x;
  return q <= 0 ? 0 : -8 * x * q * q * q;
}

double hillCurvature(double x) {
  const double q = 1 - x * x;
  return q <= 0 ? 0 : q * q * (48 * x * x - 8 * q);
}

} // namespace afterbeat::samples
