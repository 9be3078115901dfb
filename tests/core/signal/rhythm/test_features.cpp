#include "made_rhythms.h"

#include <numeric>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

std::vector<WindowMeasures> measured(const std::vector<double>& values) {
  return measureWindows(values);
}

WindowMeasures middleOf(const std::vector<double>& values) {
  const auto all = measured(values);
  EXPECT_FALSE(all.empty());
  return all.empty() ? WindowMeasures{} : all[all.size() / 2];
}

TEST(RhythmFeatures, windowsOfAllLengths) {
  EXPECT_TRUE(measured({}).empty());
  EXPECT_TRUE(measured(std::vector<double>(999, 1.0)).empty());
  EXPECT_EQ(measured(std::vector<double>(1000, 1.0)).size(), 1U);
  EXPECT_EQ(measured(std::vector<double>(1249, 1.0)).size(), 1U);
  EXPECT_EQ(measured(std::vector<double>(1250, 1.0)).size(), 2U);
}

// A sine of period 25: half of it is 12 or 13 samples, which leaves little; its autocorrelation
// repeats at its rate and is lowest at half of it; it swings by twice its size.
TEST(RhythmFeatures, ofASine) {
  const auto m = middleOf(madeSine(40 * kRhythmSecond, kRhythmRateHz, 5, 0.5));
  EXPECT_LT(m.of(RhythmFeature::leakage), 0.1);
  EXPECT_NEAR(m.amplitudeMv, 1, 0.02);
  EXPECT_NEAR(m.smallestMv, m.largestMv, 1e-3);
  EXPECT_NEAR(m.of(RhythmFeature::evenness), 0, 1e-3);
  EXPECT_NEAR(m.repeat.ratePerMin, 300, 1);
  // 12.5 pairs of samples: the peak lies between two.
  EXPECT_NEAR(m.repeat.correlation, 1, 0.04);
  EXPECT_NEAR(m.of(RhythmFeature::swing), -1, 0.06);
  EXPECT_NEAR(m.crossingHz, 5, 0.1);
  // The slope's largest value, 2 pi f times half the swing, to the swing.
  EXPECT_NEAR(m.sharpness, std::numbers::pi * 5, 0.5);
  // Sizes of a cosine: its median to nearly its largest.
  EXPECT_NEAR(m.of(RhythmFeature::restlessness), std::sqrt(0.5), 0.03);
  // One mobility for a sine and its slope.
  EXPECT_NEAR(m.of(RhythmFeature::complexity), 1, 0.02);
}

TEST(RhythmFeatures, ofBeats) {
  const auto m = middleOf(madeNormal(40, kRhythmRateHz, 75, 1));
  EXPECT_GT(m.of(RhythmFeature::leakage), 0.6);
  EXPECT_NEAR(m.repeat.ratePerMin, 75, 0.5);
  EXPECT_NEAR(m.slopeRepeat.ratePerMin, 75, 0.5);
  EXPECT_GT(m.of(RhythmFeature::slowBeats), 0.95);
  EXPECT_GT(m.of(RhythmFeature::slowRepeat), 0.95);
  EXPECT_GT(m.of(RhythmFeature::likeBeats), 0.99);
  EXPECT_NEAR(m.beats, 10, 1);
  EXPECT_NEAR(m.beatRatePerMin, 75, 0.5);
  EXPECT_LT(m.of(RhythmFeature::restlessness), 0.1);
  EXPECT_GT(m.sharpness, 30);
}

// Fast repetitions do not count as slow, those at 150/min half.
TEST(RhythmFeatures, slownessFadesBetween110And190) {
  for (const auto& [perMin, share] : {std::pair{100.0, 1.0}, {150.0, 0.5}, {200.0, 0.0}}) {
    const auto m = middleOf(madeSine(40 * kRhythmSecond, kRhythmRateHz, perMin / 60, 1));
    EXPECT_NEAR(m.of(RhythmFeature::slowRepeat), share * m.repeat.correlation, 0.03) << perMin;
  }
}

void expectSameShape(const WindowMeasures& a, const WindowMeasures& b, double factor) {
  for (std::size_t f = 0; f < kRhythmFeatures; ++f) {
    EXPECT_NEAR(a.features[f], b.features[f], 1e-9) << nameOf(static_cast<RhythmFeature>(f));
  }
  EXPECT_NEAR(a.amplitudeMv * factor, b.amplitudeMv, 1e-9 * factor);
  EXPECT_NEAR(a.sharpness, b.sharpness, 1e-6);
  EXPECT_EQ(a.beats, b.beats);
}

TEST(RhythmFeatures, dependOnNeitherScaleNorPolarityNorOffset) {
  for (const auto& values :
       {sumOf(madeNormal(30, kRhythmRateHz, 80, 1), madeNoise(30 * kRhythmSecond, 0.05, 3)),
        sumOf(madeFibrillation(30, kRhythmRateHz, 0.7), madeNoise(30 * kRhythmSecond, 0.02, 4))}) {
    const auto plain = measured(values);
    const auto large = measured(scaled(values, 40));
    const auto turned = measured(scaled(values, -1));
    auto lifted = values;
    for (double& v : lifted) {
      v += 2;
    }
    const auto above = measured(lifted);
    for (std::size_t k = 0; k < plain.size(); ++k) {
      expectSameShape(plain[k], large[k], 40);
      expectSameShape(plain[k], turned[k], 1);
      EXPECT_NEAR(plain[k].amplitudeMv, above[k].amplitudeMv, 1e-6);
    }
  }
}

// A long signal is measured in pieces; the windows at their edges are those of a short one.
TEST(RhythmFeatures, aCutChangesNothing) {
  const auto values =
      sumOf(madeFibrillation(620, kRhythmRateHz, 0.7), madeNoise(620 * kRhythmSecond, 0.02, 4));
  const auto whole = measured(values);
  ASSERT_EQ(whole.size(), 307U);
  const std::size_t first = 200;
  const std::vector<double> part(values.begin() + first * kRhythmSecond,
                                 values.begin() + 300 * kRhythmSecond);
  const auto cut = measured(part);
  for (std::size_t k = 12; k + 12 < cut.size(); ++k) {
    for (std::size_t f = 0; f < kRhythmFeatures; ++f) {
      EXPECT_NEAR(cut[k].features[f], whole[first / 2 + k].features[f], 1e-6) << k << " " << f;
    }
  }
}

TEST(RhythmFeatures, areFiniteForWhatIsNoEcg) {
  std::vector<std::vector<double>> odd{std::vector<double>(2000, 0.0),
                                       std::vector<double>(2000, 1e9),
                                       std::vector<double>(2000, -1e-300)};
  odd.emplace_back(2000, 0.0);
  odd.back()[1000] = 1e6;
  for (const auto& values : odd) {
    for (const auto& m : measured(values)) {
      for (const double feature : m.features) {
        EXPECT_TRUE(std::isfinite(feature));
      }
      EXPECT_TRUE(std::isfinite(m.sharpness));
      EXPECT_TRUE(std::isfinite(m.repeat.ratePerMin));
    }
  }
}

TEST(RhythmBands, missingSamplesAreBridgedAcrossPieces) {
  std::vector<double> values(60000);
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] = static_cast<double>(i) / 1000;
  }
  auto holes = values;
  for (std::size_t i = 16300; i < 16500; ++i) {
    holes[i] = i % 2 == 0 ? std::numeric_limits<double>::quiet_NaN()
                          : std::numeric_limits<double>::infinity();
  }
  const auto whole = atRhythmRate({Time{}, 250, values});
  const auto bridged = atRhythmRate({Time{}, 250, holes});
  ASSERT_EQ(whole.size(), 30000U);
  ASSERT_EQ(bridged.size(), whole.size());
  for (std::size_t i = 0; i < whole.size(); ++i) {
    ASSERT_NEAR(bridged[i], whole[i], 1e-9) << i;
  }
}

TEST(RhythmQuantile, worksAsNumpys) {
  std::vector<double> values{4, 1, 3, 2};
  EXPECT_DOUBLE_EQ(quantile(values, 0.5), 2.5);
  EXPECT_DOUBLE_EQ(quantile(values, 0), 1);
  EXPECT_DOUBLE_EQ(quantile(values, 1), 4);
  EXPECT_DOUBLE_EQ(quantile(values, 0.9), 3.7);
  std::vector<double> one{7};
  EXPECT_DOUBLE_EQ(quantile(one, 0.3), 7);
}

// The quick way for the largest of many values against sorting them.
TEST(RhythmQuantile, ofManyValues) {
  for (const std::size_t count : {2U, 30U, 199U, 200U, 201U, 999U, 1000U, 4001U}) {
    auto values = madeNoise(count, 1, static_cast<unsigned>(count));
    for (std::size_t i = 0; i < count; i += 3) {
      values[i] = std::round(values[i]); // many alike
    }
    auto sorted = values;
    std::sort(sorted.begin(), sorted.end());
    for (const double share : {0.0, 0.003, 0.02, 0.25, 0.5, 0.731, 0.9, 0.98, 0.999, 1.0}) {
      const double at = share * static_cast<double>(count - 1);
      const auto below = static_cast<std::size_t>(at);
      const double expected = std::lerp(sorted[below], sorted[std::min(below + 1, count - 1)],
                                        at - static_cast<double>(below));
      auto copy = values;
      EXPECT_NEAR(quantile(copy, share), expected, 1e-12 * (1 + std::fabs(expected)))
          << count << " " << share;
    }
  }
  std::vector<double> same(500, 3.5);
  EXPECT_DOUBLE_EQ(quantile(same, 0.5), 3.5);
}

} // namespace
} // namespace afterbeat
