#include "tests/cli/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat::test {
namespace {

/// Names that no output without identity may hold.
const std::vector<std::string> kIdentities{"Lakeshore hut", "Night watch", "K-99-SECRET",
                                           "Mole nine",     "mole-nine",   "6f0a52f4",
                                           "terminal-case", "2026-03-1"};

/// A small rescue of its own: `i` makes its id, its day and its pauses.
std::string rescue(int i, const std::string& kind = "rescue",
                   const std::string& site = "Lakeshore hut", bool shockGiven = true) {
  auto lines = smallRescue();
  for (std::string& line : lines) {
    const std::string given = R"("delivered":true)";
    if (const auto at = line.find(given); at != std::string::npos && !shockGiven) {
      line.replace(at, given.size(), R"("delivered":false)");
    }
  }
  lines[0] = fmt::format(
      R"({{"resuslog":"1.0","id":"urn:uuid:6f0a52f4-53bb-4f3e-9a0e-0a4c0f1c2{:03}",)"
      R"("recorded":"2026-03-{:02}T09:12:30+01:00","kind":"{}","patient":{{"category":"adult"}},)"
      R"("device":{{"serial":"K-99-SECRET"}},"site":"{}","team":"Night watch","synthetic":true}})",
      i, 10 + i, kind, site);
  lines.back() = fmt::format(R"({{"t":{},"type":"power_off"}})", 60 + i);
  lines.insert(lines.end() - 1, R"({"t":49.5,"type":"remark","text":"Mole nine was cold"})");
  return sealed(lines);
}

/// Seven rescues and one drill.
void writeSeason(const Folder& folder) {
  for (int i = 0; i < 7; ++i) {
    folder.write(fmt::format("terminal-case-{}.resuslog", i), rescue(i));
  }
  folder.write("terminal-case-7.resuslog", rescue(7, "drill"));
}

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::size_t at = 0;
  for (std::size_t end = 0; (end = text.find('\n', at)) != std::string::npos; at = end + 1) {
    lines.push_back(text.substr(at, end - at));
  }
  return lines;
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

TEST(Compare, TextKeepsKindsApart) {
  const Folder folder;
  writeSeason(folder);
  const Ran ran = folder.cli({"compare", "."});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.err, "");
  const auto lines = linesOf(ran.out);
  const auto at = [&](const std::string& line) {
    return std::find(lines.begin(), lines.end(), line) - lines.begin();
  };
  const auto end = static_cast<std::ptrdiff_t>(lines.size());
  EXPECT_EQ(lines.back(), "Figures computed with: Pauses longer than 1.5 s  ·  European guidelines "
                          "2021  ·  to the last activity.");
  EXPECT_LT(at("RESCUES: 7  SYNTHETIC"), at("DRILLS (not real patients): 1  SYNTHETIC"));
  EXPECT_LT(at("DRILLS (not real patients): 1  SYNTHETIC"), end);
  EXPECT_LT(
      at("  Longest pause                middle 10.0 s of 7 (may really be 10.0 s to 10.0 s), "
         "middle half 10.0 s to 10.0 s"),
      end)
      << ran.out;
  EXPECT_LT(at("  Longest pause                10.0 s of 1, too few for a middle"), end) << ran.out;
  EXPECT_LT(at("  Call to first shock          no value; not recorded: 7"), end) << ran.out;
}

TEST(Compare, CsvIsTheSameUnderEveryLocale) {
  const Folder folder;
  folder.write("a.resuslog", rescue(1, "rescue", "Pier, \\\"old\\\""));
  const Ran ran = folder.cli({"compare", "a.resuslog", "--csv"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  const auto lines = linesOf(ran.out);
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_EQ(lines[0].back(), '\r');
  EXPECT_TRUE(lines[0].starts_with("record,file,day,kind,site,team,device,evidence,had_shock,"
                                   "longest_pause_cause,synthetic,version,arrest_time_s,"
                                   "arrest_time_status,hands_off_time_s,"))
      << lines[0];
  EXPECT_TRUE(
      lines[1].starts_with("urn:uuid:6f0a52f4-53bb-4f3e-9a0e-0a4c0f1c2001,a.resuslog,2026-03-11,"
                           "rescue,\"Pier, \"\"old\"\"\",Night watch,K-99-SECRET,compressions,yes,"
                           "shock,yes,1,"))
      << lines[1];
  // Depth 53 mm, longest pause 10 s, a call that nobody wrote down.
  EXPECT_TRUE(has(lines[1], ",53,ok,")) << lines[1];
  EXPECT_TRUE(has(lines[1], ",,not_recorded,")) << lines[1];
  EXPECT_EQ(std::count(lines[0].begin(), lines[0].end(), ','), 11 + 2 * 45);
}

TEST(Compare, NoCellBecomesAFormula) {
  const Folder folder;
  int i = 0;
  for (const char* site :
       {"=1+1", "+1", "-1", "@SUM(A1)", "\\t=1+1", "\\r=1+1", " =1", "＝1", "a\\n=1"}) {
    ++i;
    folder.write(fmt::format("{}.resuslog", i), rescue(i, "rescue", site));
  }
  const Ran ran = folder.cli({"compare", ".", "--csv"});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  const auto lines = linesOf(ran.out);
  ASSERT_EQ(lines.size(), 10U);
  const std::vector<std::string> cells{"\"'=1+1\"",     "\"'+1\"",   "\"'-1\"",
                                       "\"'@SUM(A1)\"", "\"'=1+1\"", "\"'=1+1\"",
                                       "\"'=1\"",       "\"'＝1\"",  "a =1"};
  for (std::size_t k = 0; k < cells.size(); ++k) {
    EXPECT_TRUE(has(lines[k + 1], ",rescue," + cells[k] + ",Night watch,")) << lines[k + 1];
  }
}

TEST(Compare, JsonCountsWhatIsMissing) {
  const Folder folder;
  writeSeason(folder);
  const Ran ran = folder.cli({"compare", ".", "--json"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  const auto json = nlohmann::json::parse(ran.out);
  ASSERT_EQ(json["records"].size(), 8U);
  ASSERT_EQ(json["kinds"].size(), 2U);
  EXPECT_EQ(json["kinds"][0]["kind"], "rescue");
  EXPECT_EQ(json["kinds"][1]["kind"], "drill");
  for (const auto& figure : json["kinds"][0]["figures"]) {
    EXPECT_EQ(figure["records"].get<int>() + figure["not_recorded"].get<int>() +
                  figure["not_applicable"].get<int>(),
              7)
        << figure["id"];
  }
  for (const auto& figure : json["kinds"][1]["figures"]) {
    EXPECT_TRUE(figure["median"].is_null()) << figure["id"];
  }
  EXPECT_EQ(json["kinds"][0]["figures"][0]["id"], "call_to_first_shock");
  EXPECT_EQ(json["kinds"][0]["figures"][0]["not_recorded"], 7);
}

TEST(Compare, JsonSaysWhatIsUsualAndNamesNoRecordForIt) {
  const Folder folder;
  constexpr int kRecords = 20;
  for (int i = 0; i < kRecords; ++i) {
    folder.write(fmt::format("{}.resuslog", i), rescue(i, "rescue", "Lakeshore hut", false));
  }
  const Ran ran = folder.cli({"compare", ".", "--json"});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  const auto json = nlohmann::json::parse(ran.out);
  ASSERT_EQ(json["kinds"].size(), 1U);
  EXPECT_EQ(json["kinds"][0]["records"], kRecords);
  EXPECT_TRUE(json["kinds"][0]["worth_a_look"].empty());
  ASSERT_EQ(json["kinds"][0]["usual"].size(), 1U);
  EXPECT_EQ(json["kinds"][0]["usual"][0],
            "Here this is usual and names no record by itself: a shock that was not given, in 20 "
            "of 20 records.");
}

TEST(Compare, TheSameBytesAreOneRecordAndBrokenFilesAreNamed) {
  const Folder folder;
  folder.write("a.resuslog", rescue(1));
  folder.write("b.resuslog", rescue(1));
  folder.write("c.resuslog", "nothing of the kind\n");
  const Ran ran = folder.cli({"compare", "a.resuslog", "b.resuslog", "c.resuslog", "--json"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_TRUE(has(ran.err, "b.resuslog: the same bytes as another file; counted once.")) << ran.err;
  EXPECT_TRUE(has(ran.err, "c.resuslog: ")) << ran.err;
  const auto json = nlohmann::json::parse(ran.out);
  EXPECT_EQ(json["records"].size(), 1U);
  EXPECT_EQ(json["not_read"], 1);
}

TEST(Compare, FromAnArchiveAsFromFiles) {
  const Folder folder;
  writeSeason(folder);
  ASSERT_EQ(folder.cli({"take-in", ".", "--archive", "all.archive"}).exit, 0);
  const Ran ran = folder.cli({"compare", "--archive", "all.archive", "--json"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(nlohmann::json::parse(ran.out),
            nlohmann::json::parse(folder.cli({"compare", ".", "--json"}).out));
  // An archive made with other settings does not pass for these.
  const Ran other =
      folder.cli({"compare", "--archive", "all.archive", "--pause-threshold", "2", "--json"});
  EXPECT_EQ(other.exit, 3);
  const std::string advice = "afterbeat-cli take-in --archive all.archive --profile european-2021 "
                             "--pause-threshold 2\n";
  EXPECT_TRUE(has(other.err, "The archive holds no figures with these settings. Compute them "
                             "first: " +
                                 advice))
      << other.err;
  EXPECT_EQ(other.out, "");
  // What it says to do is enough.
  ASSERT_EQ(folder
                .cli({"take-in", "--archive", "all.archive", "--profile", "european-2021",
                      "--pause-threshold", "2"})
                .exit,
            0);
  EXPECT_EQ(folder.cli({"compare", "--archive", "all.archive", "--pause-threshold", "2"}).exit, 0);
  EXPECT_EQ(folder.cli({"compare", "--archive", "none.archive"}).exit, 3);
  EXPECT_EQ(folder.cli({"compare"}).exit, 2);
  EXPECT_EQ(folder.cli({"compare", ".", "--archive", "a.archive"}).exit, 2);
}

/// The secret lies in the archive: every run, and everybody who shares it, gets the same names.
TEST(Compare, AnArchiveKeepsItsPseudonyms) {
  const Folder folder;
  writeSeason(folder);
  ASSERT_EQ(folder.cli({"take-in", ".", "--archive", "a.archive"}).exit, 0);
  ASSERT_EQ(folder.cli({"take-in", ".", "--archive", "b.archive"}).exit, 0);
  const auto site = [&](const char* archive) {
    const Ran ran = folder.cli({"compare", "--archive", archive, "--without-identity", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    for (const std::string& identity : kIdentities) {
      EXPECT_FALSE(has(ran.out + ran.err, identity)) << identity;
    }
    return nlohmann::json::parse(ran.out)["records"][0]["site"].get<std::string>();
  };
  EXPECT_EQ(site("a.archive"), site("a.archive"));
  EXPECT_NE(site("a.archive"), site("b.archive"));
}

/// What the window keeps in the archive for all who use it; what the command says wins.
TEST(Compare, MarksOfAnArchiveAreInItsReport) {
  const Folder folder;
  writeSeason(folder);
  ASSERT_EQ(folder.cli({"take-in", ".", "--archive", "a.archive"}).exit, 0);
  ASSERT_EQ(runProgram({"python3", "-c",
                        "import sqlite3; a = sqlite3.connect('a.archive'); a.execute(\"INSERT INTO "
                        "note VALUES ('marked days', '2026-03-13 Lantern drill')\"); a.commit()"},
                       folder.path())
                .exit,
            0);
  const auto page = [&folder](const std::vector<std::string>& more) {
    std::vector<std::string> words{"compare", "--archive", "a.archive", "--page", "p.html"};
    words.insert(words.end(), more.begin(), more.end());
    EXPECT_EQ(folder.cli(words).exit, 0);
    return folder.read("p.html");
  };
  EXPECT_TRUE(has(page({}), "Lantern drill"));
  const std::string named = page({"--step", "2026-03-14=Other words"});
  EXPECT_TRUE(has(named, "Other words"));
  EXPECT_FALSE(has(named, "Lantern drill"));
  EXPECT_FALSE(has(page({"--without-identity"}), "Lantern drill"));
}

/// What was new from a day on: in text and JSON as in the report.
TEST(Compare, AStepSplitsWhatIsOverTime) {
  const Folder folder;
  for (int i = 0; i < 12; ++i) {
    folder.write(fmt::format("{}.resuslog", i), rescue(i));
  }
  const std::vector<std::string> marked{"--step", "2026-03-16=Lantern drill", "--step",
                                        "2026-03-21="};
  const auto ran = [&](std::vector<std::string> more) {
    more.insert(more.begin(), {"compare", "."});
    more.insert(more.end(), marked.begin(), marked.end());
    const Ran one = folder.cli(more);
    EXPECT_EQ(one.exit, 0) << one.err;
    return one.out;
  };
  const std::string text = ran({});
  EXPECT_TRUE(has(text, "Marked days\n  2026-03-16  Lantern drill\n  2026-03-21\n")) << text;
  const std::string sentence = "From 2026-03-16 (Lantern drill): 10.0 s, before 10.0 s. Chance "
                               "alone could explain that.";
  EXPECT_TRUE(has(text, "Over time: Longest pause\n")) << text;
  EXPECT_TRUE(has(text, "  " + sentence + "\n")) << text;
  const auto json = nlohmann::json::parse(ran({"--json"}));
  ASSERT_EQ(json["steps"].size(), 2U);
  EXPECT_EQ(json["steps"][0], (nlohmann::json{{"day", "2026-03-16"}, {"words", "Lantern drill"}}));
  EXPECT_TRUE(json["steps"][1]["words"].is_null());
  const auto& charts = json["kinds"][0]["over_time"];
  const auto chartOf = [&charts](const char* figure, const char* chart) -> nlohmann::json {
    for (const auto& one : charts) {
      if (one["figure"] == figure && one["chart"] == chart) {
        return one;
      }
    }
    return nullptr;
  };
  const auto over = chartOf("longest_pause", "run");
  EXPECT_EQ(over["points"].size(), 12U);
  EXPECT_EQ(over["points"][0]["value"], 10);
  EXPECT_EQ(over["stretches"][1]["step"], 0);
  EXPECT_EQ(chartOf("longest_pause", "individuals")["stretches"][0]["centre"], 10);
  EXPECT_EQ(chartOf("pauses_over_limit", "counts")["for_every"]["figure"], "arrest_time");
  EXPECT_EQ(chartOf("records_with_a_shock", "shares")["points"].size(), 3U)
      << "a month each, cut at the marked days";
  ASSERT_EQ(over["changes"].size(), 2U);
  // Six records before, five from it on, one from the second on: too few to compare.
  EXPECT_EQ(over["changes"][0], (nlohmann::json{{"step", 0},
                                                {"compared", true},
                                                {"before", 10},
                                                {"after", 10},
                                                {"chance", 1},
                                                {"clear", false}}));
  EXPECT_EQ(over["changes"][1]["compared"], false);
  EXPECT_TRUE(over["changes"][1]["before"].is_null());
  EXPECT_NE(std::find(over["words"].begin(), over["words"].end(), sentence), over["words"].end());
  // The report says the same sentence, with the day as its language has it.
  ASSERT_EQ(folder.cli({"compare", ".", "--page", "p.html", marked[0], marked[1]}).exit, 0);
  EXPECT_TRUE(has(folder.read("p.html"), "From 16 Mar 2026 (Lantern drill): 10.0 s, before 10.0 s. "
                                         "Chance alone could explain that."));
}

TEST(Compare, AnEmptyChoiceIsSaid) {
  const Folder folder;
  writeSeason(folder);
  const Ran none = folder.cli({"compare", ".", "--only", "nosuchword"});
  EXPECT_EQ(none.exit, 0);
  EXPECT_TRUE(has(none.err, "None of 8 records holds all the words of --only")) << none.err;
  std::filesystem::create_directory(folder.path() / "bare");
  const Ran bare = folder.cli({"compare", "bare"});
  EXPECT_TRUE(has(bare.err, "No recording that can be read was found")) << bare.err;
  EXPECT_TRUE(has(bare.out, "There is no record to compare.")) << bare.out;
}

/// The words of --only are those of the records, not of their pseudonyms.
TEST(Compare, RecordsAreChosenBeforeTheirIdentityIsTakenAway) {
  const Folder folder;
  writeSeason(folder);
  folder.write("other.resuslog", rescue(9, "rescue", "Bathing jetty"));
  const Ran ran = folder.cli({"compare", ".", "--without-identity", "--only", "jetty", "--csv"});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(linesOf(ran.out).size(), 2U) << ran.out;
}

TEST(Compare, WrongWordsAreRefused) {
  const Folder folder;
  folder.write("a.resuslog", rescue(1));
  for (const std::vector<std::string>& more :
       std::vector<std::vector<std::string>>{{"--step", "yesterday"},
                                             {"--step", "2026-02-30=x"},
                                             {"--csv", "--json"},
                                             {"--paper", "A5"},
                                             {"--report", "a.resuslog"},
                                             {"--secret", "a.resuslog", "--without-identity"}}) {
    std::vector<std::string> words{"compare", "a.resuslog"};
    words.insert(words.end(), more.begin(), more.end());
    EXPECT_EQ(folder.cli(words).exit, 2) << more.front();
  }
  folder.write("short", "0123456789");
  const Ran ran = folder.cli({"compare", "a.resuslog", "--without-identity", "--secret", "short"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_TRUE(has(ran.err, "fewer than 16 bytes")) << ran.err;
  EXPECT_EQ(ran.out, "");
}

TEST(Compare, ReportHasAPageForEverySite) {
  const Folder folder;
  writeSeason(folder);
  const Ran ran = folder.cli({"compare", ".", "--report", "r.pdf"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  const std::string text = runProgram({"pdftotext", "-layout", "r.pdf", "-"}, folder.path()).out;
  for (const char* part :
       {"Season at a glance: rescues", "Season at a glance: drills", "Lakeshore hut: rescues",
        "Lakeshore hut: drills", "DRILL", "SYNTHETIC", "terminal-case-7.resuslog"}) {
    EXPECT_TRUE(has(text, part)) << part << "\n" << text;
  }
  // No page with a drill on it lacks the word.
  std::size_t drills = 0, at = 0;
  for (std::size_t end = 0; (end = text.find('\f', at)) != std::string::npos; at = end + 1) {
    const std::string page = text.substr(at, end - at);
    if (has(page, "drills\n") || has(page, "terminal-case-7")) {
      ++drills;
      EXPECT_TRUE(has(page, "DRILL")) << page;
    }
  }
  EXPECT_GE(drills, 2U);
}

/// Everything that `compare` can write, as one text.
std::string everyOutput(const Folder& folder, const std::vector<std::string>& more) {
  std::string all;
  for (const char* form : {"", "--csv", "--json"}) {
    std::vector<std::string> words{"compare", ".", "--without-identity"};
    words.insert(words.end(), more.begin(), more.end());
    if (*form != '\0') {
      words.emplace_back(form);
    }
    const Ran ran = folder.cli(words);
    EXPECT_EQ(ran.exit, 3) << form; // a broken file lies there
    all += ran.out + ran.err;
  }
  std::vector<std::string> words{"compare",
                                 ".",
                                 "--without-identity",
                                 "--report",
                                 "r.pdf",
                                 "--page",
                                 "p.html",
                                 "--pictures",
                                 "pictures",
                                 "--step",
                                 "2026-03-12=Mole nine is trained"};
  words.insert(words.end(), more.begin(), more.end());
  const Ran ran = folder.cli(words);
  EXPECT_EQ(ran.exit, 3);
  all += ran.err + folder.read("p.html");
  all += runProgram({"pdftotext", "-layout", "r.pdf", "-"}, folder.path()).out;
  all += runProgram({"pdfinfo", "r.pdf"}, folder.path()).out;
  for (const auto& file : std::filesystem::directory_iterator(folder.path() / "pictures")) {
    const std::string name = file.path().filename().string();
    all += name + "\n";
    if (file.path().extension() == ".svg") {
      all += folder.read("pictures/" + name);
    }
  }
  return all;
}

TEST(Compare, WithoutIdentityNothingIsNamed) {
  const Folder folder;
  writeSeason(folder);
  folder.write("Mole nine.resuslog", "broken\n");
  const Ran profile = runProgram(
      {"sed", "s/european-2021/mole-nine/; s/European guidelines 2021/Mole nine guidelines/",
       AFTERBEAT_SOURCE_DIR "/resources/guidelines/european-2021.json"},
      folder.path());
  folder.write("own.json", profile.out);
  ASSERT_TRUE(has(folder.read("own.json"), "Mole nine guidelines"));
  // With identities they are all there: the search below can find them.
  const std::string named = folder.cli({"compare", ".", "--csv"}).out;
  for (const char* identity :
       {"Lakeshore hut", "Night watch", "K-99-SECRET", "6f0a52f4", "terminal-case", "2026-03-1"}) {
    EXPECT_TRUE(has(named, identity)) << identity;
  }
  const std::string all = everyOutput(folder, {"--secret", "secret", "--profile", "own.json"});
  for (const std::string& identity : kIdentities) {
    const auto at = all.find(identity);
    EXPECT_EQ(at, std::string::npos) << identity << ": …" << all.substr(at > 80 ? at - 80 : 0, 200);
  }
  EXPECT_TRUE(has(all, "Site "));
  EXPECT_TRUE(has(all, "Record "));
  // A month never looks like a day.
  EXPECT_TRUE(has(all, ",2026-03,")) << "in the CSV";
  EXPECT_TRUE(has(all, "\"day\":\"2026-03\"")) << "in the JSON";
  EXPECT_TRUE(has(all, "\n2026-03     Record ")) << "in the text";
  EXPECT_TRUE(has(all, "Mar 2026 to Mar 2026")) << "in the report";
  EXPECT_FALSE(has(all, "2026-03-01"));
  EXPECT_TRUE(has(all, "Without identity: sites, teams and records have pseudonyms; days are cut "
                       "to their month."));
  std::size_t pictures = 0;
  for (const auto& file : std::filesystem::directory_iterator(folder.path() / "pictures")) {
    pictures += file.file_size() > 0 ? 1U : 0U;
  }
  EXPECT_GT(pictures, 20U) << "a file that cannot be read stops no picture";
}

TEST(Compare, NothingThatIsReadIsOverwritten) {
  const Folder folder;
  writeSeason(folder);
  ASSERT_EQ(folder.cli({"take-in", ".", "--archive", "a.db"}).exit, 0);
  std::filesystem::create_symlink("a.db", folder.path() / "link");
  folder.write("key", std::string(40, 'k'));
  const std::string log = folder.read("terminal-case-0.resuslog"), archive = folder.read("a.db");
  for (const std::vector<std::string>& words :
       {std::vector<std::string>{".", "--report", "terminal-case-0.resuslog"},
        {".", "--page", "./terminal-case-0.resuslog", "--csv"},
        {"terminal-case-0.resuslog", "--page", "terminal-case-0.resuslog"},
        {"--archive", "a.db", "--report", "link"},
        {"--archive", "link", "--page", "./a.db"},
        {".", "--without-identity", "--secret", "key", "--report", "key"},
        {".", "--report", "new", "--page", "./new"}}) {
    std::vector<std::string> all{"compare"};
    all.insert(all.end(), words.begin(), words.end());
    const Ran ran = folder.cli(all);
    EXPECT_EQ(ran.exit, 2) << ran.err;
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.err, "");
  }
  EXPECT_EQ(folder.read("terminal-case-0.resuslog"), log);
  EXPECT_EQ(folder.read("a.db"), archive);
  EXPECT_EQ(folder.read("key"), std::string(40, 'k'));
  EXPECT_FALSE(std::filesystem::exists(folder.path() / "new"));
}

TEST(Compare, FilesAndArchiveStandInOneOrder) {
  const Folder folder;
  writeSeason(folder);
  std::string undated = rescue(9);
  const auto at = undated.find(R"("recorded":)");
  ASSERT_NE(at, std::string::npos);
  undated.erase(at, undated.find(',', at) + 1 - at);
  folder.write("a-first-by-name.resuslog", undated);
  ASSERT_LT(folder.cli({"take-in", ".", "--archive", "a.db"}).exit, 2);
  const std::string files = folder.cli({"compare", ".", "--csv"}).out;
  EXPECT_EQ(files, folder.cli({"compare", "--archive", "a.db", "--csv"}).out);
  EXPECT_GT(files.find("a-first-by-name"), files.find("terminal-case-7"));
}

std::string siteIn(const Folder& folder, const std::vector<std::string>& more) {
  std::vector<std::string> words{"compare", ".", "--without-identity", "--json"};
  words.insert(words.end(), more.begin(), more.end());
  const Ran ran = folder.cli(words);
  EXPECT_EQ(ran.exit, 0) << ran.err;
  return nlohmann::json::parse(ran.out)["records"][0]["site"];
}

TEST(Compare, PseudonymsStayWithTheSecretAndOnlyWithIt) {
  const Folder folder;
  writeSeason(folder);
  const std::string first = siteIn(folder, {"--secret", "one"});
  EXPECT_EQ(first, siteIn(folder, {"--secret", "one"}));
  EXPECT_EQ(first.size(), std::string("Site 7K3Q-X2PM").size());
  EXPECT_NE(first, siteIn(folder, {"--secret", "two"}));
  EXPECT_NE(siteIn(folder, {}), siteIn(folder, {}));
  // The pseudonym itself does not change with the language.
  const std::string german = siteIn(folder, {"--secret", "one", "--language", "de"});
  EXPECT_EQ(german.substr(german.find(' ')), first.substr(first.find(' ')));
  using std::filesystem::perms;
  EXPECT_EQ(std::filesystem::status(folder.path() / "one").permissions() & perms::all,
            perms::owner_read | perms::owner_write);
}

} // namespace
} // namespace afterbeat::test
