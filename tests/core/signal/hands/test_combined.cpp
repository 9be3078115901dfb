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

/// Stretches excluded as not observed.
std::vector<Interval> excludedIn(const Findings& findings) {
  std::vector<Interval> result;
  for (const Entry& entry : findings.entries) {
    const auto* excluded = entry.complete<entry::Excluded>();
    if (excluded != nullptr) {
      EXPECT_EQ(excluded->why, ExclusionReason::notObserved);
      result.push_back({entry.t, entry.end.value_or(entry.t)});
    }
  }
  return result;
}

Plan steady() {
  Plan plan;
  plan.perCycle = 0;
  return plan;
}

void lose(Channel& channel, double from, double to) {
  for (auto i = static_cast<std::size_t>(from * channel.rateHz);
       i < static_cast<std::size_t>(to * channel.rateHz); ++i) {
    channel.samples[i] = kMissingSample;
  }
}

Channel depthOf(const Story& story) {
  return channelOf("depth", "mm", chestDepth(story, 250), 250, 0.02);
}
Channel accelerationOf(const Story& story) {
  return channelOf("acceleration", "m/s2", acceleration(story, {}, 250), 250, 0.005);
}
Channel impedanceOf(const Story& story, double ohm = 1) {
  ImpedancePlan how;
  how.pressOhm = ohm;
  return channelOf("impedance", "Ohm", impedance(story, how, 250), 250, 0.01);
}

TEST(Combined, TakesTheBestChannelAndFillsItsHoles) {
  const Story story = tell(steady());
  Record record;
  record.channels = {impedanceOf(story, -1), accelerationOf(story), depthOf(story)};
  lose(record.channels[2], 30, 60);
  lose(record.channels[1], 45, 60);
  const Findings findings = handsFrom(record);
  EXPECT_TRUE(wellFormed(findings));
  EXPECT_GE(match(truth(story), timesOf<entry::Compression>(findings), 0.2).f1(), 0.98);
  EXPECT_TRUE(excludedIn(findings).empty());
  EXPECT_GE(seconds(findings.judged), seconds(findings.length) - 0.2);
  for (const Entry& entry : findings.entries) {
    const auto* press = entry.complete<entry::Compression>();
    if (press == nullptr) {
      continue;
    }
    const double t = seconds(entry.t);
    EXPECT_EQ(press->leaningMm.has_value(), t < 30.02 || t > 59.98) << t;
    EXPECT_EQ(press->depthMm.has_value(), t < 45.02 || t > 59.98) << t;
  }
  EXPECT_GT(timesOf<entry::Ventilation>(findings).size(), 8U);
}

TEST(Combined, CountsNoCompressionTwiceWhereChannelsMeet) {
  const Story story = tell(steady());
  Record record;
  record.channels = {impedanceOf(story), depthOf(story)};
  for (double t = 20; t < 100; t += 7.3) {
    lose(record.channels[1], t, t + 3);
  }
  const auto times = timesOf<entry::Compression>(handsFrom(record));
  for (std::size_t i = 1; i < times.size(); ++i) {
    EXPECT_GT(times[i] - times[i - 1], 0.25);
  }
  EXPECT_GE(match(truth(story), times, 0.2).f1(), 0.97);
}

TEST(Combined, ExcludesWhatNobodyObserved) {
  const Story story = tell(steady());
  Record record;
  record.channels = {accelerationOf(story), impedanceOf(story)};
  lose(record.channels[0], 40, 60);
  lose(record.channels[1], 50, 70);
  const Findings findings = handsFrom(record);
  const auto excluded = excludedIn(findings);
  ASSERT_EQ(excluded.size(), 1U);
  EXPECT_NEAR(seconds(excluded[0].begin), 50, 0.2);
  EXPECT_NEAR(seconds(excluded[0].end), 60, 0.2);
  ASSERT_FALSE(findings.unusable.empty());
  EXPECT_EQ(findings.unusable[0].fault, SignalFault::missing);
}

TEST(Combined, ElectrodesThatTheDeviceCallsDetachedAreNotBelieved) {
  const Story story = tell(steady());
  Record record;
  record.channels = {impedanceOf(story)};
  const auto electrodes = [&](double t, ElectrodeState state) {
    Entry entry;
    entry.t = *timeFromSeconds(t);
    entry.data = entry::Electrodes{state, {}};
    record.entries.push_back(entry);
  };
  electrodes(0, ElectrodeState::attached);
  electrodes(30, ElectrodeState::detached);
  electrodes(50, ElectrodeState::attached);
  electrodes(80, ElectrodeState::poorContact);
  electrodes(90, ElectrodeState::attached);
  const Findings findings = handsFrom(record);
  const auto excluded = excludedIn(findings);
  ASSERT_EQ(excluded.size(), 2U);
  EXPECT_NEAR(seconds(excluded[0].length()), 20, 0.1);
  EXPECT_NEAR(seconds(excluded[1].length()), 10, 0.1);
  for (const double t : timesOf<entry::Compression>(findings)) {
    EXPECT_FALSE((t > 30.1 && t < 49.9) || (t > 80.1 && t < 89.9)) << t;
  }
}

TEST(Combined, BelievesImpedanceWhileTheSensorIsNotInUse) {
  const Story story = tell(steady());
  Record record;
  std::vector<double> values = acceleration(story, {}, 250);
  for (std::size_t i = 0; i < 250 * 60; ++i) {
    values[i] = 9.81;
  }
  record.channels = {channelOf("acceleration", "m/s2", values, 250, 0.005), impedanceOf(story)};
  EXPECT_GE(match(truth(story), timesOf<entry::Compression>(handsFrom(record)), 0.2).f1(), 0.97);
}

TEST(Combined, NothingFromNoChannels) {
  Record record;
  record.channels.push_back(channelOf("ecg", "mV", std::vector<double>(1000, 0.0), 250, 0.01));
  const Findings findings = handsFrom(record);
  EXPECT_TRUE(findings.entries.empty());
  EXPECT_EQ(findings.length, Duration{});
}

} // namespace
} // namespace afterbeat
