// The figures of every sample against what its story says.
#include "core/measures/figures.h"
#include "samples/samples.h"
#include "samples/truth.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace afterbeat {
namespace {

using nlohmann::json;

class Truthful : public testing::TestWithParam<std::size_t> {
protected:
  static const std::vector<samples::Sample>& all() {
    static const auto made = samples::smallSamples(1);
    return made;
  }
  const samples::Sample& sample() const { return all()[GetParam()]; }
  json truth() const {
    return json::parse(samples::truthJson(sample().story.record, sample().story.truth));
  }
  Figures figures() const { return computeFigures(sample().story.record); }
};

INSTANTIATE_TEST_SUITE_P(Each, Truthful, testing::Range(std::size_t{0}, std::size_t{8}));

TEST_P(Truthful, FiguresAreThoseOfTheStory) {
  const Figures found = figures();
  const json expected = truth().at("figures");
  ASSERT_GT(expected.size(), 15U);
  for (const auto& [name, value] : expected.items()) {
    const MeasureInfo* info = measureInfo(std::string_view(name));
    ASSERT_NE(info, nullptr) << name;
    const Measure& measure = found[info->id];
    ASSERT_TRUE(measure.value) << sample().name << ": " << name;
    EXPECT_NEAR(*measure.value, value.get<double>(), 1e-9) << sample().name << ": " << name;
  }
}

TEST_P(Truthful, WindowIsThatOfTheStory) {
  const Figures found = figures();
  ASSERT_TRUE(found.window);
  EXPECT_EQ(found.window->begin, sample().story.truth.windowBegin);
  EXPECT_EQ(found.window->end, sample().story.truth.windowEnd);
}

TEST_P(Truthful, PausesAndTheirCausesAreThoseOfTheStory) {
  const Figures found = figures();
  const auto& expected = sample().story.truth.pauses;
  ASSERT_EQ(found.pauses.size(), expected.size()) << sample().name;
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(found.pauses[i].stretch.begin, expected[i].from) << sample().name << " " << i;
    EXPECT_EQ(found.pauses[i].stretch.end, expected[i].to) << sample().name << " " << i;
    EXPECT_EQ(name(found.pauses[i].cause), expected[i].cause)
        << sample().name << " at " << seconds(expected[i].from);
  }
}

TEST_P(Truthful, ShocksAndThePausesAroundThemAreThoseOfTheStory) {
  const Figures found = figures();
  const auto& expected = sample().story.truth.shocks;
  ASSERT_EQ(found.shocks.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(found.shocks[i].t, expected[i].t);
    EXPECT_EQ(found.shocks[i].delivered, expected[i].delivered);
    EXPECT_EQ(found.shocks[i].pre, expected[i].pre) << sample().name << " shock " << i;
    EXPECT_EQ(found.shocks[i].post, expected[i].post) << sample().name << " shock " << i;
    EXPECT_EQ(found.shocks[i].adviceToShock, expected[i].adviceToShock);
  }
}

TEST_P(Truthful, CompressionsAreThoseOfTheStory) {
  const Figures found = figures();
  const auto& expected = sample().story.truth.compressions;
  ASSERT_EQ(found.compressions.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(found.compressions[i], expected[i].t);
  }
  EXPECT_TRUE(found.notices.empty()) << sample().name;
}

TEST_P(Truthful, IsMarkedAsSynthetic) {
  EXPECT_TRUE(sample().story.record.header.synthetic);
}

TEST(DrillEvening, GetsBetterFromDrillToDrill) {
  double handsOff = 1, before = 1e9, inRange = -1;
  for (int number = 1; number <= 4; ++number) {
    const auto sample = samples::drill(1, number);
    EXPECT_EQ(sample.story.record.header.kind, RecordKind::drill);
    const Figures f = computeFigures(sample.story.record);
    EXPECT_LT(*f[MeasureId::handsOffFraction].value, handsOff);
    EXPECT_LT(*f[MeasureId::preShockPauseWorst].value, before);
    EXPECT_GT(*f[MeasureId::compressionRateInRange].value, inRange);
    handsOff = *f[MeasureId::handsOffFraction].value;
    before = *f[MeasureId::preShockPauseWorst].value;
    inRange = *f[MeasureId::compressionRateInRange].value;
  }
}

TEST(FerryTerminal, HasSomethingToTalkAbout) {
  const auto sample = samples::ferryTerminal(1);
  const Figures f = computeFigures(sample.story.record);
  EXPECT_EQ(*f[MeasureId::shocksDelivered].value, 4);
  EXPECT_EQ(*f[MeasureId::energyTotal].value, 750);
  EXPECT_GT(*f[MeasureId::longestPause].value, 30);
  // The third cycle drifts above the target of 120 a minute.
  ASSERT_GE(f.cycles.size(), 4U);
  EXPECT_GT(*f.cycles[2].rate, 120);
  EXPECT_LT(*f.cycles[1].rate, 120);
  EXPECT_LT(*f.cycles[3].rate, 120);
}

// What the long records are for: so many samples, so many compressions, and right for all that.
TEST(LongRecords, AreAsLongAsTheySay) {
  for (const auto& sample : samples::longSamples(1)) {
    std::size_t count = 0;
    for (const auto& channel : sample.story.record.channels) {
      count += channel.samples.size();
    }
    const auto& compressions = sample.story.truth.compressions;
    if (sample.name == "long-three-hours") {
      EXPECT_EQ(count, 10'800'000U);
      EXPECT_EQ(sample.story.record.channels.size(), 4U);
    } else {
      EXPECT_EQ(count, 0U);
      EXPECT_EQ(compressions.size(), 20'000U);
    }
    const Figures f = computeFigures(sample.story.record);
    EXPECT_EQ(f.compressions.size(), compressions.size());
    const auto truth =
        json::parse(samples::truthJson(sample.story.record, sample.story.truth)).at("figures");
    for (const auto& [name, value] : truth.items()) {
      const Measure& measure = f[measureInfo(std::string_view(name))->id];
      ASSERT_TRUE(measure.value) << sample.name << ": " << name;
      EXPECT_NEAR(*measure.value, value.get<double>(), 1e-9) << sample.name << ": " << name;
    }
  }
}

TEST(Samples, OfAnotherSeedDiffer) {
  const auto one = samples::drill(1, 1), other = samples::drill(2, 1);
  EXPECT_NE(one.story.record.header.id, other.story.record.header.id);
  EXPECT_NE(one.story.truth.compressions[5].t, other.story.truth.compressions[5].t);
}

} // namespace
} // namespace afterbeat
