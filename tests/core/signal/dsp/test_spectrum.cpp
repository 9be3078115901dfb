#include "core/signal/dsp/spectrum.h"

#include <array>
#include <cmath>
#include <numbers>
#include <thread>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

using namespace afterbeat;

namespace {

std::vector<double> sine(double hz, double amplitude, std::size_t n, double rateHz) {
  std::vector<double> out;
  for (std::size_t i = 0; i < n; ++i) {
    out.push_back(amplitude *
                  std::sin(2 * std::numbers::pi * hz * static_cast<double>(i) / rateHz));
  }
  return out;
}

TEST(Spectrum, ASineShowsItsAmplitudeAtItsFrequency) {
  Spectrum spectrum(500, 250);
  EXPECT_EQ(spectrum.bins(), 251U);
  EXPECT_DOUBLE_EQ(spectrum.hzPerBin(), 0.5);
  const auto amplitude = spectrum.amplitude(sine(5, 0.4, 500, 250));
  for (std::size_t k = 0; k < amplitude.size(); ++k) {
    EXPECT_NEAR(amplitude[k], k == 10 ? 0.4 : 0, 1e-12);
  }
}

TEST(Spectrum, FourSamplesWorkedByHand) {
  // 1, 2, 3, 6: X0 = 12, X1 = (1 - 3) + i(6 - 2) = -2 + 4i, X2 = 1 - 2 + 3 - 6 = -4.
  Spectrum spectrum(4, 4);
  const std::array values{1.0, 2.0, 3.0, 6.0};
  const auto amplitude = spectrum.amplitude(values);
  EXPECT_NEAR(amplitude[0], 3, 1e-12);
  EXPECT_NEAR(amplitude[1], 2 * std::sqrt(20.0) / 4, 1e-12);
  EXPECT_NEAR(amplitude[2], 1, 1e-12);
  const auto power = spectrum.power(values);
  EXPECT_NEAR(power[0], 144.0 / 16, 1e-12);
  EXPECT_NEAR(power[1], 2 * 20.0 / 16, 1e-12);
  EXPECT_NEAR(power[2], 16.0 / 16, 1e-12);
}

TEST(Spectrum, PowerSumsToTheMeanSquare) {
  rc::check([] {
    const auto raw =
        *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(-99, 99)));
    const std::vector<double> values(raw.begin(), raw.end());
    Spectrum spectrum(values.size(), 250);
    double sum = 0, square = 0;
    for (const double p : spectrum.power(values)) {
      sum += p * spectrum.hzPerBin();
    }
    for (const double v : values) {
      square += v * v / static_cast<double>(values.size());
    }
    RC_ASSERT(std::fabs(sum - square) <= 1e-9 * (1 + square));
  });
}

TEST(Windows, WorkedByHand) {
  EXPECT_THAT(windowWeights(Window::hann, 4),
              testing::Pointwise(testing::DoubleNear(1e-15), {0.0, 0.5, 1.0, 0.5}));
  EXPECT_THAT(windowWeights(Window::hamming, 4),
              testing::Pointwise(testing::DoubleNear(1e-15), {0.08, 0.54, 1.0, 0.54}));
  EXPECT_THAT(windowWeights(Window::blackman, 4),
              testing::Pointwise(testing::DoubleNear(1e-15), {0.0, 0.34, 1.0, 0.34}));
  EXPECT_THAT(windowWeights(Window::rectangular, 3), testing::Each(1.0));
}

TEST(Autocorrelation, WorkedByHand) {
  Autocorrelation autocorrelation(3);
  EXPECT_THAT(autocorrelation.of(std::array{1.0, 2.0, 4.0}),
              testing::Pointwise(testing::DoubleNear(1e-12), {21.0, 10.0, 4.0}));
}

TEST(Spectrum, ManyThreadsMakeAndUsePlansAtOnce) {
  std::vector<std::thread> threads;
  std::array<double, 4> worst{};
  for (std::size_t t = 0; t < worst.size(); ++t) {
    threads.emplace_back([t, &worst] {
      for (std::size_t n = 20; n < 200; n += 10) {
        Spectrum spectrum(n, static_cast<double>(n));
        const auto amplitude = spectrum.amplitude(sine(5, 1, n, static_cast<double>(n)));
        worst[t] = std::max(worst[t], std::fabs(amplitude[5] - 1));
      }
    });
  }
  for (auto& thread : threads) {
    thread.join();
  }
  EXPECT_THAT(worst, testing::Each(testing::Le(1e-12)));
}

} // namespace
