/// How a chest goes down and up again in one compression: six ways, made of smooth curves.
#pragma once

#include <array>
#include <cstdint>

namespace afterbeat::samples::body {

enum class Stroke : std::uint8_t {
  /// A sine, down and up alike.
  even,
  /// Down quickly, up slowly.
  thrust,
  /// Held below for a while.
  held,
  /// A short push with a long rest.
  jab,
  /// A machine: brisk edges, long holds below and above.
  piston,
  /// Falters on its way down and up.
  shoulder,
};

inline constexpr std::array kAllStrokes{Stroke::even, Stroke::thrust, Stroke::held,
                                        Stroke::jab,  Stroke::piston, Stroke::shoulder};

/// A value and its first two derivatives.
struct Curve {
  double value = 0, slope = 0, bend = 0;
};

/// Shares of the time from one deepest point to the next: up, then rest (what is left), then down.
struct StrokeShares {
  double down = 0.5, up = 0.5;
};
[[nodiscard]] StrokeShares sharesOf(Stroke stroke);

/// From released (x = 0, value 0) to deepest (x = 1, value 1); derivatives with respect to x. The
/// way up is the same curve, run through backwards. `fromRest`: hands come on, or go off, without a
/// jerk.
[[nodiscard]] Curve strokeCurve(Stroke stroke, double x, bool fromRest);

} // namespace afterbeat::samples::body
