#include "core/signal/dsp/bridge.h"

#include <cmath>

namespace afterbeat {

std::size_t bridgeMissing(std::span<double> values) {
  std::size_t missing = 0;
  for (std::size_t begin = 0; begin < values.size(); ++begin) {
    if (!std::isnan(values[begin])) {
      continue;
    }
    std::size_t end = begin;
    while (end < values.size() && std::isnan(values[end])) {
      ++end;
    }
    const bool hasRight = end < values.size();
    const double left = begin > 0 ? values[begin - 1] : (hasRight ? values[end] : 0);
    const double right = hasRight ? values[end] : left;
    const double step = (right - left) / static_cast<double>(end - begin + 1);
    for (std::size_t i = begin; i < end; ++i) {
      values[i] = left + step * static_cast<double>(i - begin + 1);
    }
    missing += end - begin;
    begin = end;
  }
  return missing;
}

} // namespace afterbeat
