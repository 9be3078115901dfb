// The example that the specification explains is read as it is explained.
#include "core/resuslog/read_log.h"

#include <fstream>
#include <sstream>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

std::string example() {
  std::ifstream file(std::string(AFTERBEAT_SOURCE_DIR) + "/resources/format/resus-log-1.0.md");
  std::stringstream text;
  text << file.rdbuf();
  const std::string all = text.str();
  const std::string fence = "```resuslog\n";
  const auto begin = all.find(fence) + fence.size();
  return all.substr(begin, all.find("```", begin) - begin);
}

TEST(Example, IsReadAsItIsExplained) {
  const std::string bytes = example();
  MemorySource source(bytes);
  const auto log = readLog(source);
  ASSERT_TRUE(log) << sentence(log.error());
  for (const auto& problem : log->problems) {
    ADD_FAILURE() << problem.line << ": " << sentence(problem);
  }
  ASSERT_EQ(log->records.size(), 1U);
  const Record& record = log->records[0].record;
  EXPECT_TRUE(record.seal.present);
  EXPECT_TRUE(record.seal.matches);
  EXPECT_EQ(record.header.kind, RecordKind::drill);
  EXPECT_TRUE(record.header.synthetic);
  EXPECT_EQ(record.header.clock.offset, Duration{-3'500'000});
  // Twelve entry lines: one is samples, and one of the two for the analysis replaces the other.
  ASSERT_EQ(record.entries.size(), 10U);
  EXPECT_EQ(record.entries.front().t, Time{Duration{-20'000'000}});
  const auto* analysis = record.entries[6].complete<entry::Analysis>();
  ASSERT_NE(analysis, nullptr);
  EXPECT_EQ(analysis->advice, Advice::shock);
  EXPECT_EQ(record.entries[6].end, Time{Duration{8'200'000}});
  ASSERT_EQ(record.channels.size(), 1U);
  const Channel& depth = record.channels[0];
  ASSERT_EQ(depth.samples.size(), 15U);
  EXPECT_NEAR(depth.physical(depth.samples[4]), 48.5, 1e-9);
  EXPECT_EQ(depth.timeOf(depth.blocks[0], 4), Time{Duration{3'000'000}});
  EXPECT_EQ(depth.samples[14], kMissingSample);
}

} // namespace
} // namespace afterbeat
