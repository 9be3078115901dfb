/// Room along a row, for placing words.
#pragma once

#include <algorithm>
#include <utility>
#include <vector>

namespace afterbeat::papers {

/// A horizontal strip in which things must not lie on each other.
class Lane {
public:
  void take(double from, double to) { taken_.emplace_back(from, to); }
  [[nodiscard]] bool isFree(double from, double to) const {
    return std::none_of(taken_.begin(), taken_.end(),
                        [&](const auto& other) { return from < other.second && to > other.first; });
  }
  /// The widest free part of [from, to].
  [[nodiscard]] std::pair<double, double> widestFree(double from, double to) const {
    auto taken = taken_;
    std::sort(taken.begin(), taken.end());
    std::pair<double, double> best{from, from};
    double cursor = from;
    for (const auto& [begin, end] : taken) {
      if (end <= from || begin >= to) {
        continue;
      }
      if (begin - cursor > best.second - best.first) {
        best = {cursor, begin};
      }
      cursor = std::max(cursor, end);
    }
    if (to - cursor > best.second - best.first) {
      best = {cursor, to};
    }
    return best;
  }

private:
  std::vector<std::pair<double, double>> taken_;
};

} // namespace afterbeat::papers
