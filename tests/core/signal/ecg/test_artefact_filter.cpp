#include "core/signal/ecg/artefact_filter.h"

#include "tests/core/signal/ecg/made_artefact.h"
#include "tests/core/signal/ecg/made_ecg.h"

#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace afterbeat;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kRate = 250;

std::vector<double> sum(std::vector<double> a, const std::vector<double>& b) {
  std::transform(a.begin(), a.end(), b.begin(), a.begin(), std::plus<>{});
  return a;
}

TEST(ArtefactFilter, WithoutCompressionsNothingChanges) {
  const auto ecg = madeNoise(5000, 0.3, 1);
  const SignalView view{at(7), kRate, ecg};
  EXPECT_EQ(suppressCompressions(view, {}).values, ecg);
  // Two are no series, and neither are three with a pause between.
  EXPECT_EQ(suppressCompressions(view, std::vector{at(8), at(8.5)}).values, ecg);
  const auto paused = suppressCompressions(view, std::vector{at(8), at(8.5), at(10.1)});
  EXPECT_EQ(paused.values, ecg);
  EXPECT_THAT(paused.filtered, testing::IsEmpty());
  // A series that lies outside the run.
  EXPECT_EQ(suppressCompressions(view, std::vector{at(1), at(1.5), at(2)}).values, ecg);
  EXPECT_EQ(suppressCompressions(view, std::vector{at(91), at(91.5), at(92)}).values, ecg);
}

TEST(ArtefactFilter, OutsideTheSeriesTheValuesAreTheOriginalOnes) {
  const auto artefact = madeArtefact(15000, kRate, 4, 10, 40);
  const auto ecg = sum(madeNoise(15000, 0.1, 1), artefact.values);
  const auto found = suppressCompressions({Time{}, kRate, ecg}, artefact.deepest);
  ASSERT_EQ(found.filtered.size(), 1U);
  EXPECT_NEAR(seconds(found.filtered[0].begin), seconds(artefact.deepest.front()) - 0.27, 0.1);
  EXPECT_NEAR(seconds(found.filtered[0].end), seconds(artefact.deepest.back()) + 0.27, 0.1);
  ASSERT_EQ(found.values.size(), ecg.size());
  std::size_t changed = 0;
  for (std::size_t i = 0; i < ecg.size(); ++i) {
    const Time t{Duration{static_cast<std::int64_t>(i) * 4000}};
    if (t < found.filtered[0].begin || t >= found.filtered[0].end) {
      EXPECT_EQ(found.values[i], ecg[i]);
    } else {
      changed += found.values[i] != ecg[i] ? 1 : 0;
    }
  }
  EXPECT_GT(changed, 7000U);
}

TEST(ArtefactFilter, AnArtefactThatRepeatsExactlyIsTakenOutAltogether) {
  std::vector<Time> deepest;
  std::vector<double> artefact(15000, 0.0);
  for (int k = 1; k < 119; ++k) {
    deepest.push_back(at(0.5 * k));
  }
  for (std::size_t i = 0; i < artefact.size(); ++i) {
    const double angle = 2 * std::numbers::pi * 2 * static_cast<double>(i) / kRate;
    artefact[i] = std::cos(angle) - 0.5 * std::sin(2 * angle) + 0.2 * std::cos(5 * angle);
  }
  const auto found = suppressCompressions({Time{}, kRate, artefact}, deepest);
  for (std::size_t i = 1000; i < 14000; ++i) {
    EXPECT_NEAR(found.values[i], 0, 1e-3) << i;
  }
}

TEST(ArtefactFilter, SixDecibelsAndMoreOnFibrillationAndOnBeats) {
  for (unsigned seed = 1; seed < 7; ++seed) {
    std::vector<double> ecg = madeNoise(7500, 0.02, seed);
    if (seed % 2 == 0) {
      addBeats(ecg, kRate, madeBeats(0.5, 29, 0.83, 0.02), 1);
    } else {
      for (const double hz : {3.9, 4.6, 5.2, 5.9}) {
        ecg = sum(ecg, madeSine(7500, kRate, hz + 0.1 * seed, 0.15));
      }
    }
    auto artefact = madeArtefact(7500, kRate, seed, 1, 29);
    scaleToSnr(artefact.values, ecg, 0, 250, 7250);
    const auto disturbed = sum(ecg, artefact.values);
    const auto found = suppressCompressions({Time{}, kRate, disturbed}, artefact.deepest);
    EXPECT_GE(gainDb(ecg, disturbed, found.values, 250, 7250), 6) << seed;
  }
}

TEST(ArtefactFilter, MissingSamplesStayMissingAndHarmNothing) {
  auto artefact = madeArtefact(7500, kRate, 4, 1, 29);
  const auto clean = madeNoise(7500, 0.2, 3);
  auto ecg = sum(clean, artefact.values);
  std::fill(ecg.begin() + 3000, ecg.begin() + 3500, kNaN);
  const auto found = suppressCompressions({Time{}, kRate, ecg}, artefact.deepest);
  for (std::size_t i = 0; i < ecg.size(); ++i) {
    EXPECT_EQ(std::isnan(found.values[i]), i >= 3000 && i < 3500);
  }
  EXPECT_GE(gainDb(clean, ecg, found.values, 4000, 7000), 6);
}

TEST(ArtefactFilter, AnyMomentsAreSurvived) {
  const auto ecg = madeNoise(2500, 0.2, 3);
  for (const double rateHz : {50.0, 250.0, 2000.0}) {
    const SignalView view{Time{}, rateHz, ecg};
    for (const auto& deepest :
         {std::vector{at(1), at(1), at(1)}, std::vector{at(1), at(1.001), at(1.002), at(1.5)},
          std::vector{at(-3), at(-2), at(-1), at(0), at(0.4)}}) {
      for (const double value : suppressCompressions(view, deepest).values) {
        EXPECT_TRUE(std::fabs(value) < 10);
      }
    }
  }
  EXPECT_THAT(suppressCompressions({Time{}, 250, {}}, std::vector{at(1), at(1.5), at(2)}).values,
              testing::IsEmpty());
}

} // namespace
