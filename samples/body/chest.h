/// How a chest moves under hands: from single compressions to its depth at any moment.
#pragma once

#include "samples/body/strokes.h"

#include <cstddef>
#include <vector>

namespace afterbeat::samples::body {

/// One compression as it truly is.
struct Press {
  /// Seconds, and mm below the chest at rest, at its deepest point.
  double s = 0, depth = 0;
  /// How far the chest stays pressed after it, mm.
  double lean = 0;
  Stroke stroke = Stroke::even;
};

/// Two compressions further apart than this, in seconds, are two runs: hands go off between.
inline constexpr double kLongestBeat = 1.35;

/// One way down or up.
struct ChestPart {
  double from = 0, to = 0;
  /// mm where it begins and where it ends.
  double first = 0, last = 0;
  Stroke stroke = Stroke::even;
  /// Hands come on or go off here.
  bool fromRest = false;
};

/// The motion of a chest. Depth in mm, its derivatives in mm/s and mm/s2.
class Chest {
public:
  /// In time order, at least 0.2 s apart. The first of a run comes down from the chest at rest;
  /// after the last of a run the chest comes up all the way.
  explicit Chest(const std::vector<Press>& presses);

  /// Reads the motion along a time that never goes backwards.
  class Follower {
  public:
    explicit Follower(const Chest& chest) : parts_(&chest.parts_) {}
    [[nodiscard]] Curve at(double s);

  private:
    const std::vector<ChestPart>* parts_;
    std::size_t next_ = 0;
    double level_ = 0;
  };
  [[nodiscard]] Follower follow() const { return Follower(*this); }

private:
  std::vector<ChestPart> parts_;
};

/// Of each compression how far the chest went from its highest point since the one before (or from
/// rest) to the deepest point, mm: what an accelerometer can know.
[[nodiscard]] std::vector<double> travelOf(const std::vector<Press>& presses);

} // namespace afterbeat::samples::body
