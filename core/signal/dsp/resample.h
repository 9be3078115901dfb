/// From the rate of a recording to the rate a detector works at.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace afterbeat {

/// Numerator and denominator of a change of rate, without common factor.
struct RateRatio {
  std::int64_t up = 1, down = 1;
  friend bool operator==(const RateRatio&, const RateRatio&) = default;
};

/// `toHz` / `fromHz`, exact if that takes no denominator above 1000, else the nearest that does
/// not. Both rates > 0, finite, and not more than a thousandfold apart.
[[nodiscard]] RateRatio rateRatio(double fromHz, double toHz);

/// Changes the rate of a signal that is fed piece by piece. Sample 0 of the output lies at sample 0
/// of the input; there is no delay. A windowed sine filter (Kaiser, beta 5, ten zero crossings a
/// side) keeps out what the lower of both rates cannot hold; beyond its ends the signal is taken as
/// constant. A NaN makes NaN of the outputs within ten samples of the lower rate, and of no others.
class Resampler {
public:
  Resampler(double fromHz, double toHz);

  /// The rate of the output: `toHz`, or what `rateRatio` comes to.
  [[nodiscard]] double rateHz() const { return rateHz_; }

  /// Feeds a piece and appends to `out` what can be computed by now.
  void run(std::span<const double> values, std::vector<double>& out);
  /// The signal has ended: appends the rest. In all ceil(samples x up / down) come out.
  void finish(std::vector<double>& out);

private:
  void emit(std::int64_t lastKnown, std::vector<double>& out);

  RateRatio ratio_;
  double rateHz_ = 0;
  /// Filter taps left of a sample at the high common rate, and inputs that one output takes.
  std::int64_t half_ = 0, taps_ = 0;
  /// Coefficients by phase, `taps_` each.
  std::vector<double> phases_;
  /// Inputs from index `keptFrom_` on.
  std::vector<double> kept_;
  std::int64_t keptFrom_ = 0, taken_ = 0, given_ = 0;
};

/// A whole signal at once.
[[nodiscard]] std::vector<double> resampled(std::span<const double> values, double fromHz,
                                            double toHz);

} // namespace afterbeat
