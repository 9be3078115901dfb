// The simulated body against what it was told, and against plain numerical reckoning.
#include "samples/body/heart.h"
#include "samples/body/scenes.h"

#include <algorithm>
#include <numeric>

#include <gtest/gtest.h>

namespace afterbeat::samples::body {
namespace {

double rms(const std::vector<double>& values) {
  double sum = 0;
  for (const double v : values) {
    sum += v * v;
  }
  return std::sqrt(sum / static_cast<double>(values.size()));
}

std::vector<double> valuesOf(const Channel& c, double from, double to) {
  std::vector<double> values;
  const auto at = [&](double s) { return static_cast<std::size_t>(std::llround(s * c.rateHz)); };
  for (std::size_t i = at(from); i < at(to) && i < c.samples.size(); ++i) {
    values.push_back(c.physical(c.samples[i]));
  }
  return values;
}

double spread(const std::vector<double>& values) {
  const double mean =
      std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
  std::vector<double> apart;
  for (const double v : values) {
    apart.push_back(v - mean);
  }
  return rms(apart);
}

Body bodyWith(RhythmKind is, double rate, double amplitude, bool wide) {
  Body body;
  body.to = 60;
  body.rhythm = {{at(0), at(60), is, rate, amplitude, wide}};
  body.how.artefactMv = 0;
  body.seed = 11;
  return body;
}

TEST(Strokes, RunFromReleasedToDeepestAndTheirDerivativesAreRight) {
  for (const Stroke stroke : kAllStrokes) {
    for (const bool fromRest : {false, true}) {
      EXPECT_NEAR(strokeCurve(stroke, 0, fromRest).value, 0, 1e-5);
      EXPECT_NEAR(strokeCurve(stroke, 1, fromRest).value, 1, 1e-5);
      EXPECT_NEAR(strokeCurve(stroke, 0, fromRest).slope, 0, 1e-5);
      EXPECT_NEAR(strokeCurve(stroke, 1, fromRest).slope, 0, 1e-5);
      for (double x = 0.02; x < 0.99; x += 0.03) {
        constexpr double kStep = 0.004;
        const Curve here = strokeCurve(stroke, x, fromRest);
        const Curve before = strokeCurve(stroke, x - kStep, fromRest);
        const Curve after = strokeCurve(stroke, x + kStep, fromRest);
        EXPECT_GE(here.slope, 0) << "never back";
        EXPECT_NEAR((after.value - before.value) / (2 * kStep), here.slope, 0.01);
        EXPECT_NEAR((after.slope - before.slope) / (2 * kStep), here.bend, 0.3);
      }
    }
  }
}

TEST(Chest, IsDeepestAtEachCompressionAndReleasedToItsLeaningBetween) {
  for (const std::uint64_t seed : {1, 2, 3, 4, 5, 6}) {
    const Scene scene = play(drawSetting(seed));
    const Chest chest(scene.body.presses);
    const auto& presses = scene.body.presses;
    Chest::Follower follower = chest.follow();
    for (std::size_t i = 1; i < presses.size(); ++i) {
      double least = 1e9, most = 0, where = 0;
      for (double s = presses[i - 1].s + 1e-6; s < presses[i].s + 1e-5; s += 0.004) {
        const double mm = follower.at(s).value;
        least = std::min(least, mm);
        where = mm > most ? s : where;
        most = std::max(most, mm);
      }
      const double rest = presses[i].s - presses[i - 1].s > kLongestBeat ? 0 : presses[i - 1].lean;
      EXPECT_NEAR(least, rest, 1.5) << presses[i].s;
      EXPECT_LE(most, std::max(presses[i - 1].depth, presses[i].depth) + 1e-3);
      EXPECT_NEAR(follower.at(presses[i].s).value, presses[i].depth, 0.01);
    }
  }
}

// Adding the acceleration up twice gives the travel again: chest and mattress together.
TEST(Acceleration, AddedUpTwiceIsTheTravel) {
  Setting setting = drawSetting(21);
  setting.mechanical = false;
  setting.ways.resize(1);
  setting.how = Circumstances{};
  setting.how.mattress = 0.3;
  setting.how.rock = setting.how.sensorDrift = setting.how.sensorHiss = 0;
  setting.acceleration = {1000, 0.003, 0};
  for (const Stroke stroke : kAllStrokes) {
    setting.ways[0].stroke = stroke;
    const Scene scene = play(setting);
    const auto& presses = scene.body.presses;
    const auto felt = valuesOf(scene.acceleration, presses[0].s - 0.7, presses[0].s + 0.001);
    double speed = 0, mm = 0;
    for (const double a : felt) {
      speed -= (a - felt.front());
      mm += speed / 1000;
    }
    EXPECT_NEAR(mm, scene.travel[0], 0.05 * scene.travel[0]) << static_cast<int>(stroke);
    EXPECT_NEAR(scene.travel[0], 1.3 * presses[0].depth, 1e-9);
  }
}

TEST(Acceleration, OfAVehicleHasTheStatedStrengthAndTiltTakesGravityAway) {
  Body body;
  body.to = 600;
  body.how.sensorHiss = body.how.sensorDrift = 0;
  body.how.vehicle = 1.2;
  EXPECT_NEAR(spread(valuesOf(acceleration(body, {100, 0.005, 0}), 0, 600)), 1.2, 0.2);
  body.how.vehicle = 0;
  body.how.tiltLast = 30;
  const Channel tilted = acceleration(body, {100, 0.005, 0});
  EXPECT_NEAR(valuesOf(tilted, 1, 1.1)[0], 9.81, 0.02);
  EXPECT_NEAR(valuesOf(tilted, 598, 599)[0], 9.81 * 0.866, 0.06);
}

TEST(Impedance, MovesWithBreathsAndEitherWayWithHands) {
  for (const double ohm : {-0.8, 0.8}) {
    Body body;
    body.to = 40;
    body.presses = {{10, 50, 0, Stroke::even}};
    body.breaths = {{20, 1, 1, 0.7}};
    body.how.chestOhm = ohm;
    body.how.ohmHiss = body.how.ohmWander = body.how.chestLag = 0;
    const Channel c = impedance(body, {100, 0.005, 0});
    EXPECT_NEAR(valuesOf(c, 10, 10.01)[0], body.how.baseOhm + ohm, 0.25);
    EXPECT_NEAR(valuesOf(c, 21, 21.01)[0], body.how.baseOhm + body.how.breathOhm, 0.2);
    EXPECT_NEAR(valuesOf(c, 30, 30.01)[0], body.how.baseOhm, 0.02);
  }
}

TEST(Electrodes, OffAreARailOrNothing) {
  Body body;
  body.to = 20;
  body.how.off = {{5, 8}};
  EXPECT_EQ(valuesOf(impedance(body, {100, 0.005, 0}), 6, 6.01)[0], 32767 * 0.005);
  body.how.offIsMissing = true;
  EXPECT_TRUE(std::isnan(valuesOf(impedance(body, {100, 0.005, 0}), 6, 6.01)[0]));
  EXPECT_TRUE(std::isnan(valuesOf(ecg(body, {250, 0.001, 0}), 6, 6.01)[0]));
  EXPECT_FALSE(std::isnan(valuesOf(ecg(body, {250, 0.001, 0}), 9, 9.01)[0]));
}

/// Mean height of the waves over the middle: mean of the largest between two crossings of 0.
double meanHeight(const std::vector<double>& values) {
  double sum = 0, most = 0;
  int waves = 0;
  for (std::size_t i = 1; i < values.size(); ++i) {
    most = std::max(most, std::fabs(values[i]));
    if (values[i] * values[i - 1] < 0) {
      sum += most;
      ++waves;
      most = 0;
    }
  }
  return sum / waves;
}

int crossings(const std::vector<double>& values) {
  int n = 0;
  for (std::size_t i = 1; i < values.size(); ++i) {
    n += values[i] > 0 && values[i - 1] <= 0 ? 1 : 0;
  }
  return n;
}

TEST(Fibrillation, IsAsHighAsToldAndNeverOneTone) {
  for (const double amplitude : {0.08, 0.15, 0.3, 0.6}) {
    for (const std::uint64_t seed : {1, 2, 3}) {
      Dice dice(seed);
      Fibrillation fibrillation(250, dice);
      std::vector<double> values;
      for (int i = 0; i < 250 * 120; ++i) {
        values.push_back(fibrillation.next(amplitude));
      }
      EXPECT_NEAR(meanHeight(values), amplitude, 0.25 * amplitude) << seed;
      const double hz = crossings(values) / 120.0;
      EXPECT_GT(hz, 2.8);
      EXPECT_LT(hz, 6.8);
      // Seconds differ from one another: in height, and in how often they cross the middle.
      std::vector<double> heights, often;
      for (std::size_t s = 0; s < 120; s += 2) {
        const std::vector<double> part(values.begin() + static_cast<std::ptrdiff_t>(s * 250),
                                       values.begin() + static_cast<std::ptrdiff_t>(s * 250 + 500));
        heights.push_back(rms(part));
        often.push_back(crossings(part));
      }
      EXPECT_GT(spread(heights) / rms(heights), 0.2);
      EXPECT_GT(spread(often), 0.7);
    }
  }
}

TEST(Heart, BeatsAsOftenAsTold) {
  struct Case {
    RhythmKind is;
    double rate;
    bool wide;
  };
  for (const Case& c :
       {Case{RhythmKind::organised, 92, false}, Case{RhythmKind::organised, 40, true},
        Case{RhythmKind::organised, 14, true}, Case{RhythmKind::shockable, 200, true}}) {
    const Body body = bodyWith(c.is, c.rate, 0, c.wide);
    const auto beats = beatsOf(body);
    EXPECT_NEAR(static_cast<double>(beats.size()), c.rate, 0.15 * c.rate);
    const Channel trace = ecg(body, {250, 0.001, 0});
    const auto near = valuesOf(trace, beats[3] - 0.05, beats[3] + 0.05);
    double most = 0;
    for (const double v : near) {
      most = std::max(most, std::fabs(v));
    }
    EXPECT_GT(most, 0.2) << c.rate;
  }
}

TEST(Heart, StandsStillInAsystole) {
  const auto values =
      valuesOf(ecg(bodyWith(RhythmKind::asystole, 0, 0, false), {250, 0.001, 0}), 0, 60);
  EXPECT_LT(spread(values), 0.05);
}

TEST(Ecg, CarriesTheArtefactOfHandsAndNothingElseOfThem) {
  Setting setting = drawSetting(5);
  setting.how.off.clear();
  Scene scene = play(setting);
  const auto artefact = compressionArtefact(scene.body, 250);
  const auto with = valuesOf(scene.ecg, 0, setting.length);
  scene.body.how.artefactMv = 0;
  const auto without = valuesOf(ecg(scene.body, setting.ecg), 0, setting.length);
  ASSERT_EQ(with.size(), without.size());
  ASSERT_EQ(with.size(), artefact.size());
  for (std::size_t i = 0; i < with.size(); ++i) {
    ASSERT_NEAR(with[i] - without[i], artefact[i], 1.01 * setting.ecg.scale);
  }
  EXPECT_GT(rms(artefact), 0.05);
}

TEST(Scenes, AreTheSameEachTimeAndKeepWithinTheirLimits) {
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    const Setting setting = drawSetting(seed);
    const Scene scene = play(setting);
    EXPECT_TRUE(scene.acceleration.samples == play(setting).acceleration.samples);
    EXPECT_EQ(scene.truth.compressions.size(), scene.travel.size());
    EXPECT_GT(scene.travel.size(), 30U) << told(setting);
    EXPECT_LE(setting.how.vehicle, 1.5);
    EXPECT_LE(setting.how.ohmHiss, std::fabs(setting.how.chestOhm) / 4);
    Time last = Time::min();
    for (const auto& entry : scene.truth.compressions) {
      EXPECT_TRUE(scene.window.holds(entry.t));
      EXPECT_GT(entry.t, last);
      last = entry.t;
    }
    for (const auto* c :
         {&scene.acceleration, &scene.depth, &scene.force, &scene.impedance, &scene.ecg}) {
      EXPECT_NEAR(static_cast<double>(c->samples.size()) / c->rateHz, setting.length, 0.03);
    }
  }
  EXPECT_NE(told(drawSetting(1)), told(drawSetting(2)));
}

TEST(HandsOff, IsCountedAsTheFiguresDo) {
  const Interval window{at(0), at(20)};
  const std::vector<Time> hands{at(1), at(2), at(6), at(7), at(19)};
  EXPECT_NEAR(handsOffShare(hands, window, {}), (4.0 + 12) / 20, 1e-12);
  EXPECT_NEAR(handsOffShare(hands, window, {{at(10), at(14)}}), (4.0 + 8) / 16, 1e-12);
  EXPECT_NEAR(handsOffShare({}, window, {}), 1, 1e-12);
}

} // namespace
} // namespace afterbeat::samples::body
