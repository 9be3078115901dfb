#include "core/record/wall_clock.h"

#include "core/record/record.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using std::chrono::minutes;

std::int64_t utcMicros(const WallTime& time) {
  return time.utc.time_since_epoch().count();
}

struct GoodTime {
  const char* text;
  /// Microseconds since 1970, UTC; from `date -u -d TEXT +%s`.
  std::int64_t utc;
  int zone;
  bool known;
  /// As this program writes it.
  const char* written;
};

class GoodTimes : public testing::TestWithParam<GoodTime> {};

TEST_P(GoodTimes, isRead) {
  const auto& expected = GetParam();
  const auto time = parseWallTime(expected.text);
  ASSERT_TRUE(time) << expected.text;
  EXPECT_EQ(utcMicros(*time), expected.utc);
  EXPECT_EQ(time->zone, minutes{expected.zone});
  EXPECT_EQ(time->zoneKnown, expected.known);
  EXPECT_EQ(formatWallTime(*time), expected.written);
  EXPECT_EQ(parseWallTime(formatWallTime(*time)), time);
}

// The first five are the examples of RFC 3339, section 5.8 (the last two of them one leap second).
INSTANTIATE_TEST_SUITE_P(
    Rfc3339, GoodTimes,
    testing::Values(
        GoodTime{"1985-04-12T23:20:50.52Z", 482196050520000, 0, true, "1985-04-12T23:20:50.520Z"},
        GoodTime{"1996-12-19T16:39:57-08:00", 851042397000000, -480, true,
                 "1996-12-19T16:39:57-08:00"},
        GoodTime{"1937-01-01T12:00:27.87+00:20", -1041337172130000, 20, true,
                 "1937-01-01T12:00:27.870+00:20"},
        GoodTime{"1990-12-31T23:59:60Z", 662688000000000, 0, true, "1991-01-01T00:00:00Z"},
        GoodTime{"1990-12-31T15:59:60-08:00", 662688000000000, -480, true,
                 "1990-12-31T16:00:00-08:00"},
        GoodTime{"2026-03-14T09:12:30-00:00", 1773479550000000, 0, false,
                 "2026-03-14T09:12:30-00:00"},
        GoodTime{"2026-03-14t09:12:30z", 1773479550000000, 0, true, "2026-03-14T09:12:30Z"},
        GoodTime{"2026-03-14T09:12:30+00:00", 1773479550000000, 0, true, "2026-03-14T09:12:30Z"},
        GoodTime{"2026-03-14T10:12:30.000001+01:00", 1773479550000001, 60, true,
                 "2026-03-14T10:12:30.000001+01:00"},
        GoodTime{"2026-03-14T10:12:30.1234569+01:00", 1773479550123456, 60, true,
                 "2026-03-14T10:12:30.123456+01:00"},
        GoodTime{"2024-02-29T00:00:00Z", 1709164800000000, 0, true, "2024-02-29T00:00:00Z"},
        GoodTime{"2000-02-29T00:00:00Z", 951782400000000, 0, true, "2000-02-29T00:00:00Z"}));

TEST(WallClock, whatIsNoTimeIsNotRead) {
  for (const char* text : {"",
                           "2026-03-14",
                           "2026-03-14T09:12:30",
                           "2026-03-14 09:12:30Z",
                           "2026-03-14T09:12Z",
                           "2026-03-14T09:12:30.Z",
                           "2026-03-14T24:00:00Z",
                           "2026-03-14T09:60:00Z",
                           "2026-03-14T09:12:61Z",
                           "2026-02-29T00:00:00Z",
                           "2100-02-29T00:00:00Z",
                           "2026-13-01T00:00:00Z",
                           "2026-00-10T00:00:00Z",
                           "2026-04-31T00:00:00Z",
                           "2026-04-00T00:00:00Z",
                           "2026-03-14T09:12:30+24:00",
                           "2026-03-14T09:12:30+01:60",
                           "2026-03-14T09:12:30+0100",
                           "2026-03-14T09:12:30+01",
                           "2026-03-14T09:12:30Z ",
                           " 2026-03-14T09:12:30Z",
                           "26-03-14T09:12:30Z",
                           "2026-3-14T09:12:30Z",
                           "2026-03-14T9:12:30Z",
                           "2026-03-14T09:12:30,5Z",
                           "-026-03-14T09:12:30Z",
                           "2026-03-14T09:12:30.5",
                           "2026-03-14T+9:12:30Z"}) {
    EXPECT_FALSE(parseWallTime(text)) << text;
  }
}

TEST(WallClock, displaysAreLocal) {
  const auto time = parseWallTime("2026-03-14T23:59:59.999+01:00");
  ASSERT_TRUE(time);
  EXPECT_EQ(formatClock(*time), "23:59:59");
  EXPECT_EQ(formatDate(*time), "2026-03-14");
  const auto before1970 = parseWallTime("1969-12-31T23:59:58.5-02:00");
  ASSERT_TRUE(before1970);
  EXPECT_EQ(formatClock(*before1970), "23:59:58");
  EXPECT_EQ(formatDate(*before1970), "1969-12-31");
}

Record recordAt(const char* recorded) {
  Record record;
  record.header.recorded = parseWallTime(recorded);
  return record;
}

Entry clockSet(double t, const char* wall) {
  Entry entry;
  entry.t = *timeFromSeconds(t);
  entry.data = entry::ClockSet{wall};
  return entry;
}

std::string at(const Record& record, double t) {
  const auto time = wallTimeAt(record, *timeFromSeconds(t));
  return time ? formatWallTime(*time) : "none";
}

TEST(WallClock, recordedIsCarriedAlongTheAxis) {
  const Record record = recordAt("2026-03-14T09:12:30+01:00");
  EXPECT_EQ(clockTrust(record), ClockTrust::deviceOnly);
  EXPECT_EQ(at(record, 90.5), "2026-03-14T09:14:00.500+01:00");
  EXPECT_EQ(at(record, -31), "2026-03-14T09:11:59+01:00");
}

TEST(WallClock, aComparisonWithAnotherClockCorrects) {
  Record record = recordAt("2026-03-14T09:12:30+01:00");
  record.header.clock.offset = std::chrono::seconds{-75};
  EXPECT_EQ(clockTrust(record), ClockTrust::checked);
  EXPECT_EQ(at(record, 0), "2026-03-14T09:11:15+01:00");
}

TEST(WallClock, anUnsetClockTellsNothingUntilItIsSet) {
  Record record = recordAt("2000-01-01T00:00:00-00:00");
  record.header.clock.state = ClockState::unset;
  EXPECT_EQ(clockTrust(record), ClockTrust::none);
  EXPECT_EQ(at(record, 0), "none");
  record.entries.push_back(clockSet(60, "2026-03-14T09:00:00Z"));
  EXPECT_EQ(clockTrust(record), ClockTrust::deviceOnly);
  EXPECT_EQ(at(record, 0), "2026-03-14T08:59:00Z");
}

TEST(WallClock, anUnsetClockThatWasComparedCanBeCorrected) {
  Record record = recordAt("2000-01-01T00:00:00Z");
  record.header.clock.state = ClockState::unset;
  record.header.clock.offset = std::chrono::hours{24};
  EXPECT_EQ(clockTrust(record), ClockTrust::checked);
  EXPECT_EQ(at(record, 0), "2000-01-02T00:00:00Z");
}

TEST(WallClock, theLastUsableSettingCounts) {
  Record record = recordAt("2026-03-14T09:00:00Z");
  record.entries = {clockSet(10, "2026-03-14T10:00:00Z"), clockSet(20, "2026-03-14T11:00:00Z"),
                    clockSet(30, "yesterday")};
  EXPECT_EQ(at(record, 20), "2026-03-14T11:00:00Z");
  record.entries[1].incomplete = true;
  EXPECT_EQ(at(record, 20), "2026-03-14T10:00:10Z");
}

TEST(WallClock, withoutRecordedThereIsNoClockTime) {
  const Record record;
  EXPECT_EQ(clockTrust(record), ClockTrust::none);
  EXPECT_EQ(at(record, 5), "none");
}

} // namespace
} // namespace afterbeat
