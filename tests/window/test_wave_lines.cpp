/// Lines of waves as upright strokes: they cover what the straight line between the points covers.
#include "app/window/waves/wave_lines.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace afterbeat::window {

namespace {

constexpr double kLifted = std::numeric_limits<double>::quiet_NaN();

std::vector<ColumnSpan> covered(const std::vector<QPointF>& points, std::size_t columns) {
  std::vector<ColumnSpan> spans(columns);
  coverColumns(points, spans);
  return spans;
}

bool empty(const ColumnSpan& span) {
  return span.low > span.high;
}

TEST(WaveLines, AStraightLineRisesColumnByColumn) {
  const auto spans = covered({{0, 0}, {4, 8}}, 5);
  for (std::size_t c = 0; c < 4; ++c) {
    EXPECT_DOUBLE_EQ(spans[c].low, 2.0 * static_cast<double>(c));
    EXPECT_DOUBLE_EQ(spans[c].high, 2.0 * static_cast<double>(c) + 2);
  }
}

TEST(WaveLines, ALiftedPenLeavesTheColumnsBetweenEmpty) {
  const auto spans = covered({{0, 1}, {1.5, 1}, {2, kLifted}, {4.2, 3}, {5.5, 3}}, 7);
  EXPECT_FALSE(empty(spans[0]));
  EXPECT_FALSE(empty(spans[1]));
  EXPECT_TRUE(empty(spans[2]));
  EXPECT_TRUE(empty(spans[3]));
  EXPECT_FALSE(empty(spans[4]));
  EXPECT_FALSE(empty(spans[5]));
  EXPECT_TRUE(empty(spans[6]));
}

TEST(WaveLines, ASinglePointIsSeen) {
  const auto spans = covered({{kLifted, kLifted}, {2.5, 7}, {3, kLifted}}, 4);
  EXPECT_DOUBLE_EQ(spans[2].low, 7);
  EXPECT_DOUBLE_EQ(spans[2].high, 7);
}

TEST(WaveLines, WhatLiesBesideIsLeftOut) {
  const auto spans = covered({{-10, 0}, {-4, 3}, {20, 15}, {30, 0}}, 3);
  for (const ColumnSpan& span : spans) {
    ASSERT_FALSE(empty(span));
    EXPECT_GE(span.low, 5);
    EXPECT_LE(span.high, 6.5);
  }
  EXPECT_TRUE(empty(covered({{-9, 1}, {-3, 2}}, 3)[0]));
  EXPECT_TRUE(empty(covered({{5, 1}, {9, 2}}, 3)[2]));
}

/// Against the line walked in tiny steps.
TEST(WaveLines, CoverWhatAWalkAlongTheLineTouches) {
  std::mt19937 dice(5);
  std::uniform_real_distribution<double> step(0, 2.5), height(0, 90);
  for (int round = 0; round < 200; ++round) {
    std::vector<QPointF> points{{0, height(dice)}};
    while (points.back().x() < 30) {
      points.emplace_back(points.back().x() + step(dice), height(dice));
    }
    const auto spans = covered(points, 30);
    std::vector<ColumnSpan> walked(30);
    constexpr int kSteps = 4000;
    for (std::size_t i = 1; i < points.size(); ++i) {
      for (int k = 0; k <= kSteps; ++k) {
        const QPointF at =
            points[i - 1] + (points[i] - points[i - 1]) * (static_cast<double>(k) / kSteps);
        if (at.x() >= 0 && at.x() < 30) {
          ColumnSpan& column = walked[static_cast<std::size_t>(at.x())];
          column.low = std::min(column.low, at.y());
          column.high = std::max(column.high, at.y());
        }
      }
    }
    for (std::size_t c = 0; c < spans.size(); ++c) {
      EXPECT_NEAR(spans[c].low, walked[c].low, 0.1) << c;
      EXPECT_NEAR(spans[c].high, walked[c].high, 0.1) << c;
      if (c > 0) {
        EXPECT_LE(spans[c].low, spans[c - 1].high + 1e-9);
        EXPECT_GE(spans[c].high, spans[c - 1].low - 1e-9);
      }
    }
  }
}

} // namespace

} // namespace afterbeat::window
