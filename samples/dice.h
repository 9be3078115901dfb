/// Numbers that are the same on every machine: a small generator of its own, and the few functions
/// the waveforms need, made of additions and multiplications alone (the library's sine may differ
/// in its last bit from one machine to the next).
#pragma once

#include <cstdint>

namespace afterbeat::samples {

/// SplitMix64 (Steele et al., OOPSLA 2014): one 64-bit state, every seed good.
class Dice {
public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  [[nodiscard]] std::uint64_t next();
  /// From `low` up to, not including, `high`.
  [[nodiscard]] double between(double low, double high);
  /// About normal, mean 0 and deviation 1: twelve uniform numbers summed; never beyond 6.
  [[nodiscard]] double normal();

private:
  std::uint64_t state_;
};

/// sin(2 pi x); good to 1e-6.
[[nodiscard]] double sineOfTurns(double x);

/// A smooth hill: 1 at x = 0, flat and 0 from |x| = 1 on.
[[nodiscard]] double hill(double x);

/// First and second derivative of `hill`.
[[nodiscard]] double hillSlope(double x);
[[nodiscard]] double hillCurvature(double x);

} // namespace afterbeat::samples
