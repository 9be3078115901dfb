// The made-up waveforms keep the format's signs and say what the story says.
#include "samples/samples.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

const samples::Sample& ferry() {
  static const samples::Sample sample = samples::ferryTerminal(1);
  return sample;
}

const Channel& channel(const char* id) {
  const auto& all = ferry().story.record.channels;
  return *std::find_if(all.begin(), all.end(), [&](const Channel& c) { return c.id == id; });
}

double valueAt(const Channel& c, Time t) {
  const double i = seconds(t - c.blocks.front().t) * c.rateHz;
  return c.physical(c.samples.at(static_cast<std::size_t>(std::llround(i))));
}

double largest(const Channel& c, double from, double to) {
  double most = 0;
  for (double s = from; s < to; s += 1 / c.rateHz) {
    most = std::max(most, std::fabs(valueAt(c, samples::at(s))));
  }
  return most;
}

TEST(Waves, LastFromThePadsToPowerOff) {
  for (const auto& c : ferry().story.record.channels) {
    ASSERT_EQ(c.blocks.size(), 1U);
    EXPECT_EQ(c.blocks[0].t, samples::at(31.4));
    EXPECT_EQ(c.blocks[0].count, c.samples.size());
    EXPECT_NEAR(static_cast<double>(c.samples.size()) / c.rateHz, 1320 - 31.4, 0.02) << c.id;
    EXPECT_EQ(std::count(c.samples.begin(), c.samples.end(), kMissingSample), 0);
  }
}

TEST(Waves, DepthIsPositiveWhenPressedAndAsDeepAsTheCompression) {
  for (const auto& entry : ferry().story.truth.compressions) {
    const auto& c = std::get<entry::Compression>(entry.data);
    EXPECT_NEAR(valueAt(channel("depth"), entry.t), *c.depthMm, 2) << seconds(entry.t);
  }
}

// Lying still the sensor feels gravity along the axis out of the chest; at the deepest point the
// chest is being pushed back outwards: more than gravity.
TEST(Waves, AccelerationHasTheFormatsSign) {
  const Channel& c = channel("acceleration");
  EXPECT_NEAR(valueAt(c, samples::at(1200)), 9.81, 0.5);
  for (const auto& entry : ferry().story.truth.compressions) {
    EXPECT_GT(valueAt(c, entry.t), 9.81 + 1.5) << seconds(entry.t);
  }
}

// Summing the acceleration twice over one compression gives its depth again.
TEST(Waves, AccelerationAndDepthTellTheSame) {
  const Channel& acceleration = channel("acceleration");
  const double peak = 640, dt = 0.01;
  const auto& all = ferry().story.truth.compressions;
  const auto near =
      std::find_if(all.begin(), all.end(), [&](const Entry& e) { return seconds(e.t) > peak; });
  double speed = 0, depth = 0, deepest = 0;
  for (double s = seconds(near->t) - 0.27; s < seconds(near->t) + 0.05; s += dt) {
    speed -= (valueAt(acceleration, samples::at(s)) - 9.81) * dt;
    depth += speed * dt;
    deepest = std::max(deepest, depth);
  }
  EXPECT_NEAR(deepest * 1000, *std::get<entry::Compression>(near->data).depthMm, 12);
}

TEST(Waves, EcgShowsRhythmsHandsAndShocks) {
  const Channel& ecg = channel("ecg");
  EXPECT_GT(largest(ecg, 58.6, 58.8), 9) << "a shock leaps off the trace";
  EXPECT_GT(largest(ecg, 46, 50), 0.2) << "fibrillation";
  EXPECT_LT(largest(ecg, 483, 487), 0.15) << "asystole is nearly flat";
  EXPECT_GT(largest(ecg, 1200, 1205), 0.7) << "beats";
  EXPECT_GT(largest(ecg, 495, 500), 0.3) << "hands on the chest shake it";
}

} // namespace
} // namespace afterbeat
