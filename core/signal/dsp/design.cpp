#include "core/signal/dsp/sections.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <complex>
#include <numbers>

namespace afterbeat {

namespace {

using Complex = std::complex<double>;

/// Zeros, poles and gain of a filter.
struct Roots {
  std::vector<Complex> zeros, poles;
  double gain = 1;
};

/// The analogue low-pass with its edge at 1 rad/s: poles on the unit circle, left half.
Roots prototype(int order) {
  Roots out;
  for (int m = 1 - order; m < order; m += 2) {
    out.poles.push_back(m == 0 ? Complex{-1}
                               : -std::polar(1.0, std::numbers::pi * m / (2 * order)));
  }
  return out;
}

/// Both solutions s of s^2 - 2 `half` s + `centre`^2 = 0, one list after the other.
std::vector<Complex> spread(const std::vector<Complex>& halves, double centre) {
  std::vector<Complex> out;
  for (const double sign : {1.0, -1.0}) {
    for (const Complex half : halves) {
      out.push_back(half + sign * std::sqrt(half * half - centre * centre));
    }
  }
  return out;
}

/// Moves the edges of the analogue prototype; `low` and `high` in rad/s. The products of the poles
/// that would scale the gain are 1 for this family.
Roots moved(Roots roots, Band band, double low, double high) {
  const auto order = roots.poles.size();
  const double width = high - low;
  const double centre = std::sqrt(low * high);
  switch (band) {
  case Band::lowPass:
    for (Complex& pole : roots.poles) {
      pole *= high;
    }
    roots.gain = std::pow(high, static_cast<double>(order));
    break;
  case Band::highPass:
    for (Complex& pole : roots.poles) {
      pole = low / pole;
    }
    roots.zeros.assign(order, Complex{0});
    break;
  case Band::bandPass:
    for (Complex& pole : roots.poles) {
      pole *= width / 2;
    }
    roots.poles = spread(roots.poles, centre);
    roots.zeros.assign(order, Complex{0});
    roots.gain = std::pow(width, static_cast<double>(order));
    break;
  case Band::bandStop:
    for (Complex& pole : roots.poles) {
      pole = width / 2 / pole;
    }
    roots.poles = spread(roots.poles, centre);
    roots.zeros.assign(order, Complex{0, centre});
    roots.zeros.insert(roots.zeros.end(), order, Complex{0, -centre});
    break;
  }
  return roots;
}

/// From the s to the z plane for a rate of 2 (so that edges are 4 tan(pi f / rate)).
Roots bilinear(const Roots& analogue) {
  Roots out;
  Complex gain = analogue.gain;
  for (const Complex zero : analogue.zeros) {
    gain *= 4.0 - zero;
    out.zeros.push_back((4.0 + zero) / (4.0 - zero));
  }
  for (const Complex pole : analogue.poles) {
    gain /= 4.0 - pole;
    out.poles.push_back((4.0 + pole) / (4.0 - pole));
  }
  out.zeros.resize(out.poles.size(), Complex{-1});
  out.gain = gain.real();
  return out;
}

bool isReal(Complex root) {
  return root.imag() == 0;
}

/// One of each conjugate pair by rising real part, then the real roots. An odd number gets a root
/// at the origin, which changes nothing but the count.
std::vector<Complex> onePerPair(std::vector<Complex> roots) {
  if (roots.size() % 2 != 0) {
    roots.emplace_back(0);
  }
  for (Complex& root : roots) {
    if (std::fabs(root.imag()) <= 100 * 2.2e-16 * std::abs(root)) {
      root = root.real();
    }
  }
  std::erase_if(roots, [](Complex root) { return root.imag() < 0; });
  std::stable_sort(roots.begin(), roots.end(), [](Complex a, Complex b) {
    return isReal(a) != isReal(b) ? isReal(b) : a.real() < b.real();
  });
  return roots;
}

/// Takes the root that is smallest by `key` out of the list, looking at real ones only if so asked.
template <typename Key>
Complex take(std::vector<Complex>& roots, bool realOnly, Key key) {
  auto best = roots.end();
  for (auto it = roots.begin(); it != roots.end(); ++it) {
    if ((!realOnly || isReal(*it)) && (best == roots.end() || key(*it) < key(*best))) {
      best = it;
    }
  }
  assert(best != roots.end());
  const Complex out = *best;
  roots.erase(best);
  return out;
}

/// Coefficients of z^-1 and z^-2 of (1 - r1/z)(1 - r2/z).
std::pair<double, double> product(Complex r1, Complex r2) {
  return {-(r1 + r2).real(), (r1 * r2).real()};
}

/// Pairs the pole next to the unit circle with the zero next to it, and so on, the sharpest
/// section last, which keeps what the sections add to each other's rounding small.
std::vector<Section> paired(const Roots& roots) {
  auto poles = onePerPair(roots.poles);
  auto zeros = onePerPair(roots.zeros);
  const auto toCircle = [](Complex pole) { return std::fabs(1 - std::abs(pole)); };
  std::vector<Section> out;
  while (!poles.empty()) {
    const Complex pole = take(poles, false, toCircle);
    const Complex other = isReal(pole) ? take(poles, true, toCircle) : std::conj(pole);
    const auto nearness = [pole](Complex zero) { return std::abs(zero - pole); };
    const Complex zero = take(zeros, false, nearness);
    const Complex otherZero = isReal(zero) ? take(zeros, true, nearness) : std::conj(zero);
    const auto [b1, b2] = product(zero, otherZero);
    const auto [a1, a2] = product(pole, other);
    out.push_back({1, b1, b2, a1, a2});
  }
  std::reverse(out.begin(), out.end());
  out.front().b0 *= roots.gain;
  out.front().b1 *= roots.gain;
  out.front().b2 *= roots.gain;
  return out;
}

} // namespace

bool canDesign(int order, Band band, double lowHz, double highHz, double rateHz) {
  const auto inside = [rateHz](double hz) { return hz > 0 && hz < rateHz / 2; };
  if (order < 1 || order > 12 || !std::isfinite(rateHz)) {
    return false;
  }
  switch (band) {
  case Band::lowPass:
    return inside(highHz);
  case Band::highPass:
    return inside(lowHz);
  default:
    return inside(lowHz) && inside(highHz) && lowHz < highHz;
  }
}

std::vector<Section> butterworth(int order, Band band, double lowHz, double highHz, double rateHz) {
  assert(canDesign(order, band, lowHz, highHz, rateHz));
  const auto warped = [rateHz](double hz) { return 4 * std::tan(std::numbers::pi * hz / rateHz); };
  return paired(bilinear(moved(prototype(order), band, warped(lowHz), warped(highHz))));
}

Section notch(double hz, double quality, double rateHz) {
  assert(hz > 0 && hz < rateHz / 2 && quality > 0);
  const double angle = 2 * std::numbers::pi * hz / rateHz;
  const double gain = 1 / (1 + std::tan(angle / quality / 2));
  const double turn = -2 * gain * std::cos(angle);
  return {gain, turn, gain, turn, 2 * gain - 1};
}

double gainAt(std::span<const Section> sections, double hz, double rateHz) {
  const Complex back = std::polar(1.0, -2 * std::numbers::pi * hz / rateHz);
  Complex out = 1;
  for (const Section& c : sections) {
    out *= (c.b0 + back * (c.b1 + back * c.b2)) / (1.0 + back * (c.a1 + back * c.a2));
  }
  return std::abs(out);
}

} // namespace afterbeat
