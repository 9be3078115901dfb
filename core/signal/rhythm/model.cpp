#include "core/signal/rhythm/model.h"

#include <algorithm>

namespace afterbeat {

double FeatureWeight::termOf(double value) const {
  return weight * std::clamp((value - mean) / deviation, -4.0, 4.0);
}

double RhythmModel::logOdds(const WindowMeasures& window) const {
  double sum = offset;
  for (std::size_t i = 0; i < kRhythmFeatures; ++i) {
    sum += weights[i].termOf(window.features[i]);
  }
  return sum;
}

} // namespace afterbeat
