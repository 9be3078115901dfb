#include "core/compare/order.h"

#include "samples/season/made_season.h"
#include "tests/core/compare/told_season.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace afterbeat {
namespace {

Chosen sorted(const Season& season, Chosen chosen, const Order& order) {
  sortBy(season, chosen, order);
  return chosen;
}

TEST(Order, WhatHasNoValueComesLastEitherWay) {
  ToldSeason told;
  told.rescue("b", day(2, 1), {{MeasureId::longestPause, 5}});
  told.rescue("", {});
  told.rescue("A", day(1, 1), {{MeasureId::longestPause, 9}});
  told.rescue("", {});
  told.rescue("c", day(3, 1), {{MeasureId::longestPause, -1}});
  const Season& season = told.season();
  EXPECT_EQ(sorted(season, told.all(), {MeasureId::longestPause, false}), (Chosen{4, 0, 2, 1, 3}));
  EXPECT_EQ(sorted(season, told.all(), {MeasureId::longestPause, true}), (Chosen{2, 0, 4, 1, 3}));
  EXPECT_EQ(sorted(season, told.all(), {Fact::site, false}), (Chosen{2, 0, 4, 1, 3}));
  EXPECT_EQ(sorted(season, told.all(), {Fact::site, true}), (Chosen{4, 0, 2, 1, 3}));
  EXPECT_EQ(sorted(season, told.all(), {Fact::day, true}), (Chosen{4, 0, 2, 1, 3}));
}

TEST(Order, EqualOnesKeepTheirOrder) {
  ToldSeason told;
  for (int i = 0; i < 6; ++i) {
    told.rescue(i % 2 == 0 ? "South" : "north", day(1, 1));
  }
  const Chosen mixed{5, 0, 3, 2, 1, 4};
  EXPECT_EQ(sorted(told.season(), mixed, {Fact::site, false}), (Chosen{5, 3, 1, 0, 2, 4}));
  EXPECT_EQ(sorted(told.season(), mixed, {Fact::site, true}), (Chosen{0, 2, 4, 5, 3, 1}));
}

TEST(Order, NamesThatBeginAlike) {
  ToldSeason told;
  for (const char* file : {"record-0000000010", "record-0000000009", "record-0000000010b",
                           "record-000", "record-0000000002"}) {
    told.rescue("", {}).file = file;
  }
  EXPECT_EQ(sorted(told.season(), told.all(), {Fact::file, false}), (Chosen{3, 4, 1, 0, 2}));
}

TEST(Order, EqualsThePlainWayOnASeason) {
  samples::SeasonPlan plan;
  plan.records = 500;
  plan.missing = 0.3;
  const samples::MadeSeason made(plan);
  const Season season = made.season();
  const FigureColumn& column = season.column(MeasureId::preShockPauseWorst);
  Chosen expected = everything(season);
  std::stable_sort(expected.begin(), expected.end(), [&](std::uint32_t a, std::uint32_t b) {
    return column[a].ok() && (!column[b].ok() || column[a].value > column[b].value);
  });
  EXPECT_EQ(sorted(season, everything(season), {MeasureId::preShockPauseWorst, true}), expected);
  expected = everything(season);
  std::stable_sort(expected.begin(), expected.end(), [&](std::uint32_t a, std::uint32_t b) {
    return made.records()[a].id < made.records()[b].id;
  });
  EXPECT_EQ(sorted(season, everything(season), {Fact::id, false}), expected);
}

} // namespace
} // namespace afterbeat
