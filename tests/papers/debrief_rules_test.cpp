/// One scene for each side of each rule of resources/definitions/debrief.md.
#include "app/papers/debrief.h"
#include "tests/papers/example_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>

#include <cmath>

namespace afterbeat::papers {
namespace {

using test::RecordBuilder;

/// A record in which nothing but `tell` happens; no header facts that matter.
template <typename Tell>
Record scene(Tell tell) {
  RecordBuilder builder;
  tell(builder);
  return builder.done();
}

std::optional<Finding> findingIn(const Record& record, DebriefRule rule,
                                 const FigureSettings& settings = {}) {
  for (const Finding& finding : debriefFindings(record, computeFigures(record, settings))) {
    if (finding.rule == rule) {
      return finding;
    }
  }
  return std::nullopt;
}

Time at(double s) {
  return *timeFromSeconds(s);
}

/// Two minutes of compressions at 110 a minute from `from` on.
RecordBuilder& steady(RecordBuilder& b, double from = 0, double to = 120) {
  return b.compressions(from, to, 110);
}

TEST(DebriefRules, HandsOffShare) {
  const auto well = findingIn(scene([](auto& b) { steady(b); }), DebriefRule::handsOff);
  ASSERT_TRUE(well);
  EXPECT_TRUE(well->within);
  EXPECT_DOUBLE_EQ(well->value, 0);
  EXPECT_DOUBLE_EQ(well->away, 1);
  EXPECT_DOUBLE_EQ(well->target.high, 1 - 0.8);
  // 40 of 160 seconds; the minute with the most hands off is the second.
  const auto beyond = findingIn(scene([](auto& b) {
                                  steady(b, 0, 60);
                                  steady(b, 100, 160);
                                }),
                                DebriefRule::handsOff);
  ASSERT_TRUE(beyond);
  EXPECT_FALSE(beyond->within);
  EXPECT_NEAR(beyond->value, 0.25, 0.005);
  EXPECT_NEAR(beyond->away, 0.25, 0.03);
  EXPECT_EQ(beyond->moment, (Interval{at(60), at(120)}));
  // Less than a minute says nothing.
  EXPECT_FALSE(findingIn(scene([](auto& b) { steady(b, 0, 59); }), DebriefRule::handsOff));
  // A share of stretches alone, and none where nothing was recorded of hands.
  EXPECT_TRUE(
      findingIn(scene([](auto& b) { b.from(0, 90, entry::Cpr{}); }), DebriefRule::handsOff));
  EXPECT_FALSE(
      findingIn(scene([](auto& b) { b.analysis(0, 10, Advice::shock).shock(100, true, 200); }),
                DebriefRule::handsOff));
}

TEST(DebriefRules, LongestPauseBetweenCompressions) {
  const auto record = [](double pause) {
    return scene([pause](auto& b) {
      // What comes before the first and after the last compression is no pause between them.
      b.at(-30, entry::Electrodes{ElectrodeState::attached, {}});
      b.from(0, 60, entry::Cpr{}).from(60 + pause, 150, entry::Cpr{});
      b.analysis(200, 210, Advice::noShock);
    });
  };
  const auto well = findingIn(record(10), DebriefRule::longestPause);
  ASSERT_TRUE(well);
  EXPECT_TRUE(well->within);
  EXPECT_DOUBLE_EQ(well->value, 10);
  EXPECT_DOUBLE_EQ(well->away, 0);
  const auto beyond = findingIn(record(20), DebriefRule::longestPause);
  ASSERT_TRUE(beyond);
  EXPECT_FALSE(beyond->within);
  EXPECT_DOUBLE_EQ(beyond->away, 1);
  EXPECT_EQ(beyond->moment, (Interval{at(60), at(80)}));
  EXPECT_EQ(beyond->pause->cause, PauseCause::noReasonRecorded);
  EXPECT_FALSE(findingIn(scene([](auto& b) { steady(b); }), DebriefRule::longestPause));
}

TEST(DebriefRules, BeforeAndAfterAShock) {
  const auto record = [](double before, double after) {
    return scene([=](auto& b) {
      steady(b, 0, 60).analysis(61, 63, Advice::shock);
      const double last = std::floor(60 / (60.0 / 110)) * (60.0 / 110);
      b.shock(last + before, true, 200).from(last + before + after, 140, entry::Cpr{});
    });
  };
  const auto before = findingIn(record(4, 6), DebriefRule::beforeShock);
  ASSERT_TRUE(before);
  EXPECT_TRUE(before->within);
  EXPECT_NEAR(before->value, 4, 1e-6);
  EXPECT_EQ(before->shock, 1);
  EXPECT_EQ(before->of, 1);
  EXPECT_DOUBLE_EQ(before->beside.value(), 2);
  const auto after = findingIn(record(4, 6), DebriefRule::afterShock);
  ASSERT_TRUE(after);
  EXPECT_FALSE(after->within);
  EXPECT_NEAR(after->away, 0.2, 1e-6);
  EXPECT_FALSE(after->source);
  EXPECT_FALSE(findingIn(record(15, 3), DebriefRule::beforeShock)->within);
  EXPECT_TRUE(findingIn(record(15, 3), DebriefRule::afterShock)->within);
  // "Should stay below": the limit itself is not below it.
  const Record edge = scene([](auto& b) {
    b.from(0, 60, entry::Cpr{}).shock(65, true, 200).from(70, 140, entry::Cpr{});
  });
  EXPECT_FALSE(findingIn(edge, DebriefRule::beforeShock)->within);
  EXPECT_TRUE(findingIn(edge, DebriefRule::afterShock)->within);
}

TEST(DebriefRules, WhatTheAnalysisTookIsNotTheTeamsToShorten) {
  const Record record = scene([](auto& b) {
    b.from(0, 60, entry::Cpr{}).analysis(61, 69, Advice::shock).shock(72, true, 200);
    b.from(75, 140, entry::Cpr{}).analysis(141, 147, Advice::noShock).from(172, 200, entry::Cpr{});
  });
  const auto before = findingIn(record, DebriefRule::beforeShock);
  ASSERT_TRUE(before);
  EXPECT_FALSE(before->within);
  EXPECT_DOUBLE_EQ(before->value, 12);
  EXPECT_DOUBLE_EQ(*before->beside, 8);
  EXPECT_DOUBLE_EQ(before->away, 0); // four seconds remain
  const auto longest = findingIn(record, DebriefRule::longestPause);
  EXPECT_DOUBLE_EQ(longest->value, 32);
  EXPECT_DOUBLE_EQ(longest->away, 1.6);
}

TEST(DebriefRules, TheWorstOfAllShocksIsShown) {
  const Record record = scene([](auto& b) {
    b.from(0, 60, entry::Cpr{}).shock(63, true, 200).from(66, 180, entry::Cpr{});
    b.shock(192, true, 200).from(196, 240, entry::Cpr{});
  });
  const auto before = findingIn(record, DebriefRule::beforeShock);
  EXPECT_EQ(before->shock, 2);
  EXPECT_EQ(before->of, 2);
  EXPECT_EQ(before->moment, (Interval{at(180), at(192)}));
}

TEST(DebriefRules, FirstShockOnlyWhereTheWayToItWasFree) {
  const auto record = [](double shock, Advice first) {
    return scene([=](auto& b) {
      b.at(0, entry::PowerOn{}).analysis(20, 30, first).analysis(40, 48, Advice::shock);
      b.shock(shock, true, 200);
    });
  };
  const auto well = findingIn(record(60, Advice::shock), DebriefRule::firstShock);
  ASSERT_TRUE(well);
  EXPECT_TRUE(well->within);
  EXPECT_EQ(well->moment, (Interval{at(0), at(60)}));
  EXPECT_FALSE(findingIn(record(135, Advice::shock), DebriefRule::firstShock)->within);
  EXPECT_DOUBLE_EQ(findingIn(record(135, Advice::shock), DebriefRule::firstShock)->away, 0.5);
  EXPECT_FALSE(findingIn(record(60, Advice::noShock), DebriefRule::firstShock));
  EXPECT_FALSE(findingIn(record(60, Advice::inconclusive), DebriefRule::firstShock));
}

TEST(DebriefRules, FirstCompressionOnlyWhereNothingAsksForHandsOff) {
  const auto record = [](double first, bool analysis) {
    return scene([=](auto& b) {
      b.at(0, entry::Electrodes{ElectrodeState::attached, {}});
      if (analysis) {
        b.analysis(1, 5, Advice::shock);
      }
      steady(b, first, first + 100);
    });
  };
  EXPECT_FALSE(findingIn(record(8, false), DebriefRule::firstCompression));
  EXPECT_FALSE(findingIn(record(15, false), DebriefRule::firstCompression)->within);
  EXPECT_DOUBLE_EQ(findingIn(record(15, false), DebriefRule::firstCompression)->value, 15);
  EXPECT_FALSE(findingIn(record(15, true), DebriefRule::firstCompression));
  EXPECT_FALSE(findingIn(record(0, false), DebriefRule::firstCompression));
}

TEST(DebriefRules, Rate) {
  const auto record = [](double rate) {
    return scene([=](auto& b) { b.compressions(0, 120, rate); });
  };
  const auto well = findingIn(record(110), DebriefRule::rate);
  ASSERT_TRUE(well);
  EXPECT_TRUE(well->within);
  EXPECT_NEAR(well->away, 1, 1e-9);
  const auto mixed = [](double inRange) {
    return scene([=](auto& b) {
      b.compressions(0, inRange * 0.55, 60 / 0.55);
      b.compressions(inRange * 0.55 + 0.6, inRange * 0.55 + 0.6 + (100 - inRange) * 60 / 98, 98);
    });
  };
  // 90 of 100 intervals in the range are praised, 70 are neither praised nor to be practised.
  const auto most = findingIn(mixed(90), DebriefRule::rate);
  ASSERT_TRUE(most);
  EXPECT_TRUE(most->within);
  EXPECT_NEAR(most->away, 0.5, 0.06);
  EXPECT_FALSE(findingIn(mixed(70), DebriefRule::rate));
  EXPECT_FALSE(findingIn(mixed(70), DebriefRule::rateSteady));
  const auto fast = findingIn(record(130), DebriefRule::rate);
  EXPECT_FALSE(fast->within);
  EXPECT_NEAR(fast->away, 1, 1e-3);
  EXPECT_FALSE(findingIn(record(90), DebriefRule::rate)->within);
  EXPECT_FALSE(findingIn(record(110), DebriefRule::rateSteady));
  // Thirty compressions have twenty-nine intervals: too few.
  EXPECT_FALSE(findingIn(scene([](auto& b) { b.compressions(0, 29 * 0.55, 60 / 0.55); }),
                         DebriefRule::rate));
}

TEST(DebriefRules, AChildIsNotHeldToTargetsFromTheCareOfAdults) {
  const auto record = [](PatientCategory patient) {
    Record made = scene([](auto& b) {
      b.at(-20, entry::Electrodes{ElectrodeState::attached, std::nullopt});
      b.thirtyToTwo(0, 200, 110, 9);
    });
    made.header.patient = patient;
    return made;
  };
  for (const DebriefRule rule : {DebriefRule::handsOff, DebriefRule::firstCompression}) {
    EXPECT_TRUE(findingIn(record(PatientCategory::adult), rule)) << ruleName(rule);
    EXPECT_FALSE(findingIn(record(PatientCategory::child), rule)) << ruleName(rule);
    EXPECT_FALSE(findingIn(record(PatientCategory::infant), rule)) << ruleName(rule);
  }
}

TEST(DebriefRules, AMeanThatFewCompressionsAgreeWithIsNoPraise) {
  const Record record =
      scene([](auto& b) { b.compressions(0, 60, 90).compressions(61, 120, 135); });
  EXPECT_FALSE(findingIn(record, DebriefRule::rate));
  const auto steadyRate = findingIn(record, DebriefRule::rateSteady);
  ASSERT_TRUE(steadyRate);
  EXPECT_FALSE(steadyRate->within);
  EXPECT_DOUBLE_EQ(steadyRate->value, 0);
}

Record deep(double mm, int count, PatientCategory category, double other = 0) {
  RecordBuilder b;
  b.record.header.patient = category;
  for (int i = 0; i < count; ++i) {
    b.at(i * 0.55, entry::Compression{other > 0 && i % 2 == 0 ? other : mm, {}, {}});
  }
  return b.done();
}

TEST(DebriefRules, Depth) {
  const auto well = findingIn(deep(54, 150, PatientCategory::adult), DebriefRule::depth);
  ASSERT_TRUE(well);
  EXPECT_TRUE(well->within);
  EXPECT_DOUBLE_EQ(*well->beside, 1);
  const auto beyond = findingIn(deep(45, 150, PatientCategory::adult), DebriefRule::depth);
  EXPECT_FALSE(beyond->within);
  EXPECT_DOUBLE_EQ(beyond->away, 1);
  EXPECT_EQ(beyond->moment.length(), Duration{60'000'000});
  EXPECT_FALSE(findingIn(deep(54, 29, PatientCategory::adult), DebriefRule::depth));
  // "About 50 mm" is no range; an unknown patient has none.
  EXPECT_FALSE(findingIn(deep(50, 150, PatientCategory::child), DebriefRule::depth));
  EXPECT_FALSE(findingIn(deep(50, 150, PatientCategory::unknown), DebriefRule::depth));
  // Half too shallow and half too deep: the mean lies in the range, and is no praise.
  EXPECT_FALSE(findingIn(deep(40, 150, PatientCategory::adult, 68), DebriefRule::depth));
}

Record releases(int full, int leaning) {
  RecordBuilder b;
  for (int i = 0; i < full + leaning; ++i) {
    b.at(i * 0.55, entry::Compression{{}, {}, i < full});
  }
  return b.done();
}

TEST(DebriefRules, Release) {
  EXPECT_TRUE(findingIn(releases(180, 20), DebriefRule::release)->within);
  const auto beyond = findingIn(releases(160, 40), DebriefRule::release);
  EXPECT_FALSE(beyond->within);
  EXPECT_DOUBLE_EQ(beyond->value, 0.8);
  EXPECT_NEAR(beyond->away, 1, 1e-9);
  EXPECT_FALSE(findingIn(releases(29, 0), DebriefRule::release));
}

TEST(DebriefRules, BreathsFromTwoPausesOn) {
  const auto record = [](double pause, double to) {
    return scene([=](auto& b) { b.thirtyToTwo(0, to, 110, pause); });
  };
  EXPECT_TRUE(findingIn(record(5, 120), DebriefRule::breaths)->within);
  EXPECT_FALSE(findingIn(record(12, 120), DebriefRule::breaths)->within);
  EXPECT_FALSE(findingIn(record(55, 75), DebriefRule::breaths));
}

TEST(DebriefRules, Halves) {
  const auto record = [](double first, double second) {
    return scene([=](auto& b) {
      for (int minute = 0; minute < 4; ++minute) {
        const double off = minute < 2 ? first : second;
        b.from(minute * 60, minute * 60 + 60 - off, entry::Cpr{});
      }
      b.from(240, 241, entry::Cpr{});
    });
  };
  const auto better = findingIn(record(24, 6), DebriefRule::halves);
  ASSERT_TRUE(better);
  EXPECT_TRUE(better->within);
  EXPECT_NEAR(better->value, 0.1, 1e-9);
  EXPECT_NEAR(*better->beside, 0.4, 1e-9);
  EXPECT_EQ(better->moment, (Interval{at(120), at(240)}));
  EXPECT_FALSE(findingIn(record(6, 24), DebriefRule::halves)->within);
  // Better, and still beyond the target: no praise. Worse, and still within: nothing to practise.
  EXPECT_FALSE(findingIn(record(30, 20), DebriefRule::halves));
  EXPECT_FALSE(findingIn(record(3, 9), DebriefRule::halves));
  // Less than five points' change.
  EXPECT_FALSE(findingIn(record(9, 7), DebriefRule::halves));
}

TEST(DebriefRules, ElectrodesAfterPowerOn) {
  const auto record = [](double electrodes) {
    return scene([=](auto& b) {
      b.at(0, entry::PowerOn{}).at(electrodes, entry::Electrodes{ElectrodeState::attached, {}});
    });
  };
  EXPECT_TRUE(findingIn(record(45), DebriefRule::electrodes)->within);
  EXPECT_FALSE(findingIn(record(90), DebriefRule::electrodes)->within);
  EXPECT_FALSE(findingIn(record(-5), DebriefRule::electrodes));
}

TEST(DebriefRules, AdviceToShockOnlyWhereHandsWereNotRecorded) {
  const auto record = [](double shock, bool hands) {
    return scene([=](auto& b) {
      b.analysis(0, 10, Advice::shock).shock(10 + shock, true, 200);
      if (hands) {
        steady(b, 60, 200);
      }
    });
  };
  EXPECT_TRUE(findingIn(record(12, false), DebriefRule::adviceToShock)->within);
  EXPECT_FALSE(findingIn(record(30, false), DebriefRule::adviceToShock)->within);
  EXPECT_FALSE(findingIn(record(12, true), DebriefRule::adviceToShock));
}

TEST(DebriefRules, BestMinute) {
  const Record record = scene([](auto& b) {
    b.from(0, 30, entry::Cpr{}).from(60, 115, entry::Cpr{}).from(120, 130, entry::Cpr{});
  });
  const auto best = bestMinute(computeFigures(record));
  ASSERT_TRUE(best);
  EXPECT_EQ(best->stretch, (Interval{at(60), at(120)}));
  EXPECT_EQ(best->handsOn, Duration{55'000'000});
  EXPECT_FALSE(bestMinute(computeFigures(scene([](auto& b) { b.from(0, 50, entry::Cpr{}); }))));
}

TEST(DebriefRules, EveryRuleIsInTheDefinitions) {
  QFile file(QStringLiteral(AFTERBEAT_SOURCE_DIR) + "/resources/definitions/debrief.md");
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QByteArray text = file.readAll();
  for (int i = 0; i < static_cast<int>(DebriefRule::count_); ++i) {
    const std::string_view name = ruleName(static_cast<DebriefRule>(i));
    const QByteArray cell =
        "| `" + QByteArray(name.data(), static_cast<qsizetype>(name.size())) + "` |";
    EXPECT_EQ(text.count(cell), 1) << cell.toStdString();
  }
}

} // namespace
} // namespace afterbeat::papers
