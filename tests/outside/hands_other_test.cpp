// Scenes of another make: skewed raised cosines and coloured noise, drawn without the simulator, so
// that what holds there is seen not to be of the simulator's own shapes.
#include "core/signal/hands/hands.h"
#include "tests/core/signal/hands/scenes.h"
#include "tests/outside/hands_score.h"

#include <cmath>
#include <cstdio>
#include <numbers>
#include <random>
#include <tuple>

#include <gtest/gtest.h>

namespace afterbeat::hands_score {
namespace {

constexpr double kRateHz = 125;

/// One scene, and where its compressions are deepest.
struct OtherScene {
  std::vector<Time> deepest;
  Interval window{};
  Record record;
};

OtherScene drawOther(unsigned seed) {
  std::mt19937 dice(seed);
  const auto between = [&dice](double a, double b) {
    return std::uniform_real_distribution<double>(a, b)(dice);
  };
  scenes::Plan plan;
  plan.seed = seed;
  plan.rate = between(75, 135);
  plan.rateSpread = between(0.01, 0.06);
  plan.depthMm = between(30, 60);
  plan.depthSpread = between(0.02, 0.12);
  plan.perCycle = seed % 3 == 0 ? 0 : seed % 3 == 1 ? 15 : 30;
  plan.pauseSeconds = between(3, 7);
  if (seed % 4 == 0) {
    plan.secondRate = between(75, 135);
    plan.secondDepthMm = between(25, 60);
  }
  const scenes::Story story = tell(plan);
  const auto count = static_cast<std::size_t>(plan.seconds * kRateHz);
  std::vector<double> depth(count, 0);
  OtherScene scene;
  scene.window = {Time{}, *timeFromSeconds(plan.seconds)};
  const double skew = between(0.65, 1.5);
  for (const scenes::Press& press : story.presses) {
    const double own = skew * between(0.93, 1.07);
    scene.deepest.push_back(*timeFromSeconds(press.onset + press.period * std::pow(0.5, 1 / own)));
    for (auto i = static_cast<std::size_t>(std::ceil(press.onset * kRateHz)); i < count; ++i) {
      const double u = (static_cast<double>(i) / kRateHz - press.onset) / press.period;
      if (u >= 1) {
        break;
      }
      depth[i] += press.plannedMm * (0.5 - 0.5 * std::cos(2 * std::numbers::pi * std::pow(u, own)));
    }
  }
  const auto shaking = scenes::bandNoise(count, kRateHz, between(0, 0.6), 0.6, 15, dice);
  const double ohm = between(0.4, 1.5) * (seed % 2 == 0 ? 1 : -1);
  const auto hiss =
      scenes::bandNoise(count, kRateHz, between(0.01, 0.12) * std::fabs(ohm), 0.2, 30, dice);
  std::vector<double> moved(count, 9.81), pads(count, 75);
  for (std::size_t i = 1; i + 1 < count; ++i) {
    moved[i] -= (depth[i - 1] - 2 * depth[i] + depth[i + 1]) * kRateHz * kRateHz / 1000;
  }
  for (std::size_t i = 0; i < count; ++i) {
    moved[i] += shaking[i];
    pads[i] += ohm * depth[i] / 50 + hiss[i];
  }
  scene.record.channels = {scenes::channelOf("acceleration", "m/s2", moved, kRateHz, 0.005),
                           scenes::channelOf("impedance", "Ohm", pads, kRateHz, 0.005)};
  return scene;
}

struct Tally {
  Counts counts;
  std::vector<double> handsOff;

  void add(const OtherScene& scene, const Findings& findings) {
    std::vector<Time> found;
    for (const Entry& entry : findings.entries) {
      if (entry.complete<entry::Compression>()) {
        found.push_back(entry.t);
      }
    }
    counts.add(match(scene.deepest, found, Duration{250'000}));
    handsOff.push_back(samples::body::handsOffShare(found, scene.window, {}) -
                       samples::body::handsOffShare(scene.deepest, scene.window, {}));
  }
};

TEST(Hands, AreFoundInScenesOfAnotherMake) {
  Tally moved, pads, both;
  for (unsigned seed = 1; seed <= 48; ++seed) {
    const OtherScene scene = drawOther(seed);
    moved.add(scene, compressionsFromAcceleration(scene.record.channels[0]));
    pads.add(scene, compressionsFromImpedance(scene.record.channels[1]));
    both.add(scene, handsFrom(scene.record));
  }
  ASSERT_GT(moved.counts.truths, 5000);
  for (const auto& [name, tally, leastF1] :
       {std::tuple{"acceleration", moved, 0.99}, std::tuple{"impedance", pads, 0.97},
        std::tuple{"both", both, 0.99}}) {
    EXPECT_GE(tally.counts.f1(), leastF1) << name;
    EXPECT_GE(shareWithin(tally.handsOff, 0.02), 0.95) << name;
    std::printf("%s: F1 %.4f, hands-off within 0.02: %.3f\n", name, tally.counts.f1(),
                shareWithin(tally.handsOff, 0.02));
  }
}

} // namespace
} // namespace afterbeat::hands_score
