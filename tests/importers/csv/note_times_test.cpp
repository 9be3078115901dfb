#include "importers/csv/note_times.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using std::chrono::hours;
using std::chrono::microseconds;
using std::chrono::milliseconds;
using std::chrono::minutes;

std::chrono::year_month_day date(int year, unsigned month, unsigned day) {
  return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

TEST(NoteTimes, elapsed) {
  struct Case {
    const char* text;
    int fields;
    Duration elapsed;
  };
  const Case cases[] = {
      {"95", 1, std::chrono::seconds{95}},
      {" 95.5 ", 1, milliseconds{95500}},
      {"95,5", 1, milliseconds{95500}},
      {"0.6", 1, microseconds{600000}},
      {"-12", 1, std::chrono::seconds{-12}},
      {"+12 s", 1, std::chrono::seconds{12}},
      {"95 Sek.", 1, std::chrono::seconds{95}},
      {"2 min", 1, minutes{2}},
      {"1:35", 2, std::chrono::seconds{95}},
      {"01:35.5", 2, milliseconds{95500}},
      {"01:35,25", 2, milliseconds{95250}},
      {"-0:30", 2, std::chrono::seconds{-30}},
      {"75:30", 2, minutes{75} + std::chrono::seconds{30}},
      {"0:01:35", 3, std::chrono::seconds{95}},
      {"1:02:03.5", 3, hours{1} + minutes{2} + milliseconds{3500}},
      {"1000000", 1, std::chrono::seconds{1000000}},
  };
  for (const auto& one : cases) {
    const auto cell = parseTimeCell(one.text);
    ASSERT_TRUE(cell) << one.text;
    EXPECT_EQ(cell->fields, one.fields) << one.text;
    EXPECT_EQ(cell->elapsed, one.elapsed) << one.text;
    EXPECT_FALSE(cell->surelyClock) << one.text;
  }
}

TEST(NoteTimes, clock) {
  struct Case {
    const char* text;
    Duration clock;
    bool surely;
  };
  const Case cases[] = {
      {"14:05", hours{14} + minutes{5}, false},
      {"14:05:30", hours{14} + minutes{5} + std::chrono::seconds{30}, false},
      {"14:05 Uhr", hours{14} + minutes{5}, true},
      {"14.05 Uhr", hours{14} + minutes{5}, true},
      {"2:05 PM", hours{14} + minutes{5}, true},
      {"2:05:07 p.m.", hours{14} + minutes{5} + std::chrono::seconds{7}, true},
      {"12:00 am", hours{0}, true},
      {"12:00pm", hours{12}, true},
      {"2026-03-14 14:05:30", hours{14} + minutes{5} + std::chrono::seconds{30}, true},
      {"14.03.2026 14:05", hours{14} + minutes{5}, true},
      {"2026-03-14T14:05:30.5+01:00", hours{14} + minutes{5} + milliseconds{30500}, true},
  };
  for (const auto& one : cases) {
    const auto cell = parseTimeCell(one.text);
    ASSERT_TRUE(cell) << one.text;
    EXPECT_EQ(cell->clock, one.clock) << one.text;
    EXPECT_EQ(cell->surelyClock, one.surely) << one.text;
  }
  EXPECT_EQ(parseTimeCell("2026-03-14 14:05:30")->date, date(2026, 3, 14));
  EXPECT_EQ(parseTimeCell("2026-03-14T23:30:00+01:00")->date, date(2026, 3, 14));
  EXPECT_EQ(parseTimeCell("2026-03-14T23:30:00+01:00")->zone, minutes{60});
}

TEST(NoteTimes, whatIsNoTime) {
  for (const auto* text :
       {"",          " ",       "shock", "1:75",       "1:2:3:4", "14:05:60", "25:00 Uhr",
        "13:00 pm",  "0:30 am", "1:",    ":30",        "1.2.3",   "12:60:00", "1e3",
        "0x10",      "9999999", "95 J",  "2026-03-14", "--5",     "1;5",      "\u0663",
        "1:05.5:30", "nan",     "inf",   "-"}) {
    EXPECT_FALSE(parseTimeCell(text)) << text;
  }
}

TEST(NoteTimes, dates) {
  EXPECT_EQ(parseDateCell("2026-03-14"), date(2026, 3, 14));
  EXPECT_EQ(parseDateCell("14.03.2026"), date(2026, 3, 14));
  EXPECT_EQ(parseDateCell("4.3.26"), date(2026, 3, 4));
  EXPECT_EQ(parseDateCell("14/03/2026"), date(2026, 3, 14));
  EXPECT_EQ(parseDateCell("03/14/2026"), date(2026, 3, 14)); // there is no 14th month
  EXPECT_EQ(parseDateCell("03/04/2026"), date(2026, 4, 3));  // day first where both can be
  for (const auto* text :
       {"", "2026", "31.02.2026", "14.03-2026", "2026-13-01", "a.b.c", "1.2.3.4", "12:30"}) {
    EXPECT_FALSE(parseDateCell(text)) << text;
  }
}

TEST(NoteTimes, aWholeColumnIsOneKind) {
  const auto decided = [](const char* heading, std::vector<const char*> texts,
                          bool dateColumn = false) {
    std::vector<TimeCell> cells;
    for (const auto* text : texts) {
      cells.push_back(parseTimeCell(text).value());
    }
    return decideTimes(heading, cells, dateColumn);
  };
  constexpr auto elapsed = TimeMeaning::elapsed;
  constexpr auto clock = TimeMeaning::clock;
  EXPECT_EQ(decided("", {"95", "97.5"}), elapsed);
  EXPECT_EQ(decided("", {"1:35", "14:05"}), elapsed);
  EXPECT_EQ(decided("Zeit", {"1:35", "14:05"}), elapsed);
  EXPECT_EQ(decided("Uhrzeit", {"1:35", "14:05"}), clock);
  EXPECT_EQ(decided("Clock time", {"14:05"}), clock);
  EXPECT_EQ(decided("hh:mm", {"14:05"}), clock);
  EXPECT_EQ(decided("mm:ss", {"14:05"}), elapsed);
  EXPECT_EQ(decided("", {"14:05 Uhr", "14:06"}), clock);
  EXPECT_EQ(decided("", {"14:05"}, true), clock);
  EXPECT_EQ(decided("", {"14:05:30", "14:06:00"}), clock);
  EXPECT_EQ(decided("", {"23:59:30", "00:00:10"}), clock);
  EXPECT_EQ(decided("", {"0:00:30", "0:01:10"}), elapsed);
  EXPECT_EQ(decided("", {"0:00:30", "1:01:10"}), elapsed);
  EXPECT_EQ(decided("elapsed", {"1:00:30", "1:01:10"}), elapsed);
  EXPECT_EQ(decided("", {"95", "1:01:10"}), elapsed);
}

TEST(NoteTimes, midnight) {
  const auto at = [](int h, int m) { return Duration{hours{h} + minutes{m}}; };
  EXPECT_THAT(unwrapClock({at(23, 58), at(0, 2), at(23, 59), at(0, 5)}),
              testing::ElementsAre(at(23, 58), at(24, 2), at(23, 59), at(24, 5)));
  // A small step back is a note written late.
  EXPECT_THAT(unwrapClock({at(14, 5), at(14, 3)}), testing::ElementsAre(at(14, 5), at(14, 3)));
}

} // namespace
} // namespace afterbeat
