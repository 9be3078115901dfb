#include "core/signal/ecg/shock_rhythm.h"

#include "tests/core/signal/ecg/made_ecg.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace afterbeat;

namespace {

Entry hint(double begin, double end, RhythmKind kind, std::optional<double> rate = {},
           std::string reason = {}) {
  Entry out;
  out.t = at(begin);
  out.end = at(end);
  out.source = Source::derived;
  out.data = entry::Rhythm{kind, rate, std::move(reason)};
  return out;
}

/// A shock at 20 s of 100 s of a 5-Hz sine.
ShockRhythm judged(const std::vector<Entry>& hints, std::optional<Time> next = {},
                   std::vector<FaultyStretch> faults = {}) {
  static const auto kValues = madeSine(25000, 250, 5, 0.4);
  return judgeShock(at(20), next, hints, {at(0), 250, kValues}, faults, {});
}

TEST(ShockRhythm, FibrillationThatEnds) {
  const auto found = judged({hint(0, 20, RhythmKind::shockable), hint(22, 30, RhythmKind::asystole),
                             hint(30, 60, RhythmKind::organised, 82)});
  ASSERT_TRUE(found.before);
  EXPECT_NEAR(found.before->amsaMvHz, 2, 1e-9);
  EXPECT_EQ(found.after, AfterShock::ended);
  EXPECT_EQ(found.followed, RhythmKind::asystole);
  EXPECT_EQ(found.followedFrom, at(25));
  EXPECT_FALSE(found.returned);
  EXPECT_FALSE(found.whyNotKnown);
}

TEST(ShockRhythm, FibrillationThatGoesOn) {
  const auto found = judged({hint(0, 60, RhythmKind::shockable)});
  EXPECT_EQ(found.after, AfterShock::wentOn);
  EXPECT_EQ(found.followed, RhythmKind::shockable);
  EXPECT_FALSE(found.returned);
}

TEST(ShockRhythm, FibrillationThatComesBack) {
  const auto found =
      judged({hint(0, 20, RhythmKind::shockable), hint(21, 40, RhythmKind::organised, 60),
              hint(40, 90, RhythmKind::shockable)});
  EXPECT_EQ(found.after, AfterShock::ended);
  EXPECT_EQ(found.followedRatePerMin, 60);
  EXPECT_EQ(found.returned, at(40));
}

TEST(ShockRhythm, CompressionsHideTheEnd) {
  const auto found = judged({hint(0, 20, RhythmKind::shockable),
                             hint(20, 50, RhythmKind::unclear, {}, "chest compressions"),
                             hint(50, 60, RhythmKind::organised, 70)});
  EXPECT_EQ(found.after, AfterShock::notKnown);
  EXPECT_EQ(found.whyNotKnown, EcgObstacle::rhythmUnclear);
  EXPECT_EQ(found.reason, "chest compressions");
  EXPECT_EQ(found.followed, RhythmKind::organised);
  EXPECT_EQ(found.followedFrom, at(50));
}

TEST(ShockRhythm, AShockForSomethingElseIsNotJudged) {
  const auto found = judged({hint(0, 30, RhythmKind::organised, 150)});
  EXPECT_EQ(found.before.error(), EcgObstacle::notFibrillation);
  EXPECT_EQ(found.after, AfterShock::notKnown);
  EXPECT_EQ(found.whyNotKnown, EcgObstacle::notFibrillation);
  EXPECT_EQ(found.followed, RhythmKind::organised);
}

TEST(ShockRhythm, NothingIsKnownWithoutHints) {
  const auto found = judged({});
  EXPECT_EQ(found.before.error(), EcgObstacle::rhythmUnclear);
  EXPECT_EQ(found.after, AfterShock::notKnown);
  EXPECT_EQ(found.whyNotKnown, EcgObstacle::rhythmUnclear);
  EXPECT_FALSE(found.followed);
}

TEST(ShockRhythm, AnOldHintSaysNothingAboutTheShock) {
  const auto found =
      judged({hint(0, 4.9, RhythmKind::shockable), hint(21, 40, RhythmKind::organised, 60)});
  EXPECT_EQ(found.whyNotKnown, EcgObstacle::rhythmUnclear);
  EXPECT_EQ(
      judged({hint(0, 5, RhythmKind::shockable), hint(21, 40, RhythmKind::organised, 60)}).after,
      AfterShock::ended);
}

TEST(ShockRhythm, TheNextShockEndsWhatFollows) {
  const std::vector hints{hint(0, 20, RhythmKind::shockable), hint(21, 24, RhythmKind::shockable),
                          hint(26, 60, RhythmKind::organised, 60)};
  EXPECT_FALSE(judged(hints, at(24)).followed);
  EXPECT_EQ(judged(hints, at(24)).after, AfterShock::notKnown);
  EXPECT_EQ(judged(hints, at(60)).followed, RhythmKind::organised);
  EXPECT_EQ(judged(hints, at(60)).after, AfterShock::notKnown);
}

TEST(ShockRhythm, AFaultBeforeTheShockHidesTheFiguresAlone) {
  const auto found =
      judged({hint(0, 20, RhythmKind::shockable), hint(22, 30, RhythmKind::asystole)}, {},
             {{{at(19.9), at(21)}, SignalFault::saturated}});
  EXPECT_EQ(found.before.error(), EcgObstacle::saturated);
  EXPECT_EQ(found.after, AfterShock::ended);
}

TEST(ShockRhythm, UnusableEntriesAreNoHints) {
  auto incomplete = hint(0, 20, RhythmKind::shockable);
  incomplete.incomplete = true;
  auto endless = hint(0, 20, RhythmKind::shockable);
  endless.end.reset();
  const auto found = judged({incomplete, endless});
  EXPECT_EQ(found.before.error(), EcgObstacle::rhythmUnclear);
}

} // namespace
