/// Sums of shapes over the neighbours of each of a series, one step at a time.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

namespace afterbeat {

/// For shape k of `shapes` in turn `take(k, sum, count)` is given the sum of the up to `reach`
/// shapes before and after it, without itself where `withoutOwn`, and how many they are.
template <std::size_t kPhases, typename Take>
void eachSumOfNeighbours(const std::vector<std::array<double, kPhases>>& shapes, std::size_t reach,
                         bool withoutOwn, const Take& take) {
  std::array<double, kPhases> sum{};
  double count = 0;
  const auto add = [&](std::size_t k, double sign) {
    count += sign;
    for (std::size_t p = 0; p < kPhases; ++p) {
      sum[p] += sign * shapes[k][p];
    }
  };
  for (std::size_t k = 0; k < std::min(reach, shapes.size()); ++k) {
    add(k, 1);
  }
  for (std::size_t k = 0; k < shapes.size(); ++k) {
    if (k + reach < shapes.size()) {
      add(k + reach, 1);
    }
    if (k > reach) {
      add(k - reach - 1, -1);
    }
    if (withoutOwn) {
      add(k, -1);
    }
    take(k, sum, count);
    if (withoutOwn) {
      add(k, 1);
    }
  }
}

} // namespace afterbeat
