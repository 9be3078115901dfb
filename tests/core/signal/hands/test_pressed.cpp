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

Story leaningStory(double leaningMm) {
  Plan plan;
  plan.leaningMm = leaningMm;
  return tell(plan);
}

TEST(Depth, GivesMomentDepthAndLeaning) {
  for (const double lean : {0.0, 12.0}) {
    const Story story = leaningStory(lean);
    const Findings findings =
        compressionsFromDepth(channelOf("depth", "mm", chestDepth(story, 250), 250, 0.02));
    EXPECT_TRUE(wellFormed(findings));
    const Match m = match(truth(story), timesOf<entry::Compression>(findings), 0.1);
    EXPECT_GE(m.f1(), 0.995);
    for (const auto& [i, j] : m.pairs) {
      const auto& found = compressionAt(findings, j);
      EXPECT_NEAR(found.depthMm.value_or(0), story.presses[i].depthMm, 2.5);
      const bool lastOfSeries =
          i + 1 == story.presses.size() ||
          story.presses[i + 1].onset - story.presses[i].onset > 1.5 * story.presses[i].period;
      EXPECT_NEAR(found.leaningMm.value_or(-1), lastOfSeries ? 0 : story.presses[i].leaningMm, 2.5);
      // The profile of the figures decides, not the detector.
      EXPECT_FALSE(found.fullRelease);
    }
  }
}

TEST(Depth, TakesTheSensorsDriftForRest) {
  const Story story = leaningStory(0);
  std::vector<double> values = chestDepth(story, 100);
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] += 8 + 0.05 * static_cast<double>(i) / 100;
  }
  const Findings findings = compressionsFromDepth(channelOf("depth", "mm", values, 100, 0.02));
  ASSERT_GT(findings.entries.size(), 100U);
  for (std::size_t i = 0; i < findings.entries.size(); ++i) {
    EXPECT_LE(compressionAt(findings, i).leaningMm.value_or(99), 2);
  }
}

TEST(Force, GivesMomentAndReleaseAndNoDepth) {
  for (const double lean : {0.0, 10.0}) {
    const Story story = leaningStory(lean);
    std::vector<double> values = chestDepth(story, 250);
    for (double& x : values) {
      // A chest that stiffens: 6 N/mm at first, 12 N/mm at 60 mm.
      x *= 6 + 0.1 * x;
    }
    const Findings findings = compressionsFromForce(channelOf("force", "N", values, 250, 0.1));
    const Match m = match(truth(story), timesOf<entry::Compression>(findings), 0.1);
    EXPECT_GE(m.f1(), 0.995);
    int released = 0;
    for (std::size_t i = 0; i < findings.entries.size(); ++i) {
      const auto& found = compressionAt(findings, i);
      EXPECT_FALSE(found.depthMm);
      EXPECT_FALSE(found.leaningMm);
      ASSERT_TRUE(found.fullRelease);
      released += *found.fullRelease ? 1 : 0;
    }
    EXPECT_EQ(released > 100, lean == 0) << released;
  }
}

TEST(Force, IsReadInKilogramsToo) {
  const Story story = leaningStory(0);
  std::vector<double> values = chestDepth(story, 100);
  for (double& x : values) {
    x *= 8 / 9.80665;
  }
  const Findings findings = compressionsFromForce(channelOf("force", "kgf", values, 100, 0.01));
  EXPECT_GE(match(truth(story), timesOf<entry::Compression>(findings), 0.1).f1(), 0.995);
}

TEST(Depth, StaysSilentOnNoiseAndRest) {
  std::mt19937 dice(5);
  std::normal_distribution<double> normal;
  std::vector<double> values(250 * 60);
  for (double& x : values) {
    x = 2 * normal(dice);
  }
  EXPECT_TRUE(compressionsFromDepth(channelOf("depth", "mm", values, 250, 0.02)).entries.empty());
  EXPECT_TRUE(compressionsFromForce(channelOf("force", "N", values, 250, 0.02)).entries.empty());
}

} // namespace
} // namespace afterbeat
