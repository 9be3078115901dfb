/// From the samples of a simulated body to what a shock did, with the hints in between.
#include "core/signal/ecg/beats.h"
#include "core/signal/ecg/quality.h"
#include "core/signal/ecg/shock_rhythm.h"
#include "core/signal/rhythm/hints.h"
#include "samples/body/body.h"

#include <gtest/gtest.h>

using namespace afterbeat;

namespace {

using samples::body::Body;

constexpr double kShock = 40.3;

struct Case {
  const char* name;
  RhythmKind then;
  double rate;
  AfterShock expected;
};

class ShockOutside : public testing::TestWithParam<Case> {};

TEST_P(ShockOutside, IsJudgedAsItHappened) {
  const auto at = [](double s) { return *timeFromSeconds(s); };
  for (std::uint64_t seed = 1; seed < 6; ++seed) {
    Body body;
    body.from = 0;
    body.to = 90;
    body.seed = seed;
    body.shocks = {kShock};
    body.rhythm = {{at(0), at(kShock), RhythmKind::shockable, 0, 0.5, false},
                   {at(kShock), at(90), GetParam().then, GetParam().rate, 0.5, false}};
    const Channel channel = samples::body::ecg(body, {250, 0.005, 0});
    std::vector<double> values;
    readValues(channel, channel.blocks.front(), 0, channel.blocks.front().count, 1, values);
    const std::vector run{SignalView{channel.blocks.front().t, channel.rateHz, values}};
    const auto faults = ecgFaults(run[0]);
    std::vector<Time> beats;
    for (const Beat& beat : findBeats(run[0])) {
      beats.push_back(beat.at);
    }
    const auto hints = hintRhythm({.runs = run, .faults = faults, .beats = beats});
    const auto found = judgeShock(at(kShock), {}, hints.entries, run[0], faults, {});
    ASSERT_TRUE(found.before) << seed;
    EXPECT_TRUE(found.before->coarse());
    EXPECT_GT(found.before->amsaMvHz, 1);
    EXPECT_EQ(found.after, GetParam().expected) << seed;
    EXPECT_EQ(found.followed, GetParam().then) << seed;
    EXPECT_FALSE(found.returned) << seed;
    if (GetParam().then == RhythmKind::organised) {
      ASSERT_TRUE(found.followedRatePerMin) << seed;
      EXPECT_NEAR(*found.followedRatePerMin, GetParam().rate, 5) << seed;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(
    Rhythms, ShockOutside,
    testing::Values(Case{"beats", RhythmKind::organised, 82, AfterShock::ended},
                    Case{"asystole", RhythmKind::asystole, 0, AfterShock::ended},
                    Case{"fibrillation", RhythmKind::shockable, 0, AfterShock::wentOn}),
    [](const auto& one) { return std::string(one.param.name); });

} // namespace
