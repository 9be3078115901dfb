#include "tests/cli/process.h"

#include <gtest/gtest.h>

namespace afterbeat::test {
namespace {

TEST(Check, SaysNothingOfAGoodFile) {
  const Folder folder;
  folder.write("good.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"check", "good.resuslog"});
  EXPECT_EQ(ran.exit, 0);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err, "");
}

TEST(Check, SaysWhereAndHowBad) {
  const Folder folder;
  auto lines = smallRescue();
  lines[2] = "garbage";
  std::string text;
  for (const auto& line : lines) {
    text += line + "\n";
  }
  folder.write("bad.resuslog", text);
  const Ran ran = folder.cli({"check", "bad.resuslog"});
  EXPECT_EQ(ran.exit, 1);
  EXPECT_EQ(ran.out.rfind("bad.resuslog:3: error: ", 0), 0U) << ran.out;
  EXPECT_NE(ran.out.find("bad.resuslog:66: warning: The recording stopped without being closed"),
            std::string::npos)
      << ran.out;
  EXPECT_EQ(ran.err, "");
}

TEST(Check, AnInfoAloneIsFine) {
  const Folder folder;
  auto lines = smallRescue();
  lines.insert(lines.end() - 1, R"({"t":40,"type":"mark","text":"written late"})");
  lines.insert(lines.end() - 1, R"({"t":50,"type":"mark","text":"and on"})");
  std::swap(lines[lines.size() - 2], lines[lines.size() - 3]);
  folder.write("late.resuslog", sealed(lines));
  const Ran ran = folder.cli({"check", "late.resuslog"});
  EXPECT_EQ(ran.exit, 0) << ran.out;
  EXPECT_NE(ran.out.find(": info: "), std::string::npos) << ran.out;
}

TEST(Check, WorksOnAllFilesAndReportsTheWorst) {
  const Folder folder;
  folder.write("good.resuslog", sealed(smallRescue()));
  folder.write("other.resuslog", "{\"resuslog\":\"2.0\"}\n");
  const Ran ran = folder.cli({"check", "missing.resuslog", "good.resuslog", "other.resuslog"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_NE(ran.out.find("missing.resuslog:1: error: "), std::string::npos) << ran.out;
  EXPECT_NE(ran.out.find("2.0"), std::string::npos) << ran.out;
}

} // namespace
} // namespace afterbeat::test
