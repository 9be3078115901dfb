#include "core/signal/trace.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace afterbeat {
namespace {

Time at(double s) {
  return *timeFromSeconds(s);
}

/// A channel of 250 Hz whose blocks lie `gap` seconds apart.
Channel channelOf(std::size_t blocks, std::size_t perBlock, double gap, double scale = 0.01) {
  Channel channel;
  channel.rateHz = 250;
  channel.scale = scale;
  double t = 0;
  for (std::size_t b = 0; b < blocks; ++b) {
    channel.blocks.push_back({at(t), channel.samples.size(), perBlock});
    for (std::size_t i = 0; i < perBlock; ++i) {
      channel.samples.push_back(static_cast<std::int16_t>((i * 7919 + b * 104'729) % 4001) - 2000);
    }
    t += static_cast<double>(perBlock) / 250 + gap;
  }
  return channel;
}

int penLifts(const std::vector<TracePoint>& points) {
  return static_cast<int>(std::count_if(points.begin(), points.end(),
                                        [](const TracePoint& p) { return std::isnan(p.value); }));
}

TEST(Trace, DrawsEverySampleWhereThereIsRoom) {
  const Channel channel = channelOf(1, 1000, 0);
  const MinMaxPyramid pyramid(channel.samples);
  const auto points = traceOf(channel, pyramid, {at(1), at(2)}, 1000);
  // 250 samples from 1 s on, the one at 2 s and one beyond.
  ASSERT_GE(points.size(), 251u);
  ASSERT_LE(points.size(), 253u);
  for (const TracePoint& p : points) {
    const auto i = static_cast<std::size_t>(std::llround(p.seconds * 250));
    EXPECT_DOUBLE_EQ(p.value, channel.physical(channel.samples[i]));
  }
}

TEST(Trace, GivesAtMostTwoPointsAPixel) {
  const Channel channel = channelOf(1, 500'000, 0);
  const MinMaxPyramid pyramid(channel.samples);
  for (const double length : {2.0, 7.0, 60.0, 333.0, 2000.0}) {
    const auto points = traceOf(channel, pyramid, {at(0), at(length)}, 800);
    EXPECT_LE(points.size(), 2u * 802u) << length;
    EXPECT_GE(points.size(), 400u) << length;
  }
}

TEST(Trace, ShowsTheSameBinsWhenTheViewMoves) {
  const Channel channel = channelOf(1, 500'000, 0);
  const MinMaxPyramid pyramid(channel.samples);
  const auto key = [](const TracePoint& p) { return std::pair(p.seconds, p.value); };
  std::set<std::pair<double, double>> before;
  for (const TracePoint& p : traceOf(channel, pyramid, {at(100), at(400)}, 800)) {
    before.insert(key(p));
  }
  for (const TracePoint& p : traceOf(channel, pyramid, {at(100.37), at(400.37)}, 800)) {
    if (p.seconds > 101 && p.seconds < 399) {
      EXPECT_EQ(before.count(key(p)), 1u) << p.seconds;
    }
  }
}

TEST(Trace, BinsHoldExactlyTheExtremesOfTheirSamples) {
  EXPECT_TRUE(rc::check("reduction = plain reduction", [] {
    const auto blocks = *rc::gen::inRange<std::size_t>(1, 4);
    const auto perBlock = *rc::gen::inRange<std::size_t>(1, 3000);
    const auto pixels = *rc::gen::inRange(1, 200);
    const Channel channel = channelOf(blocks, perBlock, 0.5);
    const MinMaxPyramid pyramid(channel.samples);
    const Interval all{channel.blocks.front().t, channel.blocks.back().t + Duration{20'000'000}};
    const auto points = traceOf(channel, pyramid, all, pixels);
    double low = 1e9, high = -1e9;
    for (const TracePoint& p : points) {
      if (!std::isnan(p.value)) {
        low = std::min(low, p.value);
        high = std::max(high, p.value);
      }
    }
    const MinMax plain = minMaxOf(channel.samples, 0, channel.samples.size());
    RC_ASSERT(low == channel.physical(plain.low));
    RC_ASSERT(high == channel.physical(plain.high));
    RC_ASSERT(penLifts(points) == static_cast<int>(blocks) - 1);
    RC_ASSERT(std::is_sorted(points.begin(), points.end(),
                             [](const auto& a, const auto& b) { return a.seconds < b.seconds; }));
  }));
}

TEST(Trace, GapsAndMissingSamplesLiftThePen) {
  Channel channel = channelOf(2, 250, 3);
  std::fill(channel.samples.begin() + 100, channel.samples.begin() + 120, kMissingSample);
  const MinMaxPyramid pyramid(channel.samples);
  EXPECT_EQ(penLifts(traceOf(channel, pyramid, {at(0), at(5)}, 2000)), 2);
  // Nothing is drawn inside the gap.
  for (const TracePoint& p : traceOf(channel, pyramid, {at(0), at(5)}, 100)) {
    if (!std::isnan(p.value)) {
      EXPECT_FALSE(p.seconds > 1.0 && p.seconds < 3.9) << p.seconds;
    }
  }
}

TEST(Trace, AValueBetweenTwoSamplesLiesOnTheLineThatJoinsThem) {
  const Channel channel = channelOf(1, 1000, 0);
  for (const std::size_t i : {0U, 1U, 500U, 998U}) {
    const Time here = channel.timeOf(channel.blocks[0], i);
    const double a = channel.physical(channel.samples[i]);
    const double b = channel.physical(channel.samples[i + 1]);
    EXPECT_DOUBLE_EQ(*valueAt(channel, here), a);
    const auto step = seconds(channel.timeOf(channel.blocks[0], i + 1) - here);
    const Time quarter = here + *durationFromSeconds(step / 4);
    EXPECT_NEAR(*valueAt(channel, quarter), a + (b - a) / 4, 1e-9);
  }
}

TEST(Trace, ThereIsNoValueOutsideTheSamplesInGapsAndBesideMissingOnes) {
  Channel channel = channelOf(2, 250, 3);
  const Time last = channel.timeOf(channel.blocks[0], 249);
  EXPECT_TRUE(valueAt(channel, last));
  EXPECT_FALSE(valueAt(channel, last + Duration{1000}));
  EXPECT_FALSE(valueAt(channel, channel.blocks[1].t - Duration{1}));
  EXPECT_TRUE(valueAt(channel, channel.blocks[1].t));
  EXPECT_FALSE(valueAt(channel, channel.blocks[0].t - Duration{1}));
  channel.samples[100] = kMissingSample;
  const auto at = [&](std::size_t i) { return channel.timeOf(channel.blocks[0], i); };
  EXPECT_FALSE(valueAt(channel, at(100)));
  EXPECT_FALSE(valueAt(channel, at(99) + Duration{1000}));
  EXPECT_TRUE(valueAt(channel, at(99)));
  EXPECT_TRUE(valueAt(channel, at(101)));
  channel.drawable = false;
  EXPECT_FALSE(valueAt(channel, at(5)));
}

TEST(Trace, AnUnusableChannelIsNotDrawn) {
  Channel channel = channelOf(1, 100, 0);
  const MinMaxPyramid pyramid(channel.samples);
  channel.drawable = false;
  EXPECT_TRUE(traceOf(channel, pyramid, {at(0), at(5)}, 100).empty());
}

TEST(Trace, TheUsualRangeLeavesOutASpike) {
  Channel channel = channelOf(1, 100'000, 0);
  channel.samples[50'000] = 32'000;
  const MinMaxPyramid pyramid(channel.samples);
  const ValueRange range = usualRange(channel, pyramid);
  EXPECT_NEAR(range.low, -20, 0.5);
  EXPECT_NEAR(range.high, 20, 0.5);
  EXPECT_LT(range.high, 25);
}

TEST(Trace, TheUsualRangeStandsUprightWithANegativeScale) {
  const Channel channel = channelOf(1, 1000, 0, -0.01);
  const MinMaxPyramid pyramid(channel.samples);
  const ValueRange range = usualRange(channel, pyramid);
  EXPECT_LT(range.low, range.high);
}

} // namespace
} // namespace afterbeat
