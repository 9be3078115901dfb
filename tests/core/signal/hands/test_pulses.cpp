#include "core/signal/hands/alike.h"
#include "core/signal/hands/pulses.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>
#include <random>

namespace afterbeat {
namespace {

TEST(Pulses, AreMaximaThatStandOutOnBothSides) {
  const std::vector<double> signal{0, 1, 5, 4.5, 5.2, 1, 0, 3, 0.5, 1, 0.4, 6, 6, 0};
  const auto pulses = findPulses(signal, 2);
  ASSERT_EQ(pulses.size(), 3U);
  EXPECT_EQ(pulses[0].top, 4U);
  EXPECT_EQ(pulses[0].before, 0U);
  EXPECT_EQ(pulses[0].after, 6U);
  EXPECT_DOUBLE_EQ(pulses[0].height, 5.2);
  EXPECT_EQ(pulses[1].top, 7U);
  EXPECT_EQ(pulses[2].top, 11U);
  EXPECT_EQ(pulses[2].after, 13U);
}

TEST(Pulses, AreInOrderAndHighEnoughWhateverTheSignal) {
  rc::check([] {
    const auto raw = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-50, 50));
    const std::vector<double> signal(raw.begin(), raw.end());
    std::size_t last = 0;
    for (const Pulse& pulse : findPulses(signal, 7)) {
      RC_ASSERT(pulse.before >= last);
      RC_ASSERT(pulse.before < pulse.top);
      RC_ASSERT(pulse.top < pulse.after);
      RC_ASSERT(signal[pulse.top] - signal[pulse.before] >= 7);
      RC_ASSERT(signal[pulse.top] - signal[pulse.after] >= 7);
      last = pulse.after;
    }
  });
}

/// Pulses at given seconds with given heights, 50 samples a second.
std::vector<Pulse> pulsesAt(const std::vector<std::pair<double, double>>& what) {
  std::vector<Pulse> pulses;
  for (const auto& [t, height] : what) {
    const auto top = static_cast<std::size_t>(std::lround(t * 50));
    pulses.push_back({top, top - 10, top + 10, height, 0, 0, 0});
  }
  return pulses;
}

TEST(Series, IsFoundWithThePulsesBetweenItsOwnLeftOut) {
  std::vector<std::pair<double, double>> what;
  for (int i = 0; i < 12; ++i) {
    what.emplace_back(1 + 0.6 * i, 40);
    if (i % 4 == 1) {
      what.emplace_back(1.3 + 0.6 * i, 8);
    }
  }
  SeriesRules rules;
  rules.fairHeight = 10;
  const auto found = findSeries(pulsesAt(what), rules);
  ASSERT_EQ(found.series.size(), 1U);
  EXPECT_EQ(found.series[0].size(), 12U);
  EXPECT_GT(found.gain, 0);
}

TEST(Series, EndsWhereAPauseBegins) {
  std::vector<std::pair<double, double>> what;
  for (int i = 0; i < 30; ++i) {
    what.emplace_back(1 + 0.55 * i + (i < 15 ? 0 : 4), 40);
  }
  SeriesRules rules;
  rules.fairHeight = 10;
  const auto found = findSeries(pulsesAt(what), rules);
  ASSERT_EQ(found.series.size(), 2U);
  EXPECT_EQ(found.series[0].size(), 15U);
  EXPECT_EQ(found.series[1].size(), 15U);
}

TEST(Series, IsNotMadeOfUnlikePulses) {
  std::mt19937 dice(7);
  std::uniform_real_distribution<double> step(0.3, 1.4), height(3, 40);
  std::vector<std::pair<double, double>> what;
  double t = 1;
  for (int i = 0; i < 200; ++i) {
    what.emplace_back(t += step(dice), height(dice));
  }
  SeriesRules rules;
  rules.fairHeight = 15;
  std::size_t taken = 0;
  for (const Series& series : findSeries(pulsesAt(what), rules).series) {
    taken += series.size();
  }
  EXPECT_LE(taken, 20U);
}

TEST(Alike, CopiesAreAndNoiseIsNot) {
  std::vector<double> signal(1000);
  std::mt19937 dice(3);
  std::normal_distribution<double> normal;
  for (std::size_t i = 0; i < signal.size(); ++i) {
    signal[i] =
        i < 500 ? std::sin(2 * std::numbers::pi * static_cast<double>(i) / 25) : normal(dice);
  }
  std::vector<Pulse> pulses;
  for (std::size_t top = 31; top < 970; top += 25) {
    pulses.push_back({top, top - 12, top + 12, 1, 0});
  }
  Series copies, noise;
  for (std::size_t i = 0; i < pulses.size(); ++i) {
    (pulses[i].top < 480 ? copies : noise).push_back(i);
  }
  for (const Likeness& one : likenessToNeighbours(copies, pulses, signal)) {
    EXPECT_GT(one.correlation, 0.999);
    EXPECT_NEAR(one.share, 1, 0.01);
  }
  noise.erase(noise.begin());
  double sum = 0;
  for (const Likeness& one : likenessToNeighbours(noise, pulses, signal)) {
    sum += one.correlation;
  }
  EXPECT_LT(sum / static_cast<double>(noise.size()), 0.3);
}

} // namespace
} // namespace afterbeat
