/// Figures against published values. Each test is named after the measure; the source stands
/// beside it with its mark: read, read in a secondary publication, or from memory.
#include "tests/core/measures/story.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace afterbeat {
namespace {

double value(const Figures& f, MeasureId id) {
  EXPECT_EQ(f[id].status, Status::ok) << measureInfo(id).name;
  return f[id].value.value_or(-1);
}

// Abella et al., JAMA 2005;293:305: a pause of ten seconds in each minute is a no-flow fraction of
// 0.17 (from memory). 10 / 60 = 0.1667.
TEST(HandsOffFraction, TenSecondsInEachMinute) {
  Story story;
  for (int minute = 0; minute < 10; ++minute) {
    // 101 compressions half a second apart: the last at 50 s of the minute.
    story.compressions(60.0 * minute, 101, 0.5);
  }
  story.compression(600);
  const Figures f = story.figures();
  EXPECT_DOUBLE_EQ(value(f, MeasureId::handsOffTime), 100);
  EXPECT_DOUBLE_EQ(value(f, MeasureId::arrestTime), 600);
  EXPECT_NEAR(value(f, MeasureId::handsOffFraction), 0.167, 0.0005);
  EXPECT_EQ(std::lround(100 * value(f, MeasureId::handsOffFraction)), 17);
  EXPECT_EQ(f.pauses.size(), 10U);
}

/// 30 compressions at 110/min, a gap of 5 s, over and over; ends with the first of a next cycle.
Story thirtyToTwo(int cycles) {
  const double apart = 60.0 / 110, period = 29 * apart + 5;
  Story story;
  for (int i = 0; i < cycles; ++i) {
    story.compressions(i * period, 30, apart);
    story.ventilation(i * period + 29 * apart + 1.5).ventilation(i * period + 29 * apart + 3);
  }
  story.compression(cycles * period);
  return story;
}

// Arithmetic, no publication: period 29 x 60/110 + 5 = 20.818 s, of which 15.818 s hands on.
TEST(ChestCompressionFraction, ThirtyToTwoAt110WithFiveSecondsForBreaths) {
  const Figures f = thirtyToTwo(40).figures();
  EXPECT_NEAR(value(f, MeasureId::arrestTime) / 40, 20.818, 0.0005);
  EXPECT_NEAR(value(f, MeasureId::chestCompressionFraction), 0.760, 0.0005);
  EXPECT_NEAR(value(f, MeasureId::longestPause), 5, 1e-5);
  for (const Pause& pause : f.pauses) {
    EXPECT_EQ(pause.cause, PauseCause::breaths);
  }
}

// The same: 30 compressions in each 20.818 s are 86.46 a minute. The record holds one compression
// more than 40 cycles, the one that ends the last gap: 1201 / 832.73 s = 86.53 a minute.
TEST(CompressionsPerMinute, ThirtyToTwoAt110WithFiveSecondsForBreaths) {
  const Figures f = thirtyToTwo(40).figures();
  EXPECT_NEAR(value(f, MeasureId::compressionsPerMinute), 86.5, 0.05);
  EXPECT_EQ(value(f, MeasureId::compressions), 1201);
  EXPECT_NEAR(value(f, MeasureId::ventilationsPerMinute), 2 * 60 / 20.818, 0.001);
}

TEST(CompressionRate, ThirtyToTwoAt110WithFiveSecondsForBreaths) {
  const Figures f = thirtyToTwo(40).figures();
  EXPECT_NEAR(value(f, MeasureId::compressionRate), 110, 0.001);
  EXPECT_DOUBLE_EQ(value(f, MeasureId::compressionRateInRange), 1);
  // With a threshold above the gap the breaths would be taken for slow compressions.
  FigureSettings settings;
  settings.pauseThreshold = Duration{5'000'000};
  EXPECT_LT(value(thirtyToTwo(40).figures(settings), MeasureId::compressionRate), 110);
}

// Hanisch et al., J Am Heart Assoc 2020;9:e015599: 6 621 of 74 584 minutes paused, 8.88 % (read).
// A tenth of a second stands for each minute: 7458.4 s, 662.1 s of them in ten equal pauses.
TEST(HandsOffFraction, SumOfPausesOfManyRescues) {
  const double pause = 66.21, turn = 745.84;
  Story story;
  for (int i = 0; i < 10; ++i) {
    story.cpr(i * turn, i * turn + turn - pause, 110);
  }
  story.compression(10 * turn);
  const Figures f = story.figures();
  EXPECT_NEAR(value(f, MeasureId::handsOffTime), 662.1, 1e-6);
  EXPECT_NEAR(value(f, MeasureId::arrestTime), 7458.4, 1e-6);
  EXPECT_NEAR(100 * value(f, MeasureId::handsOffFraction), 8.88, 0.005);
}

// Wik et al., JAMA 2005;293:299: rate 121/min, hands off 48 % of the time, 64 compressions a minute
// delivered (from memory). 121 x (1 - 0.48) = 62.9: rate times hands-on share is about what is
// delivered. It is not exactly that: n compressions span n - 1 intervals.
TEST(CompressionsPerMinute, IsAboutRateTimesHandsOnShare) {
  const double apart = 60.0 / 121;
  Story story;
  for (int i = 0; i < 20; ++i) {
    // 64 compressions span 63 intervals, 31.24 s: hands off for the other 28.76 s, 48 %.
    story.compressions(60.0 * i, 64, apart);
  }
  story.compression(1200);
  const Figures f = story.figures();
  EXPECT_NEAR(value(f, MeasureId::compressionRate), 121, 0.001);
  EXPECT_NEAR(value(f, MeasureId::handsOffFraction), 0.48, 0.001);
  EXPECT_NEAR(value(f, MeasureId::compressionsPerMinute), 64, 0.1);
  EXPECT_NEAR(value(f, MeasureId::compressionRate) * (1 - value(f, MeasureId::handsOffFraction)),
              62.9, 0.2);
}

/// The bin a pause falls into: below the first limit, below the second, or above.
int bin(double s, double first, double second) {
  return s < first ? 0 : (s < second ? 1 : 2);
}

/// Three shocks with these pauses before and after.
Figures shocksWithPauses(const std::vector<std::pair<double, double>>& pauses) {
  Story story;
  double t = 0;
  for (const auto& [pre, post] : pauses) {
    story.compressions(t, 61, 0.5);
    t += 30 + pre;
    story.shock(t);
    t += post;
  }
  story.compressions(t, 61, 0.5);
  return story.figures();
}

// Cheskes et al., Resuscitation 2014;85:336-342: medians (quartiles) of the pauses around shocks:
// pre 15 (8-22) s, post 6 (4-9) s, peri 22 (14-31) s (read). Three shocks at the quartiles: the
// peri-shock pauses are 12, 21 and 31 s; the sum of two medians need not be the median of the sums.
TEST(PreShockPause, MedianAndWorstAtThePublishedQuartiles) {
  const Figures f = shocksWithPauses({{15, 6}, {22, 9}, {8, 4}});
  EXPECT_DOUBLE_EQ(value(f, MeasureId::preShockPauseMedian), 15);
  EXPECT_DOUBLE_EQ(value(f, MeasureId::preShockPauseWorst), 22);
}

TEST(PostShockPause, MedianAndWorstAtThePublishedQuartiles) {
  const Figures f = shocksWithPauses({{15, 6}, {22, 9}, {8, 4}});
  EXPECT_DOUBLE_EQ(value(f, MeasureId::postShockPauseMedian), 6);
  EXPECT_DOUBLE_EQ(value(f, MeasureId::postShockPauseWorst), 9);
}

TEST(PeriShockPause, MedianAndWorstAtThePublishedQuartiles) {
  const Figures f = shocksWithPauses({{15, 6}, {22, 9}, {8, 4}});
  EXPECT_DOUBLE_EQ(value(f, MeasureId::periShockPauseMedian), 21);
  EXPECT_DOUBLE_EQ(value(f, MeasureId::periShockPauseWorst), 31);
}

// Cheskes et al., Circulation 2011;124:58-66: pre-shock pauses below 10 s, 10 to 19.9 s, 20 s and
// more; peri-shock below 20 s, 20 to 39.9 s, 40 s and more (read). The pauses computed at the edges
// of the bins must fall on the right side, which rounding could spoil.
TEST(PreShockPause, FallsIntoThePublishedBins) {
  const Figures f = shocksWithPauses({{9.9, 2}, {10, 2}, {19.9, 2}, {20, 2}});
  std::vector<int> bins;
  for (const ShockFigures& shock : f.shocks) {
    bins.push_back(bin(seconds(shock.pre.value_or(Duration{-1})), 10, 20));
  }
  EXPECT_EQ(bins, (std::vector<int>{0, 1, 1, 2}));
}

TEST(PeriShockPause, FallsIntoThePublishedBins) {
  const Figures f = shocksWithPauses({{15, 4.9}, {15, 5}, {30.5, 9.4}, {30.5, 9.5}});
  std::vector<int> bins;
  for (const ShockFigures& shock : f.shocks) {
    bins.push_back(bin(seconds(shock.peri.value_or(Duration{-1})), 20, 40));
  }
  EXPECT_EQ(bins, (std::vector<int>{0, 1, 1, 2}));
}

// Uniform reporting of measured CPR quality (Kramer-Johansen et al., Resuscitation
// 2007;74:406-417): a pause is a gap of more than 1.5 s (from memory). Exactly 1.5 s is none.
TEST(HandsOffTime, CountsGapsStrictlyLongerThanOneAndAHalfSeconds) {
  EXPECT_EQ(FigureSettings{}.pauseThreshold, Duration{1'500'000});
  Story exact;
  exact.compression(0).compression(1.5);
  EXPECT_DOUBLE_EQ(value(exact.figures(), MeasureId::handsOffTime), 0);
  Story longer;
  longer.compression(0).compression(1.501);
  EXPECT_DOUBLE_EQ(value(longer.figures(), MeasureId::handsOffTime), 1.501);
}

// Wik et al., JAMA 2005;293:299: time needed for analysis and shock is taken off the hands-off time
// (from memory). 20 s of pause, 8 s of analysis in it, the shock 4 s after the analysis: 8 s left.
TEST(AdjustedHandsOffTime, TakesAnalysisAndShockOff) {
  Story story;
  story.compressions(0, 21, 0.5).analysis(12, 20, Advice::shock).shock(24);
  story.compressions(30, 21, 0.5);
  const Figures f = story.figures();
  EXPECT_DOUBLE_EQ(value(f, MeasureId::handsOffTime), 20);
  EXPECT_DOUBLE_EQ(value(f, MeasureId::adjustedHandsOffTime), 8);
}

} // namespace
} // namespace afterbeat
