/// How well compressions and breaths were found in scenes whose truth is known.
#pragma once

#include "core/signal/findings.h"
#include "samples/body/scenes.h"

#include <string>
#include <vector>

namespace afterbeat::hands_score {

/// Pairs of a true moment and a found one.
struct Matching {
  /// Index of the found moment for each true one; -1: missed.
  std::vector<int> foundFor;
  int truths = 0, found = 0, matched = 0;
};

/// One-to-one: of all pairs at most `tolerance` apart the nearest first, each moment once.
[[nodiscard]] Matching match(const std::vector<Time>& truths, const std::vector<Time>& found,
                             Duration tolerance);

/// Counts over one scene or many.
struct Counts {
  int truths = 0, found = 0, matched = 0;
  void add(const Matching& m) {
    truths += m.truths;
    found += m.found;
    matched += m.matched;
  }
  [[nodiscard]] double sensitivity() const { return truths > 0 ? double(matched) / truths : 1; }
  [[nodiscard]] double predictivity() const { return found > 0 ? double(matched) / found : 1; }
  /// 2 x matched / (truths + found): nothing is left out, a stretch the detector gave up included.
  [[nodiscard]] double f1() const {
    return truths + found > 0 ? 2.0 * matched / (truths + found) : 1;
  }
};

/// What one detector made of compressions.
struct CompressionScore {
  Counts counts;
  /// Absolute errors: seconds; mm; compressions a minute over five intervals in a row whose true
  /// rate lies between 80 and 140; mm of leaning.
  std::vector<double> time, depth, rate, leaning;
  /// Hands-off fraction of each scene, found minus true, as the figures give it. Where the figure
  /// could not be given although the truth could: 1.
  std::vector<double> handsOff;
  /// Scenes in which most of the hands-off truth cannot be known are counted all the same.
  double judged = 0, length = 0;
};

struct Score {
  CompressionScore acceleration, depth, force, impedance;
  /// A record that holds acceleration and impedance.
  CompressionScore both;
  Counts breaths;
  std::vector<double> breathTime;
};

/// Compressions count as found within 0.25 s of the deepest point; breaths within 1.5 s of the
/// middle of the inflation. What is true while electrodes are off does not count as missed on the
/// pads; what is found then counts as wrong.
void addScene(const samples::body::Scene& scene, Score& score);

/// Everything of `from` into `into`.
void add(const Score& from, Score& into);

/// The value below which `share` of them lie; NaN for none.
[[nodiscard]] double quantile(std::vector<double> values, double share);
[[nodiscard]] double mean(const std::vector<double>& values);
/// Share of the values at most `limit` away from 0; NaN for none.
[[nodiscard]] double shareWithin(const std::vector<double>& values, double limit);

/// A goal, and what was measured.
struct Goal {
  std::string what;
  double goal = 0, measured = 0;
  /// The measured value must be at least the goal; otherwise at most.
  bool atLeast = true;
  [[nodiscard]] bool met() const { return atLeast ? measured >= goal : measured <= goal; }
};
[[nodiscard]] std::vector<Goal> goalsOf(const Score& score);

} // namespace afterbeat::hands_score
