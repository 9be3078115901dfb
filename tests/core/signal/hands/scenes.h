/// Small made-up scenes with a known truth for the tests of compressions and breaths. Quick and
/// plain; shares nothing with the detectors.
#pragma once

#include "core/record/channel.h"

#include <random>
#include <string>
#include <vector>

namespace afterbeat::scenes {

enum class Shape { halfSine, triangle, sawtooth, piston, raisedCosine };

struct Press {
  double onset = 0, deepest = 0, period = 0;
  /// As the story has it, and as rounding corners leaves it: from the release before.
  double plannedMm = 0, depthMm = 0;
  /// Of the residual depth after it, mm.
  double leaningMm = 0;
};

struct Breath {
  double begin = 0, top = 0, end = 0;
};

struct Plan {
  double seconds = 120;
  double rate = 110, rateSpread = 0.03;
  double depthMm = 50, depthSpread = 0.06;
  double leaningMm = 0;
  Shape shape = Shape::halfSine;
  /// Share of the period that is pressed (half sine, triangle).
  double duty = 0.5;
  /// Compressions before a pause for two breaths; 0: continuous.
  int perCycle = 30;
  double pauseSeconds = 4.5;
  double firstAt = 5, lastBefore = 5;
  /// Another rescuer from half time: other rate and depth.
  double secondRate = 0, secondDepthMm = 0;
  /// Loss of depth in the course of a minute, mm.
  double fatigueMm = 0;
  unsigned seed = 1;
};

struct Story {
  Plan plan;
  std::vector<Press> presses;
  std::vector<Breath> breaths;
};

[[nodiscard]] Story tell(const Plan& plan);

/// Depth of the chest in mm, every 1 / rateHz.
[[nodiscard]] std::vector<double> chestDepth(const Story& story, double rateHz);

struct Shaking {
  /// RMS, m/s2, between lowHz and highHz.
  double rms = 0, lowHz = 0.5, highHz = 20;
};

/// Noise of given RMS between two frequencies (white, by sums of filtered noise).
[[nodiscard]] std::vector<double> bandNoise(std::size_t count, double rateHz, double rms,
                                            double lowHz, double highHz, std::mt19937& dice);

struct AccelerationPlan {
  Shaking shaking;
  double tiltFrom = 0, tiltTo = 0;
  double noise = 0.05, drift = 0.1;
  /// Moved about by hand before the first and after the last press.
  bool handled = false;
};
[[nodiscard]] std::vector<double> acceleration(const Story& story, const AccelerationPlan& how,
                                               double rateHz);

struct ImpedancePlan {
  double base = 80, pressOhm = 1.0, breathOhm = 1.0;
  /// RMS of white noise, of pressOhm.
  double noise = 0.1;
  double steps = 0;
  /// Share of a second harmonic.
  double second = 0.0;
  double delay = 0.0;
};
[[nodiscard]] std::vector<double> impedance(const Story& story, const ImpedancePlan& how,
                                            double rateHz);

[[nodiscard]] Channel channelOf(const std::string& quantity, const std::string& unit,
                                const std::vector<double>& values, double rateHz, double scale,
                                double offset = 0);

/// How well found moments match true ones, one to one, within `within` seconds.
struct Match {
  int truth = 0, found = 0, matched = 0;
  std::vector<double> errors;
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  [[nodiscard]] double f1() const {
    return truth + found == 0 ? 1 : 2.0 * matched / (truth + found);
  }
};
[[nodiscard]] Match match(const std::vector<double>& truth, const std::vector<double>& found,
                          double within);

} // namespace afterbeat::scenes
