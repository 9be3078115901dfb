#include "samples/body/strokes.h"

#include "samples/dice.h"

namespace afterbeat::samples::body {

namespace {

constexpr double kPi = 3.141592653589793;

/// A curve of the raised cosine u: value, d/du, d2/du2.
Curve bent(Stroke stroke, double u) {
  const double rest = 1 - u;
  switch (stroke) {
  case Stroke::held:
    return {1 - rest * rest, 2 * rest, -2};
  case Stroke::jab:
    return {u * u, 2 * u, 2};
  case Stroke::piston:
    return {u * u * u * (10 + u * (6 * u - 15)), 30 * u * u * rest * rest,
            60 * u * rest * (rest - u)};
  case Stroke::shoulder: {
    constexpr double kFalter = 0.02, kWaves = 4 * kPi;
    return {u + kFalter * sineOfTurns(2 * u), 1 + kFalter * kWaves * sineOfTurns(2 * u + 0.25),
            -kFalter * kWaves * kWaves * sineOfTurns(2 * u)};
  }
  case Stroke::even:
  case Stroke::thrust:
    break;
  }
  return {u, 1, 0};
}

/// The curve `outer`, taken with respect to what `inner` is the curve of.
Curve through(const Curve& outer, const Curve& inner) {
  return {outer.value, outer.slope * inner.slope,
          outer.bend * inner.slope * inner.slope + outer.slope * inner.bend};
}

} // namespace

StrokeShares sharesOf(Stroke stroke) {
  switch (stroke) {
  case Stroke::thrust:
    return {0.42, 0.55};
  case Stroke::held:
    return {0.42, 0.44};
  case Stroke::jab:
    return {0.42, 0.44};
  case Stroke::shoulder:
    return {0.46, 0.5};
  case Stroke::even:
  case Stroke::piston:
    break;
  }
  return {0.5, 0.5};
}

Curve strokeCurve(Stroke stroke, double x, bool fromRest) {
  const double cosine = sineOfTurns(x / 2 + 0.25), sine = sineOfTurns(x / 2);
  Curve u{(1 - cosine) / 2, kPi / 2 * sine, kPi * kPi / 2 * cosine};
  if (fromRest) {
    // u^2 (2 - u): no acceleration at rest, unchanged at the deepest point.
    u = through({u.value * u.value * (2 - u.value), u.value * (4 - 3 * u.value), 4 - 6 * u.value},
                u);
  }
  return through(bent(stroke, u.value), u);
}

} // namespace afterbeat::samples::body
