/// Rhythms by time, and the words for hints, their working and shocks.
#include "app/window/look/look.h"
#include "app/window/signals/feature_words.h"
#include "app/window/signals/hint_working.h"
#include "app/window/signals/rhythms.h"
#include "app/window/signals/shock_words.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace afterbeat::window {
namespace {

TEST(FeatureWords, TheFeatureThatSpeaksMostComesFirstWithItsSign) {
  RhythmWindow window;
  for (std::size_t i = 0; i < kRhythmFeatures; ++i) {
    window.measures.features[i] = rhythmModel().weights[i].limit;
  }
  const auto& likeness = rhythmModel().weights[static_cast<std::size_t>(RhythmFeature::likeBeats)];
  window.measures.features[static_cast<std::size_t>(RhythmFeature::likeBeats)] =
      likeness.limit + 2 * likeness.deviation * (likeness.weight > 0 ? 1 : -1);
  const std::vector<FeatureShown> features = featuresOf(window);
  ASSERT_EQ(features.size(), kRhythmFeatures);
  EXPECT_EQ(features[0].name, "Likeness of the beats");
  EXPECT_EQ(features[0].speaksFor, "shockable");
  EXPECT_TRUE(features[0].weight.startsWith('+')) << features[0].weight.toStdString();
  EXPECT_EQ(features[1].speaksFor, "neither");
  EXPECT_EQ(features[1].weight, words().number(0, 2));
}

TEST(FeatureWords, ADecisionSaysItsReason) {
  RhythmWindow window;
  window.is = RhythmKind::unclear;
  window.reason = RhythmReason::compressions;
  EXPECT_EQ(decisionWords(window), "Decision: unclear. Reason: chest compressions.");
  window.is = RhythmKind::asystole;
  window.reason = RhythmReason::none;
  EXPECT_TRUE(decisionWords(window).contains("below 0.12 mV"));
  window.is = RhythmKind::shockable;
  window.doubt = RhythmReason::pacingSpikes;
  EXPECT_TRUE(decisionWords(window).contains("A doubt, pacing spikes,")) << "a doubt is not hidden";
  // Where nothing could be judged, no rule is quoted.
  window.is = RhythmKind::unclear;
  window.obstacle = window.reason = RhythmReason::electrodes;
  EXPECT_EQ(decisionWords(window), "Decision: unclear. Reason: electrodes.");
}

TEST(RhythmLines, OnlyWhatTouchesTheStretchIsLookedAt) {
  std::vector<RhythmStretch> many;
  for (int i = 0; i < 1000; ++i) {
    RhythmStretch one;
    one.where = {Time{Duration{i * 2'000'000LL}}, Time{Duration{(i + 1) * 2'000'000LL}}};
    one.kind = i % 2 == 0 ? RhythmKind::shockable : RhythmKind::asystole;
    many.push_back(one);
  }
  std::reverse(many.begin(), many.end());
  const RhythmLine line(std::move(many));
  const auto [first, last] =
      line.within({Time{Duration{500'500'000}}, Time{Duration{505'000'000}}});
  EXPECT_EQ(first, 250U);
  EXPECT_EQ(last, 253U);
  EXPECT_EQ(line.at(Time{Duration{501'000'000}}), &line.all()[250]);
  EXPECT_EQ(line.at(Time{Duration{-1}}), nullptr);
  const auto [none, nothing] =
      line.within({Time{Duration{3'000'000'000}}, Time{Duration{3'100'000'000}}});
  EXPECT_EQ(none, nothing);
}

TEST(RhythmLines, ALongStretchIsFoundUnderShortOnes) {
  std::vector<RhythmStretch> two(2);
  two[0].where = {Time{Duration{0}}, Time{Duration{100}}};
  two[1].where = {Time{Duration{10}}, Time{Duration{20}}};
  const RhythmLine line(two);
  ASSERT_NE(line.at(Time{Duration{50}}), nullptr);
  EXPECT_EQ(line.at(Time{Duration{50}})->where.end, Time{Duration{100}});
  EXPECT_EQ(line.at(Time{Duration{15}})->where.end, Time{Duration{20}});
}

TEST(ShockWords, WhatIsNotKnownSaysWhy) {
  ShockRhythm shock;
  shock.before = tl::unexpected(EcgObstacle::compressions);
  shock.whyNotKnown = EcgObstacle::rhythmUnclear;
  shock.reason = "chest compressions";
  EXPECT_EQ(beforeShockWords(shock), "not told: chest compressions");
  EXPECT_EQ(afterShockWords(shock), "not known: chest compressions");
  EXPECT_EQ(followedWords(shock), "nothing clear");
  shock.before = Fibrillation{9.5, 0.15, 4.2};
  shock.after = AfterShock::ended;
  shock.followed = RhythmKind::organised;
  shock.followedRatePerMin = 84;
  EXPECT_EQ(beforeShockWords(shock), "fine fibrillation");
  EXPECT_EQ(followedWords(shock), "organised 84");
  EXPECT_TRUE(shockTip(shock).contains("AMSA 9.5 mV·Hz")) << shockTip(shock).toStdString();
}

TEST(RhythmWords, ReasonsOfTheProgramAreTranslatedAndOthersKept) {
  EXPECT_EQ(rhythmReasonWords("wide and fast, 150 per minute"), "wide and fast, 150 a minute");
  EXPECT_EQ(rhythmReasonWords("as the crew said"), "as the crew said");
}

} // namespace
} // namespace afterbeat::window
