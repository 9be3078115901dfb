/// The published page of definitions and the words the program prints are the same.
#include "core/bytes/digest.h"
#include "core/measures/definitions_version.h"
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

// Archives keep figures, and compute them anew only for a new version of the definitions. Where the
// page was changed so that the same record may get another figure, raise kDefinitionsVersion; where
// only its words were changed, put the page's new checksum here.
TEST(Definitions, AChangedPageIsANewVersionOfThem) {
  constexpr int kVersion = 1;
  constexpr std::string_view kPage =
      "08341b3f493c07ceb0f57b9aefbc89fea5fb76b76ae6228f4ef3933cc96b1109";
  std::ifstream in(AFTERBEAT_SOURCE_DIR "/resources/definitions/measures.md", std::ios::binary);
  const std::string page{std::istreambuf_iterator<char>(in), {}};
  EXPECT_EQ(sha256Hex(page), kPage)
      << "measures.md was changed: may a record get another figure now? Then raise "
         "kDefinitionsVersion (core/measures/definitions_version.h). Then renew both values here.";
  EXPECT_EQ(kDefinitionsVersion, kVersion);
}

} // namespace
} // namespace afterbeat
