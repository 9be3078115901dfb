#include "tests/cli/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat::test {
namespace {

using Json = nlohmann::json;

Json find(const Json& figures, const std::string& id) {
  for (const Json& measure : figures.at("measures")) {
    if (measure.at("id") == id) {
      return measure;
    }
  }
  return {};
}

TEST(Measure, JsonHoldsTheFigures) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"measure", "r.resuslog", "--json"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.err, "");
  const Json figures = Json::parse(ran.out);
  EXPECT_EQ(figures.at("record").at("kind"), "rescue");
  EXPECT_EQ(figures.at("record").at("synthetic"), true);
  EXPECT_EQ(figures.at("evidence"), "compressions");
  // Window from electrodes (5 s) to the last compression (34.5 + 29 x 0.5 = 49 s).
  EXPECT_EQ(figures.at("window").at("begin_s"), 5);
  EXPECT_EQ(figures.at("window").at("end_s"), 49);
  EXPECT_EQ(find(figures, "arrest_time").at("value"), 44);
  // 5 s before the first compression, 10 s from 24.5 to 34.5 s.
  EXPECT_EQ(find(figures, "hands_off_time").at("value"), 15);
  EXPECT_EQ(find(figures, "hands_off_fraction").at("denominator"), 44);
  EXPECT_EQ(find(figures, "compression_rate").at("value"), 120);
  EXPECT_EQ(find(figures, "shocks_delivered").at("value"), 1);
  EXPECT_EQ(find(figures, "energy_total").at("value"), 150);
  EXPECT_EQ(find(figures, "time_on").at("value"), 60);
  EXPECT_EQ(find(figures, "collapse_to_first_shock").at("status"), "not_recorded");
  EXPECT_TRUE(find(figures, "collapse_to_first_shock").at("value").is_null());
  EXPECT_EQ(figures.at("shocks").at(0).at("pre_s"), 8);
  EXPECT_EQ(figures.at("shocks").at(0).at("post_s"), 2);
  EXPECT_EQ(figures.at("shocks").at(0).at("advice_to_shock_s"), 2.5);
  EXPECT_EQ(figures.at("pauses").at(1).at("cause"), "shock");
  EXPECT_EQ(figures.at("settings").at("pause_threshold_s"), 1.5);
}

TEST(Measure, SettingsAreHonoured) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"measure", "r.resuslog", "--json", "--pause-threshold", "5",
                              "--window-end", "record_end", "--profile", "american-2020"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  const Json figures = Json::parse(ran.out);
  EXPECT_EQ(figures.at("settings").at("profile"), "american-2020");
  EXPECT_EQ(figures.at("settings").at("window_end"), "record_end");
  EXPECT_EQ(figures.at("window").at("end_s"), 60);
  // 5 s is not longer than 5 s; 10 s and the 11 s after the last compression are.
  EXPECT_EQ(find(figures, "hands_off_time").at("value"), 21);
}

TEST(Measure, SeveralFilesGiveAnArray) {
  const Folder folder;
  folder.write("a.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"measure", "a.resuslog", "a.resuslog", "--json"});
  ASSERT_EQ(ran.exit, 0);
  EXPECT_EQ(Json::parse(ran.out).size(), 2U);
}

TEST(Measure, TextSaysNotRecordedInWords) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"measure", "r.resuslog"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_NE(ran.out.find("Collapse to first shock               not recorded"), std::string::npos)
      << ran.out;
  EXPECT_NE(ran.out.find("Hands-off time                        15.0 s"), std::string::npos)
      << ran.out;
  EXPECT_NE(ran.out.find("SYNTHETIC"), std::string::npos);
  EXPECT_NE(ran.out.find("2026-03-14 09:12:30"), std::string::npos) << "the record's own zone";
}

TEST(Measure, AShockThatOnlyAPersonNotedMakesNoZeros) {
  const Folder folder;
  folder.write("r.resuslog",
               sealed({R"({"resuslog":"1.0","kind":"rescue","synthetic":true})",
                       R"({"t":0,"type":"cpr","end":30,"source":"observer"})",
                       R"({"t":32,"type":"shock","delivered":true,"source":"observer"})"}));
  const Ran text = folder.cli({"measure", "r.resuslog"});
  EXPECT_NE(text.out.find("Shocks given                          1"), std::string::npos)
      << text.out;
  for (const char* title :
       {"Shocks not given", "Rhythm analyses", "Analyses that advised a shock"}) {
    const auto found = text.out.find(title);
    ASSERT_NE(found, std::string::npos) << title << text.out;
    const std::string line = text.out.substr(found, text.out.find('\n', found) - found);
    EXPECT_NE(line.find("not recorded"), std::string::npos) << line;
  }
  const Json figures = Json::parse(folder.cli({"measure", "r.resuslog", "--json"}).out);
  EXPECT_EQ(find(figures, "shocks_delivered").at("value"), 1);
  EXPECT_EQ(find(figures, "shocks_withheld").at("status"), "not_recorded");
  EXPECT_EQ(find(figures, "analyses").at("status"), "not_recorded");
}

TEST(Measure, AnErrorInTheDataIsTheExitAndFiguresStillCome) {
  const Folder folder;
  auto lines = smallRescue();
  lines.insert(lines.begin() + 5, "{\"t\":11.2,");
  folder.write("r.resuslog", sealed(lines));
  const Ran ran = folder.cli({"measure", "r.resuslog", "--json"});
  EXPECT_EQ(ran.exit, 1);
  EXPECT_NE(ran.err.find("r.resuslog:6: error: "), std::string::npos) << ran.err;
  EXPECT_EQ(find(Json::parse(ran.out), "shocks_delivered").at("value"), 1);
}

TEST(Measure, WhatCannotBeReadIsSaid) {
  const Folder folder;
  folder.write("note.resuslog", "not a log\n");
  const Ran ran = folder.cli({"measure", "note.resuslog"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err.rfind("afterbeat-cli: note.resuslog: ", 0), 0U) << ran.err;
  EXPECT_EQ(folder.cli({"measure", "nowhere.resuslog"}).exit, 3);
  EXPECT_EQ(folder.cli({"measure", "."}).exit, 3);
}

TEST(Measure, AUsersOwnProfile) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  folder.write("broken.json", "{");
  EXPECT_EQ(folder.cli({"measure", "r.resuslog", "--profile", "broken.json"}).exit, 3);
  EXPECT_EQ(folder.cli({"measure", "r.resuslog", "--profile", "no-such-profile"}).exit, 2);
}

} // namespace
} // namespace afterbeat::test
