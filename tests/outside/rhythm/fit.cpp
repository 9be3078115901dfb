#include "fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace afterbeat {

namespace {

/// Half of it times the sum of squared weights is added to the mean loss.
constexpr double kPenalty = 2.5e-4;
constexpr double kNoiseWeight = 0.4;
/// Standard deviations at which a feature is cut off, as in the model.
constexpr double kMost = 4;
constexpr std::size_t kUnknowns = kRhythmFeatures + 1;

using Row = std::array<double, kUnknowns>;

std::optional<bool> teaches(const LabelledSignal& signal, const LabelledWindow& w) {
  if (signal.doubtful() || w.disputed || w.window.obstacle != RhythmReason::none ||
      w.window.doubt != RhythmReason::none ||
      w.window.measures.amplitudeMv < rhythm_limits::kAsystoleMv) {
    return std::nullopt;
  }
  switch (w.scored) {
  case RhythmClass::fibrillation:
  case RhythmClass::fastTachycardia:
    return true;
  case RhythmClass::normal:
  case RhythmClass::otherOrganised:
  case RhythmClass::noise:
  case RhythmClass::beatsMarked:
    return false;
  default:
    return std::nullopt;
  }
}

/// Solves a x = b for a symmetric positive definite `a` by Gauss's elimination.
Row solve(std::array<Row, kUnknowns> a, Row b) {
  for (std::size_t k = 0; k < kUnknowns; ++k) {
    for (std::size_t i = k + 1; i < kUnknowns; ++i) {
      const double f = a[i][k] / a[k][k];
      for (std::size_t j = k; j < kUnknowns; ++j) {
        a[i][j] -= f * a[k][j];
      }
      b[i] -= f * b[k];
    }
  }
  for (std::size_t k = kUnknowns; k-- > 0;) {
    for (std::size_t j = k + 1; j < kUnknowns; ++j) {
      b[k] -= a[k][j] * b[j];
    }
    b[k] /= a[k][k];
  }
  return b;
}

/// Means and deviations, every example alike; and the limits, by the classes' weights.
RhythmModel scaled(const std::vector<Example>& examples) {
  RhythmModel model;
  const auto count = static_cast<double>(examples.size());
  for (std::size_t f = 0; f < kRhythmFeatures; ++f) {
    double sum = 0, squares = 0;
    std::array<double, 2> classSum{}, classWeight{};
    for (const auto& example : examples) {
      const double v = example.measures->features[f];
      sum += v;
      squares += v * v;
      classSum[example.shockable ? 1 : 0] += example.weight * v;
      classWeight[example.shockable ? 1 : 0] += example.weight;
    }
    auto& weight = model.weights[f];
    weight.mean = sum / count;
    weight.deviation = std::sqrt(std::max(squares / count - weight.mean * weight.mean, 1e-18));
    weight.limit = (classSum[0] / classWeight[0] + classSum[1] / classWeight[1]) / 2;
  }
  return model;
}

Row rowOf(const RhythmModel& model, const WindowMeasures& measures) {
  Row row{};
  for (std::size_t f = 0; f < kRhythmFeatures; ++f) {
    const auto& weight = model.weights[f];
    row[f] = std::clamp((measures.features[f] - weight.mean) / weight.deviation, -kMost, kMost);
  }
  row[kRhythmFeatures] = 1;
  return row;
}

/// One step of Newton's method; returns its largest part.
double improve(const std::vector<Example>& examples, const std::vector<Row>& rows, Row& x) {
  Row gradient{};
  std::array<Row, kUnknowns> curvature{};
  for (std::size_t k = 0; k < kUnknowns; ++k) {
    const double penalty = k < kRhythmFeatures ? kPenalty : 1e-12;
    gradient[k] = penalty * x[k];
    curvature[k][k] = penalty;
  }
  for (std::size_t n = 0; n < rows.size(); ++n) {
    double z = 0;
    for (std::size_t k = 0; k < kUnknowns; ++k) {
      z += rows[n][k] * x[k];
    }
    const double p = 1 / (1 + std::exp(-z));
    const double pull = examples[n].weight * (p - (examples[n].shockable ? 1 : 0));
    const double bend = examples[n].weight * std::max(p * (1 - p), 1e-6);
    for (std::size_t k = 0; k < kUnknowns; ++k) {
      gradient[k] += pull * rows[n][k];
      for (std::size_t j = 0; j <= k; ++j) {
        curvature[k][j] += bend * rows[n][k] * rows[n][j];
      }
    }
  }
  for (std::size_t k = 0; k < kUnknowns; ++k) {
    for (std::size_t j = k + 1; j < kUnknowns; ++j) {
      curvature[k][j] = curvature[j][k];
    }
  }
  const Row step = solve(curvature, gradient);
  double largest = 0;
  for (std::size_t k = 0; k < kUnknowns; ++k) {
    x[k] -= step[k];
    largest = std::max(largest, std::fabs(step[k]));
  }
  return largest;
}

} // namespace

std::vector<Example> examplesOf(const std::vector<LabelledSignal>& signals,
                                const std::string& heldOut) {
  struct Taken {
    std::string record;
    bool noise = false;
  };
  std::vector<Example> examples;
  std::vector<Taken> taken;
  std::map<std::pair<std::string, bool>, double> counts;
  for (const auto& signal : signals) {
    if (signal.record == heldOut || signal.database == heldOut) {
      continue;
    }
    for (const auto& w : signal.windows) {
      if (const auto shockable = teaches(signal, w)) {
        examples.push_back({&w.window.measures, *shockable, 0});
        taken.push_back({signal.record, w.scored == RhythmClass::noise});
        ++counts[{signal.record, *shockable}];
      }
    }
  }
  std::array<double, 2> sums{};
  for (std::size_t n = 0; n < examples.size(); ++n) {
    examples[n].weight = 1 / std::sqrt(counts[{taken[n].record, examples[n].shockable}]);
    sums[examples[n].shockable ? 1 : 0] += examples[n].weight;
  }
  for (std::size_t n = 0; n < examples.size(); ++n) {
    examples[n].weight *=
        0.5 / sums[examples[n].shockable ? 1 : 0] * (taken[n].noise ? kNoiseWeight : 1);
  }
  return examples;
}

RhythmModel fitModel(const std::vector<Example>& examples) {
  auto model = scaled(examples);
  std::vector<Row> rows;
  rows.reserve(examples.size());
  for (const auto& example : examples) {
    rows.push_back(rowOf(model, *example.measures));
  }
  Row x{};
  for (int step = 0; step < 60 && improve(examples, rows, x) > 1e-10; ++step) {
  }
  for (std::size_t f = 0; f < kRhythmFeatures; ++f) {
    model.weights[f].weight = x[f];
  }
  model.offset = x[kRhythmFeatures];
  return model;
}

} // namespace afterbeat
