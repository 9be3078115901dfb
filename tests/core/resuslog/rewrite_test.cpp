// What writing a file again keeps, and what it renames.
#include "log_text.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using test::closed;
using test::joined;
using test::kPlainHeader;
using test::readText;
using test::rewritten;

const std::string kHead = std::string(kPlainHeader) + "\n";
const std::string kOn = "{\"t\":0,\"type\":\"power_on\"}\n";
const std::string kOff = "{ \"type\" : \"power_off\", \"t\" : 9.00e0 }\n";

/// Written again, the text does not change any more, and it has no damage left.
void expectSettled(const std::string& text) {
  RewriteReport report;
  EXPECT_EQ(rewritten(text, {}, 0, &report), text);
  EXPECT_FALSE(report.changed);
  const auto file = readText(text);
  ASSERT_TRUE(file);
  ASSERT_EQ(file->records.size(), 1U);
  EXPECT_TRUE(file->records.front().record.seal.matches);
  for (const Problem& problem : file->problems) {
    EXPECT_NE(problem.kind, ProblemKind::brokenLine) << sentence(problem);
    EXPECT_NE(problem.kind, ProblemKind::repeatedLine) << sentence(problem);
    EXPECT_NE(problem.kind, ProblemKind::countDiffers) << sentence(problem);
    EXPECT_NE(problem.kind, ProblemKind::notClosed) << sentence(problem);
  }
}

struct Same {
  const char* name;
  std::string text, expected;
};

class Intact : public testing::TestWithParam<Same> {};

TEST_P(Intact, staysAsItIs) {
  RewriteReport report;
  EXPECT_EQ(rewritten(GetParam().text, {}, 0, &report), GetParam().expected);
  EXPECT_FALSE(report.changed);
  expectSettled(GetParam().expected);
}

std::string without(std::string text, const std::string& what) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what)) {
    text.erase(at, what.size());
  }
  return text;
}

const std::string kOddities = R"({"t":5,"type":"shock","energy_j":1.50})"
                              "\n"
                              R"({"t":1,"end":0,"type":"cpr","x":"\u0041"})"
                              "\n"
                              R"({"t":6,"type":"cpr","open":true})"
                              "\n"
                              R"({"t":7,"type":"samples","channel":"none","count":1,"data":"?"})"
                              "\n";

INSTANTIATE_TEST_SUITE_P(
    All, Intact,
    testing::Values(
        Same{"sealed", closed(kHead + kOn + kOff, 2), closed(kHead + kOn + kOff, 2)},
        Same{"outOfOrder", closed(kHead + kOff + kOn, 2), closed(kHead + kOff + kOn, 2)},
        Same{"emptyLines", closed(kHead + "\n" + kOn + "  \n", 1) + "\n",
             closed(kHead + "\n" + kOn + "  \n", 1) + "\n"},
        Same{"emptyLinesFirst", closed("\n \n" + kHead + kOn, 1), closed("\n \n" + kHead + kOn, 1)},
        Same{"emptyLinesFirstNotCounted", "\n" + closed(kHead + kOn, 1),
             "\n" + closed(kHead + kOn, 1)},
        Same{"noLastLineFeed", closed(kHead + kOn, 1, 5, ""), closed(kHead + kOn, 1, 5, "")},
        Same{"whatLinesSayIsTheWritersBusiness", closed(kHead + kOddities, 4),
             closed(kHead + kOddities, 4)},
        Same{"notClosed", kHead + kOn + kOff,
             closed(kHead + kOn + kOff, 2, 9)
                 .replace(closed(kHead + kOn + kOff, 2, 9).find("9.000000"), 8, "9")},
        Same{"notClosedCutAfterTheBrace", kHead + kOn.substr(0, kOn.size() - 1),
             [] {
               std::string text = closed(kHead + kOn, 1, 0);
               return text.replace(text.find("0.000000"), 8, "0");
             }()},
        Same{"crLf",
             closed(std::string(kPlainHeader) + std::string("\r\n") + without(kOn, "\n") +
                        "\r\n\r\n",
                    1, 5, "\r\n"),
             closed(kHead + kOn + "\n", 1, 5)},
        Same{"severalCrs",
             closed(std::string(kPlainHeader) + std::string("\r\r\n") + without(kOn, "\n") +
                        "\r\r\r\n",
                    1, 5, "\r\r\n"),
             closed(kHead + kOn, 1, 5)},
        Same{"byteOrderMark", closed("\xEF\xBB\xBF" + kHead + kOn, 1), closed(kHead + kOn, 1)},
        Same{"byteOrderMarkNotCounted", "\xEF\xBB\xBF" + closed(kHead + kOn, 1),
             closed(kHead + kOn, 1)}),
    [](const auto& test) { return test.param.name; });

TEST(Rewrite, whatIsBrokenIsKeptUnreadable) {
  const std::string nul(10, '\0');
  const std::string text = closed(kHead + kOn + "rubbish\n" + nul + "\n" + kOff + kOn, 5);
  RewriteReport report;
  const std::string out = rewritten(text, {}, 0, &report);
  EXPECT_TRUE(report.changed);
  EXPECT_EQ(report.broken, 2);
  EXPECT_EQ(report.repeated, 1);
  const auto file = readText(out);
  ASSERT_TRUE(file);
  const std::string id = uuidFrom(sha256Hex(text) + " rewritten 0");
  const std::string expectedHeader =
      R"({"resuslog":"1.0","id":")" + id +
      R"(","recorded":"2026-03-14T09:12:30+01:00","kind":"rescue","derived_from":{)"
      R"("id":"urn:uuid:123e4567-e89b-42d3-a456-426614174000","sha256":")" +
      sha256Hex(text) + R"(","problems":3}})" + "\n";
  const std::string lines = kOn +
                            "{\"t\":0,\"type\":\"unreadable\",\"base64\":\"cnViYmlzaA==\"}\n"
                            "{\"t\":0,\"type\":\"unreadable\",\"base64\":\"AAAAAAAAAAAAAA==\"}\n" +
                            kOff;
  std::string expected = closed(expectedHeader + lines, 4, 100);
  expected.replace(expected.find("100.000000"), 10, "100");
  EXPECT_EQ(out, expected);
  expectSettled(out);
}

TEST(Rewrite, theHeaderKeepsItsSpelling) {
  const std::string head =
      "{ \"case\":\"\\u0041\", \"kind\" : \"drill\",\"recorded\":\"2026-03-14T09:12:30Z\","
      "\"clock\":{\"offset_s\":1.50e0}, \"\\u0069d\" "
      ":\"urn:uuid:123e4567-e89b-42d3-a456-426614174000\","
      "\"resuslog\":\"1.0\",\"derived_from\":{\"x\":[1, 2]} , \"z\":1.0 }\t\n";
  const std::string text = closed(head + kOn + "rubbish\n", 2);
  const std::string out = rewritten(text);
  const std::string expected =
      "{ \"case\":\"\\u0041\", \"kind\" : \"drill\",\"recorded\":\"2026-03-14T09:12:30Z\","
      "\"clock\":{\"offset_s\":1.50e0}, \"\\u0069d\" :\"" +
      uuidFrom(sha256Hex(text) + " rewritten 0") +
      "\",\"resuslog\":\"1.0\",\"derived_from\":{\"id\":\"urn:uuid:123e4567-e89b-42d3-a456-"
      "426614174000\",\"sha256\":\"" +
      sha256Hex(text) + "\",\"problems\":1} , \"z\":1.0 }\t\n";
  EXPECT_EQ(out.substr(0, expected.size()), expected);
  expectSettled(out);
}

TEST(Rewrite, aHeaderWithoutIdGetsOne) {
  const std::string text = "{\"resuslog\":\"1.0\"}\nrubbish\n";
  const std::string out = rewritten(text);
  const auto file = readText(out);
  ASSERT_TRUE(file);
  EXPECT_EQ(file->records.front().record.header.id, uuidFrom(sha256Hex(text) + " rewritten 0"));
  EXPECT_EQ(file->records.front().record.header.derivedFrom.value().id, "");
  expectSettled(out);
}

TEST(Rewrite, equalRubbishDoesNotBecomeRepeatedLines) {
  const std::string unreadable = "{\"t\":0,\"type\":\"unreadable\",\"base64\":\"eA==\"}\n";
  const std::string text = kHead + kOn + unreadable + "x\nx\nx\n" + kOff;
  RewriteReport report;
  const std::string out = rewritten(text, {}, 0, &report);
  EXPECT_EQ(report.broken, 3);
  const auto file = readText(out);
  ASSERT_TRUE(file);
  EXPECT_EQ(file->records.front().record.entries.size(), 6U);
  expectSettled(out);
}

TEST(Rewrite, aChecksumThatDiffersRenamesTheRecord) {
  std::string text = closed(kHead + kOn + kOff, 2);
  text[text.find("power_off") + 6] = 'x';
  RewriteReport report;
  const std::string out = rewritten(text, {}, 0, &report);
  EXPECT_TRUE(report.changed);
  EXPECT_EQ(report.broken, 0);
  EXPECT_NE(out.find("derived_from"), std::string::npos);
  EXPECT_EQ(out.find("123e4567"), out.rfind("123e4567")); // in derived_from alone
  expectSettled(out);
}

TEST(Rewrite, aCountThatDiffersRenamesTheRecord) {
  const std::string out = rewritten(closed(kHead + kOn + kOff, 7));
  EXPECT_NE(out.find("\"entries\":2"), std::string::npos);
  expectSettled(out);
}

TEST(Rewrite, aMadeUpHeaderIsWritten) {
  const std::string text = kOn + kOff;
  const ReadOptions options{RecordKind::drill, true};
  const std::string out = rewritten(text, options);
  const auto file = readText(out);
  ASSERT_TRUE(file);
  const Header& header = file->records.front().record.header;
  EXPECT_FALSE(header.madeUp);
  EXPECT_EQ(header.kind, RecordKind::drill);
  EXPECT_EQ(header.clock.state, ClockState::unset);
  EXPECT_EQ(header.derivedFrom.value().sha256, sha256Hex(text));
  EXPECT_NE(out.find(kOn + kOff), std::string::npos);
  expectSettled(out);
}

TEST(Rewrite, aDamagedFirstLineIsKeptToo) {
  const std::string text = closed("{\"resuslog\":" + kHead.substr(20) + kOn, 1);
  const std::string out = rewritten(text, {RecordKind::rescue, true});
  const auto file = readText(out);
  ASSERT_TRUE(file);
  ASSERT_EQ(file->records.front().record.entries.size(), 2U);
  EXPECT_NE(file->records.front().record.entries[0].complete<entry::Unreadable>(), nullptr);
  expectSettled(out);
}

TEST(Rewrite, eachRecordOfAFileBecomesOneOfItsOwn) {
  const std::string first = closed(kHead + kOn, 1);
  const std::string text = first + "rubbish\n" + kOff + "x\n" + kHead + kOff;
  const auto all = readText(text);
  ASSERT_TRUE(all);
  ASSERT_EQ(all->records.size(), 3U);
  std::vector<std::string> ids;
  std::vector<int> broken;
  for (std::size_t i = 0; i < 3; ++i) {
    RewriteReport report;
    const std::string out = rewritten(text, {}, i, &report);
    EXPECT_TRUE(report.changed);
    broken.push_back(report.broken);
    expectSettled(out);
    const auto file = readText(out);
    ASSERT_TRUE(file);
    ids.push_back(file->records.front().record.header.id);
    EXPECT_EQ(file->records.front().record.header.recorded, all->records[0].record.header.recorded);
  }
  EXPECT_EQ(broken, (std::vector<int>{1, 1, 0}));
  EXPECT_NE(ids[0], ids[1]);
  EXPECT_NE(ids[1], ids[2]);
}

TEST(Rewrite, rubbishLongerThanALineMayBeIsSplit) {
  const std::string rubbish(60U << 20U, '\x7f');
  const std::string out = rewritten(kHead + kOn + rubbish + "\n" + kOff);
  const auto file = readText(out);
  ASSERT_TRUE(file);
  std::string back;
  for (const Entry& e : file->records.front().record.entries) {
    if (const auto* piece = e.complete<entry::Unreadable>()) {
      back += base64Decode(piece->base64).value();
    }
  }
  EXPECT_TRUE(back == rubbish);
  expectSettled(out);
}

TEST(Rewrite, aFullDiskIsSaid) {
  const std::string text = kHead + kOn;
  MemorySource source(text);
  const auto file = readLog(source);
  ASSERT_TRUE(file);
  int pieces = 0;
  EXPECT_FALSE(rewriteRecord(source, *file, 0, [&](std::string_view) { return ++pieces < 2; }));
  EXPECT_FALSE(rewriteRecord(source, *file, 1, [](std::string_view) { return true; }));
  EXPECT_FALSE(writeRecord(file->records.front().record, [](std::string_view) { return false; }));
}

} // namespace
} // namespace afterbeat
