#include "tests/cli/process.h"

#include <fstream>
#include <sstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat::test {
namespace {

std::string sample(const std::string& name) {
  std::ifstream file(std::string(AFTERBEAT_SOURCE_DIR) + "/samples/" + name);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

class TakeInCli : public testing::Test {
protected:
  Ran takeIn(const std::vector<std::string>& more) {
    std::vector<std::string> words{"take-in", "--archive", "season"};
    words.insert(words.end(), more.begin(), more.end());
    return folder_.cli(words);
  }
  const Folder folder_;
};

TEST_F(TakeInCli, SaysWhatCameIn) {
  folder_.write("a.resuslog", sample("boathouse.resuslog"));
  folder_.write("b.resuslog", sample("drill-evening-1.resuslog"));
  const Ran first = takeIn({"a.resuslog", "b.resuslog"});
  EXPECT_EQ(first.err, "");
  EXPECT_EQ(first.out, "2 new records, 0 changed records, 0 already there.\n"
                       "The archive holds 2 records.\n");
  EXPECT_EQ(first.exit, 0);
  const Ran again = takeIn({"a.resuslog", "b.resuslog"});
  EXPECT_EQ(again.out, "0 new records, 0 changed records, 2 already there.\n"
                       "The archive holds 2 records.\n");
}

TEST_F(TakeInCli, NamesBrokenFilesAndGoesOn) {
  folder_.write("a.resuslog", sample("boathouse.resuslog"));
  folder_.write("b.resuslog", "");
  const Ran ran = takeIn({"a.resuslog", "b.resuslog"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_NE(ran.err.find("b.resuslog: "), std::string::npos) << ran.err;
  EXPECT_NE(ran.out.find("1 new record, 0 changed records, 0 already there.\n"
                         "Not taken in: 1 file, named above.\n"),
            std::string::npos)
      << ran.out;
}

TEST_F(TakeInCli, ListsWhatMovedUnderAnotherThreshold) {
  folder_.write("a.resuslog", sample("ferry-terminal.resuslog"));
  EXPECT_EQ(takeIn({"a.resuslog"}).exit, 0);
  const Ran ran = takeIn({"--pause-threshold", "5", "--moved"});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_NE(ran.out.find("Figures computed again: 1 file.\n"), std::string::npos) << ran.out;
  EXPECT_NE(ran.out.find("  a.resuslog  hands_off_fraction: 0.2321 -> "), std::string::npos)
      << ran.out;
  EXPECT_EQ(ran.out.find("collapse_to"), std::string::npos) << ran.out;
}

TEST_F(TakeInCli, WhatHasNoFiguresIsNamedAndInNothingElse) {
  folder_.write("a.resuslog", sample("boathouse.resuslog"));
  folder_.write("b.resuslog", sample("ferry-terminal.resuslog"));
  EXPECT_EQ(takeIn({"a.resuslog", "b.resuslog"}).exit, 0);
  std::filesystem::remove(folder_.path() / "b.resuslog");
  EXPECT_EQ(takeIn({"--pause-threshold", "5"}).exit, 1);
  const std::vector<std::string> asked{"compare", "--archive", "season", "--pause-threshold", "5"};
  const auto compare = [&](const std::vector<std::string>& more) {
    auto words = asked;
    words.insert(words.end(), more.begin(), more.end());
    return folder_.cli(words).out;
  };
  const std::string text = compare({});
  EXPECT_NE(text.find("\nNo figures under these settings: 1\n  b.resuslog\n"), std::string::npos)
      << text;
  EXPECT_NE(text.find("RESCUES: 1 "), std::string::npos) << text;
  EXPECT_EQ(text.find("Nothing in the record shows compressions"), std::string::npos) << text;
  EXPECT_EQ(text.find("b.resuslog"), text.rfind("b.resuslog")) << text;

  const auto json = nlohmann::json::parse(compare({"--json"}));
  EXPECT_EQ(json["without_figures"], 1);
  ASSERT_EQ(json["kinds"].size(), 1U);
  EXPECT_EQ(json["kinds"][0]["records"], 1);
  ASSERT_EQ(json["records"].size(), 2U);
  for (const auto& record : json["records"]) {
    const bool gone = record["file"] == "b.resuslog";
    EXPECT_EQ(record["figures"].is_null(), gone) << record;
    EXPECT_EQ(record["evidence"].is_null(), gone) << record;
  }
  for (const auto& figure : json["kinds"][0]["figures"]) {
    EXPECT_EQ(figure["records"].get<int>() + figure["not_recorded"].get<int>() +
                  figure["not_applicable"].get<int>(),
              1)
        << figure;
  }
  const std::string csv = compare({"--csv"});
  EXPECT_NE(csv.find(",no_figures,"), std::string::npos) << csv;
  EXPECT_EQ(compare({"--page", "page.html"}), "");
  EXPECT_NE(folder_.read("page.html").find("Records without figures under these settings"),
            std::string::npos);
}

TEST_F(TakeInCli, SaysWhyThereIsNoArchive) {
  folder_.write("text", std::string(5000, 'x'));
  const Ran text = folder_.cli({"take-in", "--archive", "text"});
  EXPECT_EQ(text.exit, 3);
  EXPECT_EQ(text.out, "");
  EXPECT_NE(text.err.find("The archive text could not be used"), std::string::npos) << text.err;
  EXPECT_EQ(folder_.cli({"take-in", "--archive", "service:a b"}).exit, 2);
}

} // namespace
} // namespace afterbeat::test
