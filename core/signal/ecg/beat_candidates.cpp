#include "core/signal/ecg/beat_candidates.h"

#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/sections.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

/// Seconds; after Elgendi.
constexpr double kComplex = 0.097, kBeat = 0.611;
constexpr double kLowHz = 8, kHighHz = 20;
/// A piece, and what is filtered with it on each side so that cutting makes no difference.
constexpr double kPiece = 60, kAside = 3;

/// Mean over an odd number of samples around each, fewer at the ends.
void movingMean(const std::vector<double>& values, std::size_t width, std::vector<double>& out) {
  const std::size_t n = values.size(), half = width / 2;
  out.resize(n);
  double sum = 0;
  std::size_t next = 0;
  const auto takeIn = [&](std::size_t i) {
    for (; next < std::min(n, i + half + 1); ++next) {
      sum += values[next];
    }
  };
  std::size_t i = 0;
  for (; i < std::min(n, half + 1); ++i) {
    takeIn(i);
    out[i] = sum / static_cast<double>(next);
  }
  const double share = 1 / static_cast<double>(width);
  for (; i + half < n; ++i, ++next) {
    sum += values[i + half] - values[i - half - 1];
    out[i] = sum * share;
  }
  for (; i < n; ++i) {
    takeIn(i);
    sum -= values[i - half - 1];
    out[i] = sum / static_cast<double>(n - i + half);
  }
}

/// Finds the candidates of one piece; its arrays are used again for the next.
class Piece {
public:
  explicit Piece(double rateHz)
      : sections_(butterworth(3, Band::bandPass, kLowHz, kHighHz, rateHz)),
        complexWidth_(oddWidth(kComplex * rateHz)), beatWidth_(oddWidth(kBeat * rateHz)) {}

  /// Reads samples [begin, end) and keeps candidates whose peak lies in [from, to).
  void find(std::span<const double> all, std::size_t begin, std::size_t end, std::size_t from,
            std::size_t to, std::vector<BeatCandidate>& out) {
    band_.assign(all.begin() + static_cast<std::ptrdiff_t>(begin),
                 all.begin() + static_cast<std::ptrdiff_t>(end));
    bridgeMissing(band_);
    filterBothWays(sections_, band_);
    squares_.resize(band_.size());
    std::transform(band_.begin(), band_.end(), squares_.begin(), [](double x) { return x * x; });
    movingMean(squares_, complexWidth_, ofComplex_);
    movingMean(squares_, beatWidth_, ofBeat_);
    for (std::size_t i = 0; i < band_.size(); ++i) {
      if (ofComplex_[i] > ofBeat_[i]) {
        const std::size_t first = i;
        while (i < band_.size() && ofComplex_[i] > ofBeat_[i]) {
          ++i;
        }
        const auto candidate = strongestIn(first, i);
        const std::size_t sample = begin + candidate.sample;
        if (2 * (i - first) >= complexWidth_ && sample >= from && sample < to &&
            !std::isnan(all[sample])) {
          out.push_back({sample, candidate.strength});
        }
      }
    }
  }

private:
  static std::size_t oddWidth(double samples) {
    return 2 * static_cast<std::size_t>(samples / 2) + 1;
  }
  [[nodiscard]] BeatCandidate strongestIn(std::size_t first, std::size_t last) const {
    const auto at = [first, last](const std::vector<double>& values) {
      return std::max_element(values.begin() + static_cast<std::ptrdiff_t>(first),
                              values.begin() + static_cast<std::ptrdiff_t>(last));
    };
    return {static_cast<std::size_t>(at(squares_) - squares_.begin()), std::sqrt(*at(ofComplex_))};
  }

  std::vector<Section> sections_;
  std::size_t complexWidth_, beatWidth_;
  std::vector<double> band_, squares_, ofComplex_, ofBeat_;
};

} // namespace

std::vector<BeatCandidate> beatCandidates(const SignalView& ecg) {
  std::vector<BeatCandidate> out;
  if (!canDesign(3, Band::bandPass, kLowHz, kHighHz, ecg.rateHz)) {
    return out;
  }
  const std::size_t n = ecg.values.size();
  const auto length = static_cast<std::size_t>(kPiece * ecg.rateHz);
  const auto aside = static_cast<std::size_t>(kAside * ecg.rateHz);
  Piece piece(ecg.rateHz);
  for (std::size_t from = 0; from < n; from += length) {
    const std::size_t to = std::min(n, from + length);
    piece.find(ecg.values, from > aside ? from - aside : 0, std::min(n, to + aside), from, to, out);
  }
  return out;
}

} // namespace afterbeat
