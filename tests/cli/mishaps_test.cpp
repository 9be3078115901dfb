/// What once went wrong, silently or with a crash.
#include "tests/cli/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat::test {
namespace {

nlohmann::json figuresOf(const Folder& folder, std::vector<std::string> words) {
  words.insert(words.begin(), {"measure", "--json"});
  return nlohmann::json::parse(folder.cli(words).out);
}

nlohmann::json valueOf(const nlohmann::json& figures, const std::string& id) {
  for (const auto& measure : figures.at("measures")) {
    if (measure.at("id") == id) {
      return measure.at("value");
    }
  }
  return "no such measure";
}

std::string sheetOf(const Folder& folder, const std::string& file) {
  EXPECT_NE(folder.cli({"sheet", file, "-o", "s.pdf"}).exit, 3);
  return runProgram({"pdftotext", "-layout", "s.pdf", "-"}, folder.path()).out;
}

/// Whether the sheet says of something that there was none; "Corrections: none" is no such thing.
bool saysNone(std::string sheet) {
  const std::string corrections = "Corrections: none";
  if (const auto at = sheet.find(corrections); at != std::string::npos) {
    sheet.erase(at, corrections.size());
  }
  return sheet.find("none") != std::string::npos;
}

std::vector<std::string> withoutShock() {
  auto lines = smallRescue();
  std::erase_if(lines,
                [](const std::string& l) { return l.find("\"shock\",") != std::string::npos; });
  return lines;
}

TEST(Mishaps, AShockBehindTheSealIsNotHiddenByAZero) {
  const Folder folder;
  const std::string closed = sealed(withoutShock());
  folder.write("closed.resuslog", closed);
  EXPECT_TRUE(saysNone(sheetOf(folder, "closed.resuslog")));
  folder.write("more.resuslog", closed + R"({"t":130,"type":"shock","delivered":true})" + "\n");
  const std::string sheet = sheetOf(folder, "more.resuslog");
  EXPECT_NE(sheet.find("other recordings"), std::string::npos) << sheet;
  EXPECT_FALSE(saysNone(sheet)) << sheet;
  EXPECT_NE(folder.cli({"measure", "more.resuslog"}).out.find("Other records in the file: 1"),
            std::string::npos);
}

TEST(Mishaps, LostLinesAreSaidBesideTheShocks) {
  const Folder folder;
  auto lines = smallRescue();
  lines[20] = "garbage";
  folder.write("r.resuslog", sealed(lines));
  const std::string sheet = sheetOf(folder, "r.resuslog");
  EXPECT_NE(sheet.find("at least"), std::string::npos) << sheet;
  EXPECT_NE(sheet.find("could not be read: 1"), std::string::npos) << sheet;
  (void)folder.cli({"rewrite", "r.resuslog", "-o", "again.resuslog"});
  EXPECT_NE(sheetOf(folder, "again.resuslog").find("could not be read: 1"), std::string::npos);
}

TEST(Mishaps, AShockOfUnknownDeliveryIsNoNone) {
  const Folder folder;
  auto lines = withoutShock();
  lines.insert(lines.end() - 1, R"({"t":50,"type":"shock","energy_j":200})");
  folder.write("r.resuslog", sealed(lines));
  const std::string sheet = sheetOf(folder, "r.resuslog");
  EXPECT_NE(sheet.find("delivery not recorded"), std::string::npos) << sheet;
  EXPECT_FALSE(saysNone(sheet)) << sheet;
}

TEST(Mishaps, NotesThatSayTheSameTwiceAreBothKept) {
  const Folder folder;
  folder.write("n.csv", "time,what,value\n300,shock,150\n300,shock,150\n300,shock,150\n");
  ASSERT_EQ(folder.cli({"gather", "n.csv", "--kind", "rescue", "-o", "n.resuslog"}).exit, 0);
  EXPECT_EQ(folder.cli({"check", "n.resuslog"}).out, "");
  EXPECT_EQ(valueOf(figuresOf(folder, {"n.resuslog"}), "shocks_delivered"), 3);
}

TEST(Mishaps, TheSameFileGatheredTwiceCountsOnce) {
  const Folder folder;
  folder.write("a.resuslog", sealed(smallRescue()));
  folder.write("copy.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"gather", "a.resuslog", "copy.resuslog@3", "-o", "g.resuslog"});
  EXPECT_EQ(ran.exit, 0);
  EXPECT_NE(ran.err.find("left out"), std::string::npos) << ran.err;
  EXPECT_EQ(valueOf(figuresOf(folder, {"g.resuslog"}), "shocks_delivered"), 1);
}

TEST(Mishaps, SalvagingChangesNoFigure) {
  const Folder folder;
  auto lines = smallRescue();
  lines.pop_back();
  lines.push_back(R"({"t":600,"type":"milestone","what":"handover"})");
  lines.push_back("power loss");
  std::string text;
  for (const auto& line : lines) {
    text += line + "\n";
  }
  folder.write("a.resuslog", text);
  (void)folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog"});
  const auto a = figuresOf(folder, {"a.resuslog", "--window-end", "record_end"});
  const auto b = figuresOf(folder, {"b.resuslog", "--window-end", "record_end"});
  EXPECT_EQ(a.at("measures"), b.at("measures"));
  EXPECT_EQ(a.at("window"), b.at("window"));
}

TEST(Mishaps, AbsurdAmountsAndRatesAreNotUsed) {
  const Folder folder;
  auto lines = smallRescue();
  lines[0].insert(lines[0].size() - 1,
                  R"(,"channels":[{"id":"e","quantity":"ecg","unit":"mV","rate_hz":1e20}])");
  lines.insert(lines.end() - 1, R"({"t":50,"type":"shock","delivered":true,"energy_j":1e308})");
  lines.insert(lines.end() - 1,
               R"({"t":51,"type":"samples","channel":"e","count":2,"data":"AQACAA=="})");
  folder.write("r.resuslog", sealed(lines));
  EXPECT_EQ(folder.cli({"gather", "r.resuslog", "-o", "g.resuslog"}).exit, 1);
  const auto figures = figuresOf(folder, {"r.resuslog"});
  EXPECT_EQ(valueOf(figures, "shocks_delivered"), 2);
  EXPECT_TRUE(valueOf(figures, "energy_total").is_null());
}

TEST(Mishaps, OutputThatCannotBeWrittenIsThree) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const std::string cli = AFTERBEAT_BINARY_DIR "/bin/afterbeat-cli";
  for (const std::string options : {"measure --json", "measure", "check"}) {
    const std::string command = cli + " " + options + " r.resuslog >/dev/full";
    const Ran ran = runProgram({"sh", "-c", command}, folder.path());
    EXPECT_EQ(ran.exit, options == "check" ? 0 : 3)
        << options << ran.err; // check has nothing to say
  }
}

TEST(Mishaps, ControlCharactersDoNotReachTheTerminal) {
  const Folder folder;
  auto lines = smallRescue();
  lines[0].replace(lines[0].find("Ferry terminal"), 14, R"(Pier\nShocks given 99\u001b[31m)");
  folder.write("r.resuslog", sealed(lines));
  const Ran ran = folder.cli({"measure", "r.resuslog"});
  EXPECT_EQ(ran.out.find('\x1b'), std::string::npos);
  EXPECT_EQ(ran.out.find("\nShocks given 99"), std::string::npos);
}

TEST(Mishaps, AProfileCannotPassForABuiltInOne) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  folder.write("p.json", R"({"id":"european-2021","name":"Ours"})");
  EXPECT_EQ(folder.cli({"measure", "r.resuslog", "--profile", "p.json"}).exit, 3);
}

TEST(Mishaps, ASecondOutputNeverOverwritesAFileNobodyNamed) {
  const Folder folder;
  folder.write("two.resuslog", sealed(smallRescue()) + sealed(smallRescue()));
  folder.write("o-2.resuslog", "mine");
  EXPECT_EQ(folder.cli({"rewrite", "two.resuslog", "-o", "o.resuslog"}).exit, 2);
  EXPECT_EQ(folder.read("o-2.resuslog"), "mine");
  EXPECT_FALSE(folder.has("o.resuslog"));
}

} // namespace
} // namespace afterbeat::test
