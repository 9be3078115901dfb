#include "app/papers/headlines.h"
#include "tests/papers/example_records.h"

#include <gtest/gtest.h>

namespace afterbeat::papers {
namespace {

std::vector<Headline> of(const Record& record) {
  return headlines(record, computeFigures(record), Words{});
}

TEST(Headlines, SixFiguresWithTargetAndSource) {
  const auto all = of(test::fullRescue());
  ASSERT_EQ(all.size(), 6U);
  EXPECT_EQ(all[0].title, "Device on for");
  EXPECT_EQ(all[0].value, "11 min");
  EXPECT_EQ(all[0].note, "from 09:12:30");
  EXPECT_EQ(all[1].value, "3");
  EXPECT_EQ(all[1].note, "last 09:19:57");
  EXPECT_TRUE(all[2].value.endsWith(" %"));
  EXPECT_EQ(all[2].target, "target at most 20 %");
  EXPECT_TRUE(all[2].beyondTarget);
  EXPECT_TRUE(all[2].source.startsWith("Meaney et al., Circulation 2013 ("));
  EXPECT_EQ(all[3].value, "53 s");
  EXPECT_EQ(all[3].note, "from device on");
  EXPECT_EQ(all[4].target, QStringLiteral("target 100–120 a minute"));
  EXPECT_EQ(all[5].value, "45 s");
  EXPECT_EQ(all[5].note, "around shock 2");
  EXPECT_TRUE(all[5].beyondTarget);
  EXPECT_TRUE(
      all[5].sentence.startsWith("Longest pause: 45 s, around shock 2; target at most 10 s"))
      << all[5].sentence.toStdString();
}

TEST(Headlines, ARateOutsideOfItsRangeIsBeyondTheTarget) {
  const auto at = [](double perMinute) {
    test::RecordBuilder builder;
    builder.at(0, entry::PowerOn{}).compressions(10, 100, perMinute);
    const Headline headline = of(builder.done())[4];
    EXPECT_EQ(headline.note.contains("too"), headline.beyondTarget) << perMinute;
    return headline.beyondTarget;
  };
  EXPECT_TRUE(at(132));
  EXPECT_TRUE(at(85));
  EXPECT_FALSE(at(110));
  EXPECT_FALSE(of(test::notesOnly())[4].beyondTarget);
}

TEST(Headlines, NotRecordedIsSaidInWords) {
  for (const Headline& headline : of(test::notesOnly())) {
    if (headline.id == MeasureId::timeOn || headline.id == MeasureId::shocksDelivered ||
        headline.id == MeasureId::powerOnToFirstShock) {
      EXPECT_EQ(headline.value, "not recorded") << headline.title.toStdString();
      EXPECT_FALSE(headline.recorded);
    }
  }
}

TEST(Headlines, NoShockIsANumberOnlyWhereTheWholeTimeOnIsCovered) {
  EXPECT_EQ(of(test::childWithoutShock())[1].value, "0");
  EXPECT_EQ(of(test::childWithoutShock())[3].value, "no shock given");
  test::RecordBuilder builder;
  builder.record.seal = {};
  builder.at(0, entry::PowerOn{}).analysis(20, 28, Advice::noShock);
  EXPECT_EQ(of(builder.done())[1].value, "not recorded");
}

TEST(Headlines, TimesAtTheEdgeOfWhatALogCanHoldAreNoOtherNumber) {
  test::RecordBuilder builder;
  builder.at(-1e6, entry::Compression{}).at(999'999, entry::Compression{});
  const Record record = builder.done();
  const Figures figures = computeFigures(record);
  ASSERT_GT(*figures[MeasureId::handsOffFraction].denominator, kLargestSeconds);
  const auto all = headlines(record, figures, Words{});
  EXPECT_EQ(all[2].note, "555 h 33 min of 555 h 33 min");
}

TEST(Headlines, WhatBrokeOffIsAtLeast) {
  const auto all = of(test::cutOff());
  EXPECT_EQ(all[0].note, "at least: the end was not recorded");
  EXPECT_TRUE(all[1].note.startsWith("may be more: recording broke off"));
  EXPECT_FALSE(of(test::fullRescue())[1].note.contains("may be more"));
}

TEST(Headlines, TimeOnBelowTenMinutesKeepsItsSecondsAsOnTheSheet) {
  EXPECT_EQ(of(test::drill())[0].value, "2 min 40 s");
}

TEST(Headlines, AMeanRateOutsideTheTargetIsMarked) {
  const auto rate = [](double perMinute) {
    test::RecordBuilder builder;
    builder.at(0, entry::PowerOn{}).compressions(10, 90, perMinute).at(100, entry::PowerOff{});
    return of(builder.done())[4];
  };
  EXPECT_EQ(rate(131).note, "mean 131 a minute: too fast");
  EXPECT_EQ(rate(88).note, "mean 88 a minute: too slow");
  EXPECT_EQ(rate(111).note, "mean 111 a minute");
}

TEST(Headlines, TargetsFromTheCareOfAdultsAreNoTargetsForAChild) {
  test::RecordBuilder builder;
  builder.record.header.patient = PatientCategory::child;
  builder.at(0, entry::PowerOn{}).at(2, entry::Electrodes{ElectrodeState::attached, std::nullopt});
  builder.thirtyToTwo(17, 100, 110, 5).at(110, entry::PowerOff{});
  const auto child = of(builder.done());
  EXPECT_TRUE(child[2].target.isEmpty());
  EXPECT_FALSE(child[2].beyondTarget);
  EXPECT_EQ(child[5].note, "before the first compression");
  EXPECT_TRUE(child[5].target.isEmpty());
  builder.record.header.patient = PatientCategory::adult;
  EXPECT_FALSE(of(builder.done())[2].target.isEmpty());
}

TEST(Headlines, UnknownDeliveryIsSaid) {
  EXPECT_TRUE(of(test::cutOff())[1].note.contains("1 more: delivery not recorded"));
  EXPECT_TRUE(of(test::cutOff())[1].note.contains("last 46 s after power-on"));
}

} // namespace
} // namespace afterbeat::papers
