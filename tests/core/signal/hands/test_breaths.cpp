#include "core/signal/hands/hands.h"
#include "core/signal/hands/without_presses.h"

#include "found.h"
#include "scenes.h"

#include <gtest/gtest.h>

#include <cmath>

namespace afterbeat {
namespace {

using namespace scenes;

std::vector<double> middles(const Story& story) {
  std::vector<double> times;
  for (const Breath& breath : story.breaths) {
    times.push_back((breath.begin + breath.top) / 2);
  }
  return times;
}

std::vector<Time> trueCompressions(const Story& story) {
  std::vector<Time> times;
  for (const Press& press : story.presses) {
    times.push_back(*timeFromSeconds(press.deepest));
  }
  return times;
}

TEST(Breaths, AreFoundBetweenAndDuringCompressions) {
  int truth = 0, found = 0, matched = 0;
  for (const int perCycle : {0, 30}) {
    for (const double press : {0.6, -1.2}) {
      for (unsigned seed = 1; seed <= 4; ++seed) {
        Plan plan;
        plan.perCycle = perCycle;
        plan.pauseSeconds = 5;
        plan.seed = seed;
        const Story story = tell(plan);
        ImpedancePlan how;
        how.pressOhm = press;
        how.breathOhm = 1.0;
        const Channel channel =
            channelOf("impedance", "Ohm", impedance(story, how, 250), 250, 0.01);
        const Findings findings = breathsFromImpedance(channel, trueCompressions(story));
        EXPECT_TRUE(wellFormed(findings));
        const Match m = match(middles(story), timesOf<entry::Ventilation>(findings), 0.75);
        truth += m.truth;
        found += m.found;
        matched += m.matched;
      }
    }
  }
  EXPECT_GE(matched, 0.93 * truth);
  EXPECT_GE(matched, 0.93 * found);
}

TEST(Breaths, AreNotSeenWhereThereAreNone) {
  Plan plan;
  plan.perCycle = 0;
  Story story = tell(plan);
  story.breaths.clear();
  ImpedancePlan how;
  how.pressOhm = 1;
  const Channel channel = channelOf("impedance", "Ohm", impedance(story, how, 250), 250, 0.01);
  EXPECT_LE(breathsFromImpedance(channel, trueCompressions(story)).entries.size(), 6U);
}

TEST(Breaths, AreNotLookedForWhereElectrodesAreOff) {
  Plan plan;
  plan.perCycle = 0;
  const Story story = tell(plan);
  std::vector<double> values = impedance(story, {}, 250);
  for (std::size_t i = 250 * 40; i < 250 * 70; ++i) {
    values[i] = 327;
  }
  const Findings findings = breathsFromImpedance(channelOf("impedance", "Ohm", values, 250, 0.01),
                                                 trueCompressions(story));
  EXPECT_GT(findings.entries.size(), 5U);
  for (const double t : timesOf<entry::Ventilation>(findings)) {
    EXPECT_FALSE(t > 40 && t < 70) << t;
  }
  EXPECT_NEAR(seconds(findings.length - findings.judged), 30, 1.5);
}

TEST(WithoutPresses, LeavesTheSignalOfAChestThatNobodyPresses) {
  Plan plan;
  plan.perCycle = 0;
  Story story = tell(plan);
  story.breaths.clear();
  ImpedancePlan how;
  how.pressOhm = 2;
  how.noise = 0.01;
  const Channel with = channelOf("impedance", "Ohm", impedance(story, how, 250), 250, 0.01);
  const Piece piece = readPieces(with).pieces.at(0);
  const auto left = withoutPresses(piece, trueCompressions(story));
  double before = 0, after = 0;
  for (std::size_t i = 500; i < 5000; ++i) {
    before += std::pow(piece.values[i] - 80, 2);
    after += std::pow(left[i] - 80, 2);
  }
  EXPECT_LT(after, 0.1 * before);
}

} // namespace
} // namespace afterbeat
