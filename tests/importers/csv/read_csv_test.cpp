#include "importers/csv/read_csv.h"

#include "text_forms.h"

#include <algorithm>
#include <random>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;

Imported parsed(std::string_view bytes, const CsvColumns& columns = {}) {
  auto result = parseCsv(bytes, columns);
  EXPECT_TRUE(result) << result.error().sentence();
  return result.value_or(Imported{});
}

std::string refusal(std::string_view bytes, const CsvColumns& columns = {}) {
  const auto result = parseCsv(bytes, columns);
  EXPECT_FALSE(result);
  return result ? std::string{} : result.error().sentence();
}

/// Entries as "t type" or "t-end type".
std::vector<std::string> shown(const Imported& imported) {
  std::vector<std::string> lines;
  for (const auto& entry : imported.record.entries) {
    EXPECT_EQ(entry.source, Source::observer);
    EXPECT_EQ(entry.end.has_value(), isStretch(entry.data));
    lines.push_back(entry.end ? fmt::format("{:g}-{:g} {}", seconds(entry.t), seconds(*entry.end),
                                            typeName(entry.data))
                              : fmt::format("{:g} {}", seconds(entry.t), typeName(entry.data)));
  }
  return lines;
}

std::vector<std::string> problems(const Imported& imported, Severity severity) {
  std::vector<std::string> lines;
  for (const auto& problem : imported.problems) {
    if (problem.severity == severity) {
      lines.push_back(fmt::format("{}: {}", problem.line, sentence(problem)));
    }
  }
  return lines;
}

// One rescue, in every combination of language, separator and encoding.
TEST(ReadCsv, everyFormOfTheSameNotes) {
  const std::string english = "Time{0}What{0}Value{0}Remark\n"
                              "0:10{0}Power on{0}{0}\n"
                              "0:25{0}Electrodes attached{0}{0}\n"
                              "0:31.5{0}Compressions start{0}110{0}\n"
                              "0:50{0}Compressions stop{0}{0}\n"
                              "0:52{0}Analysis{0}shock{0}\n"
                              "1:01{0}Shock{0}150 J{0}at the pier\n"
                              "3:00{0}ROSC{0}{0}\n"
                              "9:30{0}Handover{0}{0}\n";
  const std::string german = "Zeit{0}Was{0}Wert{0}Bemerkung\n"
                             "0:10{0}Ger\u00e4t ein{0}{0}\n"
                             "0:25{0}Elektroden geklebt{0}{0}\n"
                             "0:31,5{0}HDM Beginn{0}110{0}\n"
                             "0:50{0}HDM Ende{0}{0}\n"
                             "0:52{0}Analyse{0}Schock empfohlen{0}\n"
                             "1:01{0}Schock{0}150 J{0}am Anleger\n"
                             "3:00{0}Kreislauf wieder da{0}{0}\n"
                             "9:30{0}\u00dcbergabe{0}{0}\n";
  for (const auto& [language, notes] : {std::pair{"en", english}, {"de", german}}) {
    for (const char* separator : {",", ";", "\t"}) {
      auto text = fmt::format(fmt::runtime(notes), separator);
      const auto comma = text.find("31,5");
      if (comma != std::string::npos && separator == std::string_view{","}) {
        text.replace(comma - 2, 6, "\"0:31,5\"");
      }
      const std::pair<const char*, std::string> forms[] = {
          {"UTF-8", text},
          {"UTF-8 mark", "\xEF\xBB\xBF" + text},
          {"UTF-16LE", "\xFF\xFE" + utf16(text, false)},
          {"UTF-16BE", "\xFE\xFF" + utf16(text, true)},
          {"UTF-16LE bare", utf16(text, false)},
          {"Windows-1252", latin1(text)},
      };
      for (const auto& [form, bytes] : forms) {
        SCOPED_TRACE(fmt::format("{} {:?} {}", language, separator, form));
        const auto result = parsed(bytes);
        EXPECT_THAT(shown(result),
                    ElementsAre("10 power_on", "25 electrodes", "31.5-50 cpr", "52-52 analysis",
                                "61 shock", "180 circulation", "570 milestone"));
        const auto& entries = result.record.entries;
        EXPECT_EQ(std::get<entry::Cpr>(entries[2].data).ratePerMin, 110);
        EXPECT_EQ(std::get<entry::Shock>(entries[4].data).energyJ, 150);
        EXPECT_FALSE(entries[4].note.empty());
        EXPECT_TRUE(problems(result, Severity::error).empty());
        EXPECT_TRUE(problems(result, Severity::warning).empty());
        EXPECT_EQ(result.record.lastTime, *timeFromSeconds(570));
      }
    }
  }
}

TEST(ReadCsv, withoutHeadings) {
  EXPECT_THAT(shown(parsed("10;power on\n52,5;analysis;shock\n61;shock;150;first one\n")),
              ElementsAre("10 power_on", "52.5-52.5 analysis", "61 shock"));
  // What before when.
  const auto swapped = parsed("power on,10\nshock,61\n");
  EXPECT_THAT(shown(swapped), ElementsAre("10 power_on", "61 shock"));
}

TEST(ReadCsv, namedColumns) {
  const std::string notes = "nr;when;a;b;c\n1;10;x;power on;\n2;61;y;shock;150\n";
  for (const auto& columns : {CsvColumns{"when", "b", "c", "a"}, CsvColumns{"2", "4", "5", "3"},
                              CsvColumns{"WHEN", "B", "C", "A"}}) {
    const auto result = parsed(notes, columns);
    EXPECT_THAT(shown(result), ElementsAre("10 power_on", "61 shock"));
    EXPECT_EQ(std::get<entry::Shock>(result.record.entries[1].data).energyJ, 150);
    EXPECT_EQ(result.record.entries[1].note, "y; nr: 2");
  }
  EXPECT_THAT(refusal(notes, {"clock", "", "", ""}), HasSubstr("no column \"clock\""));
  EXPECT_THAT(refusal(notes, {"6", "", "", ""}), HasSubstr("no column \"6\""));
  EXPECT_THAT(refusal(notes, {"0", "", "", ""}), HasSubstr("no column \"0\""));
}

TEST(ReadCsv, clockTimesCountFromTheFirstOne) {
  const auto result = parsed("Uhrzeit;Was\n23:58:30;Kollaps\n23:59;Notruf\n00:01:15;AED da\n");
  EXPECT_THAT(shown(result), ElementsAre("0 milestone", "30 milestone", "165 milestone"));
  EXPECT_FALSE(result.record.header.recorded);
  EXPECT_EQ(result.record.header.clock.state, ClockState::unset);
  EXPECT_EQ(result.timeOfDay, std::chrono::seconds{86310});
  EXPECT_THAT(problems(result, Severity::info), Contains(HasSubstr("read as clock times")));
}

TEST(ReadCsv, aDateMakesThemRecorded) {
  struct Case {
    const char* notes;
    const char* recorded;
  };
  const Case cases[] = {
      {"Date: 2026-03-14\nclock,what\n14:05,power on\n14:06,shock\n", "2026-03-14T14:05:00-00:00"},
      {"Datum;14.03.2026\nUhrzeit;Was\n14:05:30;Schock\n", "2026-03-14T14:05:30-00:00"},
      {"Datum;Zeit;Was\n14.03.2026;14:05:30;Schock\n", "2026-03-14T14:05:30-00:00"},
      {"time,what\n2026-03-14 14:05:30,shock\n", "2026-03-14T14:05:30-00:00"},
      {"time,what\n2026-03-14T14:05:30+01:00,shock\n", "2026-03-14T14:05:30+01:00"},
  };
  for (const auto& one : cases) {
    const auto result = parsed(one.notes);
    ASSERT_TRUE(result.record.header.recorded) << one.notes;
    EXPECT_EQ(formatWallTime(*result.record.header.recorded), one.recorded) << one.notes;
    EXPECT_FALSE(result.timeOfDay) << one.notes;
    EXPECT_TRUE(problems(result, Severity::error).empty()) << one.notes;
  }
  const auto overMidnight =
      parsed("date,time,what\n2026-03-14,23:59:00,shock\n2026-03-15,00:01:00,shock\n");
  EXPECT_THAT(shown(overMidnight), ElementsAre("0 shock", "120 shock"));
}

TEST(ReadCsv, elapsedTimesHaveNoClock) {
  const auto result = parsed("Date: 2026-03-14\n0:10,power on\n1:00,shock\n");
  EXPECT_FALSE(result.record.header.recorded);
  EXPECT_FALSE(result.timeOfDay);
  EXPECT_THAT(shown(result), ElementsAre("10 power_on", "60 shock"));
}

TEST(ReadCsv, linesOutOfOrderAreSorted) {
  EXPECT_THAT(shown(parsed("60,shock\n-30,collapse\n10,power on\n")),
              ElementsAre("-30 milestone", "10 power_on", "60 shock"));
}

TEST(ReadCsv, linesWithoutATimeAreReported) {
  const auto result = parsed("time,what\n10,power on\nlater,shock\n,pads on\n20,shock\n");
  EXPECT_THAT(shown(result), ElementsAre("10 power_on", "20 shock"));
  EXPECT_THAT(problems(result, Severity::error),
              ElementsAre("3: \"later\" is no time that can be understood; the line is left out.",
                          "4: This line has no time and is left out."));
  // A first line without a time is no heading if it names an event.
  EXPECT_THAT(problems(parsed("?,shock\n10,power on\n"), Severity::error),
              ElementsAre(HasSubstr("1: ")));
}

TEST(ReadCsv, unknownWordsAreKept) {
  const auto result =
      parsed("10,power on,,\n12,bear seen,two of them,far away\n14,,,only a remark\n16,,,\n");
  EXPECT_THAT(shown(result), ElementsAre("10 power_on", "12 mark", "14 mark"));
  EXPECT_EQ(std::get<entry::Mark>(result.record.entries[1].data).text, "bear seen two of them");
  EXPECT_EQ(result.record.entries[1].note, "far away");
  EXPECT_EQ(std::get<entry::Mark>(result.record.entries[2].data).text, "only a remark");
  EXPECT_THAT(problems(result, Severity::info),
              Contains("2: \"bear seen\" is none of the words known for an event; it is kept as a "
                       "remark."));
  EXPECT_THAT(problems(result, Severity::info), Contains(HasSubstr("4: This line has a time and")));
}

// "Reanimation Ende" ends compressions; only where none follow it says that efforts ended.
TEST(ReadCsv, resuscitationBegunAndEndedTwice) {
  const auto notes = parsed("Zeit;Was;Wert\n1:00;Reanimation Beginn;110\n1:30;Reanimation Ende;\n"
                            "1:40;Reanimation Beginn;\n2:00;Reanimation beendet;\n");
  EXPECT_THAT(shown(notes), ElementsAre("60-90 cpr", "90 mark", "100-120 cpr", "120 milestone"));
  EXPECT_EQ(std::get<entry::Cpr>(notes.record.entries[0].data).ratePerMin, 110);
  EXPECT_EQ(std::get<entry::Mark>(notes.record.entries[1].data).text, "Reanimation Ende");
}

TEST(ReadCsv, analyses) {
  const auto check = [](const char* notes, const std::vector<std::string>& wanted,
                        std::optional<Advice> advice) {
    const auto result = parsed(notes);
    EXPECT_EQ(shown(result), wanted) << notes;
    const auto& entry = result.record.entries.at(0);
    EXPECT_EQ(std::get<entry::Analysis>(entry.data).advice, advice) << notes;
    EXPECT_EQ(entry.incomplete, !advice) << notes;
    EXPECT_EQ(problems(result, Severity::warning).size(), advice ? 0U : 1U) << notes;
  };
  check("50,analysis,shock\n", {"50-50 analysis"}, Advice::shock);
  check("50,analysis\n58,no shock advised\n", {"50-58 analysis"}, Advice::noShock);
  check("50,analysis start\n58,shock advised\n", {"50-58 analysis"}, Advice::shock);
  check("50,analysis start\n58,analysis,shock\n", {"50-58 analysis"}, Advice::shock);
  check("50,analysis start\n58,analysis end\n60,shock advised\n", {"50-58 analysis"},
        Advice::shock);
  check("50,shock advised\n", {"50-50 analysis"}, Advice::shock);
  check("50,analysis\n60,shock,200\n", {"50-50 analysis", "60 shock"}, std::nullopt);
  check("50,analysis start\n200,shock advised\n", {"50-50 analysis", "200-200 analysis"},
        std::nullopt);
  check("50,analysis,shock\n180,analysis,no shock\n", {"50-50 analysis", "180-180 analysis"},
        Advice::shock);
}

TEST(ReadCsv, compressions) {
  EXPECT_THAT(
      shown(parsed("10,compressions start\n40,compressions stop\n50,compressions,\n80,pause\n")),
      ElementsAre("10-40 cpr", "50-80 cpr"));
  const auto open = parsed("10,compressions start\n40,shock\n");
  EXPECT_THAT(shown(open), ElementsAre("10-40 cpr", "40 shock"));
  EXPECT_EQ(problems(open, Severity::warning).size(), 1U);
  const auto twice = parsed("10,compressions start\n20,compressions start\n40,compressions stop\n");
  EXPECT_THAT(shown(twice), ElementsAre("10-40 cpr"));
  const auto endOnly = parsed("10,power on\n40,compressions stop\n");
  EXPECT_THAT(shown(endOnly), ElementsAre("10 power_on", "40 mark"));
  // The start of CPR is a known moment unless its end is noted.
  EXPECT_THAT(shown(parsed("10,CPR started\n40,shock\n")), ElementsAre("10 milestone", "40 shock"));
  EXPECT_THAT(shown(parsed("10,CPR start\n40,CPR stop\n")), ElementsAre("10-40 cpr"));
}

TEST(ReadCsv, rhythmsHoldUntilTheNextOne) {
  EXPECT_THAT(shown(parsed("10,VF\n60,asystole\n90,power off\n")),
              ElementsAre("10-60 rhythm", "60-90 rhythm", "90 power_off"));
}

TEST(ReadCsv, severalBreathsAtOnce) {
  EXPECT_THAT(shown(parsed("10,2 breaths\n40,Breaths,2\n50,breath,500 ml\n")),
              ElementsAre("10 ventilation", "10 ventilation", "40 ventilation", "40 ventilation",
                          "50 ventilation"));
}

TEST(ReadCsv, theKindMayBeStated) {
  EXPECT_TRUE(parsed("10,shock\n").kindAssumed);
  EXPECT_EQ(parsed("10,shock\n").record.header.kind, RecordKind::test);
  const auto drill = parsed("Kind;drill\ntime;what\n10;shock\n");
  EXPECT_FALSE(drill.kindAssumed);
  EXPECT_EQ(drill.record.header.kind, RecordKind::drill);
  EXPECT_EQ(parsed("Art;\u00dcbung\n10;Schock\n").record.header.kind, RecordKind::drill);
  EXPECT_EQ(parsed("Art: Einsatz\n10;Schock\n").record.header.kind, RecordKind::rescue);
}

TEST(ReadCsv, theSameBytesGiveTheSameName) {
  EXPECT_EQ(parsed("10,shock\n").record.header.id, parsed("10,shock\n").record.header.id);
  EXPECT_NE(parsed("10,shock\n").record.header.id, parsed("11,shock\n").record.header.id);
}

TEST(ReadCsv, whatCannotBeReadIsASentence) {
  EXPECT_THAT(refusal(""), HasSubstr("empty"));
  EXPECT_THAT(refusal("\n\n;;;\n"), HasSubstr("empty"));
  EXPECT_THAT(refusal("\xEF\xBB\xBF"), HasSubstr("empty"));
  EXPECT_THAT(refusal("shock\npause\n"), HasSubstr("Only one column"));
  EXPECT_THAT(refusal("a;b\nc;d\n"), HasSubstr("No column with times"));
  EXPECT_THAT(refusal(std::string{"PK\x03\x04\x14\x00\x06\x00\x08\x00", 10}), HasSubstr("no text"));
  const auto missing = readCsv("/nowhere/notes.csv");
  ASSERT_FALSE(missing);
  EXPECT_THAT(missing.error().sentence(), HasSubstr("cannot be read: no such file"));
}

TEST(ReadCsv, randomTextNeverCrashes) {
  std::mt19937 random{95};
  const std::string pieces[] = {"10",
                                "1:35",
                                "14:05:30",
                                ";",
                                ",",
                                "\t",
                                "\n",
                                "\r\n",
                                "\"",
                                "shock",
                                "analysis",
                                "no shock",
                                "VF",
                                "HDM",
                                "stop",
                                "150 J",
                                "Date: 2026-03-14",
                                "Uhrzeit",
                                "what",
                                "\u00dcbergabe",
                                "\xFF",
                                "-",
                                " ",
                                "2 breaths",
                                "am",
                                "Uhr"};
  int read = 0;
  for (int round = 0; round < 5000; ++round) {
    std::string text;
    for (auto count = random() % 40; count > 0; --count) {
      text += pieces[random() % std::size(pieces)];
    }
    const auto result = parseCsv(text);
    if (!result) {
      EXPECT_FALSE(result.error().sentence().empty());
      continue;
    }
    ++read;
    EXPECT_TRUE(std::is_sorted(result->record.entries.begin(), result->record.entries.end(),
                               [](const Entry& a, const Entry& b) { return a.t < b.t; }));
    for (const auto& entry : result->record.entries) {
      EXPECT_EQ(entry.end.has_value(), isStretch(entry.data));
      EXPECT_LE(entry.t, entry.lastTime());
    }
  }
  EXPECT_GT(read, 500);
}

} // namespace
} // namespace afterbeat
