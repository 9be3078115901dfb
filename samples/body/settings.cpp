// Draws the settings of random scenes.
#include "samples/body/scenes.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat::samples::body {

namespace {

bool oneIn(Dice& dice, double n) {
  return dice.between(0, 1) < 1 / n;
}

template <typename T>
T oneOf(Dice& dice, std::initializer_list<T> all) {
  const auto n = static_cast<double>(all.size());
  return *(all.begin() + static_cast<std::ptrdiff_t>(dice.between(0, n)));
}

/// About normal and never beyond the limits.
double around(Dice& dice, double middle, double spread, double low, double high) {
  return std::clamp(middle + spread * dice.normal(), low, high);
}

Way drawWay(Dice& dice) {
  Way way;
  // One in four is anywhere in the range, the others as people are.
  const bool anywhere = oneIn(dice, 4);
  way.rate = anywhere ? dice.between(60, 160) : around(dice, 110, 12, 60, 160);
  way.depth = anywhere ? dice.between(20, 70) : around(dice, 50, 7, 20, 70);
  way.rateEnd = std::clamp(way.rate * dice.between(0.95, 1.1), 60.0, 160.0);
  way.depthEnd = std::clamp(way.depth * dice.between(0.75, 1.02), 20.0, 70.0);
  way.lean = oneIn(dice, 4) ? dice.between(4, 12) : dice.between(0, 3);
  way.lean = std::min(way.lean, way.depthEnd / 4);
  way.unsteady = dice.between(0.01, 0.05);
  way.depthSpread = dice.between(0.5, 3);
  way.stroke =
      oneOf(dice, {Stroke::even, Stroke::thrust, Stroke::held, Stroke::jab, Stroke::shoulder});
  return way;
}

Way drawMachine(Dice& dice) {
  Way way;
  way.rate = way.rateEnd = oneOf(dice, {80.0, 100.0, 102.0, 110.0, 120.0});
  way.depth = way.depthEnd = dice.between(40, 55);
  way.lean = 0;
  way.unsteady = 0.001;
  way.depthSpread = 0.4;
  way.stroke = Stroke::piston;
  return way;
}

Circumstances drawCircumstances(Dice& dice) {
  Circumstances how;
  how.tiltFirst = oneIn(dice, 2) ? dice.between(0, 8) : dice.between(0, 30);
  how.tiltLast = oneIn(dice, 2) ? how.tiltFirst : dice.between(0, 30);
  how.rock = dice.between(0, 2);
  how.vehicle = oneIn(dice, 2) ? dice.between(0.1, 1.5) : 0;
  how.sensorDrift = dice.between(0.02, 0.3);
  how.sensorHiss = dice.between(0.03, 0.15);
  how.handling = oneIn(dice, 6) ? dice.between(0.5, 2) : 0;
  how.mattress = oneIn(dice, 3) ? dice.between(0.1, 0.5) : 0;
  how.baseOhm = dice.between(50, 130);
  how.chestOhm = dice.between(0.25, 1.4);
  how.chestOhm = oneIn(dice, 2) ? -how.chestOhm : how.chestOhm;
  how.breathOhm = dice.between(0.5, 1.8);
  how.chestLag = dice.between(0, 0.06);
  how.chestEcho = dice.between(-0.25, 0.25);
  const double amplitude = std::fabs(how.chestOhm) / 2; // of peak to trough
  how.ohmHiss = amplitude * (oneIn(dice, 2) ? dice.between(0.02, 0.1) : dice.between(0.02, 0.5));
  how.ohmWander = dice.between(0.05, 0.35);
  how.joltsPerMinute = oneIn(dice, 2) ? dice.between(0, 3) : 0;
  how.joltOhm = dice.between(0.3, 2);
  how.joltMv = dice.between(0.1, 0.6);
  how.artefactMv = dice.between(0.2, 1.5);
  how.offIsMissing = oneIn(dice, 2);
  return how;
}

} // namespace

Setting drawSetting(std::uint64_t seed) {
  Dice dice(seed * 2 + 0x5ce9e);
  Setting s;
  s.seed = seed;
  s.length = dice.between(100, 180);
  s.mechanical = oneIn(dice, 8);
  s.turn = dice.between(40, 120);
  if (s.mechanical) {
    s.ways = {drawMachine(dice)};
  } else {
    s.ways = {drawWay(dice), drawWay(dice)};
  }
  s.ratio = oneOf(dice, {30, 30, 15, 0, 0});
  s.breathEvery = dice.between(4, 8);
  s.pauses = static_cast<int>(dice.between(0, 4));
  s.how = drawCircumstances(dice);
  if (oneIn(dice, 8)) {
    const double from = dice.between(10, s.length - 40);
    s.how.off = {{from, from + dice.between(6, 25)}};
  }
  s.acceleration = {oneOf(dice, {100.0, 125.0, 200.0, 250.0}), oneOf(dice, {0.005, 0.02, 0.04}), 0};
  s.depth = {oneOf(dice, {50.0, 100.0, 250.0}), oneOf(dice, {0.01, 0.1, 0.5}), 0};
  s.force = {oneOf(dice, {50.0, 100.0, 250.0}), oneOf(dice, {0.1, 0.5, 2.0}), 0};
  s.impedance = {oneOf(dice, {50.0, 100.0, 125.0, 250.0}), oneOf(dice, {0.005, 0.01, 0.02}), 0};
  s.ecg = {250, oneOf(dice, {0.001, 0.0025, 0.005}), 0};
  s.heart = oneOf(dice, {RhythmKind::shockable, RhythmKind::organised, RhythmKind::asystole});
  if (s.heart == RhythmKind::organised && oneIn(dice, 2)) {
    s.how.pulseOhm = dice.between(0.02, 0.08);
  }
  return s;
}

std::string told(const Setting& s) {
  static constexpr const char* kStrokes[] = {"even", "thrust", "held", "jab", "piston", "shoulder"};
  std::string text = fmt::format("no {}: ", s.seed);
  text += s.ratio > 0 ? fmt::format("{}:2", s.ratio) : "continuous";
  for (const Way& w : s.ways) {
    text += fmt::format(", {} {:.0f}-{:.0f}/min {:.0f}-{:.0f} mm leaning {:.0f} mm",
                        kStrokes[static_cast<std::size_t>(w.stroke)], w.rate, w.rateEnd, w.depth,
                        w.depthEnd, w.lean);
  }
  const Circumstances& how = s.how;
  text += fmt::format(
      "; vehicle {:.2f} m/s2, tilt {:.0f}-{:.0f}, drift {:.2f}, handling {:.1f}, mattress {:.2f}",
      how.vehicle, how.tiltFirst, how.tiltLast, how.sensorDrift, how.handling, how.mattress);
  text += fmt::format("; impedance {:+.2f} Ohm, hiss {:.3f}, breaths {:.2f}, jolts {:.1f}/min{}",
                      how.chestOhm, how.ohmHiss, how.breathOhm, how.joltsPerMinute,
                      how.off.empty() ? "" : ", electrodes off for a while");
  return text;
}

} // namespace afterbeat::samples::body
