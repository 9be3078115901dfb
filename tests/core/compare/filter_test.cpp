#include "core/compare/typed_words.h"
#include "samples/season/made_season.h"
#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <sstream>

namespace afterbeat {
namespace {

ToldSeason threeRecords() {
  ToldSeason told;
  RecordFacts a;
  a.kind = RecordKind::rescue;
  a.site = "Fährhafen, östlicher Steg";
  a.team = "Pier guard";
  a.device = "L-21";
  a.file = "2026-03-14-a.resuslog";
  a.id = "urn:uuid:11112222-0000-4000-8000-000000000001";
  a.day = day(3, 14);
  a.hadShock = true;
  a.longestPauseCause = PauseCause::shock;
  told.add(a);
  RecordFacts b;
  b.kind = RecordKind::drill;
  b.site = "North boathouse";
  b.day = day(4, 17);
  b.hadShock = false;
  b.longestPauseCause = PauseCause::breathsLong;
  told.add(b);
  told.add({});
  return told;
}

Chosen typed(ToldSeason& told, const std::string& words) {
  Filter filter;
  filter.words = words;
  return matching(told.season(), filter);
}

TEST(Filter, NothingTypedIsEverything) {
  auto told = threeRecords();
  EXPECT_EQ(matching(told.season(), {}), told.all());
  EXPECT_EQ(typed(told, "  \t "), told.all());
}

TEST(Filter, AllWordsMustBeFoundInAnyField) {
  auto told = threeRecords();
  EXPECT_EQ(typed(told, "pier l-21"), Chosen{0});
  EXPECT_EQ(typed(told, "pier boathouse"), Chosen{});
  EXPECT_EQ(typed(told, "urn:uuid:1111"), Chosen{0});
  EXPECT_EQ(typed(told, "drill"), Chosen{1});
  EXPECT_EQ(typed(told, "long"), Chosen{1}); // the cause: long breaths
  EXPECT_EQ(typed(told, "2026-04"), Chosen{1});
  EXPECT_EQ(typed(told, "not stated"), Chosen{2});
}

TEST(Filter, LetterCaseDoesNotMatterNorDoUmlauts) {
  auto told = threeRecords();
  EXPECT_EQ(typed(told, "FÄHRHAFEN ÖSTLICHER"), Chosen{0});
  EXPECT_EQ(typed(told, "fährhafen"), Chosen{0});
  EXPECT_EQ(typed(told, "BOATHouse"), Chosen{1});
  std::string folded;
  appendFolded(folded, "ÀÉÞ×ŸŁŽ ΣΩ ДЁ ß \xC3");
  EXPECT_EQ(folded, "àéþ×ÿłž σω дё ß \xC3");
}

TEST(Filter, AWordDoesNotReachFromOneFieldIntoTheNext) {
  auto told = threeRecords();
  EXPECT_EQ(typed(told, "stegpier"), Chosen{});
}

TEST(Filter, WhetherThereWasAShockCanBeTyped) {
  auto told = threeRecords();
  EXPECT_EQ(typed(told, "with a shock"), Chosen{0});
  EXPECT_EQ(typed(told, "Without a Shock"), Chosen{1}) << "what does not show it is in neither";
  EXPECT_EQ(typed(told, "boathouse without a shock drill"), Chosen{1});
  EXPECT_EQ(typed(told, "shock"), Chosen{0}) << "alone it is a word: the cause";
}

TEST(Filter, APeriodCanBeTyped) {
  auto told = threeRecords();
  EXPECT_EQ(typed(told, "2026-Q1"), Chosen{0});
  EXPECT_EQ(typed(told, "2026-q2 boathouse"), Chosen{1});
  EXPECT_EQ(typed(told, "2026-03..2026-04"), (Chosen{0, 1}));
  EXPECT_EQ(typed(told, "2026-03-15..2026"), Chosen{1});
  EXPECT_EQ(typed(told, "..2026-03-14"), Chosen{0});
  EXPECT_EQ(typed(told, "2026-Q2.."), Chosen{1});
  EXPECT_EQ(typed(told, "2026-03..2026-04 2026-04.."), Chosen{1}) << "both must hold";
  for (const char* none : {"2026-q5", "2026-13..2026-14", "2026-02-30..", "..", "a..b", "2026-0"}) {
    EXPECT_FALSE(periodFrom(none)) << none;
  }
}

TEST(Filter, WordsOfAnotherLanguage) {
  auto told = threeRecords();
  FilterWords german;
  german.kinds = {"Einsatz", "Übung", "Test", "Art nicht angegeben"};
  Filter filter;
  german.withoutShock = "ohne Schock";
  filter.words = "OHNE schock übung";
  EXPECT_EQ(matching(told.season(), filter, german), Chosen{1});
}

TEST(Filter, WhatIsNotKnownIsInNoChoice) {
  auto told = threeRecords();
  const auto chosen = [&told](const std::function<void(Filter&)>& wish) {
    Filter filter;
    wish(filter);
    return matching(told.season(), filter);
  };
  const auto shock = [](bool given) { return [given](Filter& f) { f.hadShock = given; }; };
  EXPECT_EQ(chosen(shock(true)), Chosen{0});
  EXPECT_EQ(chosen(shock(false)), Chosen{1});
  const auto period = [](std::chrono::sys_days first, std::chrono::sys_days last) {
    return [first, last](Filter& f) {
      f.firstDay = first;
      f.lastDay = last;
    };
  };
  EXPECT_EQ(chosen(period(day(3, 14), day(4, 16))), Chosen{0});
  EXPECT_EQ(chosen(period(day(3, 14), day(3, 14))), Chosen{0});
  EXPECT_EQ(chosen(period(day(3, 15), day(4, 17))), Chosen{1});
  EXPECT_EQ(chosen([](Filter& f) { f.longestPauseCause = PauseCause::shock; }), Chosen{0});
  EXPECT_EQ(chosen([](Filter& f) { f.site = std::string(); }), Chosen{2});
}

TEST(Filter, WithoutEvidenceThereIsNoWordForNoPause) {
  ToldSeason told;
  told.add({}).evidence = Evidence::none;
  told.add({}).evidence = Evidence::compressions;
  FilterWords words;
  words.causes.back() = "uninterrupted";
  Filter filter;
  filter.words = "uninterrupted";
  EXPECT_EQ(matching(told.season(), filter, words), Chosen{1});
}

/// Every field and every word tried on its own, in ASCII.
bool plainMatch(const RecordFacts& r, const std::string& words) {
  const auto lower = [](std::string s) {
    std::transform(s.begin(), s.end(), s.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return s;
  };
  std::istringstream typedWords(lower(words));
  for (std::string word; typedWords >> word;) {
    const bool found = lower(r.site).find(word) != std::string::npos ||
                       lower(r.team).find(word) != std::string::npos ||
                       lower(r.device).find(word) != std::string::npos ||
                       lower(r.file).find(word) != std::string::npos ||
                       lower(r.id).find(word) != std::string::npos ||
                       (r.kind == RecordKind::drill && std::string("drill").find(word) == 0);
    if (!found) {
      return false;
    }
  }
  return true;
}

TEST(Filter, EqualsThePlainWayOnASeason) {
  samples::SeasonPlan plan;
  plan.records = 600;
  const samples::MadeSeason made(plan, {MeasureId::timeOn});
  for (const char* words : {"boat", "NORTH l-4", "000012", "drill ferry", "crew east", "c0ffee"}) {
    Chosen expected;
    for (std::uint32_t i = 0; i < plan.records; ++i) {
      if (plainMatch(made.records()[i], words)) {
        expected.push_back(i);
      }
    }
    Filter filter;
    filter.words = words;
    EXPECT_EQ(matching(made.season(), filter), expected) << words;
  }
}

} // namespace
} // namespace afterbeat
