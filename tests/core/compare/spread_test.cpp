#include "core/compare/spread.h"

#include "core/compare/companions.h"
#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

constexpr auto kPause = MeasureId::preShockPauseMedian;

/// Six records of each of two sites, 1 to 6 s and 11 to 16 s; two of a third; two without a value.
ToldSeason fourSites() {
  ToldSeason told;
  for (int i = 1; i <= 6; ++i) {
    told.rescue("pier", day(1, 1), {{kPause, i}});
    told.rescue("Boathouse", day(5, 1), {{kPause, 10 + i}});
  }
  told.rescue("Jetty", day(5, 2), {{kPause, 3}});
  told.rescue("Jetty", day(5, 2), {{kPause, 4}});
  told.rescue("pier", day(5, 2));
  told.rescue("", {});
  return told;
}

std::string wordsOf(const Spread& spread) {
  return told(words(spread));
}

TEST(Spread, KindsAreNotMixed) {
  auto told = fourSites();
  told.add({}, {{kPause, 1}});
  told.rescue("pier", {}).kind = RecordKind::drill;
  const auto refused = spread(told.season(), told.all(), kPause, GroupBy::site);
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().why, SeasonRefusal::Why::mixedKinds);
  EXPECT_EQ(refused.error().kinds,
            (std::vector<KindCount>{
                {RecordKind::rescue, 16}, {RecordKind::drill, 1}, {std::nullopt, 1}}));
  EXPECT_TRUE(spread(told.season(), ofKind(told.season(), told.all(), RecordKind::drill), kPause,
                     GroupBy::site));
}

TEST(Spread, GroupsByNameAndWhatIsNotRecordedLast) {
  auto told = fourSites();
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  ASSERT_EQ(found.groups.size(), 4U);
  EXPECT_EQ(found.groups[0].name, "Boathouse");
  EXPECT_EQ(found.groups[1].name, "Jetty");
  EXPECT_EQ(found.groups[2].name, "pier");
  EXPECT_EQ(found.groups[3].name, "");
  EXPECT_EQ(found.kind, RecordKind::rescue);
}

TEST(Spread, FewerThanFiveArePointsOnly) {
  auto told = fourSites();
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  const SpreadGroup& jetty = found.groups[1];
  EXPECT_TRUE(jetty.tooFew);
  EXPECT_EQ(jetty.points.size(), 2U);
  EXPECT_EQ(jetty.points[1].place, 13U);
  EXPECT_FALSE(jetty.quartiles || jetty.interval || jetty.against);
  EXPECT_EQ(inEnglish(words(found, jetty)), "Too few records for a middle and its interval: 2.");
}

TEST(Spread, MissingIsCountedAndNamed) {
  auto told = fourSites();
  told.cell(14, kPause).status = Status::notApplicable;
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  EXPECT_EQ(found.missing, (Missing{1, 1}));
  EXPECT_EQ(found.groups[2].missing, (Missing{0, 1}));
  EXPECT_EQ(found.groups[3].missing, (Missing{1, 0}));
  const std::string text = wordsOf(found);
  EXPECT_NE(text.find("Records in which it is not recorded: 1."), std::string::npos) << text;
  EXPECT_NE(text.find("Records to which it does not apply: 1."), std::string::npos) << text;
}

TEST(Spread, MedianQuartilesAndInterval) {
  auto told = fourSites();
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  const SpreadGroup& pier = found.groups[2];
  ASSERT_TRUE(pier.quartiles && pier.interval);
  EXPECT_DOUBLE_EQ(pier.quartiles->median, 3.5);
  EXPECT_DOUBLE_EQ(pier.quartiles->low, 2.25);
  EXPECT_DOUBLE_EQ(pier.quartiles->high, 4.75);
  EXPECT_LE(pier.interval->low, 2);
  EXPECT_GE(pier.interval->high, 5);
}

TEST(Spread, NamesTheGroupThatDiffers) {
  auto told = fourSites();
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  ASSERT_TRUE(found.groups[0].against);
  EXPECT_FALSE(found.groups[2].against); // of the rest there are too few to compare with
  EXPECT_TRUE(found.groups[0].against->clear);
  EXPECT_DOUBLE_EQ(found.groups[0].against->medianHere, 13.5);
  EXPECT_DOUBLE_EQ(found.groups[0].against->medianOthers, 3.5); // 1 2 3 3 4 4 5 6
  EXPECT_EQ(found.groups[0].against->others, 8U);
  EXPECT_NE(wordsOf(found).find("Boathouse: the middle record has 13.5 s, elsewhere it has 3.5 s"),
            std::string::npos)
      << wordsOf(found);
}

TEST(Spread, OfManyFiguresAskedAtOnceEachChanceCountsAsOften) {
  auto told = fourSites();
  const auto alone = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  const double chance = alone.groups[0].against->chance;
  EXPECT_TRUE(alone.groups[0].against->clear);
  SpreadSettings asked;
  asked.figuresAsked = static_cast<std::size_t>(0.06 / chance) + 1;
  const auto oneOfMany = spread(told.season(), told.all(), kPause, GroupBy::site, asked).value();
  EXPECT_FALSE(oneOfMany.groups[0].against->clear);
  EXPECT_DOUBLE_EQ(oneOfMany.groups[0].against->chance,
                   static_cast<double>(asked.figuresAsked) * chance);
  EXPECT_EQ(afterbeat::told(whereGroupsDiffer({alone})),
            "Boathouse – Pause before a shock, median: 13.5 s, elsewhere 3.5 s.\n");
  EXPECT_EQ(afterbeat::told(whereGroupsDiffer({oneOfMany})).find("No group differs"), 0U);
  EXPECT_TRUE(whereGroupsDiffer({}).empty());
}

TEST(Spread, OneSlowSiteDoesNotMakeTheOthersFast) {
  ToldSeason told;
  for (int i = 0; i < 40; ++i) {
    const double value = 10 + i % 10;
    told.rescue("a", day(1, 1), {{kPause, value}});
    told.rescue("b", day(1, 1), {{kPause, value}});
    told.rescue("c", day(1, 1), {{kPause, value + 20}});
  }
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  EXPECT_TRUE(found.groups[2].against->clear);
  EXPECT_EQ(found.groups[2].against->others, 80U);
  EXPECT_FALSE(found.groups[0].against->clear);
  EXPECT_EQ(found.groups[0].against->others, 40U);
  EXPECT_DOUBLE_EQ(found.groups[0].against->medianOthers, 14.5);
}

TEST(Spread, ManyThatDifferAreAllCompared) {
  ToldSeason told;
  for (int site = 0; site < 12; ++site) {
    for (int i = 0; i < 30; ++i) {
      told.rescue(std::string(1, static_cast<char>('a' + site)), day(1, 1),
                  {{kPause, 100 * site + i}});
    }
  }
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  for (const SpreadGroup& group : found.groups) {
    EXPECT_TRUE(group.against) << group.name;
  }
  EXPECT_NE(wordsOf(found).find("Groups that differ as well: "), std::string::npos);
}

TEST(Spread, OfTwoGroupsEachIsTheOthersOther) {
  ToldSeason told;
  for (int i = 0; i < 8; ++i) {
    told.rescue("a", day(1, 1), {{kPause, i}});
    told.rescue("b", day(1, 1), {{kPause, i + 20}});
  }
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  EXPECT_TRUE(found.groups[0].against->clear && found.groups[1].against->clear);
  EXPECT_DOUBLE_EQ(found.groups[0].against->chance, found.groups[1].against->chance);
}

TEST(Spread, QuartersInTimeWithoutComparison) {
  auto told = fourSites();
  const auto found = spread(told.season(), told.all(), kPause, GroupBy::quarter).value();
  ASSERT_EQ(found.groups.size(), 3U);
  EXPECT_EQ(found.groups[0].quarter, (Quarter{2026, 1}));
  EXPECT_EQ(found.groups[1].quarter, (Quarter{2026, 2}));
  EXPECT_FALSE(found.groups[2].quarter);
  EXPECT_FALSE(found.groups[0].against);
  EXPECT_EQ(quarterOf(day(12, 31)), (Quarter{2026, 4}));
  EXPECT_EQ(quarterOf(day(9, 30)), (Quarter{2026, 3}));
}

TEST(Spread, FractionDoesNotStandAlone) {
  ToldSeason told;
  for (int i = 0; i < 6; ++i) {
    told.rescue("pier", day(1, 1),
                {{MeasureId::chestCompressionFraction, 0.8}, {MeasureId::arrestTime, 600.0 + i}});
  }
  const auto found =
      spread(told.season(), told.all(), MeasureId::chestCompressionFraction, GroupBy::site).value();
  ASSERT_EQ(found.groups[0].beside.size(), 2U);
  EXPECT_EQ(found.groups[0].beside[0].measure, MeasureId::arrestTime);
  EXPECT_EQ(found.groups[0].beside[0].median, 602.5);
  EXPECT_EQ(found.groups[0].beside[1].measure, MeasureId::shocksDelivered);
  EXPECT_EQ(found.groups[0].beside[1].records, 0U);
  EXPECT_FALSE(found.groups[0].beside[1].median);
  EXPECT_TRUE(neverAlone(MeasureId::compressionRate).empty());
}

TEST(Spread, PublishedBandForRescuesAlone) {
  auto told = fourSites();
  auto found = spread(told.season(), told.all(), kPause, GroupBy::site).value();
  ASSERT_TRUE(referenceWords(found));
  EXPECT_NE(inEnglish(*referenceWords(found)).find("middle 15.0 s"), std::string::npos);
  found.kind = RecordKind::drill;
  EXPECT_FALSE(referenceWords(found));
}

/// Cheskes et al., Resuscitation 2014;85:336-342: median (quartiles), before 15 (8-22), after 6
/// (4-9), together 22 (14-31) s.
TEST(Spread, PublishedBandsAreThoseThatWerePublished) {
  struct Case {
    MeasureId measure;
    const char* words;
  };
  for (const Case& one :
       {Case{MeasureId::preShockPauseMedian, "middle 15.0 s, half of the records between 8.0 s and "
                                             "22.0 s"},
        Case{MeasureId::postShockPauseMedian, "middle 6.0 s, half of the records between 4.0 s and "
                                              "9.0 s"},
        Case{MeasureId::periShockPauseMedian, "middle 22.0 s, half of the records between 14.0 s "
                                              "and 31.0 s"}}) {
    Spread drawn;
    drawn.measure = one.measure;
    drawn.kind = RecordKind::rescue;
    const std::string text = inEnglish(referenceWords(drawn).value());
    EXPECT_NE(text.find(one.words), std::string::npos) << text;
    EXPECT_NE(text.find("Cheskes et al., Resuscitation 2014;85:336-342"), std::string::npos);
  }
}

TEST(Spread, OfNothing) {
  ToldSeason told;
  const auto found = spread(told.season(), {}, kPause, GroupBy::site).value();
  EXPECT_TRUE(found.groups.empty());
  EXPECT_TRUE(words(found).empty());
}

} // namespace
} // namespace afterbeat
