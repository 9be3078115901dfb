#include "core/signal/hands/hands.h"

#include "found.h"
#include "scenes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

using namespace scenes;

Channel channelFor(const Story& story, const AccelerationPlan& how, double rateHz = 250) {
  return channelOf("acceleration", "m/s2", acceleration(story, how, rateHz), rateHz, 0.005);
}

double medianAbs(std::vector<double> values) {
  for (double& x : values) {
    x = std::fabs(x);
  }
  std::sort(values.begin(), values.end());
  return values.empty() ? 0 : values[values.size() / 2];
}

std::vector<double> truth(const Story& story) {
  std::vector<double> times;
  for (const Press& press : story.presses) {
    times.push_back(press.deepest);
  }
  return times;
}

struct Result {
  Match match;
  double time = 0, depth = 0;
};

Result judge(const Story& story, const Findings& findings) {
  Result result{match(truth(story), timesOf<entry::Compression>(findings), 0.2), 0, 0};
  std::vector<double> depth;
  for (const auto& [i, j] : result.match.pairs) {
    depth.push_back(compressionAt(findings, j).depthMm.value_or(-100) - story.presses[i].depthMm);
  }
  result.time = medianAbs(result.match.errors);
  result.depth = medianAbs(depth);
  return result;
}

TEST(Acceleration, FindsEveryPressOfEveryShape) {
  for (const Shape shape :
       {Shape::halfSine, Shape::triangle, Shape::sawtooth, Shape::piston, Shape::raisedCosine}) {
    for (const double rate : {62.0, 85.0, 110.0, 155.0}) {
      Plan plan;
      plan.shape = shape;
      plan.rate = rate;
      plan.depthMm = 45;
      const Story story = tell(plan);
      const Findings findings = compressionsFromAcceleration(channelFor(story, {}));
      const Result result = judge(story, findings);
      EXPECT_TRUE(wellFormed(findings));
      EXPECT_GE(result.match.f1(), 0.99) << static_cast<int>(shape) << " at " << rate;
      EXPECT_LE(result.time, 0.03) << static_cast<int>(shape) << " at " << rate;
      EXPECT_LE(result.depth, 2) << static_cast<int>(shape) << " at " << rate;
    }
  }
}

TEST(Acceleration, WorksAtAnyRateScaleAndOffset) {
  const Story story = tell({});
  for (const double rate : {50.0, 100.0, 125.0, 360.0, 1000.0, 2000.0}) {
    const Result result = judge(story, compressionsFromAcceleration(channelFor(story, {}, rate)));
    EXPECT_GE(result.match.f1(), 0.99) << rate;
    EXPECT_LE(result.depth, 2) << rate;
  }
  std::vector<double> inG = acceleration(story, {}, 250);
  for (double& x : inG) {
    x /= 9.80665;
  }
  const auto findings =
      compressionsFromAcceleration(channelOf("acceleration", "[g]", inG, 250, 0.001, -1));
  EXPECT_GE(judge(story, findings).match.f1(), 0.99);
}

TEST(Acceleration, WithstandsTiltDriftAndAMovingVehicle) {
  Plan plan;
  plan.depthMm = 50;
  plan.fatigueMm = 5;
  const Story story = tell(plan);
  AccelerationPlan how;
  how.tiltFrom = 0;
  how.tiltTo = 30;
  how.drift = 0.4;
  how.shaking.rms = 0.8;
  const Result result = judge(story, compressionsFromAcceleration(channelFor(story, how)));
  EXPECT_GE(result.match.f1(), 0.99);
  EXPECT_LE(result.time, 0.03);
  EXPECT_LE(result.depth, 3);
}

TEST(Acceleration, FollowsAnotherRescuerAndIncompleteRelease) {
  Plan plan;
  plan.rate = 100;
  plan.secondRate = 135;
  plan.secondDepthMm = 30;
  plan.leaningMm = 12;
  plan.perCycle = 0;
  const Story story = tell(plan);
  const Result result = judge(story, compressionsFromAcceleration(channelFor(story, {})));
  EXPECT_GE(result.match.f1(), 0.99);
  EXPECT_LE(result.depth, 2);
}

TEST(Acceleration, FindsNothingWhereNobodyPresses) {
  Plan plan;
  plan.firstAt = 1000;
  for (unsigned seed = 1; seed <= 8; ++seed) {
    plan.seed = seed;
    const Story story = tell(plan);
    for (const double shaking : {0.0, 0.5, 1.5}) {
      AccelerationPlan how;
      how.shaking.rms = shaking;
      const Findings findings = compressionsFromAcceleration(channelFor(story, how));
      EXPECT_LE(findings.entries.size(), 1U) << seed << " shaken by " << shaking;
    }
    AccelerationPlan carried;
    carried.handled = true;
    EXPECT_EQ(compressionsFromAcceleration(channelFor(story, carried)).entries.size(), 0U) << seed;
  }
}

TEST(Acceleration, DoesNotTakePlacingTheSensorForPresses) {
  Plan plan;
  plan.firstAt = 20;
  plan.lastBefore = 20;
  const Story story = tell(plan);
  AccelerationPlan how;
  how.handled = true;
  const Result result = judge(story, compressionsFromAcceleration(channelFor(story, how)));
  EXPECT_GE(result.match.f1(), 0.98);
}

TEST(Acceleration, SaysOffWhereTheSensorDoesNotLieOnAChest) {
  std::vector<double> values(250 * 60, 9.81);
  for (std::size_t i = 250 * 20; i < 250 * 30; ++i) {
    values[i] = 0.5;
  }
  const Findings findings =
      compressionsFromAcceleration(channelOf("acceleration", "m/s2", values, 250, 0.005));
  ASSERT_EQ(findings.unusable.size(), 1U);
  EXPECT_EQ(findings.unusable[0].fault, SignalFault::off);
  EXPECT_NEAR(seconds(findings.unusable[0].where.begin), 20, 1);
  EXPECT_NEAR(seconds(findings.unusable[0].where.end), 30, 1);
  EXPECT_NEAR(seconds(findings.judged), 50, 2);
  EXPECT_TRUE(findings.entries.empty());
}

TEST(Acceleration, KnowsWhichWayIsUpByGravity) {
  const Story story = tell({});
  std::vector<double> values = acceleration(story, {}, 250);
  for (double& x : values) {
    x = -x;
  }
  const auto turned =
      compressionsFromAcceleration(channelOf("acceleration", "m/s2", values, 250, 0.005));
  EXPECT_GE(judge(story, turned).match.f1(), 0.99);
  EXPECT_LE(judge(story, turned).time, 0.03);
  for (double& x : values) {
    x = -x - 9.81;
  }
  const auto removed =
      compressionsFromAcceleration(channelOf("acceleration", "m/s2", values, 250, 0.005));
  EXPECT_GE(judge(story, removed).match.f1(), 0.99);
}

TEST(Acceleration, ShiftsInTimeWithItsChannel) {
  const Story story = tell({});
  Channel channel = channelFor(story, {});
  const Findings before = compressionsFromAcceleration(channel);
  channel.blocks[0].t = *timeFromSeconds(-1234.567);
  const Findings after = compressionsFromAcceleration(channel);
  ASSERT_EQ(before.entries.size(), after.entries.size());
  for (std::size_t i = 0; i < before.entries.size(); ++i) {
    EXPECT_NEAR(seconds(before.entries[i].t) - 1234.567, seconds(after.entries[i].t), 2e-6);
  }
}

} // namespace
} // namespace afterbeat
