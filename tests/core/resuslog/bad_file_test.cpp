// Every row of the format's table of what a reader does with a bad file.
#include "log_text.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using test::closed;
using test::joined;
using test::kHeader;
using test::kPlainHeader;
using test::readText;

struct Expected {
  int line;
  Severity severity;
  ProblemKind kind;
};

struct BadLine {
  const char* name;
  /// Line 2 of a closed file; line 3 is intact.
  std::string line;
  /// What the file's problems are.
  std::vector<Expected> problems;
  LineFate fate;
  /// Entries found, the intact one of line 3 included.
  std::size_t entries;
};

std::ostream& operator<<(std::ostream& out, const BadLine& bad) {
  return out << bad.name;
}

class BadLines : public testing::TestWithParam<BadLine> {};

void expectProblems(const std::vector<Problem>& found, const std::vector<Expected>& expected) {
  ASSERT_EQ(found.size(), expected.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    EXPECT_EQ(found[i].line, expected[i].line) << sentence(found[i]);
    EXPECT_EQ(found[i].severity, expected[i].severity) << sentence(found[i]);
    EXPECT_EQ(found[i].kind, expected[i].kind) << sentence(found[i]);
    EXPECT_GE(sentence(found[i]).size(), 20U);
  }
}

TEST_P(BadLines, costThemselvesAlone) {
  const BadLine& bad = GetParam();
  const std::string text =
      closed(joined({std::string(kHeader), bad.line, R"({"t":5,"type":"power_off"})"}), 2);
  const auto file = readText(text);
  ASSERT_TRUE(file);
  ASSERT_EQ(file->records.size(), 1U);
  const LogRecord& log = file->records.front();
  // Line 1 tells of the channel that is not drawn.
  ASSERT_FALSE(file->problems.empty());
  EXPECT_EQ(file->problems.front().kind, ProblemKind::channelNotDrawn);
  expectProblems({file->problems.begin() + 1, file->problems.end()}, bad.problems);
  ASSERT_EQ(log.lines.size(), 4U);
  EXPECT_EQ(log.lines[0].fate, LineFate::header);
  EXPECT_EQ(log.lines[1].fate, bad.fate);
  EXPECT_EQ(log.lines[2].fate, LineFate::entry);
  EXPECT_EQ(log.lines[3].fate, LineFate::seal);
  EXPECT_EQ(log.record.entries.size(), bad.entries);
  EXPECT_TRUE(log.record.seal.matches);
  const auto intact =
      std::find_if(log.record.entries.begin(), log.record.entries.end(),
                   [](const Entry& e) { return e.complete<entry::PowerOff>() != nullptr; });
  EXPECT_NE(intact, log.record.entries.end());
}

Expected error(ProblemKind kind) {
  return {2, Severity::error, kind};
}
Expected warning(ProblemKind kind) {
  return {2, Severity::warning, kind};
}

std::string deep(int levels) {
  const auto n = static_cast<std::size_t>(levels - 1);
  return R"({"t":1,"type":"mark","text":"","x":)" + std::string(n, '[') + std::string(n, ']') + "}";
}

BadLine broken(const char* name, std::string line) {
  return {name, std::move(line), {error(ProblemKind::brokenLine)}, LineFate::broken, 1};
}

/// Read, but counted in no figure.
BadLine entryWith(const char* name, std::string line, std::vector<Expected> problems) {
  return {name, std::move(line), std::move(problems), LineFate::entry, 2};
}

const std::string kFour = R"("AQACAAMABAA=")"; // 1, 2, 3, 4

INSTANTIATE_TEST_SUITE_P(
    Lost, BadLines,
    testing::Values(broken("garbage", "xyzzy"), broken("nul", std::string(40, '\0')),
                    broken("badUtf8", "{\"t\":1,\"type\":\"mark\",\"text\":\"\xff\"}"),
                    broken("array", "[1,2]"), broken("number", "17"),
                    broken("cut", R"({"t":1,"type":"mark","te)"),
                    broken("twoObjects", R"({"t":1,"type":"power_on"}{"t":2,"type":"power_on"})"),
                    broken("keyTwice", R"({"t":1,"type":"power_on","t":1})"),
                    broken("nestedKeyTwice", R"({"t":1,"type":"power_on","x":{"a":1,"a":1}})"),
                    broken("level65", deep(65)),
                    broken("long", R"({"t":1,"type":"mark","text":")" +
                                       std::string(33U << 20U, 'x') + "\"}"),
                    broken("nan", R"({"t":NaN,"type":"power_on"})"),
                    broken("infinity", R"({"t":Infinity,"type":"power_on"})"),
                    broken("overflow", R"({"t":1e999,"type":"power_on"})")),
    [](const auto& test) { return test.param.name; });

INSTANTIATE_TEST_SUITE_P(
    Incomplete, BadLines,
    testing::Values(
        entryWith("level64", deep(64), {}),
        entryWith("endBeforeBegin", R"({"t":3,"end":2.5,"type":"analysis","advice":"shock"})",
                  {error(ProblemKind::endBeforeBegin)}),
        entryWith("timeTooLarge", R"({"t":1000000.1,"type":"power_on"})",
                  {error(ProblemKind::valueOutOfRange), error(ProblemKind::missingKey)}),
        entryWith("timeOf30Digits", R"({"t":123456789012345678901234567890,"type":"power_on"})",
                  {error(ProblemKind::valueOutOfRange), error(ProblemKind::missingKey)}),
        entryWith("endTooLarge", R"({"t":1,"end":1e7,"type":"cpr"})",
                  {error(ProblemKind::valueOutOfRange), error(ProblemKind::missingKey)}),
        entryWith("timeIsText", R"({"t":"1","type":"power_on"})",
                  {warning(ProblemKind::wrongValue), error(ProblemKind::missingKey)}),
        entryWith("noTime", R"({"type":"power_on"})", {error(ProblemKind::missingKey)}),
        entryWith("noType", R"({"t":1})", {error(ProblemKind::missingKey)}),
        entryWith("typeIsNumber", R"({"t":1,"type":7})",
                  {warning(ProblemKind::wrongValue), error(ProblemKind::missingKey)}),
        entryWith("noRequiredKey", R"({"t":1,"type":"circulation"})",
                  {error(ProblemKind::missingKey)}),
        entryWith("unknownWord", R"({"t":1,"type":"circulation","state":"maybe"})",
                  {warning(ProblemKind::wrongValue), error(ProblemKind::missingKey)}),
        entryWith("noEnd", R"({"t":1,"type":"cpr"})", {error(ProblemKind::missingKey)}),
        entryWith("notOpen", R"({"t":1,"type":"cpr","open":false})",
                  {error(ProblemKind::missingKey)}),
        entryWith("deliveryUnknown", R"({"t":1,"type":"shock","energy_j":150})",
                  {warning(ProblemKind::deliveryUnknown)}),
        entryWith("deliveryIsWord", R"({"t":1,"type":"shock","delivered":"yes"})",
                  {warning(ProblemKind::wrongValue), warning(ProblemKind::deliveryUnknown)}),
        entryWith("barsAlone", R"({"t":1,"type":"battery","bars":2})",
                  {error(ProblemKind::missingKey)}),
        entryWith("badExpiry", R"({"t":1,"type":"pads","expires":"2027-13"})",
                  {warning(ProblemKind::wrongValue), error(ProblemKind::missingKey)}),
        entryWith("halfEnd", R"({"t":1,"type":"end","entries":4})",
                  {error(ProblemKind::missingKey)})),
    [](const auto& test) { return test.param.name; });

INSTANTIATE_TEST_SUITE_P(
    Kept, BadLines,
    testing::Values(entryWith("wrongTypedValue", R"({"t":1,"type":"compression","depth_mm":"52"})",
                              {warning(ProblemKind::wrongValue)}),
                    entryWith("negativeRate", R"({"t":1,"end":2,"type":"cpr","rate_per_min":-100})",
                              {warning(ProblemKind::wrongValue)}),
                    entryWith("qualityOver1", R"({"t":1,"type":"power_on","quality":1.5})",
                              {warning(ProblemKind::wrongValue)}),
                    entryWith("unknownPart", R"({"t":1,"type":"power_on","part":"p9"})",
                              {warning(ProblemKind::wrongValue)}),
                    entryWith("neverClosed", R"({"t":1,"type":"cpr","open":true})",
                              {warning(ProblemKind::neverClosedStretch)}),
                    entryWith("unknownType", R"({"t":1,"type":"x_ray","film":3})", {}),
                    entryWith("unknownKey", R"({"t":1,"type":"power_on","film":3})", {})),
    [](const auto& test) { return test.param.name; });

INSTANTIATE_TEST_SUITE_P(
    Blocks, BadLines,
    testing::Values(
        entryWith("unknownChannel",
                  R"({"t":1,"type":"samples","channel":"x","count":4,"data":)" + kFour + "}",
                  {error(ProblemKind::unknownChannel)}),
        entryWith("wrongCount",
                  R"({"t":1,"type":"samples","channel":"ecg","count":5,"data":)" + kFour + "}",
                  {error(ProblemKind::badBlock)}),
        entryWith("noCount", R"({"t":1,"type":"samples","channel":"ecg","count":0,"data":""})",
                  {error(ProblemKind::badBlock)}),
        entryWith("hugeCount",
                  R"({"t":1,"type":"samples","channel":"ecg","count":1e300,"data":)" + kFour + "}",
                  {error(ProblemKind::badBlock)}),
        entryWith("brokenCount",
                  R"({"t":1,"type":"samples","channel":"ecg","count":4.5,"data":)" + kFour + "}",
                  {error(ProblemKind::badBlock)}),
        entryWith("badBase64",
                  R"({"t":1,"type":"samples","channel":"ecg","count":4,"data":"AQACAAMAB*A="})",
                  {error(ProblemKind::badBlock)}),
        entryWith("dataIsNumber", R"({"t":1,"type":"samples","channel":"ecg","count":4,"data":1})",
                  {error(ProblemKind::badBlock)}),
        entryWith("noData", R"({"t":1,"type":"samples","channel":"ecg","count":4})",
                  {error(ProblemKind::missingKey)}),
        entryWith("beforeZero",
                  R"({"t":-1,"type":"samples","channel":"ecg","count":4,"data":)" + kFour + "}",
                  {error(ProblemKind::badBlock)}),
        entryWith("notDrawn", R"({"t":1,"type":"samples","channel":"odd","count":1,"data":"///"})",
                  {}),
        BadLine{"longBlock",
                test::samples(0, std::vector<std::int16_t>(21, 1)),
                {warning(ProblemKind::longBlock)},
                LineFate::entry,
                1}),
    [](const auto& test) { return test.param.name; });

struct BadFile {
  const char* name;
  std::string text;
  std::vector<Expected> problems;
  std::size_t records;
};

std::ostream& operator<<(std::ostream& out, const BadFile& bad) {
  return out << bad.name;
}

class BadFiles : public testing::TestWithParam<BadFile> {};

TEST_P(BadFiles, areReadAndReported) {
  const auto file = readText(GetParam().text);
  ASSERT_TRUE(file);
  EXPECT_EQ(file->records.size(), GetParam().records);
  expectProblems(file->problems, GetParam().problems);
}

const std::string kHead = std::string(kPlainHeader) + "\n";
const std::string kOn = "{\"t\":0,\"type\":\"power_on\"}\n";
const std::string kOff = "{\"t\":9,\"type\":\"power_off\"}\n";

INSTANTIATE_TEST_SUITE_P(
    Whole, BadFiles,
    testing::Values(
        BadFile{"intact", closed(kHead + kOn + kOff, 2), {}, 1},
        BadFile{"emptyLines", closed(kHead + "\n" + kOn + " \t\n" + kOff, 2), {}, 1},
        BadFile{
            "crLf",
            closed(joined({std::string(kPlainHeader), "{\"t\":0,\"type\":\"power_on\"}"}, "\r\n"),
                   1, 5, "\r\n"),
            {},
            1},
        BadFile{"byteOrderMark", closed("\xEF\xBB\xBF" + kHead + kOn, 1), {}, 1},
        BadFile{"byteOrderMarkNotCounted", "\xEF\xBB\xBF" + closed(kHead + kOn, 1), {}, 1},
        BadFile{
            "notClosed", kHead + kOn + kOff, {{3, Severity::warning, ProblemKind::notClosed}}, 1},
        BadFile{"headerAlone", kHead, {{1, Severity::warning, ProblemKind::notClosed}}, 1},
        BadFile{"cutInALine",
                kHead + kOn + kOff.substr(0, 12),
                {{3, Severity::warning, ProblemKind::notClosed}},
                1},
        BadFile{"flushedTwice",
                closed(kHead + kOn + kOff + kOn + kOff, 4),
                {{4, Severity::warning, ProblemKind::repeatedLine},
                 {5, Severity::warning, ProblemKind::repeatedLine}},
                1},
        BadFile{"closedTwice",
                closed(kHead + kOn, 1) + closed(kHead + kOn, 1).substr((kHead + kOn).size()),
                {{4, Severity::warning, ProblemKind::repeatedLine}},
                1},
        BadFile{"outOfOrder",
                closed(kHead + kOff + kOn, 2, 9),
                {{3, Severity::info, ProblemKind::outOfOrder}},
                1},
        BadFile{"oneSecondBackIsNotOutOfOrder",
                closed(kHead + kOff + "{\"t\":8,\"type\":\"power_on\"}\n", 2),
                {},
                1},
        BadFile{"checksumDiffers",
                [] {
                  std::string text = closed(kHead + kOn + kOff, 2);
                  text[text.find("power_off") + 8] = 'x';
                  return text;
                }(),
                {{4, Severity::error, ProblemKind::checksumDiffers}},
                1},
        BadFile{"countDiffers",
                closed(kHead + kOn + kOff, 3),
                {{4, Severity::warning, ProblemKind::countDiffers}},
                1},
        BadFile{"secondHeader",
                closed(kHead + kOn, 1) + closed(kHead + kOff, 1),
                {{4, Severity::warning, ProblemKind::anotherRecord}},
                2},
        BadFile{"secondHeaderBeforeTheEnd",
                kHead + kOn + closed(kHead + kOff, 1),
                {{2, Severity::warning, ProblemKind::notClosed},
                 {3, Severity::warning, ProblemKind::anotherRecord}},
                2},
        BadFile{"linesAfterTheEnd",
                closed(kHead + kOn, 1) + kOff,
                {{4, Severity::warning, ProblemKind::anotherRecord},
                 {4, Severity::warning, ProblemKind::notClosed}},
                2},
        BadFile{"brokenLinesAfterTheEnd",
                closed(kHead + kOn, 1) + "rubbish\n",
                {{4, Severity::error, ProblemKind::brokenLine}},
                1},
        BadFile{"anotherEnd",
                closed(closed(kHead + kOn, 1), 2),
                {{4, Severity::error, ProblemKind::brokenLine}},
                1}),
    [](const auto& test) { return test.param.name; });

TEST(BadFile, withoutAHeaderIsRefusedUnlessOneIsMadeUp) {
  for (const std::string& text :
       {std::string("rubbish\n"), kOn, std::string("{\"resuslog\":1.0}\n"),
        std::string("{\"resuslog\":\"one\"}\n"), "x\n" + kHead + kOn}) {
    const auto refused = readText(text);
    ASSERT_FALSE(refused) << text;
    EXPECT_EQ(refused.error().kind, RefusalKind::noHeader);
    EXPECT_NE(sentence(refused.error()).find("made-up"), std::string::npos);
    const auto file = readText(text, {RecordKind::drill, true});
    ASSERT_TRUE(file) << text;
    const Header& header = file->records.front().record.header;
    EXPECT_TRUE(header.madeUp);
    EXPECT_EQ(header.kind, RecordKind::drill);
    EXPECT_FALSE(header.recorded);
    EXPECT_EQ(header.clock.state, ClockState::unset);
    EXPECT_EQ(header.id.substr(0, 9), "urn:uuid:");
    EXPECT_EQ(file->problems.front().kind, ProblemKind::madeUpHeader);
    EXPECT_EQ(file->problems.front().severity, Severity::warning);
  }
}

TEST(BadFile, aGoodHeaderIsNotReplaced) {
  const auto file = readText(kHead + kOn, {RecordKind::drill, true});
  ASSERT_TRUE(file);
  EXPECT_FALSE(file->records.front().record.header.madeUp);
  EXPECT_EQ(file->records.front().record.header.kind, RecordKind::rescue);
}

TEST(BadFile, ofAnotherVersionIsRefusedByName) {
  for (const char* version : {"2.0", "0.9", "10.1", "2"}) {
    for (const auto& options : {ReadOptions{}, ReadOptions{RecordKind::rescue, true}}) {
      const auto refused =
          readText("{\"resuslog\":\"" + std::string(version) + "\"}\n" + kOn, options);
      ASSERT_FALSE(refused) << version;
      EXPECT_EQ(refused.error().kind, RefusalKind::otherVersion);
      EXPECT_EQ(refused.error().detail, version);
      EXPECT_NE(sentence(refused.error()).find(version), std::string::npos);
    }
  }
  std::string later = kHead;
  later.replace(later.find("1.0"), 3, "1.7");
  EXPECT_TRUE(readText(later));
}

TEST(BadFile, thatIsEmptyIsRefused) {
  for (const char* text : {"", "\n", "\r\n \n\t", "\xEF\xBB\xBF"}) {
    const auto refused = readText(text, {RecordKind::rescue, true});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, RefusalKind::empty);
  }
}

/// More than any memory holds; only its size is looked at.
class HugeSource final : public ByteSource {
public:
  [[nodiscard]] std::uint64_t size() const override { return (std::uint64_t{2} << 30U) + 1; }
  [[nodiscard]] tl::expected<std::size_t, IoError> read(std::uint64_t /*offset*/,
                                                        std::span<char> /*into*/) override {
    return tl::unexpected(IoError{"nobody should read this"});
  }
};

TEST(BadFile, ofMoreThan2GiBIsRefused) {
  HugeSource source;
  const auto refused = readLog(source);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, RefusalKind::tooLarge);
}

/// Fails from some offset on.
class FailingSource final : public ByteSource {
public:
  explicit FailingSource(std::string text) : text_(std::move(text)) {}
  [[nodiscard]] std::uint64_t size() const override { return text_.size() + 100; }
  [[nodiscard]] tl::expected<std::size_t, IoError> read(std::uint64_t /*offset*/,
                                                        std::span<char> /*into*/) override {
    return tl::unexpected(IoError{"the disk is broken"});
  }

private:
  std::string text_;
};

TEST(BadFile, thatCannotBeReadIsRefusedSayingWhy) {
  FailingSource source(kHead);
  const auto refused = readLog(source);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, RefusalKind::unreadableFile);
  EXPECT_NE(sentence(refused.error()).find("the disk is broken"), std::string::npos);
  EXPECT_EQ(readLogFile("/nowhere/at/all").error().kind, RefusalKind::unreadableFile);
}

TEST(BadFile, aVeryLongLineCostsItselfAlone) {
  // Longer than the reader keeps: with and without anything behind it.
  const std::string rubbish(70U << 20U, '\0');
  const auto file = readText(closed(kHead + kOn + rubbish + "\n" + kOff, 3));
  ASSERT_TRUE(file);
  expectProblems(file->problems, {{3, Severity::error, ProblemKind::brokenLine}});
  EXPECT_EQ(file->records.front().lines[2].length, rubbish.size());
  EXPECT_EQ(file->records.front().record.entries.size(), 2U);
  EXPECT_TRUE(file->records.front().record.seal.matches);
  const auto tail = readText(kHead + kOn + rubbish);
  ASSERT_TRUE(tail);
  expectProblems(tail->problems, {{3, Severity::error, ProblemKind::brokenLine},
                                  {3, Severity::warning, ProblemKind::notClosed}});
}

TEST(BadFile, theSameBytesGiveTheSameResult) {
  const std::string text = closed(kHead + kOn + "rubbish\n", 2) + kOff;
  const auto a = readText(text);
  const auto b = readText(text);
  ASSERT_TRUE(a && b);
  ASSERT_EQ(a->records.size(), 2U);
  ASSERT_EQ(b->records.size(), 2U);
  ASSERT_EQ(a->problems.size(), b->problems.size());
  for (std::size_t i = 0; i < a->problems.size(); ++i) {
    EXPECT_EQ(sentence(a->problems[i]), sentence(b->problems[i]));
  }
  EXPECT_EQ(a->records[1].record.header.id, b->records[1].record.header.id);
  EXPECT_EQ(a->sha256, sha256Hex(text));
}

} // namespace
} // namespace afterbeat
