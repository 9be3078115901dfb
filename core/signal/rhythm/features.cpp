#include "core/signal/rhythm/features.h"

#include "core/signal/dsp/spectrum.h"
#include "core/signal/rhythm/likeness.h"
#include "core/signal/rhythm/seconds.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace afterbeat {

namespace {

constexpr std::size_t kSecondsOfWindow = 8;
/// TCSC spans three seconds: its last begins at the window's sixth.
constexpr std::size_t kTcscOfWindow = 6;
/// Autocorrelation works on means of two samples; lags in those.
constexpr std::size_t kPairs = kRhythmWindow / 2;
constexpr double kPairRateHz = kRhythmRateHz / 2;
constexpr std::size_t kShortestLag = 10, kLongestLag = 156;
constexpr std::size_t kSwingFrom = 3, kSwingTo = 38;
/// Rates between which a repetition counts less and less as slow.
constexpr double kSlow = 110, kFast = 190;
/// The least evenness: rests between beats, and a jolt among waves, count no more than this.
constexpr double kLeastEvenness = -1.5;
constexpr double kNothing = 1e-12;

double slowness(const Repetition& repeat) {
  return repeat.correlation * std::clamp((kFast - repeat.ratePerMin) / (kFast - kSlow), 0.0, 1.0);
}

/// The first peak of the correlations with at least 0.8 of the largest, moved to the top of the
/// parabola through its neighbours.
Repetition firstLargePeak(std::span<const double> r) {
  const auto isPeak = [&](std::size_t i) { return r[i] > r[i - 1] && r[i] >= r[i + 1]; };
  double most = 0;
  for (auto i = kShortestLag; i <= kLongestLag; ++i) {
    most = isPeak(i) ? std::max(most, r[i]) : most;
  }
  for (auto i = kShortestLag; i <= kLongestLag && most > 0; ++i) {
    if (isPeak(i) && r[i] >= 0.8 * most) {
      const double bend = r[i - 1] - 2 * r[i] + r[i + 1];
      const double off = bend < 0 ? 0.5 * (r[i - 1] - r[i + 1]) / bend : 0;
      return {.correlation = r[i], .ratePerMin = 60 * kPairRateHz / (static_cast<double>(i) + off)};
    }
  }
  return {};
}

double leakageOf(std::span<const double> v) {
  double size = 0, change = 0;
  for (std::size_t i = 0; i < v.size(); ++i) {
    size += std::fabs(v[i]);
    change += i > 0 ? std::fabs(v[i] - v[i - 1]) : 0;
  }
  const double half = std::floor(std::numbers::pi * size / std::max(change, kNothing) + 0.5);
  const auto lag = static_cast<std::size_t>(std::clamp(half, 1.0, 2.0 * kRhythmSecond));
  double sum = 0, both = 0;
  for (auto i = lag; i < v.size(); ++i) {
    sum += std::fabs(v[i] + v[i - lag]);
    both += std::fabs(v[i]) + std::fabs(v[i - lag]);
  }
  return sum / std::max(both, kNothing);
}

/// Sum and sum of squares, for a variance.
struct Moments {
  double sum = 0, squares = 0, count = 0;
  void add(double v) {
    sum += v;
    squares += v * v;
    ++count;
  }
  [[nodiscard]] double variance() const {
    return std::max(squares / count - (sum / count) * (sum / count), 0.0);
  }
};

double crossingHz(std::span<const double> v) {
  std::size_t crossings = 0;
  for (std::size_t i = 1; i < v.size(); ++i) {
    crossings += (v[i] < 0) != (v[i - 1] < 0) ? 1U : 0U;
  }
  return static_cast<double>(crossings) / 2 * kRhythmRateHz / static_cast<double>(v.size());
}

double complexityOf(std::span<const double> v) {
  Moments self, first, second;
  for (std::size_t i = 0; i < v.size(); ++i) {
    self.add(v[i]);
    if (i > 0) {
      first.add(v[i] - v[i - 1]);
    }
    if (i > 1) {
      second.add(v[i] - 2 * v[i - 1] + v[i - 2]);
    }
  }
  const double slopes = std::max(first.variance(), kNothing * kNothing);
  return std::sqrt(second.variance() * self.variance()) / slopes;
}

/// Measures windows of one signal; keeps its memory.
class WindowMeter {
public:
  WindowMeasures measure(const RhythmBands& bands, std::size_t at,
                         std::span<const SecondMeasures> seconds) {
    const auto of = [at](const std::vector<double>& band) {
      return std::span{band}.subspan(at, kRhythmWindow);
    };
    WindowMeasures m;
    measureSeconds(seconds, m);
    set(m, RhythmFeature::leakage, leakageOf(centred(of(bands.wide))));
    m.crossingHz = crossingHz(of(bands.wide));
    set(m, RhythmFeature::complexity, complexityOf(of(bands.narrow)));
    measureSlope(of(bands.wide), m);

    const auto likeness = likeness_.of(of(bands.wide), of(bands.slope));
    set(m, RhythmFeature::likeBeats, likeness.correlation);
    m.beats = likeness.beats;
    m.beatRatePerMin = likeness.ratePerMin;

    auto r = correlate(of(bands.wide));
    m.repeat = firstLargePeak(r);
    set(m, RhythmFeature::swing, *std::min_element(r.begin() + kSwingFrom, r.begin() + kSwingTo));
    m.slopeRepeat = firstLargePeak(correlate(of(bands.slope)));
    set(m, RhythmFeature::slowBeats, slowness(m.slopeRepeat));
    set(m, RhythmFeature::slowRepeat, slowness(firstLargePeak(correlate(of(bands.narrow)))));
    return m;
  }

private:
  static void set(WindowMeasures& m, RhythmFeature feature, double value) {
    m.features[static_cast<std::size_t>(feature)] = value;
  }

  void measureSeconds(std::span<const SecondMeasures> seconds, WindowMeasures& m) {
    double count1 = 0, tcsc = 0, low = seconds[0].narrowMv, high = 0;
    scratch_.clear();
    for (std::size_t s = 0; s < kSecondsOfWindow; ++s) {
      const auto& second = seconds[s];
      scratch_.push_back(second.wideMv);
      count1 += second.count1 / double{kSecondsOfWindow};
      tcsc += s < kTcscOfWindow ? second.tcsc / double{kTcscOfWindow} : 0;
      low = std::min(low, second.narrowMv);
      high = std::max(high, second.narrowMv);
    }
    set(m, RhythmFeature::count1, count1);
    set(m, RhythmFeature::tcsc, tcsc);
    set(m, RhythmFeature::evenness,
        std::max(std::log(std::max(low, 1e-12) / std::max(high, 1e-9)), kLeastEvenness));
    const auto [smallest, largest] = std::minmax_element(scratch_.begin(), scratch_.end());
    m.smallestMv = *smallest;
    m.largestMv = *largest;
    m.amplitudeMv = quantile(scratch_, 0.5);
  }

  std::span<const double> centred(std::span<const double> values) {
    double mean = 0;
    for (const double v : values) {
      mean += v;
    }
    mean /= static_cast<double>(values.size());
    scratch_.clear();
    for (const double v : values) {
      scratch_.push_back(v - mean);
    }
    return scratch_;
  }

  void measureSlope(std::span<const double> wide, WindowMeasures& m) {
    scratch_.clear();
    for (std::size_t i = 1; i < wide.size(); ++i) {
      scratch_.push_back(std::fabs(wide[i] - wide[i - 1]));
    }
    const double top = quantile(scratch_, 0.98);
    m.sharpness = top * kRhythmRateHz / std::max(m.amplitudeMv, kNothing);
    set(m, RhythmFeature::restlessness, quantile(scratch_, 0.5) / std::max(top, kNothing));
  }

  /// Correlation at lags up to a little beyond the longest, of means of two samples: 1 at lag 0,
  /// each lag by as many products as it has.
  std::span<const double> correlate(std::span<const double> values) {
    double mean = 0;
    scratch_.resize(kPairs);
    for (std::size_t i = 0; i < kPairs; ++i) {
      scratch_[i] = 0.5 * (values[2 * i] + values[2 * i + 1]);
      mean += scratch_[i] / double{kPairs};
    }
    for (double& v : scratch_) {
      v -= mean;
    }
    const auto sums = autocorrelation_.of(scratch_);
    correlations_.resize(kLongestLag + 2);
    const double whole = std::max(sums[0] / double{kPairs}, kNothing * kNothing);
    for (std::size_t lag = 0; lag < correlations_.size(); ++lag) {
      correlations_[lag] = sums[lag] / static_cast<double>(kPairs - lag) / whole;
    }
    return correlations_;
  }

  BeatLikeness likeness_;
  Autocorrelation autocorrelation_{kPairs};
  std::vector<double> scratch_, correlations_;
};

} // namespace

std::string_view nameOf(RhythmFeature feature) {
  switch (feature) {
  case RhythmFeature::leakage:
    return "Leakage of the fibrillation filter";
  case RhythmFeature::slowBeats:
    return "Slow repeating beats";
  case RhythmFeature::likeBeats:
    return "Likeness of the beats";
  case RhythmFeature::count1:
    return "Large samples between 13 and 16.5 Hz";
  case RhythmFeature::evenness:
    return "Evenness of the amplitude";
  case RhythmFeature::tcsc:
    return "Threshold crossing sample count";
  case RhythmFeature::complexity:
    return "Complexity";
  case RhythmFeature::swing:
    return "Lowest autocorrelation";
  case RhythmFeature::restlessness:
    return "Median to 98th percentile of the slope";
  case RhythmFeature::slowRepeat:
    return "Slow repeating waves";
  }
  return {};
}

std::vector<WindowMeasures> measureWindows(std::span<const double> values) {
  std::vector<WindowMeasures> windows;
  if (values.size() < kRhythmWindow) {
    return windows;
  }
  WindowMeter meter;
  windows.reserve((values.size() - kRhythmWindow) / kRhythmStep + 1);
  eachPieceOfBands(
      values, kRhythmWindow,
      [&](const RhythmBands& bands, std::size_t first, std::size_t begin, std::size_t end) {
        const auto seconds =
            measureSeconds(bands, begin - first, (end - begin) / kRhythmSecond + kSecondsOfWindow);
        for (auto at = windows.size() * kRhythmStep;
             at < end && at + kRhythmWindow <= values.size(); at += kRhythmStep) {
          windows.push_back(meter.measure(
              bands, at - first,
              std::span{seconds}.subspan((at - begin) / kRhythmSecond, kSecondsOfWindow)));
        }
      });
  return windows;
}

} // namespace afterbeat
