#include "tests/cli/process.h"

#include <gtest/gtest.h>

namespace afterbeat::test {
namespace {

TEST(Usage, HelpAndVersionAreData) {
  const Folder folder;
  const Ran help = folder.cli({"--help"});
  EXPECT_EQ(help.exit, 0);
  EXPECT_EQ(help.err, "");
  for (const char* command : {"check", "measure", "compare", "sheet", "gather", "rewrite"}) {
    EXPECT_NE(help.out.find(command), std::string::npos);
  }
  EXPECT_EQ(folder.cli({"--version"}).exit, 0);
}

TEST(Usage, WrongUseIsTwo) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const std::vector<std::vector<std::string>> wrong{
      {},
      {"unknown"},
      {"check"},
      {"measure", "r.resuslog", "--pause-threshold", "0.4"},
      {"measure", "r.resuslog", "--pause-threshold", "5.1"},
      {"measure", "r.resuslog", "--pause-threshold", "nan"},
      {"measure", "r.resuslog", "--pause-threshold", "long"},
      {"measure", "r.resuslog", "--window-end", "sometime"},
      {"measure", "r.resuslog", "--unknown"},
      {"sheet", "r.resuslog"},
      {"sheet", "r.resuslog", "-o", "s.pdf", "--paper", "A5"},
      {"sheet", "r.resuslog", "-o", "s.pdf", "--language", "xx"},
      {"gather", "r.resuslog"},
      {"rewrite", "r.resuslog"},
      {"rewrite", "r.resuslog", "-o", "o.resuslog", "--new-header", "maybe"}};
  for (const auto& words : wrong) {
    const Ran ran = folder.cli(words);
    EXPECT_EQ(ran.exit, 2) << ::testing::PrintToString(words);
    EXPECT_EQ(ran.out, "") << ::testing::PrintToString(words);
    EXPECT_NE(ran.err, "") << ::testing::PrintToString(words);
  }
}

} // namespace
} // namespace afterbeat::test
