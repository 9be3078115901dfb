// How samples lines become a channel's blocks.
#include "log_text.h"

#include <numeric>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using test::joined;
using test::kHeader;
using test::readText;
using test::samples;

using Values = std::vector<std::int16_t>;

struct Block {
  double t;
  std::size_t first, count;
  friend bool operator==(const Block&, const Block&) = default;
};

void PrintTo(const Block& block, std::ostream* out) {
  *out << block.t << " s: " << block.first << " + " << block.count;
}

struct Case {
  const char* name;
  /// Of channel `ecg`, 4 samples a second.
  std::vector<std::string> lines;
  Values values;
  std::vector<Block> blocks;
  std::vector<ProblemKind> problems;
};

class Samples : public testing::TestWithParam<Case> {};

std::vector<ProblemKind> kindsOf(const LogFile& file) {
  std::vector<ProblemKind> kinds;
  for (const Problem& problem : file.problems) {
    if (problem.line > 1 && problem.kind != ProblemKind::notClosed &&
        problem.kind != ProblemKind::outOfOrder) {
      kinds.push_back(problem.kind);
    }
  }
  return kinds;
}

TEST_P(Samples, becomeBlocks) {
  const Case& c = GetParam();
  const std::string text = std::string(kHeader) + "\n" + joined(c.lines);
  const auto file = readText(text);
  ASSERT_TRUE(file);
  const Channel& channel = file->records.front().record.channels.front();
  EXPECT_EQ(channel.samples, c.values);
  std::vector<Block> blocks;
  for (const SampleBlock& block : channel.blocks) {
    blocks.push_back({seconds(block.t), block.first, block.count});
  }
  EXPECT_EQ(blocks, c.blocks);
  EXPECT_EQ(kindsOf(*file), c.problems);
  EXPECT_TRUE(file->records.front().record.entries.empty());
  // Without values: the same is said, and nothing is kept.
  const auto lean = readText(text, {std::nullopt, false});
  ASSERT_TRUE(lean);
  EXPECT_EQ(kindsOf(*lean), c.problems);
  EXPECT_TRUE(lean->records.front().record.channels.front().samples.empty());
  EXPECT_TRUE(lean->records.front().record.channels.front().blocks.empty());
  EXPECT_EQ(lean->records.front().record.lastTime, file->records.front().record.lastTime);
}

INSTANTIATE_TEST_SUITE_P(
    All, Samples,
    testing::Values(
        Case{"continuous",
             {samples(0, {1, 2, 3, 4}), samples(1, {5, 6}), samples(1.5, {7})},
             {1, 2, 3, 4, 5, 6, 7},
             {{0, 0, 7}},
             {}},
        Case{"halfASampleLateOrEarlyIsContinuous",
             {samples(0, {1, 2, 3, 4}), samples(1.125, {5, 6, 7, 8}), samples(2.0, {9})},
             {1, 2, 3, 4, 5, 6, 7, 8, 9},
             {{0, 0, 9}},
             {}},
        Case{"moreIsAGap",
             {samples(0, {1, 2}), samples(0.625001, {3, 4})},
             {1, 2, 3, 4},
             {{0, 0, 2}, {0.625001, 2, 2}},
             {ProblemKind::gapInChannel}},
        Case{"driftBeginsABlockWithoutAGap",
             {samples(0, {1, 2}), samples(0.6, {3, 4}), samples(1.2, {5, 6}), samples(1.7, {7})},
             {1, 2, 3, 4, 5, 6, 7},
             {{0, 0, 4}, {1.2, 4, 3}},
             {}},
        Case{"overlapKeepsTheFirst",
             {samples(0, {1, 2, 3, 4}), samples(0.5, {13, 14, 15, 16})},
             {1, 2, 3, 4, 15, 16},
             {{0, 0, 6}},
             {ProblemKind::overlappingBlocks}},
        Case{"blockInsideAnother",
             {samples(0, {1, 2, 3, 4}), samples(0.25, {12, 13}), samples(1, {5})},
             {1, 2, 3, 4, 5},
             {{0, 0, 5}},
             {ProblemKind::overlappingBlocks}},
        Case{"sameTimeTwice",
             {samples(0, {1, 2}), samples(0, {8, 9, 3})},
             {1, 2, 3},
             {{0, 0, 3}},
             {ProblemKind::overlappingBlocks}},
        Case{"outOfOrder",
             {samples(0, {1, 2, 3, 4}), samples(3, {13, 14}), samples(1, {5, 6, 7, 8}),
              samples(2, {9, 10, 11, 12})},
             {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14},
             {{0, 0, 14}},
             {}},
        Case{"outOfOrderWithOverlapAndGap",
             {samples(5, {51, 52}), samples(0, {1, 2, 3, 4}), samples(0.75, {14, 5, 6})},
             {1, 2, 3, 4, 5, 6, 51, 52},
             {{0, 0, 6}, {5, 6, 2}},
             {ProblemKind::gapInChannel, ProblemKind::overlappingBlocks}},
        Case{"missingSamplesStay",
             {samples(0, {1, kMissingSample, 3})},
             {1, kMissingSample, 3},
             {{0, 0, 3}},
             {}},
        Case{"longBlockStays",
             {samples(0, Values(21, 7))},
             Values(21, 7),
             {{0, 0, 21}},
             {ProblemKind::longBlock}},
        Case{
            "fiveSecondsAreNotLong", {samples(0, Values(20, 7))}, Values(20, 7), {{0, 0, 20}}, {}}),
    [](const auto& test) { return test.param.name; });

TEST(SamplesFile, lostBlocksStayAsEntriesWithAllTheyHeld) {
  const auto file =
      readText(std::string(kHeader) + "\n" +
               joined({samples(1, {1, 2}, "x"), samples(2, {1, 2}), samples(3, {1, 2}, "odd")}));
  ASSERT_TRUE(file);
  const Record& record = file->records.front().record;
  ASSERT_EQ(record.entries.size(), 2U);
  const auto* lost = std::get_if<entry::LostSamples>(&record.entries[0].data);
  ASSERT_NE(lost, nullptr);
  EXPECT_EQ(lost->channel, "x");
  EXPECT_TRUE(record.entries[0].incomplete);
  EXPECT_EQ(record.entries[0].otherKeys, R"("count":2,"data":"AQACAA==")");
  // Of a channel in an unknown encoding: kept as something other, not lost.
  const auto* other = record.entries[1].complete<entry::Other>();
  ASSERT_NE(other, nullptr);
  EXPECT_EQ(other->type, "samples");
  EXPECT_EQ(record.entries[1].otherKeys, R"("channel":"odd","count":2,"data":"AQACAA==")");
  EXPECT_FALSE(record.channels[1].drawable);
}

TEST(SamplesFile, blocksOfAWrongChannelAreLost) {
  const auto file = readText(
      std::string(R"({"resuslog":"1.0","id":"urn:uuid:123e4567-e89b-42d3-a456-426614174000",)"
                  R"("recorded":"2026-03-14T09:12:30Z","kind":"drill",)"
                  R"("channels":[{"id":"ecg","quantity":"ecg","rate_hz":-4}]})") +
      "\n" + samples(1, {1, 2}) + "\n");
  ASSERT_TRUE(file);
  const Record& record = file->records.front().record;
  EXPECT_FALSE(record.channels.front().drawable);
  EXPECT_TRUE(record.channels.front().samples.empty());
  ASSERT_EQ(record.entries.size(), 1U);
  EXPECT_TRUE(record.entries.front().incomplete);
  EXPECT_EQ(file->problems.front().kind, ProblemKind::wrongChannel);
}

TEST(SamplesFile, aLongRecordingKeepsEverySample) {
  // Longer than the pieces a file is read in, with a channel that comes more often than its rate
  // tells.
  std::string text = std::string(kHeader) + "\n";
  Values all;
  for (int line = 0; line < 30000; ++line) {
    Values values(20);
    std::iota(values.begin(), values.end(), static_cast<std::int16_t>(line));
    all.insert(all.end(), values.begin(), values.end());
    text += samples(5 * line, values) + "\n";
  }
  ASSERT_GT(text.size(), 3U << 20U);
  const auto file = readText(text);
  ASSERT_TRUE(file);
  EXPECT_EQ(file->records.front().record.channels.front().samples, all);
  EXPECT_EQ(file->records.front().record.channels.front().blocks.size(), 1U);
  EXPECT_EQ(file->records.front().record.channels.front().lastLine, timeFromSeconds(149995));
}

} // namespace
} // namespace afterbeat
