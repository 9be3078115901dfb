/// Random numbers that are the same on every machine for the same seed. The generator is the
/// standard's; what is made of it is ours, because the standard leaves that to each library.
#pragma once

#include <cstdint>
#include <random>

namespace afterbeat {

class Random {
public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}
  /// Above 0 and below 1.
  [[nodiscard]] double uniform();
  /// From 0 to `n` - 1; `n` above 0.
  [[nodiscard]] std::uint64_t below(std::uint64_t n);
  /// Mean 0, deviation 1: the polar method of Marsaglia and Bray, SIAM Review 1964;6:260-264 (from
  /// memory).
  [[nodiscard]] double normal();
  /// Gamma with `shape` at least 1 and scale 1: Marsaglia and Tsang, ACM Transactions on
  /// Mathematical Software 2000;26:363-372 (from memory).
  [[nodiscard]] double gamma(double shape);
  /// Beta with both shapes at least 1.
  [[nodiscard]] double beta(double a, double b);

private:
  std::mt19937_64 engine_;
};

} // namespace afterbeat
