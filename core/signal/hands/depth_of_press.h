/// How far the sensor moved, from its acceleration: two published ways.
#pragma once

#include <cstddef>
#include <span>

namespace afterbeat {

/// One press as acceleration tells it.
struct Press {
  /// From the release before to the deepest point, mm.
  double depthMm = 0;
  /// The deepest point, in samples.
  double deepest = 0;
};

/// Double integration of the acceleration (m/s2, out of the chest) between two releases, `from` and
/// `to` in samples, under the constraints that velocity is nought and position the same at both:
/// what gravity, tilt and drift add within one press is thereby taken as a straight line and
/// removed. (The idea of resetting at known zeros: Aase and Myklebust, IEEE Trans Biomed Eng
/// 2002;49:1141-1148 [from memory].)
[[nodiscard]] Press integratedPress(std::span<const double> acceleration, double from, double to,
                                    double rateHz);

/// Like `integratedPress`, of the mean of several presses that follow each other (`releases` are
/// the moments around them, in samples, one more than presses), each stretched to the same length:
/// noise is averaged out before it can raise the deepest point. mm.
[[nodiscard]] double meanPressDepth(std::span<const double> acceleration,
                                    std::span<const double> releases, double rateHz);

/// The spectral method of Gonzalez-Otero et al. (BioMed Res Int 2014:865967): amplitudes and phases
/// of the acceleration at `ratePerMin` and its multiples below 16 Hz (at most six) over the window
/// [from, to) of 2 to 3 s, each divided by the square of its angular frequency, added up to one
/// period of movement; its height in mm. The published method uses a Hamming window and three
/// harmonics, this one a Hann window.
[[nodiscard]] double spectralDepth(std::span<const double> acceleration, std::size_t from,
                                   std::size_t to, double ratePerMin, double rateHz);

} // namespace afterbeat
