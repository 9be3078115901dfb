/// The published page of definitions and the words the program prints are the same.
#include "core/measures/figures.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

namespace afterbeat {
namespace {

TEST(Definitions, EveryMeasureStandsOnThePageAsPrinted) {
  std::ifstream in(AFTERBEAT_SOURCE_DIR "/resources/definitions/measures.md");
  const std::string page{std::istreambuf_iterator<char>(in), {}};
  for (int i = 0; i < static_cast<int>(MeasureId::count_); ++i) {
    const MeasureInfo& info = measureInfo(static_cast<MeasureId>(i));
    const std::string row = fmt::format("| `{}` | {} | {} | {} ({}) |\n", info.name, info.unit,
                                        info.definition, info.source, markWords(info.mark));
    EXPECT_NE(page.find(row), std::string::npos) << row;
    EXPECT_EQ(measureInfo(info.name), &info);
  }
}

} // namespace
} // namespace afterbeat
