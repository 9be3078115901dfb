#include "core/compare/moments.h"

#include "tests/core/measures/story.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

/// On at `on`, electrodes, analysis and shock so many seconds later, compressions up to `pause`
/// before the shock.
Story drill(double on, double electrodes, double analysis, double shock, double pause = 9) {
  Story story;
  story.record.header.kind = RecordKind::drill;
  story.add(on, entry::PowerOn{});
  story.add(on + electrodes, entry::Electrodes{ElectrodeState::attached, {}});
  story.compressions(on + shock - pause - 5, 11, 0.5);
  story.analysis(on + analysis, on + analysis + 5, Advice::shock);
  story.shock(on + shock);
  story.compressions(on + shock + 3, 20, 0.5);
  return story;
}

struct Pair {
  Story one, other;
  Figures figuresOne, figuresOther;
  Pair(Story a, Story b)
      : one(std::move(a)), other(std::move(b)), figuresOne(one.figures()),
        figuresOther(other.figures()) {}
  std::vector<RecordAndFigures> both() {
    return {{&one.record, &figuresOne}, {&other.record, &figuresOther}};
  }
};

std::optional<double> at(const SideBySide& beside, KeyMoment moment, std::size_t record) {
  for (const MomentRow& row : beside.moments) {
    if (row.moment == moment) {
      return row.seconds[record];
    }
  }
  return std::nullopt;
}

TEST(SideBySide, AlignedAtAnyMoment) {
  Pair pair(drill(0, 30, 40, 60), drill(100, 40, 50, 72));
  const auto on = sideBySide(pair.both(), KeyMoment::powerOn);
  EXPECT_EQ(on.offsets[1], Duration{100'000'000});
  EXPECT_EQ(at(on, KeyMoment::firstShock, 0), 60);
  EXPECT_EQ(at(on, KeyMoment::firstShock, 1), 72);
  const auto shock = sideBySide(pair.both(), KeyMoment::firstShock);
  EXPECT_EQ(at(shock, KeyMoment::powerOn, 0), -60);
  EXPECT_EQ(at(shock, KeyMoment::electrodes, 1), -32);
  EXPECT_FALSE(at(shock, KeyMoment::call, 0));
}

TEST(SideBySide, EightRecordsAlignedAtEachMoment) {
  std::vector<Story> stories;
  for (int i = 0; i < 8; ++i) {
    stories.push_back(drill(10 * i, 30 + i, 40 + 2 * i, 60 + 3 * i));
    stories.back().milestone(10 * i - 50, "call_received");
  }
  std::vector<Figures> figures;
  for (Story& story : stories) {
    figures.push_back(story.figures());
  }
  std::vector<RecordAndFigures> all;
  for (std::size_t i = 0; i < stories.size(); ++i) {
    all.push_back({&stories[i].record, &figures[i]});
  }
  // Seconds from device on, in the record numbered i.
  const auto when = [](KeyMoment moment, int i) {
    switch (moment) {
    case KeyMoment::call:
      return -50;
    case KeyMoment::electrodes:
      return 30 + i;
    case KeyMoment::firstAnalysis:
      return 40 + 2 * i;
    case KeyMoment::firstShock:
      return 60 + 3 * i;
    default:
      return 0;
    }
  };
  const std::vector<KeyMoment> moments{KeyMoment::call, KeyMoment::powerOn, KeyMoment::electrodes,
                                       KeyMoment::firstAnalysis, KeyMoment::firstShock};
  for (const KeyMoment aligned : moments) {
    const auto beside = sideBySide(all, aligned);
    ASSERT_EQ(beside.offsets.size(), 8U);
    for (int i = 0; i < 8; ++i) {
      const auto record = static_cast<std::size_t>(i);
      EXPECT_EQ(beside.offsets[record],
                Duration{std::int64_t{1'000'000} * (10 * i + when(aligned, i))});
      for (const KeyMoment moment : moments) {
        EXPECT_EQ(at(beside, moment, record), when(moment, i) - when(aligned, i))
            << name(aligned) << ", " << name(moment) << ", " << i;
      }
    }
  }
  const auto most = sideBySide(all, KeyMoment::powerOn).differsMost;
  ASSERT_TRUE(most);
  EXPECT_EQ(most->least, 0U);
  EXPECT_EQ(most->most, 7U);
}

TEST(SideBySide, WithoutTheMomentThereIsNoOffset) {
  Pair pair(drill(0, 30, 40, 60), drill(0, 30, 40, 60));
  pair.one.milestone(-50, "call_received");
  const auto beside = sideBySide(pair.both(), KeyMoment::call);
  EXPECT_EQ(beside.offsets[0], Duration{-50'000'000});
  EXPECT_FALSE(beside.offsets[1]);
  EXPECT_EQ(at(beside, KeyMoment::firstShock, 0), 110);
  EXPECT_FALSE(at(beside, KeyMoment::firstShock, 1));
  EXPECT_EQ(commonMoments(pair.both()),
            (std::vector{KeyMoment::powerOn, KeyMoment::firstHandsOn, KeyMoment::electrodes,
                         KeyMoment::firstAnalysis, KeyMoment::firstShock}));
}

TEST(SideBySide, OneDelayedStageIsNamedNotWhatFollows) {
  Pair pair(drill(0, 30, 50, 70), drill(0, 75, 97, 118));
  const auto beside = sideBySide(pair.both(), KeyMoment::powerOn);
  ASSERT_TRUE(beside.differsMost);
  // First hands on come 14 s before the shock in both: 56 s and 104 s after power-on.
  EXPECT_EQ(beside.differsMost->what, DiffersMost::What::stage);
  EXPECT_EQ(beside.differsMost->difference(), 48);
  EXPECT_EQ(beside.differsMost->from, KeyMoment::powerOn);
  EXPECT_EQ(beside.differsMost->to, KeyMoment::firstHandsOn);
  EXPECT_EQ(inEnglish(words(*beside.differsMost, {"drill 1", "drill 2"})),
            "The time from device on to first compressions differs most: 56.0 s in drill 1, "
            "104.0 s in drill 2, 48.0 s apart.");
}

TEST(SideBySide, WhatCameTheOtherWayRoundIsSaidInWordsNotWithASign) {
  DiffersMost most;
  most.from = KeyMoment::electrodes;
  most.to = KeyMoment::firstHandsOn;
  most.seconds = {-30, 12};
  most.least = 0;
  most.most = 1;
  EXPECT_EQ(inEnglish(words(most, {"A", "B"})),
            "Largest difference: electrodes attached and first compressions. In A, “first "
            "compressions” came 30.0 s before “electrodes attached”; in B, 12.0 s after it.");
  most.seconds = {-30, -12};
  EXPECT_EQ(
      inEnglish(words(most, {"A", "B"})),
      "Largest difference: from first compressions to electrodes attached. It took 30.0 s in A "
      "and 12.0 s in B, 18.0 s apart.");
}

TEST(SideBySide, APauseCanDifferMost) {
  Pair pair(drill(0, 30, 50, 70, 8), drill(0, 30, 50, 70, 8));
  pair.other.record.entries.clear();
  pair.other = drill(0, 30, 50, 70, 8);
  pair.other.compressions(110, 10, 0.5); // after a pause of 27.5 s
  pair.figuresOther = pair.other.figures();
  const auto beside = sideBySide(pair.both(), KeyMoment::powerOn);
  ASSERT_TRUE(beside.differsMost);
  EXPECT_EQ(beside.differsMost->what, DiffersMost::What::longestPause);
  EXPECT_EQ(beside.differsMost->most, 1U);
  EXPECT_NEAR(*beside.differsMost->seconds[1], 27.5, 1e-9);
}

TEST(SideBySide, EqualRecordsDifferInNothing) {
  Pair pair(drill(0, 30, 50, 70), drill(500, 30, 50, 70));
  EXPECT_FALSE(sideBySide(pair.both(), KeyMoment::powerOn).differsMost);
}

TEST(SideBySide, DifferencesAreAgainstTheFirstThatHasIt) {
  Pair pair(drill(0, 30, 50, 70), drill(0, 30, 50, 75));
  const auto beside = sideBySide(pair.both(), KeyMoment::powerOn);
  for (const FigureRow& row : beside.figures) {
    EXPECT_FALSE(row.differences[0]) << measureInfo(row.measure).name;
    if (row.measure == MeasureId::powerOnToFirstShock) {
      EXPECT_EQ(row.differences[1], 5);
    }
    EXPECT_NE(row.measure, MeasureId::callToFirstShock);
  }
}

TEST(SideBySide, KindsAreSaidToBeMixed) {
  Pair pair(drill(0, 30, 50, 70), drill(0, 30, 50, 70));
  EXPECT_FALSE(sideBySide(pair.both(), KeyMoment::powerOn).mixedKinds);
  pair.other.record.header.kind = RecordKind::rescue;
  EXPECT_TRUE(sideBySide(pair.both(), KeyMoment::powerOn).mixedKinds);
}

} // namespace
} // namespace afterbeat
