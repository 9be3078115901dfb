/// Fits the model of the rhythm hint to labelled windows.
#pragma once

#include "recordings.h"

#include <string>
#include <vector>

namespace afterbeat {

/// A window the model learns from.
struct Example {
  const WindowMeasures* measures = nullptr;
  bool shockable = false;
  /// All weights sum to 1.
  double weight = 0;
};

/// What the model learns from: fibrillation, flutter and ventricular tachycardia of at least
/// 180/min against normal and other organised rhythms, noise, and cudb stretches whose beats are
/// all marked; no disputed stretch, nothing of 418 and 419, no flat or unusable window. Nothing of
/// the record or database `heldOut`. A record weighs by the root of its windows in each class, both
/// classes weigh the same, noise four tenths.
[[nodiscard]] std::vector<Example> examplesOf(const std::vector<LabelledSignal>& signals,
                                              const std::string& heldOut);

/// Logistic regression with a penalty on the squared weights, by Newton's method to convergence.
[[nodiscard]] RhythmModel fitModel(const std::vector<Example>& examples);

} // namespace afterbeat
