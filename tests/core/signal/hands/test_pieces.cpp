#include "core/signal/hands/hands.h"
#include "core/signal/hands/pieces.h"

#include "found.h"
#include "scenes.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

namespace afterbeat {
namespace {

using namespace scenes;

Channel tone(double rateHz, double hz, std::size_t count) {
  std::vector<double> values(count);
  for (std::size_t i = 0; i < count; ++i) {
    values[i] = 10 * std::sin(2 * std::numbers::pi * hz * static_cast<double>(i) / rateHz);
  }
  return channelOf("depth", "mm", values, rateHz, 0.001);
}

TEST(Pieces, KeepSlowMovementAndLoseFast) {
  for (const double rate : {250.0, 500.0, 1000.0, 300.0}) {
    const Pieces slow = readPieces(tone(rate, 2, static_cast<std::size_t>(10 * rate)));
    ASSERT_EQ(slow.pieces.size(), 1U);
    const Piece& piece = slow.pieces[0];
    EXPECT_GE(piece.rateHz, 40);
    EXPECT_LE(piece.rateHz, 75);
    for (std::size_t i = 10; i + 10 < piece.values.size(); ++i) {
      const double t = static_cast<double>(i) / piece.rateHz;
      EXPECT_NEAR(piece.values[i], 10 * std::sin(2 * std::numbers::pi * 2 * t), 0.02);
    }
    // What would fold to 2 Hz.
    const Pieces fast =
        readPieces(tone(rate, piece.rateHz - 2, static_cast<std::size_t>(10 * rate)));
    for (std::size_t i = 10; i + 10 < fast.pieces[0].values.size(); ++i) {
      EXPECT_LT(std::fabs(fast.pieces[0].values[i]), 0.1);
    }
  }
}

TEST(Pieces, BridgeSmallHolesAndCutAtLargeOnes) {
  Channel channel = tone(250, 1, 250 * 20);
  for (std::size_t i = 1000; i < 1020; ++i) {
    channel.samples[i] = kMissingSample;
  }
  for (std::size_t i = 2500; i < 2750; ++i) {
    channel.samples[i] = kMissingSample;
  }
  const Pieces read = readPieces(channel);
  ASSERT_EQ(read.pieces.size(), 2U);
  ASSERT_EQ(read.faults.size(), 1U);
  EXPECT_EQ(read.faults[0].fault, SignalFault::missing);
  EXPECT_NEAR(seconds(read.faults[0].where.begin), 10, 0.05);
  EXPECT_NEAR(seconds(read.faults[0].where.end), 11, 0.05);
  EXPECT_EQ(read.length, Duration{std::chrono::seconds{20}});
}

TEST(Pieces, CutAtTheEndOfTheNumberRangeAndBetweenBlocks) {
  Channel channel = tone(250, 1, 250 * 20);
  for (std::size_t i = 2500; i < 2750; ++i) {
    channel.samples[i] = 32767;
  }
  channel.blocks = {{Time{}, 0, 250 * 15}, {*timeFromSeconds(18), 250 * 15, 250 * 5}};
  const Pieces read = readPieces(channel);
  EXPECT_EQ(read.pieces.size(), 3U);
  ASSERT_EQ(read.faults.size(), 2U);
  EXPECT_EQ(read.faults[0].fault, SignalFault::saturated);
  EXPECT_EQ(read.faults[1].fault, SignalFault::missing);
  EXPECT_NEAR(seconds(read.faults[1].where.length()), 3, 1e-6);
}

TEST(Hands, NothingFromAChannelThatIsNotTheirs) {
  Channel channel = tone(250, 2, 5000);
  channel.quantity = "ecg";
  channel.unit = "mV";
  EXPECT_TRUE(compressionsFromAcceleration(channel).entries.empty());
  EXPECT_TRUE(compressionsFromDepth(channel).entries.empty());
  EXPECT_TRUE(compressionsFromForce(channel).entries.empty());
  EXPECT_TRUE(compressionsFromImpedance(channel).entries.empty());
  channel.quantity = "depth";
  EXPECT_EQ(compressionsFromDepth(channel).length, Duration{});
  channel.unit = "mm";
  channel.rateHz = 0;
  EXPECT_TRUE(compressionsFromDepth(channel).entries.empty());
}

/// Whatever a file holds: no crash, entries well formed.
TEST(Hands, WithstandAnySamples) {
  rc::check([] {
    Channel channel;
    channel.rateHz = *rc::gen::element(20.0, 50.0, 99.5, 250.0, 2000.0);
    channel.scale = *rc::gen::element(1e-3, 1.0, -0.5, 1e6);
    channel.offset = *rc::gen::element(0.0, 9.81, 300.0, -1e5);
    Time t{};
    for (int b = 0; b < 3; ++b) {
      const auto count = *rc::gen::inRange<std::size_t>(0, 1500);
      channel.blocks.push_back({t, channel.samples.size(), count});
      const int kind = *rc::gen::inRange(0, 5);
      const int period = *rc::gen::inRange(1, 200);
      unsigned dice = *rc::gen::inRange(1U, 1000000U);
      for (std::size_t i = 0; i < count; ++i) {
        dice = dice * 1664525U + 1013904223U;
        const int random = static_cast<int>(dice >> 16U) - 32768;
        const int value = kind == 0   ? random
                          : kind == 1 ? 0
                          : kind == 2 ? (static_cast<int>(i) / period % 2 == 0 ? 32767 : -32767)
                          : kind == 3 ? (random > 0 ? -32768 : random / 100)
                                      : static_cast<int>(i) * 37 % (period * 50);
        channel.samples.push_back(static_cast<std::int16_t>(value));
      }
      t += Duration{std::llround(static_cast<double>(count) / channel.rateHz * 1e6)} +
           Duration{*rc::gen::inRange(0, 3000000)};
    }
    channel.quantity = "acceleration";
    channel.unit = "m/s2";
    RC_ASSERT(wellFormed(compressionsFromAcceleration(channel)));
    channel.quantity = "depth";
    channel.unit = "mm";
    RC_ASSERT(wellFormed(compressionsFromDepth(channel)));
    channel.quantity = "force";
    channel.unit = "N";
    RC_ASSERT(wellFormed(compressionsFromForce(channel)));
    channel.quantity = "impedance";
    channel.unit = "Ohm";
    const Findings found = compressionsFromImpedance(channel);
    RC_ASSERT(wellFormed(found));
    std::vector<Time> times;
    for (const Entry& entry : found.entries) {
      times.push_back(entry.t);
    }
    RC_ASSERT(wellFormed(breathsFromImpedance(channel, times)));
  });
}

} // namespace
} // namespace afterbeat
