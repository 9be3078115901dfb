#include "core/compare/stand_out.h"

#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

#include <cmath>

namespace afterbeat {
namespace {

using enum MeasureId;

std::vector<StandOut> found(ToldSeason& told) {
  return worthALook(told.season(), told.all(), defaultProfile());
}

TEST(StandOut, NothingSpecialIsNotNamed) {
  ToldSeason told;
  for (int i = 0; i < 30; ++i) {
    told.rescue("pier", {}, {{compressionRate, 100.0 + i % 20}, {longestPause, 6.0 + i % 4}});
  }
  EXPECT_TRUE(found(told).empty());
}

TEST(StandOut, EachRule) {
  ToldSeason told;
  const double limit = defaultProfile().preShockPauseLimit->value;
  told.rescue("pier", day(1, 1), {{preShockPauseWorst, limit}});
  told.rescue("pier", day(1, 2), {{preShockPauseWorst, limit - 0.1}});
  told.rescue("pier", day(1, 3), {{longestPause, 40}}).longestPauseCause =
      PauseCause::noReasonRecorded;
  told.rescue("pier", day(1, 4), {{longestPause, 40}}).longestPauseCause = PauseCause::analysis;
  told.rescue("pier", day(1, 5), {{shocksWithheld, 1}});
  told.rescue("pier", day(1, 6)).settingDiffers = true;
  told.rescue("pier", day(1, 7)).evidence = Evidence::none;
  const auto all = found(told);
  ASSERT_EQ(all.size(), 5U);
  // The latest day first where numbers of reasons are equal.
  EXPECT_EQ(all[0].reasons[0].rule, StandOutRule::noEvidence);
  EXPECT_EQ(all[1].reasons[0].rule, StandOutRule::settingDiffers);
  EXPECT_EQ(all[2].reasons[0].rule, StandOutRule::shockWithheld);
  EXPECT_EQ(all[3].reasons[0].rule, StandOutRule::unexplainedPause);
  EXPECT_EQ(all[3].place, 2U);
  EXPECT_EQ(all[4].reasons[0].rule, StandOutRule::preShockPause);
  EXPECT_EQ(all[4].place, 0U);
  EXPECT_EQ(inEnglish(all[3].reasons[0].saying),
            "Pause of 40.0 s for which no reason is recorded.");
}

TEST(StandOut, WhatHasNoFiguresIsInNoFigureAndCounted) {
  ToldSeason told;
  told.rescue("pier", day(1, 1), {{longestPause, 9}});
  RecordFacts& gone = told.rescue("pier", day(1, 2), {});
  gone.evidence = Evidence::none;
  gone.hasFigures = false;
  EXPECT_TRUE(found(told).empty());
  const Season season = told.season();
  EXPECT_EQ(kindsOf(season, told.all()),
            (std::vector<KindCount>{{StatedKind(RecordKind::rescue), 1}}));
  EXPECT_EQ(ofKind(season, told.all(), RecordKind::rescue), Chosen{0});
  EXPECT_EQ(withoutFigures(season, told.all()), 1U);
}

TEST(StandOut, FarOutOfItsOwnKind) {
  ToldSeason told;
  for (int i = 0; i < 20; ++i) {
    told.rescue("pier", day(1, 1), {{compressionRate, 100.0 + i}});
    told.rescue("pier", day(1, 1), {{compressionRate, 150.0 + i}}).kind = RecordKind::drill;
  }
  // Far for a rescue, usual for a drill.
  told.rescue("pier", day(1, 1), {{compressionRate, 160}});
  const auto all = found(told);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].place, 40U);
  EXPECT_EQ(all[0].reasons[0].measure, compressionRate);
  EXPECT_EQ(inEnglish(all[0].reasons[0].saying),
            "Compression rate: 160.0/min, far above what is usual here (middle 110.0/min).");
}

TEST(StandOut, LengthsOfTimeOnLogarithms) {
  ToldSeason told;
  for (int i = 0; i < 24; ++i) {
    // Logarithms (of two) from 0.25 to 5.75, quartiles near 1.6 and 4.6: far out from 13.5 on.
    told.rescue("pier", {}, {{powerOnToElectrodes, std::exp2(i % 12 * 0.5 + 0.25)}});
  }
  told.rescue("pier", {}, {{powerOnToElectrodes, 4000}});
  EXPECT_TRUE(found(told).empty());
  told.rescue("pier", {}, {{powerOnToElectrodes, 20'000}});
  ASSERT_EQ(found(told).size(), 1U);
  EXPECT_EQ(found(told)[0].place, 25U);
}

TEST(StandOut, NotAskedOfFewOrEqualValues) {
  ToldSeason few, equal;
  for (int i = 0; i < 18; ++i) {
    few.rescue("pier", {}, {{compressionRate, 100.0 + i}});
  }
  few.rescue("pier", {}, {{compressionRate, 1000}});
  EXPECT_TRUE(found(few).empty());
  for (int i = 0; i < 30; ++i) {
    equal.rescue("pier", {}, {{compressionRate, 110}});
  }
  equal.rescue("pier", {}, {{compressionRate, 111}});
  EXPECT_TRUE(found(equal).empty());
}

TEST(StandOut, WhatHoldsForManyNamesNone) {
  ToldSeason told;
  for (int i = 0; i < 20; ++i) {
    told.rescue("pier", day(1, 1), {{preShockPauseWorst, i < 6 ? 30 : 1}});
    told.rescue("pier", day(1, 1)).kind = RecordKind::drill;
  }
  told.cell(0, shocksWithheld) = {1, Status::ok, 0};
  const auto all = found(told);
  ASSERT_EQ(all.size(), 1U); // six of twenty rescues have the long pause, one has more
  EXPECT_EQ(all[0].place, 0U);
  ASSERT_EQ(all[0].reasons.size(), 2U);
  EXPECT_TRUE(all[0].reasons[0].usual);
  EXPECT_FALSE(all[0].reasons[1].usual);
  EXPECT_FALSE(usualHere(told.season(), told.all(), defaultProfile()));
  const auto rescues = ofKind(told.season(), told.all(), RecordKind::rescue);
  const auto usual = usualHere(told.season(), rescues, defaultProfile()).value();
  ASSERT_EQ(usual.size(), 1U);
  EXPECT_NE(inEnglish(usual[0]).find("in 6 of 20 records."), std::string::npos);
  told.cell(0, preShockPauseWorst).value = 1; // five of twenty: a quarter is not more
  EXPECT_EQ(found(told).size(), 6U);          // those and the shock that was not given
}

TEST(StandOut, OfFewWhatHoldsForMostNamesNone) {
  ToldSeason told;
  for (int i = 0; i < 15; ++i) {
    told.rescue("pier", day(1, 1), {{preShockPauseWorst, i < 8 ? 30 : 1}});
  }
  EXPECT_TRUE(found(told).empty()) << "eight of fifteen";
  told.cell(0, preShockPauseWorst).value = 1;
  EXPECT_EQ(found(told).size(), 7U) << "seven of fifteen are not most of them";
  ToldSeason four;
  for (int i = 0; i < 4; ++i) {
    four.rescue("pier", day(1, 1), {{preShockPauseWorst, 30}});
  }
  EXPECT_EQ(found(four).size(), 4U) << "nothing is usual among four";
}

TEST(StandOut, AShareThatSaysLittleAloneIsNotNamedAlone) {
  ToldSeason told;
  for (int i = 0; i < 30; ++i) {
    told.rescue("pier", day(1, 1), {{chestCompressionFraction, 0.9 + 0.001 * i}});
  }
  told.rescue("pier", day(1, 1),
              {{chestCompressionFraction, 0.2}, {arrestTime, 600}, {shocksDelivered, 3}});
  const auto all = found(told);
  ASSERT_EQ(all.size(), 1U);
  const std::string text = inEnglish(all[0].reasons[0].saying);
  EXPECT_NE(text.find("Beside it: Time without circulation 600.0 s, Shocks given 3."),
            std::string::npos)
      << text;
}

TEST(StandOut, MoreReasonsFirst) {
  ToldSeason told;
  told.rescue("pier", day(5, 1), {{shocksWithheld, 1}});
  told.rescue("pier", day(1, 1), {{shocksWithheld, 1}}).settingDiffers = true;
  const auto all = found(told);
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].place, 1U);
}

} // namespace
} // namespace afterbeat
