#include "core/signal/hands/depth_of_press.h"

#include "core/signal/hands/filters.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

namespace afterbeat {
namespace {

constexpr double kRateHz = 50;
constexpr double kPeriod = kRateHz * 60 / 110;

/// Acceleration at rest and under a sinusoidal movement of 50 mm at 110 a minute: amplitude 0.025 m
/// x (2 pi 110 / 60)^2 = 3.317 m/s2; at its deepest, acceleration out of the chest is largest.
std::vector<double> sinusoid(double seconds, double gravity = 9.81, double driftPerSecond = 0) {
  std::vector<double> values;
  for (int i = 0; i < seconds * kRateHz; ++i) {
    const double t = i / kRateHz;
    values.push_back(gravity + driftPerSecond * t -
                     3.317 * std::cos(2 * std::numbers::pi * 110 / 60 * t));
  }
  return values;
}

TEST(DepthOfPress, IntegratesAPressBetweenTwoReleases) {
  // Releases at t = 0, 60/110, ...: between samples.
  const auto values = sinusoid(7);
  for (int k = 0; k < 10; ++k) {
    const double from = k * kPeriod;
    const Press press = integratedPress(values, from, from + kPeriod, kRateHz);
    EXPECT_NEAR(press.depthMm, 50, 0.1);
    EXPECT_NEAR(press.deepest - from, kPeriod / 2, 0.1);
  }
}

TEST(DepthOfPress, TakesGravityTiltAndDriftForAStraightLine) {
  const Press still = integratedPress(sinusoid(2), kPeriod, 2 * kPeriod, kRateHz);
  const Press tilted = integratedPress(sinusoid(2, 8.2, 0.8), kPeriod, 2 * kPeriod, kRateHz);
  EXPECT_NEAR(tilted.depthMm, still.depthMm, 0.05);
  EXPECT_NEAR(tilted.deepest, still.deepest, 0.05);
}

TEST(DepthOfPress, MeanOfSeveralPressesIsTheirDepth) {
  const auto values = sinusoid(4);
  const std::vector<double> releases{0, kPeriod, 2 * kPeriod, 3 * kPeriod, 4 * kPeriod};
  EXPECT_NEAR(meanPressDepth(values, releases, kRateHz), 50, 0.1);
}

TEST(DepthOfPress, SpectralMethodAgreesWithThePublishedFigures) {
  const auto values = sinusoid(6);
  for (const double window : {2.0, 2.5, 3.0, 5.0}) {
    EXPECT_NEAR(
        spectralDepth(values, 20, 20 + static_cast<std::size_t>(window * kRateHz), 110, kRateHz),
        50, 1)
        << window;
  }
}

TEST(DepthOfPress, SpectralMethodAddsHarmonics) {
  // depth = 20 (1 - cos wt) + 5 (1 - cos 2wt): from 0 at rest to 40 in the middle of the period.
  std::vector<double> values;
  const double w = 2 * std::numbers::pi * 1.5;
  for (int i = 0; i < 200; ++i) {
    const double t = i / kRateHz;
    values.push_back(9.81 -
                     (0.020 * w * w * std::cos(w * t) + 0.020 * w * w * std::cos(2 * w * t)));
  }
  double lowest = 1e9, highest = -1e9;
  for (int i = 0; i < 1000; ++i) {
    const double u = 2 * std::numbers::pi * i / 1000;
    const double depth = -20 * std::cos(u) - 5 * std::cos(2 * u);
    lowest = std::min(lowest, depth);
    highest = std::max(highest, depth);
  }
  EXPECT_NEAR(spectralDepth(values, 10, 160, 90, kRateHz), highest - lowest, 0.5);
}

TEST(DepthOfPress, MovementIsAccelerationOverTheSquareOfTheFrequency) {
  const auto movement = movementFrom(sinusoid(20), 0.4, kRateHz);
  double lowest = 0, highest = 0;
  for (std::size_t i = 300; i < 700; ++i) {
    lowest = std::min(lowest, movement[i]);
    highest = std::max(highest, movement[i]);
  }
  EXPECT_NEAR(highest - lowest, 50, 0.7);
  // Deepest where the acceleration is largest: no delay.
  const auto at = static_cast<std::size_t>(std::lround(20.5 * kPeriod));
  EXPECT_NEAR(movement[at], 25, 0.7);
}

} // namespace
} // namespace afterbeat
