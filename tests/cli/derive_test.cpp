#include "tests/cli/process.h"

#include <algorithm>
#include <fstream>
#include <sstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat::test {
namespace {

using Json = nlohmann::json;

/// The sample rescue as a device would have left it that records waveforms, and neither
/// compressions nor breaths.
std::string wavesOnly() {
  std::ifstream file(std::string(AFTERBEAT_SOURCE_DIR) + "/samples/ferry-terminal.resuslog");
  std::string text, line;
  while (std::getline(file, line)) {
    const auto is = [&line](const char* type) {
      return line.find("\"type\":\"" + std::string(type) + "\"") != std::string::npos;
    };
    if (!is("compression") && !is("ventilation") && !is("end")) {
      text += line + "\n";
    }
  }
  return text;
}

Json measureOf(const Json& figures, const std::string& id) {
  for (const Json& measure : figures.at("measures")) {
    if (measure.at("id") == id) {
      return measure;
    }
  }
  return {};
}

long linesWith(const std::string& text, const std::string& part) {
  std::istringstream lines(text);
  long count = 0;
  for (std::string line; std::getline(lines, line);) {
    count += line.find(part) != std::string::npos ? 1 : 0;
  }
  return count;
}

class DeriveCli : public testing::Test {
protected:
  void SetUp() override { folder_.write("a.resuslog", wavesOnly()); }
  Json figures(const std::vector<std::string>& more) {
    std::vector<std::string> words{"measure", "a.resuslog", "--json"};
    words.insert(words.end(), more.begin(), more.end());
    const Ran ran = folder_.cli(words);
    EXPECT_EQ(ran.exit, 0) << ran.err;
    return Json::parse(ran.out);
  }
  const Folder folder_;
};

TEST_F(DeriveCli, WritesADerivedLogAndLeavesTheOriginal) {
  const Ran ran = folder_.cli({"derive", "a.resuslog", "-o", "b.resuslog"});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("not a diagnosis"), std::string::npos) << ran.err;
  EXPECT_EQ(folder_.read("a.resuslog"), wavesOnly());
  const std::string derived = folder_.read("b.resuslog");
  EXPECT_NE(derived.find("\"derived_from\""), std::string::npos);
  EXPECT_GT(linesWith(derived, "\"type\":\"compression\""), 1500);
  EXPECT_GT(linesWith(derived, "\"type\":\"ventilation\""), 100);
  const long hints = linesWith(derived, "\"type\":\"rhythm\"");
  EXPECT_GT(hints, 5);
  EXPECT_EQ(linesWith(derived, "\"source\":\"derived\""), linesWith(derived, "\"quality\":"));
  EXPECT_EQ(folder_.cli({"check", "b.resuslog"}).exit, 0);
  // Deriving from the result changes nothing more but its id and origin.
  EXPECT_EQ(folder_.cli({"derive", "b.resuslog", "-o", "c.resuslog"}).exit, 0);
  const auto body = [](const std::string& text) {
    return text.substr(text.find('\n'), text.rfind("{\"t\"") - text.find('\n'));
  };
  EXPECT_EQ(body(folder_.read("c.resuslog")), body(derived));
}

TEST_F(DeriveCli, DerivesOnlyWhatIsAskedFor) {
  ASSERT_EQ(
      folder_.cli({"derive", "a.resuslog", "-o", "b.resuslog", "--what", "compressions"}).exit, 0);
  const std::string some = folder_.read("b.resuslog");
  EXPECT_GT(linesWith(some, "\"type\":\"compression\""), 1500);
  EXPECT_EQ(linesWith(some, "\"type\":\"ventilation\""), 0);
  ASSERT_EQ(
      folder_.cli({"derive", "a.resuslog", "-o", "c.resuslog", "--what", "ventilations,rhythm"})
          .exit,
      0);
  const std::string others = folder_.read("c.resuslog");
  EXPECT_EQ(linesWith(others, "\"type\":\"compression\""), 0);
  EXPECT_GT(linesWith(others, "\"type\":\"ventilation\""), 100);
}

TEST_F(DeriveCli, RefusesTheOriginalAsOutputAndUnknownKinds) {
  EXPECT_EQ(folder_.cli({"derive", "a.resuslog", "-o", "a.resuslog"}).exit, 2);
  EXPECT_EQ(folder_.cli({"derive", "a.resuslog", "-o", "b.resuslog", "--what", "pulse"}).exit, 2);
  EXPECT_EQ(folder_.cli({"derive", "no.resuslog", "-o", "b.resuslog"}).exit, 3);
  EXPECT_EQ(folder_.cli({"measure", "a.resuslog", "--derive", "maybe"}).exit, 2);
}

TEST_F(DeriveCli, FiguresTakeWhatTheSignalsSayUnlessTheyMayNot) {
  const Json never = figures({"--derive", "never"});
  EXPECT_EQ(measureOf(never, "hands_off_fraction").at("status"), "not_recorded");
  EXPECT_FALSE(never.contains("derived"));
  const Json automatic = figures({});
  const Json share = measureOf(automatic, "hands_off_fraction");
  EXPECT_EQ(share.at("status"), "ok");
  EXPECT_EQ(share.at("derived"), true);
  EXPECT_FALSE(measureOf(automatic, "shocks_delivered").contains("derived"));
  EXPECT_GT(automatic.at("derived").at("compressions").at("quality"), 0.5);
  EXPECT_GT(automatic.at("derived").at("compressions").at("coverage"), 0.9);
  EXPECT_FALSE(automatic.at("derived").contains("hints"));
  const Json always = figures({"--derive", "always"});
  EXPECT_GT(always.at("derived").at("hints").size(), 5U);
  EXPECT_EQ(always.at("derived").at("around_shocks").size(), 4U);
  for (const Json& one : {automatic, always}) {
    EXPECT_EQ(one.at("derived").at("caution"), "A reviewer's aid, not a diagnosis");
  }
}

TEST_F(DeriveCli, TextSaysWhatComesFromTheSignalsAndCautions) {
  const Ran ran = folder_.cli({"measure", "a.resuslog", "--derive", "always"});
  EXPECT_EQ(ran.exit, 0);
  EXPECT_NE(ran.out.find("From the signals (A reviewer's aid, not a diagnosis)"),
            std::string::npos);
  EXPECT_GT(linesWith(ran.out, "(from the signals)"), 10);
  const Ran plain = folder_.cli({"measure", "a.resuslog", "--derive", "never"});
  EXPECT_EQ(plain.out.find("the signals"), std::string::npos);
}

} // namespace
} // namespace afterbeat::test
