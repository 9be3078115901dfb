#include "core/compare/stages.h"

#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using enum MeasureId;

const Values kAll{{callToDeviceArrived, 200},   {callToFirstShock, 300},
                  {powerOnToFirstShock, 80},    {powerOnToElectrodes, 40},
                  {electrodesToFirstShock, 40}, {electrodesToFirstAnalysis, 20}};

TEST(Stages, EveryMomentKnown) {
  ToldSeason told;
  told.rescue("pier", {}, kAll);
  const auto found = stages(told.season(), told.all(), StagesFrom::call).value();
  ASSERT_EQ(found.records.size(), 1U);
  EXPECT_EQ(found.records[0].times, (MomentTimes{0, 200, 220, 260, 280, 300}));
  ASSERT_EQ(found.records[0].stages.size(), 5U);
  EXPECT_EQ(found.records[0].stages[1].seconds, 20);
  EXPECT_TRUE(found.records[0].stages[1].divided());
  EXPECT_EQ(found.records[0].total, 300);
}

TEST(Stages, WhatIsNotRecordedDividesNothing) {
  ToldSeason told;
  told.rescue("pier", {}, {{powerOnToFirstShock, 80}, {powerOnToElectrodes, 40}});
  const auto found = stages(told.season(), told.all(), StagesFrom::powerOn).value();
  ASSERT_EQ(found.records[0].stages.size(), 2U);
  const Stage& last = found.records[0].stages[1];
  EXPECT_EQ(last.from, StageMoment::electrodes);
  EXPECT_EQ(last.to, StageMoment::firstShock);
  EXPECT_FALSE(last.divided());
  EXPECT_EQ(last.seconds, 40);
  EXPECT_FALSE(found.records[0].times[4]);
}

TEST(Stages, MomentsAreFoundThroughFirstCompressions) {
  ToldSeason told;
  told.rescue("pier", {},
              {{callToFirstHandsOn, 150}, {powerOnToFirstHandsOn, 10}, {powerOnToElectrodes, 30}});
  const auto times = momentTimes(told.season(), 0, StagesFrom::call);
  EXPECT_EQ(times, (MomentTimes{0, std::nullopt, 140, 170, std::nullopt, std::nullopt}));
}

TEST(Stages, FromPowerOnNothingBeforeItCounts) {
  ToldSeason told;
  told.rescue("pier", {}, kAll);
  const auto times = momentTimes(told.season(), 0, StagesFrom::powerOn);
  EXPECT_EQ(times, (MomentTimes{std::nullopt, std::nullopt, 0, 40, 60, 80}));
}

TEST(Stages, OutOfTheUsualOrderIsNegative) {
  ToldSeason told;
  told.rescue("pier", {},
              {{callToDeviceArrived, 200}, {callToFirstShock, 300}, {powerOnToFirstShock, 120}});
  const auto found = stages(told.season(), told.all(), StagesFrom::call).value();
  EXPECT_EQ(found.records[0].stages[1].seconds, -20); // turned on on the way
}

TEST(Stages, MedianOfThoseThatHaveBothEnds) {
  ToldSeason told;
  for (int i = 0; i < 5; ++i) {
    told.rescue("pier", {}, {{powerOnToElectrodes, 30.0 + i}, {electrodesToFirstAnalysis, 50}});
  }
  told.rescue("pier", {}, {{powerOnToElectrodes, 100}, {powerOnToFirstShock, 150}});
  told.rescue("pier", {});
  const auto found = stages(told.season(), told.all(), StagesFrom::powerOn).value();
  EXPECT_EQ(found.leftOpen, 1U);
  ASSERT_EQ(found.median.size(), 3U);
  EXPECT_EQ(found.median[0].records, 6U);
  EXPECT_DOUBLE_EQ(*found.median[0].median, 32.5);
  EXPECT_DOUBLE_EQ(*found.median[1].median, 50);
  EXPECT_EQ(found.median[2].records, 0U);
  EXPECT_EQ(found.total.records, 1U);
  EXPECT_FALSE(found.total.median);
  const std::string text = afterbeat::told(words(found));
  EXPECT_NE(text.find("Typically the longest stage is from electrodes attached to first analysis: "
                      "50.0 s in the middle of 5 records."),
            std::string::npos)
      << text;
  EXPECT_FALSE(found.median[0].share) << "one record alone has the whole";
  EXPECT_NE(text.find("Records that give no such moment: 1."), std::string::npos);
}

/// Device on to electrodes 30 s, to the first analysis 10 s more, to the first shock `last` more.
void tell(ToldSeason& told, double last) {
  told.rescue("pier", {},
              {{powerOnToElectrodes, 30},
               {electrodesToFirstAnalysis, 10},
               {powerOnToFirstShock, 40 + last}});
}

TEST(Stages, AFewVeryLongOnesTakeMostOfTheTimeAndNotOfTheMiddle) {
  ToldSeason told;
  for (const double last : {10, 10, 10, 300, 400}) {
    tell(told, last);
  }
  const auto found = stages(told.season(), told.all(), StagesFrom::powerOn).value();
  const double whole = 5 * 40 + 730;
  EXPECT_DOUBLE_EQ(*found.median[0].share, 150 / whole);
  EXPECT_DOUBLE_EQ(*found.median[1].share, 50 / whole);
  EXPECT_DOUBLE_EQ(*found.median[2].share, 730 / whole);
  EXPECT_EQ(found.undividedShare, 0);
  const std::string text = afterbeat::told(words(found));
  EXPECT_EQ(text.find("The largest part of the time to the first shock lies between first analysis "
                      "and first shock: 78 %, added up over 5 records."),
            0U)
      << text;
  EXPECT_NE(text.find("whose first analysis advised no shock"), std::string::npos) << text;
  EXPECT_NE(text.find("Typically another stage is the longest, from device on to electrodes "
                      "attached: 30.0 s in the middle of 5 records."),
            std::string::npos)
      << text;
}

TEST(Stages, WhatNothingDividesIsNoStagesShare) {
  ToldSeason told;
  for (int i = 0; i < 4; ++i) {
    tell(told, 20);
  }
  told.rescue("pier", {}, {{powerOnToElectrodes, 30}, {powerOnToFirstShock, 90}});
  const auto found = stages(told.season(), told.all(), StagesFrom::powerOn).value();
  EXPECT_DOUBLE_EQ(*found.median[0].share, 150.0 / 330);
  EXPECT_NEAR(*found.undividedShare, 60.0 / 330, 1e-12);
  EXPECT_NE(afterbeat::told(words(found)).find("18 % of it cannot be divided"), std::string::npos);
}

TEST(Stages, ATimeBackwardsIsInNoShare) {
  ToldSeason told;
  for (const double last : {20, 20, 20, 20, -5}) {
    tell(told, last);
  }
  EXPECT_FALSE(stages(told.season(), told.all(), StagesFrom::powerOn)->median[0].share);
  tell(told, 20);
  const auto found = stages(told.season(), told.all(), StagesFrom::powerOn).value();
  EXPECT_EQ(found.shareRecords, 5U);
  EXPECT_DOUBLE_EQ(*found.median[0].share, 0.5);
}

TEST(Stages, KindsAreNotMixed) {
  ToldSeason told;
  told.rescue("pier", {}, kAll);
  told.rescue("pier", {}, kAll).kind = RecordKind::drill;
  EXPECT_FALSE(stages(told.season(), told.all(), StagesFrom::call));
}

} // namespace
} // namespace afterbeat
