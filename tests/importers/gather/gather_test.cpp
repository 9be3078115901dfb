#include "importers/gather/gather.h"

#include "log_text.h"

#include "core/bytes/digest.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <fmt/format.h>

namespace afterbeat {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

const std::string kHeader = "\"id\":\"urn:uuid:00000000-0000-4000-8000-000000000001\",\"recorded\":"
                            "\"2026-03-14T14:05:00+01:00\",\"kind\":\"rescue\"";

std::vector<std::string> shown(const Record& record) {
  std::vector<std::string> lines;
  for (const auto& entry : record.entries) {
    const auto part = entry.part < 0 ? std::string{"none"} : std::to_string(entry.part);
    lines.push_back(fmt::format("{:g} {} part {}", seconds(entry.t), typeName(entry.data), part));
  }
  return lines;
}

std::string samplesLine(double t, std::vector<std::int16_t> values) {
  return fmt::format("{{\"t\":{:g},\"type\":\"samples\",\"channel\":\"ecg1\",\"count\":{},\"data\":"
                     "\"{}\"}}",
                     t, values.size(), base64FromInt16(values));
}

const std::string kChannel =
    ",\"channels\":[{\"id\":\"ecg1\",\"quantity\":\"ecg\",\"unit\":\"mV\",\"rate_hz\":250,"
    "\"scale\":0.005,\"offset\":0,\"encoding\":\"int16le\"}]";

TEST(Gather, twoSourcesOnOneAxis) {
  const auto result =
      gather(together(logSource("log", kHeader,
                                {R"({"t":10,"type":"power_on"})",
                                 R"({"t":50,"end":58.5,"type":"analysis","advice":"shock"})"}),
                      notesSource("notes", "Uhrzeit;Was\n14:04:30;Kollaps\n14:05:30;Defi da\n")));
  const auto& record = result.record;
  EXPECT_THAT(shown(record), ElementsAre("-30 milestone part 1", "10 power_on part 0",
                                         "30 milestone part 1", "50 analysis part 0"));
  EXPECT_EQ(record.entries[3].end, *timeFromSeconds(58.5));
  EXPECT_EQ(record.entries[0].source, Source::observer);
  ASSERT_EQ(record.header.parts.size(), 2U);
  EXPECT_EQ(record.header.parts[0].id, "urn:uuid:00000000-0000-4000-8000-000000000001");
  EXPECT_EQ(record.header.parts[0].sha256, std::string(64, 'a'));
  EXPECT_EQ(record.header.parts[0].label, "log");
  EXPECT_EQ(record.header.parts[0].offset, Duration{});
  EXPECT_EQ(record.header.parts[1].offset, Duration{-30'000'000});
  EXPECT_EQ(formatWallTime(*record.header.recorded), "2026-03-14T14:05:00+01:00");
  EXPECT_NE(record.header.id, record.header.parts[0].id);
  EXPECT_EQ(record.header.kind, RecordKind::rescue); // the notes' kind was only assumed
  EXPECT_EQ(said(result, Severity::error), "");
}

TEST(Gather, theNameDependsOnTheSourcesAndOffsets) {
  const auto name = [](Duration offset) {
    return gather(together(logSource("log", kHeader, {}), notesSource("n", "1;shock\n", offset)))
        .record.header.id;
  };
  EXPECT_EQ(name(Duration{1}), name(Duration{1}));
  EXPECT_NE(name(Duration{1}), name(Duration{2}));
  EXPECT_THAT(name(Duration{1}), testing::StartsWith("urn:uuid:"));
}

TEST(Gather, oneSourceAlone) {
  std::vector<GatherSource> sources;
  sources.push_back(notesSource("notes", "10;shock\n"));
  const auto result = gather(std::move(sources));
  EXPECT_THAT(shown(result.record), ElementsAre("10 shock part 0"));
  // The header must hold a time; the unset clock says that it means nothing.
  ASSERT_TRUE(result.record.header.recorded);
  EXPECT_EQ(formatWallTime(*result.record.header.recorded), "1970-01-01T00:00:00-00:00");
  EXPECT_EQ(clockTrust(result.record), ClockTrust::none);
  EXPECT_EQ(result.record.header.kind, RecordKind::test);
  EXPECT_EQ(said(readBack(written(result.record)), Severity::error), "");
}

TEST(Gather, aLaterClockIsCarriedBack) {
  const auto result = gather(together(notesSource("notes", "-5;collapse\n10;shock\n"),
                                      logSource("log", kHeader, {}, Duration{90'000'000})));
  EXPECT_EQ(formatWallTime(*result.record.header.recorded), "2026-03-14T14:03:30+01:00");
  EXPECT_THAT(said(result, Severity::info), HasSubstr("those of log, carried back"));
  // Notes with times of day and no date learn the date from the log.
  const auto dated = gather(together(notesSource("notes", "Uhrzeit;Was\n14:04:00;Kollaps\n"),
                                     logSource("log", kHeader, {R"({"t":0,"type":"power_on"})"})));
  EXPECT_EQ(formatWallTime(*dated.record.header.recorded), "2026-03-14T14:04:00+01:00");
  EXPECT_THAT(shown(dated.record), ElementsAre("0 milestone part 0", "60 power_on part 1"));
}

TEST(Gather, channelsMoveAndTakeTheNumberOfTheirPart) {
  auto other = logSource("b", kHeader + kChannel, {samplesLine(1, {5, 6, 7})}, Duration{8'000});
  const auto result = gather(
      together(logSource("a", kHeader + kChannel, {samplesLine(0, {1, 2})}), std::move(other)));
  const auto& channels = result.record.channels;
  ASSERT_EQ(channels.size(), 2U);
  EXPECT_EQ(channels[0].id, "1-ecg1");
  EXPECT_EQ(channels[1].id, "2-ecg1");
  EXPECT_EQ(channels[1].blocks.at(0).t, *timeFromSeconds(1.008));
  EXPECT_THAT(channels[1].samples, ElementsAre(5, 6, 7));
}

TEST(Gather, theZeroMovesSoThatNoSampleIsLost) {
  const auto result = gather(together(
      logSource("a", kHeader, {R"({"t":10,"type":"power_on"})"}),
      logSource("b", kHeader + kChannel, {samplesLine(2, {1, 2, 3})}, Duration{-62'000'000})));
  const auto& record = result.record;
  EXPECT_EQ(record.channels.at(0).blocks.at(0).t, Time{});
  EXPECT_THAT(shown(record), ElementsAre("70 power_on part 0"));
  EXPECT_EQ(formatWallTime(*record.header.recorded), "2026-03-14T14:04:00+01:00");
  EXPECT_EQ(record.header.parts[0].offset, Duration{60'000'000});
  EXPECT_EQ(record.header.parts[1].offset, Duration{-2'000'000});
  EXPECT_THAT(said(result, Severity::info), HasSubstr("zero of the times was moved 60"));
}

TEST(Gather, whatLeavesTheAxisIsReported) {
  const auto result = gather(together(
      logSource("a", kHeader, {R"({"t":10,"type":"power_on"})"}),
      logSource("b", kHeader + kChannel,
                {R"({"t":999999,"type":"power_on"})", R"({"t":-10,"end":999999.5,"type":"cpr"})",
                 R"({"t":5,"type":"power_off"})", samplesLine(999998, {1, 2, 3})},
                Duration{5'000'000})));
  EXPECT_THAT(shown(result.record), ElementsAre("10 power_on part 0", "10 power_off part 1"));
  EXPECT_TRUE(result.record.channels.at(0).blocks.empty());
  EXPECT_THAT(said(result, Severity::error), HasSubstr("2 entries of b lie more than"));
  EXPECT_THAT(said(result, Severity::error), HasSubstr("1 stretches of waveform of b"));
}

TEST(Gather, partsOfPartsStayParts) {
  const auto inner = gather(together(
      logSource("a", kHeader + kChannel, {samplesLine(0, {1}), R"({"t":1,"type":"power_on"})"}),
      notesSource("n", "2;shock\n", Duration{1'000'000})));
  GatherSource merged{readBack(written(inner.record)), "inner", std::string(64, 'c'),
                      Duration{10'000'000}};
  const auto outer = gather(
      together(logSource("a", kHeader, {R"({"t":0,"type":"power_on"})"}), std::move(merged)));
  const auto& parts = outer.record.header.parts;
  ASSERT_EQ(parts.size(), 4U);
  EXPECT_EQ(parts[0].label, "a");
  EXPECT_EQ(parts[1].id, inner.record.header.id);
  // The log is part of both: its second appearance gets a name of its own.
  EXPECT_EQ(parts[2].id, "2/" + parts[0].id);
  EXPECT_EQ(parts[2].label, "inner: a");
  EXPECT_EQ(parts[3].label, "inner: n");
  EXPECT_EQ(parts[3].offset, Duration{11'000'000});
  EXPECT_THAT(shown(outer.record),
              ElementsAre("0 power_on part 0", "11 power_on part 2", "13 shock part 3"));
  EXPECT_EQ(outer.record.channels.at(0).id, "2-1-ecg1");
}

TEST(Gather, factsOfTheFirstThatSaysThem) {
  const auto result = gather(together(
      logSource("a", kHeader + ",\"patient\":{\"age_years\":54},\"site\":\"Ferry terminal\"", {}),
      logSource("b",
                kHeader + ",\"patient\":{\"category\":\"adult\",\"age_years\":55},\"team\":"
                          "\"Boathouse 2\",\"device\":{\"serial\":\"0042\"},\"synthetic\":true,"
                          "\"event\":{\"witnessed\":\"crew\"}",
                {})));
  const auto& header = result.record.header;
  EXPECT_EQ(header.patient, PatientCategory::adult);
  EXPECT_EQ(header.ageYears, 54);
  EXPECT_EQ(header.site, "Ferry terminal");
  EXPECT_EQ(header.team, "Boathouse 2");
  EXPECT_EQ(header.device.serial, "0042");
  EXPECT_EQ(header.event.witnessed, "crew");
  EXPECT_TRUE(header.synthetic);
  EXPECT_THAT(said(result, Severity::info), HasSubstr("about the age: \"55\"; \"54\" is kept"));
}

TEST(Gather, kindsThatContradict) {
  const auto drill = "\"id\":\"urn:uuid:d\",\"recorded\":\"2026-03-14T14:05:00Z\",\"kind\":"
                     "\"drill\"";
  const auto result = gather(together(logSource("a", kHeader, {}), logSource("b", drill, {})));
  // A drill never enters rescue statistics.
  EXPECT_EQ(result.record.header.kind, RecordKind::drill);
  EXPECT_THAT(said(result, Severity::error), HasSubstr("b says it is a drill"));
  // An importer's assumption gives way in any order and without a word.
  const auto later = gather(together(notesSource("n", "1;shock\n"), logSource("b", drill, {})));
  EXPECT_EQ(later.record.header.kind, RecordKind::drill);
  EXPECT_EQ(said(later, Severity::error), "");
}

TEST(Gather, anotherDevicesClockDoesNotMoveTheRecord) {
  const std::string set = R"({"t":5,"type":"clock_set","wall":"2030-01-01T00:00:00Z"})";
  const auto result =
      gather(together(logSource("a", kHeader, {}), logSource("b", kHeader, {set}, Duration{})));
  EXPECT_EQ(formatWallTime(wallTimeAt(result.record, Time{}).value()), "2026-03-14T14:05:00+01:00");
  EXPECT_EQ(std::get<entry::Mark>(result.record.entries.at(0).data).text,
            "Device clock set to 2030-01-01T00:00:00Z");
  // The record's own one does.
  const auto own = gather(together(logSource("a", kHeader, {set}), notesSource("n", "1;shock\n")));
  EXPECT_EQ(formatWallTime(wallTimeAt(own.record, *timeFromSeconds(5)).value()),
            "2030-01-01T00:00:00Z");
}

TEST(Gather, whatWasNotUnderstoodStaysSo) {
  auto result = gather(
      together(logSource("a", kHeader, {}),
               logSource("b", kHeader + kChannel,
                         {R"({"t":10,"end":5,"type":"cpr"})", // ends before it begins
                          R"({"t":11,"type":"samples","channel":"x","count":1,"data":"AAA="})",
                          R"({"t":12,"type":"samples","channel":"ecg1","count":1,"data":"?"})",
                          R"({"t":13,"type":"moonrise","end":14,"colour":"red"})",
                          R"({"t":14,"type":"shock","delivered":"perhaps"})",
                          R"({"type":"mark","text":"no time"})"},
                         Duration{-100'000'000})));
  const auto text = written(result.record);
  const auto back = readBack(text);
  EXPECT_THAT(shown(back.record),
              ElementsAre("-90 cpr part 1", "-89 samples part 1", "-88 samples part 1",
                          "-87 moonrise part 1", "-86 shock part 1", testing::_));
  EXPECT_TRUE(back.record.entries[0].incomplete);
  EXPECT_TRUE(back.record.entries[4].incomplete);
  EXPECT_TRUE(back.record.channels.at(0).blocks.empty());
  EXPECT_EQ(back.record.entries[3].end, *timeFromSeconds(-86));
  EXPECT_THAT(text, HasSubstr("\"channel\":\"2-x\""));
  EXPECT_THAT(text, HasSubstr("\"end\":-95"));
  EXPECT_THAT(text, HasSubstr("\"colour\":\"red\""));
  EXPECT_EQ(written(back.record), text);
}

TEST(Gather, channelsThatAreNotDrawnKeepTheirSamples) {
  const std::string odd = ",\"channels\":[{\"id\":\"x\",\"quantity\":\"ecg\",\"unit\":\"mV\","
                          "\"rate_hz\":250,\"encoding\":\"float64\"}]";
  const auto result = gather(together(
      logSource("a", kHeader, {}),
      logSource("b", kHeader + odd,
                {R"({"t":1,"type":"samples","channel":"x","count":1,"data":"AAAAAAAAAAA="})"})));
  const auto text = written(result.record);
  EXPECT_THAT(text, HasSubstr("\"channel\":\"2-x\""));
  const auto back = readBack(text);
  EXPECT_EQ(said(back, Severity::error), "");
  EXPECT_FALSE(back.record.channels.at(0).drawable);
  EXPECT_EQ(written(back.record), text);
}

TEST(Gather, aStretchThatWasNeverClosedEndsWhereItsSourceEnded) {
  const auto result = gather(together(
      logSource("a", kHeader,
                {R"({"t":10,"type":"cpr","open":true})", R"({"t":40,"type":"power_off"})"}),
      notesSource("n", "500;handover\n", Duration{})));
  const auto back = readBack(written(result.record));
  EXPECT_EQ(back.record.entries.at(0).end, *timeFromSeconds(40));
}

/// Random records: gathered, written, read and written again.
TEST(Gather, timesMoveExactlyAndTheResultIsStable) {
  EXPECT_TRUE(rc::check([](bool) {
    const auto source = [](const char* label) {
      const auto micros = rc::gen::inRange<std::int64_t>(-2'000'000'000, 2'000'000'000);
      GatherSource made;
      made.label = label;
      made.sha256 = std::string(64, *rc::gen::inRange('0', '9'));
      made.offset = Duration{*micros};
      auto& record = made.imported.record;
      record.header.id = uuidFrom(label);
      record.header.kind = RecordKind::drill;
      record.header.recorded = parseWallTime("2026-03-14T14:05:00.123456+02:00");
      const auto count = *rc::gen::inRange(0, 20);
      for (int i = 0; i < count; ++i) {
        Entry entry;
        entry.t = Time{Duration{*micros}};
        entry.source = *rc::gen::element(Source::device, Source::observer, Source::derived);
        switch (*rc::gen::inRange(0, 5)) {
        case 0:
          entry.data = entry::Compression{50.5, {}, true};
          break;
        case 1:
          entry.data = entry::Cpr{110};
          entry.end = entry.t + Duration{*rc::gen::inRange<std::int64_t>(0, 90'000'000)};
          break;
        case 2:
          entry.data = entry::Shock{true, 150, {}, {}};
          break;
        case 3:
          entry.data = entry::Mark{"\u00dcbergabe \"am\" Steg", "A"};
          break;
        default:
          entry.data = entry::Circulation{CirculationState::returned};
        }
        record.entries.push_back(entry);
      }
      std::stable_sort(record.entries.begin(), record.entries.end(),
                       [](const Entry& a, const Entry& b) { return a.t < b.t; });
      return made;
    };
    const auto a = source("a");
    const auto b = source("b");
    const auto result = gather(together(a, b));
    const auto& entries = result.record.entries;
    RC_ASSERT(entries.size() ==
              a.imported.record.entries.size() + b.imported.record.entries.size());
    std::size_t next[2] = {0, 0};
    for (const auto& entry : entries) {
      const auto& from = entry.part == 0 ? a : b;
      const auto& original =
          from.imported.record.entries[next[static_cast<std::size_t>(entry.part)]++];
      RC_ASSERT(entry.t == original.t + *from.offset);
      RC_ASSERT(entry.lastTime() == original.lastTime() + *from.offset);
      RC_ASSERT(entry.data.index() == original.data.index());
    }
    RC_ASSERT(std::is_sorted(entries.begin(), entries.end(),
                             [](const Entry& x, const Entry& y) { return x.t < y.t; }));
    RC_ASSERT(result.record.header.recorded->utc ==
              a.imported.record.header.recorded->utc - *a.offset);
    const auto text = written(result.record);
    const auto back = readBack(text);
    RC_ASSERT(said(back, Severity::error).empty());
    RC_ASSERT(written(back.record) == text);
    RC_ASSERT(back.record.entries.size() == entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i) {
      RC_ASSERT(back.record.entries[i].t == entries[i].t);
      RC_ASSERT(back.record.entries[i].part >= 0);
    }
  }));
}

} // namespace
} // namespace afterbeat
