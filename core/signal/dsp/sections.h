/// Recursive filters as cascades of second-order sections: their design, and running them over a
/// whole signal or piece by piece.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace afterbeat {

/// One second-order section, a0 = 1:
/// H(z) = (b0 + b1 z^-1 + b2 z^-2) / (1 + a1 z^-1 + a2 z^-2).
struct Section {
  double b0 = 1, b1 = 0, b2 = 0, a1 = 0, a2 = 0;
};

/// What a filter lets through.
enum class Band : unsigned char { lowPass, highPass, bandPass, bandStop };

/// Whether `butterworth` can make such a filter: order 1 to 12, and the edges the band uses above
/// 0 and below half the rate, in rising order. Ask before designing for a rate that a file states.
[[nodiscard]] bool canDesign(int order, Band band, double lowHz, double highHz, double rateHz);

/// A digital Butterworth filter by the bilinear transform with its edges (-3 dB) kept in place.
/// `lowPass` uses `highHz` alone, `highPass` `lowHz` alone. Band filters have twice the order.
/// `canDesign` must hold. Source: Butterworth, Wireless Engineer 1930;7:536-541 (from memory).
[[nodiscard]] std::vector<Section> butterworth(int order, Band band, double lowHz, double highHz,
                                               double rateHz);

/// A second-order notch at `hz` (0 < `hz` < half the rate) whose -3 dB width is `hz` / `quality`.
/// Source: Orfanidis, Introduction to Signal Processing, 1996, section 11.3 (from memory).
[[nodiscard]] Section notch(double hz, double quality, double rateHz);

/// Size of the frequency response at `hz`.
[[nodiscard]] double gainAt(std::span<const Section> sections, double hz, double rateHz);

/// A filter that is fed piece by piece; its state is kept between the pieces, and how a signal is
/// cut makes no difference to what comes out. A NaN that goes in stays for ever: see `bridge.h`.
class Cascade {
public:
  Cascade() = default;
  explicit Cascade(std::vector<Section> sections);

  /// The state of having been fed `value` for ever: no jump at the beginning of a signal that does
  /// not begin at zero. Zero is how every filter starts.
  void settle(double value);

  /// Feeds one sample.
  [[nodiscard]] double step(double in) {
    for (std::size_t k = 0; k < sections_.size(); ++k) {
      in = stepOne(sections_[k], state_[k], in);
    }
    return in;
  }

  /// Feeds a piece and writes as many samples over it.
  void run(std::span<double> values);

private:
  struct State {
    double s1 = 0, s2 = 0;
  };
  /// Direct form II transposed; summed so that what waits for `out` is as little as can be.
  static double stepOne(const Section& c, State& s, double in) {
    const double out = c.b0 * in + s.s1;
    s.s1 = (c.b1 * in + s.s2) - c.a1 * out;
    s.s2 = c.b2 * in - c.a2 * out;
    return out;
  }
  template <std::size_t kCount>
  void runSome(std::size_t first, std::span<double> values);

  std::vector<Section> sections_;
  std::vector<State> state_;
};

/// Filters a whole signal in place, forwards and then backwards: no delay, the gain squared. Both
/// ends are continued by their mirror through the last point, over three times the filter's length
/// or as much as the signal has. No NaN may be in it. Needs no memory but those ends.
void filterBothWays(std::span<const Section> sections, std::span<double> values);

} // namespace afterbeat
