#include "core/signal/hands/hands.h"

#include "found.h"
#include "scenes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

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

/// What a beating heart takes off the impedance: a quick fall and a slow return, Ohm.
void addBeats(std::vector<double>& values, double rateHz, double from, double perMinute,
              double ohm) {
  for (auto i = static_cast<std::size_t>(from * rateHz); i < values.size(); ++i) {
    const double t = static_cast<double>(i) / rateHz - from;
    // Rates differ from beat to beat by some hundredths.
    const double beats = t * perMinute / 60 + 0.05 * std::sin(0.25 * 2 * std::numbers::pi * t);
    const double u = beats - std::floor(beats);
    const double fall = u < 0.25 ? 0.5 - 0.5 * std::cos(std::numbers::pi * u / 0.25)
                                 : 0.5 + 0.5 * std::cos(std::numbers::pi * (u - 0.25) / 0.75);
    values[i] -= ohm * fall;
  }
}

Entry circulation(double s, CirculationState state) {
  Entry entry;
  entry.t = *timeFromSeconds(s);
  entry.data = entry::Circulation{state};
  return entry;
}

TEST(Combined, TakesNoHeartbeatsForPressesOnceCirculationHasReturned) {
  for (const double pressOhm : {0.5, 1.0, -1.5}) {
    for (const double beatOhm : {0.05, 0.1, 0.2}) {
      for (const double perMinute : {60.0, 80.0, 100.0, 120.0}) {
        Plan plan = steady();
        plan.lastBefore = 60;
        const Story story = tell(plan);
        ImpedancePlan how;
        how.pressOhm = pressOhm;
        how.noise = 0.02;
        std::vector<double> values = impedance(story, how, 250);
        addBeats(values, 250, 62, perMinute, beatOhm);
        Record record;
        record.channels = {channelOf("impedance", "Ohm", values, 250, 0.01)};
        record.entries = {circulation(61.5, CirculationState::returned)};
        const Match m = match(truth(story), timesOf<entry::Compression>(handsFrom(record)), 0.2);
        EXPECT_GE(m.f1(), 0.98) << pressOhm << " Ohm, beats of " << beatOhm << " at " << perMinute;
        EXPECT_LE(m.found - m.matched, 2) << pressOhm << " " << beatOhm << " " << perMinute;
        // Where nobody has said so, size tells as long as beats are small beside presses.
        record.entries.clear();
        const Match unsaid =
            match(truth(story), timesOf<entry::Compression>(handsFrom(record)), 0.2);
        if (beatOhm <= 0.3 * std::fabs(pressOhm)) {
          EXPECT_LE(unsaid.found - unsaid.matched, 2)
              << pressOhm << " " << beatOhm << " " << perMinute << " unsaid";
        }
      }
    }
  }
}

TEST(Combined, FindsPressesAgainAfterCirculationIsLost) {
  const Story story = tell(steady());
  Record record;
  record.channels = {impedanceOf(story, 0.3)};
  record.entries = {circulation(0.5, CirculationState::returned),
                    circulation(1, CirculationState::lost)};
  EXPECT_GE(match(truth(story), timesOf<entry::Compression>(handsFrom(record)), 0.2).f1(), 0.97);
  // Compressions of the usual size end it whatever was written down.
  record.channels = {impedanceOf(story, 1)};
  record.entries.pop_back();
  EXPECT_GE(match(truth(story), timesOf<entry::Compression>(handsFrom(record)), 0.2).f1(), 0.97);
}

TEST(Combined, SettlesAccelerationAndImpedanceTogether) {
  Plan plan;
  plan.pauseSeconds = 8;
  const Story story = tell(plan);
  AccelerationPlan shaken;
  shaken.shaking = {1.2, 1.2, 2.0};
  const Channel moved =
      channelOf("acceleration", "m/s2", acceleration(story, shaken, 250), 250, 0.005);
  Record record;
  record.channels = {moved, impedanceOf(story)};
  const Match both = match(truth(story), timesOf<entry::Compression>(handsFrom(record)), 0.2);
  const Match alone =
      match(truth(story), timesOf<entry::Compression>(compressionsFromAcceleration(moved)), 0.2);
  EXPECT_GE(both.f1(), 0.98);
  EXPECT_GE(both.f1(), alone.f1());
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
