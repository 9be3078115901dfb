/// Small rescues worked out by hand, with the arithmetic beside them.
#include "tests/core/measures/story.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace afterbeat {
namespace {

using testing::ElementsAre;

std::vector<std::string> pausesOf(const Figures& f) {
  std::vector<std::string> list;
  for (const Pause& p : f.pauses) {
    list.push_back(std::to_string(std::lround(seconds(p.stretch.begin))) + "-" +
                   std::to_string(std::lround(seconds(p.stretch.end))) + " " +
                   std::string(name(p.cause)));
  }
  return list;
}

void expectValue(const Figures& f, MeasureId id, double expected) {
  EXPECT_EQ(f[id].status, Status::ok) << measureInfo(id).name;
  EXPECT_NEAR(f[id].value.value_or(-1e9), expected, 1e-9) << measureInfo(id).name;
}

void expectStatus(const Figures& f, MeasureId id, Status expected) {
  EXPECT_EQ(f[id].status, expected) << measureInfo(id).name;
  EXPECT_FALSE(f[id].value.has_value()) << measureInfo(id).name;
}

double seconds(const std::optional<Duration>& d) {
  return d ? afterbeat::seconds(*d) : -1;
}
using afterbeat::seconds;

// ---- causes, one pause each, between compressions at 0 to 10 s and from 30 s on

Story aroundAPause() {
  return Story().compressions(0, 21, 0.5).compressions(30, 21, 0.5);
}

TEST(PauseCause, ShockAtTheVeryEdge) {
  // 10-30 s. The shock at 30 s lies on the edge, and stands before the analysis.
  EXPECT_THAT(pausesOf(aroundAPause().analysis(12, 20).shock(30).figures()),
              ElementsAre("10-30 shock"));
}

TEST(PauseCause, AnalysisThatTouches) {
  // The analysis ends at 10 s, where the pause begins; breaths do not matter then.
  EXPECT_THAT(pausesOf(aroundAPause().analysis(8, 10).ventilation(12).figures()),
              ElementsAre("10-30 analysis"));
  // It ended at 9 s: the breath is the first that fits, and 20 s are long for it.
  EXPECT_THAT(pausesOf(aroundAPause().analysis(8, 9).ventilation(12).figures()),
              ElementsAre("10-30 breaths_long"));
}

TEST(PauseCause, BeforeFirstAndAfterLast) {
  // Electrodes at -20 s begin the window, hands are on from 0 to 10 s; a prompt at 45 s ends it.
  Story story = Story().compressions(0, 21, 0.5);
  story.add(-20, entry::Electrodes{ElectrodeState::attached, {}});
  story.add(45, entry::Prompt{"continue", ""});
  FigureSettings settings;
  settings.windowEnd = WindowEnd::recordEnd;
  EXPECT_THAT(pausesOf(story.figures(settings)),
              ElementsAre("-20-0 before_first", "10-45 after_last"));
  // With the last activity as the end there is nothing after it.
  EXPECT_THAT(pausesOf(story.figures()), ElementsAre("-20-0 before_first"));
}

TEST(PauseCause, BreathsOfExactlyTheLimit) {
  // Ten seconds are within the limit of ten: 10-20 s. A millisecond more is not.
  Story ten = Story().compressions(0, 21, 0.5).compressions(20, 21, 0.5).ventilation(20);
  EXPECT_THAT(pausesOf(ten.figures()), ElementsAre("10-20 breaths"));
  Story more = Story().compressions(0, 21, 0.5).compressions(20.001, 21, 0.5).ventilation(10);
  EXPECT_THAT(pausesOf(more.figures()), ElementsAre("10-20 breaths_long"));
  expectValue(ten.figures(), MeasureId::pausesOverLimit, 0);
  expectValue(more.figures(), MeasureId::pausesOverLimit, 1);
  // A profile without limits calls every pause with a breath `breaths`, and counts none as over.
  FigureSettings bare;
  bare.profile = Profile{};
  EXPECT_THAT(pausesOf(more.figures(bare)), ElementsAre("10-20 breaths"));
  expectStatus(more.figures(bare), MeasureId::pausesOverLimit, Status::notApplicable);
}

TEST(PauseCause, NoReasonRecorded) {
  // A shock that was withheld is none.
  Story story = aroundAPause();
  story.add(20, entry::Shock{false, {}, {}, "moved"});
  EXPECT_THAT(pausesOf(story.figures()), ElementsAre("10-30 no_reason_recorded"));
}

// ---- shocks

TEST(ShockPauses, FromSingleCompressions) {
  // Last compression at 10 s, shock at 14 s, next at 17 s: 4 + 3 = 7 s. Second shock at 40 s with
  // the last compression at 27 s: 13 s; nothing after it: no post.
  const Figures f =
      Story().compressions(0, 21, 0.5).shock(14).compressions(17, 21, 0.5).shock(40).figures();
  ASSERT_EQ(f.shocks.size(), 2U);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].pre), 4);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].post), 3);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].peri), 7);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[1].pre), 13);
  EXPECT_FALSE(f.shocks[1].post.has_value());
  EXPECT_FALSE(f.shocks[1].peri.has_value());
  // Median of two: (4 + 13) / 2. One post, one peri.
  expectValue(f, MeasureId::preShockPauseMedian, 8.5);
  expectValue(f, MeasureId::preShockPauseWorst, 13);
  expectValue(f, MeasureId::postShockPauseMedian, 3);
  expectValue(f, MeasureId::periShockPauseWorst, 7);
}

TEST(ShockPauses, DuringAContinuousStretch) {
  // Given under compressions: no pause at either side. At the stretch's end: none before it.
  const Figures f = Story().cpr(0, 20, 110).shock(10).shock(20).cpr(26, 40, 110).figures();
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].pre), 0);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].post), 0);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[1].pre), 0);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[1].post), 6);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[1].peri), 6);
}

TEST(ShockPauses, StackedShocksShareNoHandsOn) {
  // Three in a row at 12, 16 and 20 s between compressions to 10 s and from 23 s: the first has
  // only a before, the last only an after, the middle one neither.
  const Figures f = Story()
                        .compressions(0, 21, 0.5)
                        .shock(12)
                        .shock(16)
                        .shock(20)
                        .compressions(23, 5, 0.5)
                        .figures();
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].pre), 2);
  EXPECT_FALSE(f.shocks[0].post.has_value());
  EXPECT_FALSE(f.shocks[1].pre.has_value());
  EXPECT_FALSE(f.shocks[1].post.has_value());
  EXPECT_FALSE(f.shocks[2].pre.has_value());
  EXPECT_DOUBLE_EQ(seconds(f.shocks[2].post), 3);
  expectStatus(f, MeasureId::periShockPauseMedian, Status::notApplicable);
}

TEST(ShockPauses, HandsOnAtThePreviousShockCounts) {
  // A compression at the very moment of the first shock, 12 s: it is 4 s before the second.
  const Figures f = Story().compression(11).compression(12).shock(12).shock(16).figures();
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].pre), 0);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].post), 0);
  EXPECT_DOUBLE_EQ(seconds(f.shocks[1].pre), 4);
}

TEST(AdviceToShock, AnAnalysisIsUsedOnce) {
  // Advice ends at 10 s. Shocks at 13 and 19 s: 3 s, and the second used none. Then no_shock at 30
  // s and a shock at 33 s by hand.
  const Figures f = Story()
                        .analysis(4, 10, Advice::shock)
                        .shock(13, 150)
                        .shock(19, 200)
                        .analysis(25, 30, Advice::noShock)
                        .shock(33, 200)
                        .figures();
  EXPECT_DOUBLE_EQ(seconds(f.shocks[0].adviceToShock), 3);
  EXPECT_FALSE(f.shocks[1].adviceToShock.has_value());
  EXPECT_FALSE(f.shocks[2].adviceToShock.has_value());
  expectValue(f, MeasureId::adviceToShockMedian, 3);
  expectValue(f, MeasureId::energyTotal, 550);
  expectValue(f, MeasureId::analyses, 2);
  expectValue(f, MeasureId::analysesAdvisingShock, 1);
}

// ---- circulation and re-arrest

TEST(ReArrest, CutsTheRescueIntoTwoArrests) {
  // Compressions 0-20 s, circulation returns at 25 s, is lost at 85 s, compressions again 95-115 s.
  // Arrest: 0-25 and 85-115 = 55 s. Gaps: 20-25 (5 s) and 85-95 (10 s) = 15 s. 15 / 55 = 0.2727.
  const Figures f =
      Story().compressions(0, 41, 0.5).returned(25).lost(85).compressions(95, 41, 0.5).figures();
  EXPECT_THAT(f.arrest, ElementsAre(Interval{Story::at(0), Story::at(25)},
                                    Interval{Story::at(85), Story::at(115)}));
  EXPECT_THAT(pausesOf(f), ElementsAre("20-25 no_reason_recorded", "85-95 no_reason_recorded"));
  expectValue(f, MeasureId::arrestTime, 55);
  expectValue(f, MeasureId::handsOffTime, 15);
  expectValue(f, MeasureId::handsOffFraction, 15.0 / 55);
  expectValue(f, MeasureId::circulationTime, 60);
  // 41 + 41 compressions in 55 s.
  expectValue(f, MeasureId::compressionsPerMinute, 82 * 60 / 55.0);
}

TEST(ReArrest, HandsOnEndsCirculationWithoutAWord) {
  // Returned at 25 s, nobody says lost, compressions from 60 s on: circulation 25-60 s. Returned
  // again at 100 s; the window ends with the last compression at 70 s: an interval that no event
  // ends and that begins after the window is none.
  const Figures f = Story()
                        .compressions(0, 41, 0.5)
                        .returned(25)
                        .compressions(60, 21, 0.5)
                        .returned(100)
                        .figures();
  EXPECT_THAT(f.circulation, ElementsAre(Interval{Story::at(25), Story::at(60)}));
  expectValue(f, MeasureId::longestCirculation, 35);
  expectValue(f, MeasureId::arrestTime, 25 + 10);
}

TEST(ReArrest, ExcludedStretchMergesWithCirculation) {
  // Circulation 25-60 s, excluded 50-80 s: one hole of 55 s in the window of 100 s.
  Story story;
  story.compressions(0, 41, 0.5).returned(25).lost(60).excluded(50, 80).compressions(90, 21, 0.5);
  const Figures f = story.figures();
  expectValue(f, MeasureId::arrestTime, 100 - 55);
  EXPECT_EQ(f.excludedLength, Duration{30'000'000});
  // 20-25 s and 80-90 s.
  expectValue(f, MeasureId::handsOffTime, 15);
  EXPECT_EQ(f.notCounted.size(), 2U);
}

// ---- evidence

TEST(Evidence, ACompressionInsideAStretchIsTheFinerOne) {
  // The stretch 0-10 s holds a kept compression at its edge, 10 s, and goes; 20-30 s stays.
  const Figures f = Story().cpr(0, 10, 110).compression(10).cpr(20, 30, 110).figures();
  EXPECT_EQ(f.evidence, Evidence::both);
  EXPECT_EQ(f.window->begin, Story::at(10));
  expectValue(f, MeasureId::handsOffTime, 10);
  expectStatus(f, MeasureId::compressionsPerMinute, Status::notRecorded);
}

TEST(Evidence, ADoubleDetectionIsDropped) {
  // 0.2 s after the last kept one is dropped, 0.201 s is kept; measured from the last kept one.
  const Figures f = Story().compression(0).compression(0.2).compression(0.201).figures();
  EXPECT_EQ(f.compressions.size(), 2U);
  ASSERT_EQ(f.notices.size(), 1U);
  EXPECT_EQ(f.notices[0].kind, ProblemKind::doubleDetection);
  EXPECT_THAT(f.notices[0].args, ElementsAre("1"));
}

TEST(Evidence, TheDeviceStandsBeforeTheObserver) {
  // The observer's at 0 and 5 s lie outside the device's 1-4 s; the one at 2.5 s inside.
  Story story;
  for (const double t : {0.0, 2.5, 5.0}) {
    story.compression(t).record.entries.back().source = Source::observer;
  }
  story.compressions(1, 7, 0.5);
  const Figures f = story.figures();
  EXPECT_EQ(f.compressions.size(), 9U);
  // Seven of the device are 1 to 4 s; 0 s and 5 s around them.
  EXPECT_EQ(f.compressions.front(), Story::at(0));
  EXPECT_EQ(f.compressions.back(), Story::at(5));
}

TEST(Evidence, NothingRecordedIsNoNumber) {
  const Figures f = Story().milestone(0, "collapse").figures();
  EXPECT_FALSE(f.window.has_value());
  for (const Measure& m : f.measures) {
    EXPECT_FALSE(m.value.has_value()) << measureInfo(m.id).name;
  }
  // Electrodes alone: a window, and shocks that are known to be none; hands off stays unknown.
  Story story;
  story.add(0, entry::Electrodes{ElectrodeState::attached, {}});
  const Figures attached = story.figures();
  expectValue(attached, MeasureId::shocksDelivered, 0);
  expectValue(attached, MeasureId::arrestTime, 0);
  expectStatus(attached, MeasureId::handsOffTime, Status::notRecorded);
  EXPECT_TRUE(attached.pauses.empty());
}

// ---- what a person noted, without a device's recording: no kind says anything about another

Story noted(EntryData data) {
  Story story;
  story.compressions(0, 21, 0.5);
  story.add(12, std::move(data)).source = Source::observer;
  return story;
}

TEST(NotedByAPerson, AShockSaysNothingOfAnalysesOrWithheldOnes) {
  const Figures f = noted(entry::Shock{true, {}, {}, ""}).figures();
  expectValue(f, MeasureId::shocksDelivered, 1);
  expectStatus(f, MeasureId::shocksWithheld, Status::notRecorded);
  expectStatus(f, MeasureId::shocksUnknown, Status::notRecorded);
  expectStatus(f, MeasureId::analyses, Status::notRecorded);
  expectStatus(f, MeasureId::analysesAdvisingShock, Status::notRecorded);
  EXPECT_EQ(f.minutes.at(0).shocks, 1);
}

TEST(NotedByAPerson, AnAnalysisSaysNothingOfShocksButItsAdvice) {
  Story story = noted(entry::Analysis{Advice::noShock});
  story.record.entries.back().end = Story::at(14);
  const Figures f = story.figures();
  expectValue(f, MeasureId::analyses, 1);
  expectValue(f, MeasureId::analysesAdvisingShock, 0);
  expectStatus(f, MeasureId::shocksDelivered, Status::notRecorded);
  EXPECT_FALSE(f.minutes.at(0).shocks.has_value());
}

TEST(NotedByAPerson, AShockThatMayHaveBeenGivenIsNoZero) {
  const Figures f = noted(entry::Shock{}).figures();
  expectValue(f, MeasureId::shocksUnknown, 1);
  expectStatus(f, MeasureId::shocksDelivered, Status::notRecorded);
  expectStatus(f, MeasureId::shocksWithheld, Status::notRecorded);
}

TEST(NotedByAPerson, SwitchingOnIsNotTheDevicesRecording) {
  const Figures byPerson = noted(entry::PowerOn{}).figures();
  expectStatus(byPerson, MeasureId::shocksDelivered, Status::notRecorded);
  expectStatus(byPerson, MeasureId::analyses, Status::notRecorded);
  // The device's own one is.
  Story story = noted(entry::PowerOn{});
  story.add(0, entry::PowerOn{});
  const Figures byDevice = story.figures();
  expectValue(byDevice, MeasureId::shocksDelivered, 0);
  expectValue(byDevice, MeasureId::analyses, 0);
  EXPECT_EQ(byDevice.minutes.at(0).shocks, 0);
}

// ---- rates from stretches

TEST(CompressionRateFromStretches, IsWeightedByLength) {
  // 30 s at 100 and 10 s at 130: (3000 + 1300) / 40 = 107.5; in range 30 of 40 s. Without a rate,
  // 60-80 s: not in it. Numerator: 4300 / 60 compressions.
  const Figures f = Story().cpr(0, 30, 100).cpr(40, 50, 130).cpr(60, 80).figures();
  EXPECT_EQ(f.evidence, Evidence::segments);
  expectValue(f, MeasureId::compressionRate, 107.5);
  EXPECT_NEAR(*f[MeasureId::compressionRate].numerator, 4300.0 / 60, 1e-9);
  EXPECT_NEAR(*f[MeasureId::compressionRate].denominator, 40, 1e-9);
  expectValue(f, MeasureId::compressionRateInRange, 0.75);
  expectStatus(f, MeasureId::compressions, Status::notRecorded);
  for (const Coverage& c : f.coverage) {
    if (c.id == MeasureId::compressionRate) {
      EXPECT_DOUBLE_EQ(c.used, 40);
      EXPECT_DOUBLE_EQ(c.of, 60);
    }
  }
}

// ---- depth and release

TEST(CompressionDepth, ByTheCategoryInForce) {
  // Category by the device: child from 0 s (no range), adult from 5 s. Depths 40 at 1 s; 50, 60 and
  // 60.1 at 6, 7, 8 s. Mean 210.1 / 4 = 52.525; in range 2 of the 3 that have a range.
  Story story;
  story.add(0, entry::PatientMode{PatientCategory::child});
  story.add(5, entry::PatientMode{PatientCategory::adult});
  story.compression(1, 40).compression(6, 50).compression(7, 60).compression(8, 60.1);
  const Figures f = story.figures();
  expectValue(f, MeasureId::compressionDepth, 210.1 / 4);
  expectValue(f, MeasureId::compressionDepthInRange, 2.0 / 3);
  // The record's own category goes first: a child, so no range, and the setting is noticed.
  story.record.header.patient = PatientCategory::child;
  const Figures child = story.figures();
  expectStatus(child, MeasureId::compressionDepthInRange, Status::notApplicable);
  ASSERT_EQ(child.notices.size(), 1U);
  EXPECT_EQ(child.notices[0].kind, ProblemKind::categoryDiffers);
}

TEST(FullRelease, ByTheFlagElseByLeaning) {
  // Released; 5 mm of leaning is within the limit; 5.1 mm is not; the flag overrules 0 mm; unknown.
  Story story;
  story.add(0, entry::Compression{{}, {}, true});
  story.add(1, entry::Compression{{}, 5.0, {}});
  story.add(2, entry::Compression{{}, 5.1, {}});
  story.add(3, entry::Compression{{}, 0.0, false});
  story.add(4, entry::Compression{});
  const Figures f = story.figures();
  expectValue(f, MeasureId::fullRelease, 0.5);
  EXPECT_EQ(f[MeasureId::fullRelease].numerator, 2);
  EXPECT_EQ(f[MeasureId::fullRelease].denominator, 4);
}

// ---- tables

TEST(CycleTable, FromAdviceOrShockToTheNextAnalysis) {
  // Analyses 10-18 (shock at 22), 140-148 and 146-150 (one), nothing after; compressions twice a
  // second 0-8, 24-138, 152-200 s. Open 0-10, cycle 22-140 of 118 s, open 150-200.
  const Figures f = Story()
                        .compressions(0, 17, 0.5)
                        .analysis(10, 18, Advice::shock)
                        .shock(22)
                        .compressions(24, 229, 0.5)
                        .analysis(140, 148)
                        .analysis(146, 150)
                        .compressions(152, 97, 0.5)
                        .figures();
  ASSERT_EQ(f.cycles.size(), 3U);
  EXPECT_EQ(f.cycles[0].stretch, (Interval{Story::at(0), Story::at(10)}));
  EXPECT_TRUE(f.cycles[0].open);
  EXPECT_EQ(f.cycles[1].stretch, (Interval{Story::at(22), Story::at(140)}));
  EXPECT_FALSE(f.cycles[1].open);
  EXPECT_EQ(f.cycles[2].stretch, (Interval{Story::at(150), Story::at(200)}));
  EXPECT_TRUE(f.cycles[2].open);
  // Pauses 8-24 and 138-152: 2 s in the first row, 2 + 2 in the second, 2 in the last.
  EXPECT_DOUBLE_EQ(seconds(f.cycles[0].handsOff), 2);
  EXPECT_DOUBLE_EQ(seconds(f.cycles[1].handsOff), 4);
  EXPECT_DOUBLE_EQ(seconds(f.cycles[2].handsOff), 2);
  EXPECT_NEAR(f.cycles[1].rate.value_or(0), 120, 1e-9);
}

TEST(MinuteTable, ABoundaryBelongsToTheLaterMinute) {
  // Once a second from 0 to 60 s, then 62 s: rows 0-60 and 60-62. 60 compressions in the first,
  // those at 60 and 62 s in the second; the interval 59-60 s too. 60-62 s is a pause.
  Story story;
  story.compressions(0, 61, 1).compression(62).ventilation(60);
  story.add(60, entry::Shock{true, {}, {}, ""});
  const Figures f = story.figures();
  ASSERT_EQ(f.minutes.size(), 2U);
  EXPECT_EQ(f.minutes[0].compressions, 60);
  EXPECT_EQ(f.minutes[1].compressions, 2);
  EXPECT_EQ(f.minutes[0].ventilations, 0);
  EXPECT_EQ(f.minutes[1].ventilations, 1);
  EXPECT_EQ(f.minutes[1].shocks, 1);
  EXPECT_DOUBLE_EQ(seconds(f.minutes[0].handsOff), 0);
  EXPECT_DOUBLE_EQ(seconds(f.minutes[1].handsOff), 2);
  EXPECT_NEAR(f.minutes[1].rate.value_or(0), 60, 1e-9);
  EXPECT_EQ(f.minutes[1].epoch, (Interval{Story::at(60), Story::at(62)}));
}

TEST(MinuteTable, AWindowOfWholeMinutesHasNoEmptyRow) {
  const Figures f = Story().cpr(0, 120, 110).figures();
  ASSERT_EQ(f.minutes.size(), 2U);
  EXPECT_EQ(f.minutes[1].arrest, Duration{60'000'000});
}

// ---- between events and on-time

TEST(BetweenEvents, MayBeNegative) {
  // A bystander pressed from -40 s on; power on at 0, electrodes 20, analysis 30-40, shock 44 s.
  Story story;
  story.compressions(-40, 11, 0.5).analysis(30, 40, Advice::shock).shock(44);
  story.add(0, entry::PowerOn{});
  story.add(20, entry::Electrodes{ElectrodeState::attached, {}});
  story.milestone(-120, "collapse")
      .milestone(-100, "call_received")
      .milestone(-10, "device_arrived");
  const Figures f = story.figures();
  expectValue(f, MeasureId::powerOnToFirstShock, 44);
  expectValue(f, MeasureId::electrodesToFirstShock, 24);
  expectValue(f, MeasureId::collapseToFirstShock, 164);
  expectValue(f, MeasureId::callToFirstShock, 144);
  expectValue(f, MeasureId::firstHandsOnToFirstShock, 84);
  expectValue(f, MeasureId::powerOnToElectrodes, 20);
  expectValue(f, MeasureId::powerOnToFirstHandsOn, -40);
  expectValue(f, MeasureId::electrodesToFirstAnalysis, 10);
  expectValue(f, MeasureId::collapseToFirstHandsOn, 80);
  expectValue(f, MeasureId::callToFirstHandsOn, 60);
  expectValue(f, MeasureId::callToDeviceArrived, 90);
  expectStatus(f, MeasureId::collapseToCirculationReturned, Status::notRecorded);
}

TEST(TimeOn, OnPeriodsSummed) {
  // On 0-100 s and 160 s to the last entry, a charge that ends at 200 s; a second power_on at 50 s
  // changes nothing; a mark at 300 s does not prolong it.
  Story story;
  story.add(0, entry::PowerOn{});
  story.add(50, entry::PowerOn{});
  story.add(100, entry::PowerOff{});
  story.add(160, entry::PowerOn{});
  story.add(190, entry::Charge{}, 200);
  story.add(300, entry::Mark{"afterwards", ""});
  expectValue(story.figures(), MeasureId::timeOn, 140);
}

TEST(Window, WhatLiesOutsideIsNotCounted) {
  // Power on 0 s, hands on 30-40 s, a prompt at 90 s: not counted 0-30 and 40-90 s.
  Story story = Story().compressions(30, 21, 0.5);
  story.add(0, entry::PowerOn{});
  story.add(90, entry::Prompt{"check", ""});
  story.add(200, entry::Battery{50.0, {}, {}});
  const Figures f = story.figures();
  ASSERT_EQ(f.notCounted.size(), 2U);
  EXPECT_EQ(f.notCounted[0].stretch, (Interval{Story::at(0), Story::at(30)}));
  EXPECT_EQ(f.notCounted[0].why, NotCountedReason::beforeWindow);
  EXPECT_EQ(f.notCounted[1].stretch, (Interval{Story::at(40), Story::at(90)}));
  EXPECT_EQ(f.notCounted[1].why, NotCountedReason::afterWindow);
}

} // namespace
} // namespace afterbeat
