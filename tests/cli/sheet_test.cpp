#include "tests/cli/process.h"

#include <gtest/gtest.h>

namespace afterbeat::test {
namespace {

std::string textOf(const Folder& folder, const std::string& pdf) {
  return runProgram({"pdftotext", "-layout", pdf, "-"}, folder.path()).out;
}

TEST(Sheet, OnePageWithTheFigures) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const Ran ran = folder.cli({"sheet", "r.resuslog", "-o", "s.pdf"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  const Ran info = runProgram({"pdfinfo", "s.pdf"}, folder.path());
  EXPECT_NE(info.out.find("Pages:           1"), std::string::npos) << info.out;
  EXPECT_NE(info.out.find("(A4)"), std::string::npos) << info.out;
  const std::string text = textOf(folder, "s.pdf");
  EXPECT_NE(text.find("09:13:02"), std::string::npos) << "clock time of the shock\n" << text;
  EXPECT_NE(text.find("150 J"), std::string::npos) << text;
  EXPECT_NE(text.find("SYNTHETIC"), std::string::npos) << text;
}

TEST(Sheet, GermanOnLetter) {
  const Folder folder;
  folder.write("r.resuslog", sealed(smallRescue()));
  const Ran ran =
      folder.cli({"sheet", "r.resuslog", "-o", "s.pdf", "--paper", "Letter", "--language", "de"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  const Ran info = runProgram({"pdfinfo", "s.pdf"}, folder.path());
  EXPECT_NE(info.out.find("(letter)"), std::string::npos) << info.out;
  EXPECT_NE(textOf(folder, "s.pdf").find("Übergabe"), std::string::npos);
}

TEST(Sheet, WhatCannotBeWrittenIsSaid) {
  const Folder folder;
  const std::string bytes = sealed(smallRescue());
  folder.write("r.resuslog", bytes);
  EXPECT_EQ(folder.cli({"sheet", "r.resuslog", "-o", "nowhere/s.pdf"}).exit, 3);
  EXPECT_EQ(folder.cli({"sheet", "r.resuslog", "-o", "r.resuslog"}).exit, 2);
  EXPECT_EQ(folder.read("r.resuslog"), bytes);
}

} // namespace
} // namespace afterbeat::test
