/// The working of one window of a rhythm hint, in words.
#pragma once

#include "core/signal/rhythm/judge.h"

#include <QString>

#include <vector>

namespace afterbeat::window {

/// A line of the table of features.
struct FeatureShown {
  QString name, value;
  /// Half way between the classes that the model was fitted to.
  QString limit;
  /// "shockable", "not shockable", "neither".
  QString speaksFor;
  /// Its share of the log-odds, counted from the limit, with its sign.
  QString weight;
};

/// What speaks most comes first.
[[nodiscard]] std::vector<FeatureShown> featuresOf(const RhythmWindow& window);

/// Amplitude, rates and log-odds, as sentences.
[[nodiscard]] QString factWords(const RhythmWindow& window);

} // namespace afterbeat::window
