#include "made_rhythms.h"

#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using testing::HasSubstr;

constexpr double kRate = 250;
constexpr double kLong = 30;
const double kNaN = std::numeric_limits<double>::quiet_NaN();

bool callsShockable(const RhythmHints& hints) {
  return std::any_of(hints.entries.begin(), hints.entries.end(), [](const Entry& entry) {
    return rhythmIn(entry).is == RhythmKind::shockable;
  });
}

std::vector<double> quiet(double mv = 0.01, double seconds = kLong, unsigned seed = 9) {
  return madeNoise(samplesOf(seconds, kRate), mv, seed);
}

TEST(RhythmHints, namesPlainRhythms) {
  EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, kRate, 75, 1), quiet()))), "organised 75");
  EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, kRate, 140, 1), quiet()))), "organised 140");
  EXPECT_EQ(said(hintsFor(sumOf(madeFibrillation(kLong, kRate, 0.8), quiet()))), "shockable");
  EXPECT_EQ(said(hintsFor(quiet())), "asystole");
  EXPECT_EQ(said(hintsFor(sumOf(madeWide(kLong, kRate, 150, 1), quiet()))),
            "organised 150 wide and fast, 150 per minute");
  EXPECT_EQ(said(hintsFor(sumOf(madeWide(kLong, kRate, 210, 1), quiet()))),
            "shockable 210 wide and fast, 210 per minute");
}

TEST(RhythmHints, narrowComplexesAreNotShockedHoweverFast) {
  for (const double perMin : {160.0, 185.0, 200.0, 220.0}) {
    EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, kRate, perMin, 1), quiet()))),
              "organised " + std::to_string(std::lround(perMin)));
  }
}

TEST(RhythmHints, slowBeatsAreNoAsystoleAndNeverShockable) {
  for (const double perMin : {25.0, 30.0, 40.0}) {
    const auto rate = "organised " + std::to_string(std::lround(perMin));
    EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, kRate, perMin, 1), quiet()))), rate);
    EXPECT_THAT(said(hintsFor(sumOf(madeWide(kLong, kRate, perMin, 1), quiet()))),
                HasSubstr("organised"));
  }
}

TEST(RhythmHints, anyRateOfSampling) {
  for (const double rateHz : {100.0, 125.0, 128.0, 200.0, 257.3, 360.0, 500.0, 1000.0, 2000.0}) {
    const auto noise = madeNoise(samplesOf(kLong, rateHz), 0.01, 2);
    EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, rateHz, 75, 1), noise), rateHz)),
              "organised 75")
        << rateHz;
    EXPECT_EQ(said(hintsFor(sumOf(madeFibrillation(kLong, rateHz, 0.8), noise), rateHz)),
              "shockable")
        << rateHz;
  }
  for (const double rateHz : {0.5, 10.0, 50.0, 99.0, 4001.0, 1e6}) {
    EXPECT_EQ(said(hintsFor(madeNormal(kLong, 100, 75, 1), rateHz)),
              "unclear too few samples a second")
        << rateHz;
  }
}

TEST(RhythmHints, scaleAndPolarityDoNotMatterAboveTheAmplitudeLimits) {
  const auto normal = sumOf(madeNormal(kLong, kRate, 75, 1), quiet());
  const auto fibrillation = sumOf(madeFibrillation(kLong, kRate, 0.8), quiet());
  for (const double factor : {-1.0, 0.4, -0.4, 3.0, 8.0}) {
    EXPECT_EQ(said(hintsFor(scaled(normal, factor))), "organised 75") << factor;
    EXPECT_EQ(said(hintsFor(scaled(fibrillation, factor))), "shockable") << factor;
  }
}

TEST(RhythmHints, amplitudeComesBeforeShape) {
  EXPECT_EQ(said(hintsFor(madeFibrillation(kLong, kRate, 0.06))), "asystole");
  EXPECT_EQ(said(hintsFor(madeSine(samplesOf(kLong, kRate), kRate, 5, 0.05))), "asystole");
  EXPECT_EQ(said(hintsFor(madeSine(samplesOf(kLong, kRate), kRate, 5, 0.08))),
            "unclear between fibrillation and asystole");
}

TEST(RhythmHints, whatIsNoRhythm) {
  const auto n = samplesOf(kLong, kRate);
  EXPECT_EQ(said(hintsFor(std::vector<double>(n, 0.0))), "unclear electrodes");
  EXPECT_EQ(said(hintsFor(std::vector<double>(n, kNaN))), "unclear electrodes");
  EXPECT_EQ(said(hintsFor(std::vector<double>(n, -4.2))), "unclear electrodes");
  for (const double hz : {50.0, 60.0}) {
    EXPECT_EQ(said(hintsFor(madeSine(n, kRate, hz, 0.5))), "unclear noise");
    EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, kRate, 75, 1), madeSine(n, kRate, hz, 0.1)))),
              "organised 75");
  }
  for (const double mv : {0.1, 0.3, 1.0}) {
    EXPECT_EQ(said(hintsFor(madeNoise(n, mv, 12))), "unclear noise") << mv;
  }
  for (const double hz : {15.0, 20.0, 28.0}) {
    EXPECT_EQ(said(hintsFor(madeSine(n, kRate, hz, 0.5))), "unclear noise") << hz;
  }
}

// A sine that fast is what a flutter looks like; a slower one is no rhythm to shock.
TEST(RhythmHints, slowSinesAndSquaresAreNeverShockable) {
  const auto n = samplesOf(kLong, kRate);
  for (const double hz : {0.3, 0.5, 1.0, 1.5, 2.0, 2.5, 2.9}) {
    auto wave = madeSine(n, kRate, hz, 0.5);
    EXPECT_FALSE(callsShockable(hintsFor(wave))) << hz;
    for (double& v : wave) {
      v = v < 0 ? -0.5 : 0.5;
    }
    const SignalView run{Time{}, kRate, wave};
    EXPECT_FALSE(callsShockable(hintRhythm({.runs = {&run, 1}}))) << hz;
  }
}

TEST(RhythmHints, pacingPulsesAloneAreNoRhythm) {
  auto ecg = quiet();
  for (std::size_t i = 60; i + 2 < ecg.size(); i += 200) {
    ecg[i] += 5;
    ecg[i + 1] += 5;
  }
  EXPECT_EQ(said(hintsFor(ecg)), "unclear pacing spikes");
}

TEST(RhythmHints, aWanderingBaselineDoesNotMatter) {
  const auto wander = madeSine(samplesOf(kLong, kRate), kRate, 0.3, 1.5);
  EXPECT_EQ(said(hintsFor(sumOf(madeNormal(kLong, kRate, 75, 1), wander))), "organised 75");
  EXPECT_EQ(said(hintsFor(sumOf(quiet(), wander))), "asystole");
}

TEST(RhythmHints, aClippedSignalIsNotJudged) {
  auto ecg = sumOf(madeFibrillation(kLong, kRate, 2), quiet());
  digitise(ecg, 0.005, -0.4, 0.4);
  EXPECT_EQ(said(hintsFor(ecg)), "unclear saturation");
}

TEST(RhythmHints, holesAreToldFromRhythm) {
  auto ecg = sumOf(madeNormal(60, kRate, 75, 1), quiet(0.01, 60));
  std::fill(ecg.begin() + 5000, ecg.begin() + 8000, kNaN);
  const SignalView run{Time{}, kRate, ecg};
  EXPECT_EQ(said(hintRhythm({.runs = {&run, 1}})),
            "organised 75; unclear electrodes; organised 75");
  // A few missing samples are bridged.
  ecg = sumOf(madeNormal(kLong, kRate, 75, 1), quiet());
  std::fill(ecg.begin() + 3000, ecg.begin() + 3050, kNaN);
  const SignalView other{Time{}, kRate, ecg};
  EXPECT_EQ(said(hintRhythm({.runs = {&other, 1}})), "organised 75");
}

TEST(RhythmHints, absurdValuesAreMissingOnes) {
  auto ecg = sumOf(madeNormal(kLong, kRate, 75, 1), quiet());
  for (std::size_t i = 100; i < ecg.size(); i += 400) {
    ecg[i] = i % 800 == 100 ? 1e300 : -std::numeric_limits<double>::infinity();
  }
  const SignalView run{Time{}, kRate, ecg};
  EXPECT_EQ(said(hintRhythm({.runs = {&run, 1}})), "organised 75");
  std::fill(ecg.begin(), ecg.end(), 1e300);
  EXPECT_EQ(said(hintRhythm({.runs = {&run, 1}})), "unclear electrodes");
}

TEST(RhythmHints, compressionsForbidAJudgement) {
  const auto ecg = sumOf(madeFibrillation(60, kRate, 0.8), quiet(0.01, 60));
  const SignalView run{Time{}, kRate, ecg};
  std::vector<Time> compressions;
  for (double t = 20; t < 40; t += 0.55) {
    compressions.push_back(at(t));
  }
  const auto single = hintRhythm({.runs = {&run, 1}, .compressions = compressions});
  EXPECT_EQ(said(single), "shockable; unclear chest compressions; shockable");
  const Interval stretch{at(20), at(40)};
  const auto whole = hintRhythm({.runs = {&run, 1}, .cpr = {&stretch, 1}});
  EXPECT_EQ(said(whole), "shockable; unclear chest compressions; shockable");
}

// The change of a rhythm is placed within two steps of where it is.
TEST(RhythmHints, placesAChange) {
  auto ecg = sumOf(madeNormal(60, kRate, 75, 1), quiet(0.01, 60));
  const auto waves = sumOf(madeFibrillation(60, kRate, 0.8), quiet(0.01, 60));
  std::copy(waves.begin() + 7500, waves.end(), ecg.begin() + 7500);
  const auto hints = hintsFor(ecg);
  ASSERT_GE(hints.entries.size(), 2U);
  EXPECT_EQ(rhythmIn(hints.entries.front()).is, RhythmKind::organised);
  EXPECT_EQ(rhythmIn(hints.entries.back()).is, RhythmKind::shockable);
  EXPECT_NEAR(seconds(*hints.entries.front().end), 30, 4);
  EXPECT_NEAR(seconds(hints.entries.back().t), 30, 4);
}

TEST(RhythmHints, coverEachRunWithoutGapOrOverlap) {
  const auto a = sumOf(madeNormal(31.3, kRate, 75, 1), quiet(0.01, 31.3));
  const auto b = sumOf(madeFibrillation(12.7, kRate, 0.8), quiet(0.01, 12.7));
  const auto c = quiet(0.01, 3);
  const std::vector<SignalView> runs{
      {at(5), kRate, a}, {at(60), kRate, b}, {at(100), kRate, c}, {at(110), kRate, {}}};
  const auto hints = hintRhythm({.runs = runs});
  EXPECT_EQ(said(hints), "organised 75; shockable; unclear too short");
  for (std::size_t i = 0; i < 3; ++i) {
    const auto& entry = hints.entries[i];
    EXPECT_EQ(entry.t, runs[i].begin);
    EXPECT_EQ(entry.end, runs[i].timeAt(static_cast<double>(runs[i].values.size())));
    EXPECT_EQ(entry.source, Source::derived);
    EXPECT_EQ(entry.note, "A reviewer's aid, not a diagnosis");
    EXPECT_TRUE(entry.hasTime);
    EXPECT_FALSE(entry.incomplete);
    ASSERT_TRUE(entry.quality);
    EXPECT_GE(*entry.quality, 0);
    EXPECT_LE(*entry.quality, 1);
  }
  EXPECT_EQ(hints.entries[2].quality, 0);
  EXPECT_EQ(hints.windows.size(), 12U + 3U);
}

TEST(RhythmHints, moveWithTheSignal) {
  const auto ecg = sumOf(madeNormal(40, kRate, 75, 1), quiet(0.01, 40));
  const SignalView early{at(0), kRate, ecg}, late{at(1234.567891), kRate, ecg};
  const auto a = hintRhythm({.runs = {&early, 1}});
  const auto b = hintRhythm({.runs = {&late, 1}});
  ASSERT_EQ(a.entries.size(), b.entries.size());
  for (std::size_t i = 0; i < a.entries.size(); ++i) {
    EXPECT_EQ(b.entries[i].t - a.entries[i].t, late.begin - early.begin);
    EXPECT_EQ(b.entries[i].quality, a.entries[i].quality);
  }
}

TEST(RhythmHints, beatsOfAnotherDetectorGiveTheRate) {
  const auto ecg = sumOf(madeNormal(kLong, kRate, 75, 1), quiet());
  const SignalView run{at(0), kRate, ecg};
  std::vector<Time> beats;
  for (double t = 0.4; t < kLong; t += 0.75) {
    beats.push_back(at(t));
  }
  EXPECT_EQ(said(hintRhythm({.runs = {&run, 1}, .beats = beats})), "organised 80");
}

} // namespace
} // namespace afterbeat
