#include "core/statistics/random.h"

#include <cmath>

namespace afterbeat {

double Random::uniform() {
  // 53 bits, moved to the middle of their step so that neither 0 nor 1 comes.
  return (static_cast<double>(engine_() >> 11U) + 0.5) * 0x1p-53;
}

std::uint64_t Random::below(std::uint64_t n) {
  // Numbers past the last full turn of n would favour the first ones.
  const std::uint64_t past = (~std::uint64_t{0} % n + 1) % n;
  std::uint64_t drawn = engine_();
  while (drawn > ~past && past != 0) {
    drawn = engine_();
  }
  return drawn % n;
}

double Random::normal() {
  for (;;) {
    const double x = 2 * uniform() - 1, y = 2 * uniform() - 1, s = x * x + y * y;
    if (s < 1 && s > 0) {
      return x * std::sqrt(-2 * std::log(s) / s);
    }
  }
}

double Random::gamma(double shape) {
  const double d = shape - 1.0 / 3, c = 1 / std::sqrt(9 * d);
  for (;;) {
    const double x = normal(), root = 1 + c * x;
    if (root <= 0) {
      continue;
    }
    const double v = root * root * root;
    if (std::log(uniform()) < 0.5 * x * x + d - d * v + d * std::log(v)) {
      return d * v;
    }
  }
}

double Random::beta(double a, double b) {
  const double x = gamma(a), y = gamma(b);
  return x / (x + y);
}

} // namespace afterbeat
