#include "tests/cli/process.h"

#include <gtest/gtest.h>

namespace afterbeat::test {
namespace {

TEST(Rewrite, AGoodFileComesOutAsItWas) {
  const Folder folder;
  const std::string bytes = sealed(smallRescue());
  folder.write("a.resuslog", bytes);
  const Ran ran = folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog"});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(folder.read("b.resuslog"), bytes);
}

TEST(Rewrite, AnUnclosedFileIsClosed) {
  const Folder folder;
  std::string text;
  for (const auto& line : smallRescue()) {
    text += line + "\n";
  }
  folder.write("a.resuslog", text);
  EXPECT_EQ(folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog"}).exit, 0);
  const std::string closed = folder.read("b.resuslog");
  EXPECT_EQ(closed.rfind(text, 0), 0U);
  EXPECT_EQ(folder.cli({"check", "b.resuslog"}).exit, 0);
}

TEST(Rewrite, ADamagedFileIsSalvagedOnce) {
  const Folder folder;
  auto lines = smallRescue();
  lines[7] = "\x01\x02 power loss";
  folder.write("a.resuslog", sealed(lines));
  EXPECT_EQ(folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog"}).exit, 1);
  const std::string salvaged = folder.read("b.resuslog");
  EXPECT_NE(salvaged.find("\"derived_from\""), std::string::npos);
  EXPECT_NE(salvaged.find("\"unreadable\""), std::string::npos);
  EXPECT_EQ(salvaged.find("6f0a52f4-53bb-4f3e-9a0e-0a4c0f1c2d3e\",\"recorded"), std::string::npos)
      << "a salvaged record has a new id";
  EXPECT_EQ(folder.cli({"rewrite", "b.resuslog", "-o", "c.resuslog"}).exit, 0);
  EXPECT_EQ(folder.read("c.resuslog"), salvaged);
  EXPECT_EQ(folder.read("a.resuslog"), sealed(lines)) << "the original is never written to";
}

TEST(Rewrite, TheOriginalIsNeverTheOutput) {
  const Folder folder;
  const std::string bytes = sealed(smallRescue());
  folder.write("a.resuslog", bytes);
  EXPECT_EQ(folder.cli({"rewrite", "a.resuslog", "-o", "./a.resuslog"}).exit, 2);
  EXPECT_EQ(folder.read("a.resuslog"), bytes);
}

TEST(Rewrite, AFolderThatIsNotThere) {
  const Folder folder;
  folder.write("a.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"rewrite", "a.resuslog", "-o", "nowhere/b.resuslog"});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_NE(ran.err.find("could not be written"), std::string::npos) << ran.err;
}

TEST(Rewrite, AHeaderIsMadeUpOnlyWhenAsked) {
  const Folder folder;
  auto lines = smallRescue();
  lines[0] = "lost header";
  folder.write("a.resuslog", sealed(lines));
  EXPECT_EQ(folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog"}).exit, 3);
  EXPECT_FALSE(folder.has("b.resuslog"));
  EXPECT_EQ(
      folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog", "--new-header", "rescue"}).exit, 1);
  const Ran measured = folder.cli({"measure", "b.resuslog"});
  EXPECT_EQ(measured.exit, 0) << measured.err;
  EXPECT_NE(measured.out.find("Shocks given                          1"), std::string::npos)
      << measured.out;
}

TEST(Rewrite, FurtherRecordsGoBesideTheFirst) {
  const Folder folder;
  const std::string one = sealed(smallRescue());
  folder.write("a.resuslog", one + one);
  (void)folder.cli({"rewrite", "a.resuslog", "-o", "b.resuslog"});
  EXPECT_TRUE(folder.has("b.resuslog"));
  EXPECT_TRUE(folder.has("b-2.resuslog"));
  EXPECT_EQ(folder.cli({"check", "b.resuslog", "b-2.resuslog"}).exit, 0);
}

} // namespace
} // namespace afterbeat::test
