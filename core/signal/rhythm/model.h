/// The weights by which the features of a window say how shockable it looks.
#pragma once

#include "core/signal/rhythm/features.h"

#include <array>

namespace afterbeat {

/// How one feature counts.
struct FeatureWeight {
  /// Mean and standard deviation over the windows the model was fitted to.
  double mean = 0, deviation = 1;
  /// Per standard deviation, which counts up to four to either side.
  double weight = 0;
  /// Half way between the means of both classes: beyond it a value speaks for one of them.
  double limit = 0;

  /// What a value adds to the log-odds, by way of `mean`.
  [[nodiscard]] double termOf(double value) const;
  /// How far a value speaks for shockable (above 0) or against it, counted from `limit`.
  [[nodiscard]] double speaksFor(double value) const { return termOf(value) - termOf(limit); }
};

/// A logistic regression.
struct RhythmModel {
  std::array<FeatureWeight, kRhythmFeatures> weights{};
  double offset = 0;

  /// Logarithm of the odds that a window is shockable, of this window alone.
  [[nodiscard]] double logOdds(const WindowMeasures& window) const;
};

/// The model of the program. Its numbers come from tests/outside/rhythm/train.cpp, run on public
/// recordings; DEVELOPERS.md says how.
[[nodiscard]] const RhythmModel& rhythmModel();

} // namespace afterbeat
