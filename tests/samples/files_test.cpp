// The files in samples/ are what the generator writes, and reading them finds nothing wrong.
#include "core/measures/figures.h"
#include "core/resuslog/write_log.h"
#include "samples/samples.h"

#include <filesystem>
#include <fstream>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat {
namespace {

std::string fileText(const std::string& name) {
  std::ifstream file(std::string(AFTERBEAT_SOURCE_DIR) + "/samples/" + name, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

LogFile readBytes(const std::string& bytes) {
  MemorySource source(bytes);
  auto log = readLog(source);
  EXPECT_TRUE(log) << (log ? "" : sentence(log.error()));
  return log ? std::move(*log) : LogFile{};
}

std::string told(const std::vector<Problem>& problems) {
  std::string text;
  for (const auto& p : problems) {
    text += std::to_string(p.line) + ": " + sentence(p) + "\n";
  }
  return text;
}

class Files : public testing::TestWithParam<std::size_t> {
protected:
  static const std::vector<samples::Sample>& all() {
    static const auto made = samples::smallSamples(1);
    return made;
  }
  const samples::Sample& sample() const { return all()[GetParam()]; }
};

INSTANTIATE_TEST_SUITE_P(Each, Files, testing::Range(std::size_t{0}, std::size_t{8}));

TEST_P(Files, AreWhatTheGeneratorWrites) {
  // Not EXPECT_EQ: nobody wants to see a megabyte of differences.
  EXPECT_TRUE(fileText(sample().name + ".resuslog") == logBytes(sample()))
      << sample().name << ": run afterbeat-samples samples";
  EXPECT_TRUE(fileText(sample().name + ".truth.json") == truthBytes(sample())) << sample().name;
}

TEST_P(Files, AreReadWithoutAProblem) {
  const LogFile log = readBytes(fileText(sample().name + ".resuslog"));
  ASSERT_EQ(log.records.size(), 1U);
  if (sample().cutAtCompression) {
    // Half a line at the very end, and no seal; everything above is whole.
    const auto lines = static_cast<int>(log.records[0].lines.size());
    ASSERT_FALSE(log.problems.empty());
    EXPECT_EQ(log.problems.back().kind, ProblemKind::notClosed) << told(log.problems);
    for (const auto& problem : log.problems) {
      EXPECT_EQ(problem.line, lines) << told(log.problems);
    }
    EXPECT_FALSE(log.records[0].record.seal.present);
  } else {
    EXPECT_EQ(told(log.problems), "") << sample().name;
    EXPECT_TRUE(log.records[0].record.seal.matches);
  }
}

TEST_P(Files, AreWrittenAgainAsTheyAre) {
  const std::string bytes = fileText(sample().name + ".resuslog");
  const auto again = [](const std::string& from, RewriteReport& report) {
    MemorySource source(from);
    std::string to;
    const auto done = rewriteRecord(source, readBytes(from), 0, [&](std::string_view piece) {
      to += piece;
      return true;
    });
    EXPECT_TRUE(done);
    report = done.value_or(RewriteReport{});
    return to;
  };
  RewriteReport report;
  const std::string first = again(bytes, report);
  EXPECT_EQ(report.changed, sample().cutAtCompression.has_value());
  EXPECT_EQ(report.broken, sample().cutAtCompression ? 1 : 0);
  EXPECT_EQ(first == bytes, !sample().cutAtCompression) << sample().name;
  EXPECT_TRUE(again(first, report) == first) << sample().name;
  EXPECT_FALSE(report.changed);
}

TEST_P(Files, GiveTheFiguresOfTheirTruth) {
  const LogFile log = readBytes(fileText(sample().name + ".resuslog"));
  ASSERT_EQ(log.records.size(), 1U);
  const Figures figures = computeFigures(log.records[0].record);
  const auto truth = nlohmann::json::parse(fileText(sample().name + ".truth.json"));
  EXPECT_EQ(truth.at("record"), log.records[0].record.header.id);
  for (const auto& [name, value] : truth.at("figures").items()) {
    const Measure& measure = figures[measureInfo(std::string_view(name))->id];
    ASSERT_TRUE(measure.value) << sample().name << ": " << name;
    EXPECT_NEAR(*measure.value, value.get<double>(), 1e-9) << sample().name << ": " << name;
  }
  const auto& pauses = truth.at("pauses");
  ASSERT_EQ(figures.pauses.size(), pauses.size());
  for (std::size_t i = 0; i < pauses.size(); ++i) {
    EXPECT_EQ(seconds(figures.pauses[i].stretch.begin), pauses[i].at("from_s"));
    EXPECT_EQ(seconds(figures.pauses[i].stretch.end), pauses[i].at("to_s"));
  }
}

TEST_P(Files, KeepEverySample) {
  const LogFile log = readBytes(fileText(sample().name + ".resuslog"));
  ASSERT_EQ(log.records.size(), 1U);
  const auto& read = log.records[0].record.channels;
  const auto& made = sample().story.record.channels;
  ASSERT_EQ(read.size(), made.size());
  for (std::size_t i = 0; i < made.size(); ++i) {
    EXPECT_EQ(read[i].quantity, made[i].quantity);
    EXPECT_EQ(read[i].unit, made[i].unit);
    EXPECT_EQ(read[i].rateHz, made[i].rateHz);
    EXPECT_TRUE(read[i].samples == made[i].samples) << made[i].id;
  }
}

TEST(Files, StayBelowFourMegabytesTogether) {
  std::uintmax_t sum = 0;
  for (const auto& file :
       std::filesystem::directory_iterator(std::string(AFTERBEAT_SOURCE_DIR) + "/samples")) {
    sum += file.is_regular_file() ? file.file_size() : 0;
  }
  EXPECT_LT(sum, 4'000'000U);
}

} // namespace
} // namespace afterbeat
