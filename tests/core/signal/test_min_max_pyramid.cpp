#include "core/signal/min_max_pyramid.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <random>

namespace afterbeat {
namespace {

std::vector<std::int16_t> noise(std::size_t count, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_int_distribution<int> value(-32768, 32767);
  std::uniform_int_distribution<int> missing(0, 9);
  std::vector<std::int16_t> samples(count);
  for (std::int16_t& s : samples) {
    s = missing(random) == 0 ? kMissingSample : static_cast<std::int16_t>(value(random));
  }
  return samples;
}

TEST(MinMaxPyramid, EqualsThePlainReductionOnAnyStretch) {
  EXPECT_TRUE(rc::check("any samples, any stretch", [] {
    const auto samples =
        *rc::gen::container<std::vector<std::int16_t>>(rc::gen::weightedOneOf<std::int16_t>(
            {{4, rc::gen::arbitrary<std::int16_t>()}, {1, rc::gen::just(kMissingSample)}}));
    const MinMaxPyramid pyramid(samples);
    const auto begin = *rc::gen::inRange<std::size_t>(0, samples.size() + 3);
    const auto end = *rc::gen::inRange<std::size_t>(0, samples.size() + 3);
    RC_ASSERT(pyramid.over(begin, end) == minMaxOf(samples, begin, end));
  }));
}

TEST(MinMaxPyramid, EqualsThePlainReductionOnLongRuns) {
  const auto samples = noise(70'001, 7);
  const MinMaxPyramid pyramid(samples);
  std::mt19937 random(8);
  std::uniform_int_distribution<std::size_t> at(0, samples.size());
  for (int i = 0; i < 3000; ++i) {
    const std::size_t begin = at(random), end = at(random);
    ASSERT_EQ(pyramid.over(begin, end), minMaxOf(samples, begin, end)) << begin << " to " << end;
  }
}

TEST(MinMaxPyramid, DoesNotDependOnTheNumberOfThreads) {
  const auto samples = noise(3'200'017, 9);
  const MinMaxPyramid one(samples, 1);
  const MinMaxPyramid four(samples, 4);
  for (std::size_t begin = 0; begin < samples.size(); begin += 100'003) {
    ASSERT_EQ(one.over(begin, begin + 250'000), four.over(begin, begin + 250'000));
  }
  EXPECT_EQ(four.over(0, samples.size()), minMaxOf(samples, 0, samples.size()));
}

TEST(MinMaxPyramid, SaysThatOnlyMissingSamplesAreNothing) {
  const std::vector<std::int16_t> samples(1000, kMissingSample);
  const MinMaxPyramid pyramid(samples);
  EXPECT_TRUE(pyramid.over(0, 1000).empty());
  EXPECT_TRUE(pyramid.over(3, 17).empty());
  EXPECT_TRUE(MinMaxPyramid().over(0, 10).empty());
}

TEST(MinMaxPyramid, KeepsTheLargestValueBesideMissingOnes) {
  std::vector<std::int16_t> samples(64, kMissingSample);
  samples[20] = std::numeric_limits<std::int16_t>::max();
  EXPECT_EQ(MinMaxPyramid(samples).over(0, 64), (MinMax{32767, 32767}));
  samples[20] = -32767;
  EXPECT_EQ(MinMaxPyramid(samples).over(0, 64), (MinMax{-32767, -32767}));
}

} // namespace
} // namespace afterbeat
