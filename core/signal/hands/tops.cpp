#include "core/signal/hands/tops.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// Where `values` cross `level` between sample `in`, above it, and its neighbour `out`, below.
double crossing(std::span<const double> values, std::size_t in, std::size_t out, double level) {
  const double share = (values[in] - level) / (values[in] - values[out]);
  return static_cast<double>(in) + share * (static_cast<double>(out) - static_cast<double>(in));
}

} // namespace

double topHeight(std::span<const double> values, std::size_t top) {
  if (top == 0 || top + 1 >= values.size()) {
    return values[top];
  }
  const double a = values[top - 1], b = values[top], c = values[top + 1];
  const double bend = a - 2 * b + c;
  if (!(bend < 0)) {
    return b;
  }
  const double shift = std::clamp(0.5 * (a - c) / bend, -0.5, 0.5);
  return b - 0.25 * (a - c) * shift;
}

double middleOfTop(std::span<const double> values, std::size_t top, double level, std::size_t from,
                   std::size_t to) {
  double left = static_cast<double>(from), right = static_cast<double>(to);
  for (std::size_t i = top; i > from; --i) {
    if (values[i - 1] < level) {
      left = crossing(values, i, i - 1, level);
      break;
    }
  }
  for (std::size_t i = top; i < to; ++i) {
    if (values[i + 1] < level) {
      right = crossing(values, i, i + 1, level);
      break;
    }
  }
  return (left + right) / 2;
}

double bottomAt(std::span<const double> values, std::size_t bottom) {
  const auto at = static_cast<double>(bottom);
  if (bottom == 0 || bottom + 1 >= values.size()) {
    return at;
  }
  const double a = values[bottom - 1], b = values[bottom], c = values[bottom + 1];
  const double bend = a - 2 * b + c;
  return bend > 0 ? at + std::clamp(0.5 * (a - c) / bend, -0.5, 0.5) : at;
}

double valueAt(std::span<const double> values, double at) {
  const auto last = static_cast<double>(values.size() - 1);
  if (!(at > 0)) {
    return values.front();
  }
  if (at >= last) {
    return values.back();
  }
  const auto i = static_cast<std::size_t>(at);
  const double u = at - static_cast<double>(i);
  const double b = values[i], c = values[i + 1];
  const double a = i > 0 ? values[i - 1] : b;
  const double d = i + 2 < values.size() ? values[i + 2] : c;
  return b + 0.5 * u * (c - a + u * (2 * a - 5 * b + 4 * c - d + u * (3 * (b - c) + d - a)));
}

} // namespace afterbeat
