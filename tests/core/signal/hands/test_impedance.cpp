#include "core/signal/hands/hands.h"

#include "found.h"
#include "scenes.h"

#include <gtest/gtest.h>

#include <cmath>

namespace afterbeat {
namespace {

using namespace scenes;

std::vector<double> truth(const Story& story) {
  std::vector<double> times;
  for (const Press& press : story.presses) {
    times.push_back(press.deepest);
  }
  return times;
}

Channel channelFor(const std::vector<double>& values, double rateHz = 250) {
  return channelOf("impedance", "Ohm", values, rateHz, 0.01);
}

TEST(Impedance, FindsPressesOfEitherPolarityAndNeverADepth) {
  for (const double ohm : {0.5, -0.5, 2.0, -2.0}) {
    for (const int perCycle : {0, 30}) {
      Plan plan;
      plan.perCycle = perCycle;
      plan.seed = 11;
      const Story story = tell(plan);
      ImpedancePlan how;
      how.pressOhm = ohm;
      const Findings findings = compressionsFromImpedance(channelFor(impedance(story, how, 250)));
      EXPECT_TRUE(wellFormed(findings));
      EXPECT_GE(match(truth(story), timesOf<entry::Compression>(findings), 0.2).f1(), 0.97)
          << ohm << " " << perCycle;
      for (std::size_t i = 0; i < findings.entries.size(); ++i) {
        EXPECT_FALSE(compressionAt(findings, i).depthMm);
        EXPECT_FALSE(compressionAt(findings, i).leaningMm);
      }
    }
  }
}

TEST(Impedance, WithstandsNoiseStepsAndLargeBreaths) {
  Plan plan;
  const Story story = tell(plan);
  ImpedancePlan how;
  how.pressOhm = 0.8;
  how.noise = 0.5;
  how.breathOhm = 2.0;
  how.steps = 1;
  const Findings findings = compressionsFromImpedance(channelFor(impedance(story, how, 250)));
  EXPECT_GE(match(truth(story), timesOf<entry::Compression>(findings), 0.2).f1(), 0.97);
}

TEST(Impedance, TakesNeitherBreathsNorNoiseForPresses) {
  Plan plan;
  plan.perCycle = 0;
  Story story = tell(plan);
  story.presses.clear();
  ImpedancePlan how;
  how.breathOhm = 2;
  how.noise = 0.2;
  EXPECT_LE(compressionsFromImpedance(channelFor(impedance(story, how, 250))).entries.size(), 1U);
}

TEST(Impedance, SaysOffAndPoorContact) {
  const Story story = tell({});
  std::vector<double> values = impedance(story, {}, 250);
  for (std::size_t i = 250 * 30; i < 250 * 40; ++i) {
    values[i] = 327.6;
  }
  for (std::size_t i = 250 * 60; i < 250 * 70; ++i) {
    values[i] += (i / 100) % 2 == 0 ? 0 : 25;
  }
  const Findings findings = compressionsFromImpedance(channelFor(values));
  Duration off{}, poor{};
  for (const FaultyStretch& fault : findings.unusable) {
    (fault.fault == SignalFault::poorContact ? poor : off) += fault.where.length();
    EXPECT_NE(fault.fault, SignalFault::missing);
  }
  EXPECT_NEAR(seconds(off), 10, 1);
  EXPECT_NEAR(seconds(poor), 10, 1.5);
  EXPECT_NEAR(seconds(findings.judged), seconds(findings.length) - 20, 2.5);
  for (const double t : timesOf<entry::Compression>(findings)) {
    EXPECT_FALSE((t > 30 && t < 40) || (t > 60.5 && t < 69.5)) << t;
  }
}

} // namespace
} // namespace afterbeat
