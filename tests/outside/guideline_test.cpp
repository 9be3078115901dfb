/// Guideline targets against what the publications state. Marks: S read in a secondary publication,
/// M from memory. The texts themselves were not read.
#include "core/guideline/profile.h"

#include <gtest/gtest.h>

#include <string>

namespace afterbeat {
namespace {

class Guideline : public testing::TestWithParam<std::string> {
protected:
  const Profile& profile() const { return *builtInProfile(GetParam()); }
  bool european() const { return GetParam().rfind("european", 0) == 0; }
};
INSTANTIATE_TEST_SUITE_P(Each, Guideline,
                         testing::Values("european-2021", "european-2025", "american-2020",
                                         "american-2025"),
                         [](const auto& one) {
                           return one.param.substr(0, 8) + one.param.substr(one.param.size() - 4);
                         });

// 100 to 120 a minute at all ages. S: ERC 2021 (Olasveengen et al., Resuscitation 2021;161:98-114),
// AHA 2020 (Panchal et al., Circulation 2020;142:S366-S468), unchanged in 2025.
TEST_P(Guideline, CompressionRate) {
  EXPECT_EQ(profile().ratePerMin->value.low, 100);
  EXPECT_EQ(profile().ratePerMin->value.high, 120);
  EXPECT_EQ(profile().ratePerMin->source.mark, SourceMark::secondary);
}

// Adults 50 to 60 mm; children "about 50 mm", infants "about 40 mm", so no range for them. S: as
// above.
TEST_P(Guideline, CompressionDepth) {
  const auto& adult = profile().depth.at(PatientCategory::adult);
  ASSERT_TRUE(adult.value.range.has_value());
  EXPECT_EQ(adult.value.range->low, 50);
  EXPECT_EQ(adult.value.range->high, 60);
  EXPECT_EQ(adult.source.mark, SourceMark::secondary);
  for (const auto category : {PatientCategory::child, PatientCategory::infant}) {
    EXPECT_FALSE(profile().depth.at(category).value.range.has_value());
    EXPECT_EQ(profile().depth.at(category).value.words.rfind("about ", 0), 0U);
  }
}

// At least 0.60, target 0.80. S: Meaney et al., Circulation 2013;128:417-435, and the guidelines.
TEST_P(Guideline, ChestCompressionFraction) {
  EXPECT_EQ(profile().fractionLeast->value, 0.6);
  EXPECT_EQ(profile().fractionTarget->value, 0.8);
  EXPECT_EQ(profile().fractionTarget->source.mark, SourceMark::secondary);
}

// Two breaths and any other pause at most 10 s. S. Pre-shock pause below 10 s; the European target
// is below 5 s. S: Soar et al., Resuscitation 2021;161:115-151.
TEST_P(Guideline, Pauses) {
  EXPECT_EQ(profile().breathPauseLimit->value, 10);
  EXPECT_EQ(profile().pauseLimit->value, 10);
  EXPECT_EQ(profile().preShockPauseLimit->value, european() ? 5 : 10);
  EXPECT_EQ(profile().preShockPauseLimit->source.mark, SourceMark::secondary);
}

// 30:2, two trained rescuers for a child 15:2 (S); with an advanced airway an adult gets 10 breaths
// a minute (M), a child 20 to 30 (American, S), by age 25 to 10 (European, M).
TEST_P(Guideline, Breaths) {
  EXPECT_EQ(profile().ratio.at(PatientCategory::adult).value, "30:2");
  EXPECT_EQ(profile().ratio.at(PatientCategory::child).value, "15:2");
  const auto& breaths = profile().advancedAirwayBreaths;
  EXPECT_EQ(breaths.at(PatientCategory::adult).value.low, 10);
  EXPECT_EQ(breaths.at(PatientCategory::adult).value.high, 10);
  EXPECT_EQ(breaths.at(PatientCategory::adult).source.mark, SourceMark::memory);
  EXPECT_EQ(breaths.at(PatientCategory::child).value.high, european() ? 20 : 30);
  EXPECT_EQ(breaths.at(PatientCategory::infant).value.low, european() ? 25 : 20);
}

// A cycle of 120 s (M); leaning up to 5 mm (or 2.5 kg) counts as released (M).
TEST_P(Guideline, CycleAndLeaning) {
  EXPECT_EQ(profile().cycleLength->value, 120);
  EXPECT_EQ(profile().cycleLength->source.mark, SourceMark::memory);
  EXPECT_EQ(profile().leaningLimitMm->value, 5);
  EXPECT_EQ(profile().leaningLimitMm->source.mark, SourceMark::memory);
}

} // namespace
} // namespace afterbeat
