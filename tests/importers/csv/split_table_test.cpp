#include "importers/csv/split_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace afterbeat {
namespace {

using testing::ElementsAre;

TEST(SplitTable, rowsCellsAndLines) {
  const auto rows = splitTable("a; b ;c\r\n\r\n;;\n1;2\r3;", ';');
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_THAT(rows[0].cells, ElementsAre("a", "b", "c"));
  EXPECT_EQ(rows[0].line, 1);
  EXPECT_THAT(rows[1].cells, ElementsAre("1", "2"));
  EXPECT_EQ(rows[1].line, 4);
  EXPECT_THAT(rows[2].cells, ElementsAre("3", ""));
  EXPECT_EQ(rows[2].line, 5);
}

// RFC 4180, section 2, rules 5 to 7.
TEST(SplitTable, quotes) {
  const auto rows = splitTable("\"aaa\",\"b\r\nb\",\"c\"\"c\"\n\"12,5\" ,x\n", ',');
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_THAT(rows[0].cells, ElementsAre("aaa", "b\r\nb", "c\"c"));
  EXPECT_THAT(rows[1].cells, ElementsAre("12,5", "x"));
  EXPECT_EQ(rows[1].line, 3);
}

TEST(SplitTable, aQuoteThatIsNeverClosedIsACharacter) {
  const auto rows = splitTable("1,\"shock\n2,\"\"\n3,say 24\" wide\n", ',');
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_THAT(rows[0].cells, ElementsAre("1", "\"shock"));
  EXPECT_THAT(rows[2].cells, ElementsAre("3", "say 24\" wide"));
}

TEST(SplitTable, manyOpenQuotesTakeNoTime) {
  std::string text;
  for (int i = 0; i < 200000; ++i) {
    text += "\"\"\"\n";
  }
  EXPECT_FALSE(splitTable(text + "\"x", ',').empty());
}

TEST(GuessSeparator, fromTheRowsThatHoldTimes) {
  EXPECT_EQ(guessSeparator("95,shock\n97,analysis\n"), ',');
  EXPECT_EQ(guessSeparator("95;shock\n97;analysis\n"), ';');
  EXPECT_EQ(guessSeparator("95\tshock\n97\tanalysis\n"), '\t');
  // Decimal commas and commas in sentences do not make a table of commas.
  EXPECT_EQ(guessSeparator("95,5;shock\n97,25;analysis\n"), ';');
  EXPECT_EQ(guessSeparator("95\tshock, at last\n97,5\tanalysis; none\n"), '\t');
  // Nor do semicolons in a remark make one of semicolons.
  EXPECT_EQ(guessSeparator("time,what,remark\n95,shock,one; two\n97,analysis,\n99,shock,\n"), ',');
  EXPECT_EQ(guessSeparator("Date: 2026-03-14\n\n95;shock\n"), ';');
  EXPECT_EQ(guessSeparator("a;b\nc;d\n"), ';');
}

TEST(SplitTable, whatWasJoinedIsSplit) {
  EXPECT_TRUE(rc::check([](bool) {
    const auto cells = *rc::gen::nonEmpty(rc::gen::container<std::vector<std::string>>(
        rc::gen::container<std::string>(rc::gen::element('a', 'b', '"', ';', '\n'))));
    std::string text;
    bool content = false;
    std::vector<std::string> wanted;
    for (const auto& cell : cells) {
      text += text.empty() ? "\"" : ";\"";
      for (const char c : cell) {
        text += c == '"' ? std::string{"\"\""} : std::string{c};
      }
      text += "\"";
      // Cells come without the spaces and line ends around them.
      const auto begin = cell.find_first_not_of('\n');
      const auto end = cell.find_last_not_of('\n');
      wanted.push_back(begin == std::string::npos ? "" : cell.substr(begin, end - begin + 1));
      content = content || !wanted.back().empty();
    }
    const auto rows = splitTable(text, ';');
    RC_ASSERT(rows.size() == (content ? 1U : 0U));
    if (content) {
      RC_ASSERT(rows[0].cells == wanted);
    }
  }));
}

} // namespace
} // namespace afterbeat
