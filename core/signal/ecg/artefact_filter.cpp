#include "core/signal/ecg/artefact_filter.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace afterbeat {

namespace {

constexpr Duration kLongestBetween = std::chrono::milliseconds(1500);
constexpr double kShortestBetween = 0.2;
constexpr std::size_t kShortestSeries = 3;
/// Part of a compression over which the suppression begins and ends.
constexpr double kFade = 0.25;

/// Compressions without a pause, as places in samples.
class Series {
public:
  Series(const SignalView& ecg, std::span<const Time> deepest) {
    // Two reports of one compression are one: no turn is shorter than 0.2 s.
    const double least = kShortestBetween * ecg.rateHz;
    for (const Time t : deepest) {
      const double place = ecg.indexOf(t);
      if (places_.empty() || place - places_.back() >= least) {
        places_.push_back(place);
      }
    }
    if (places_.size() == 1) {
      places_.push_back(places_.front() + least);
    }
    for (std::size_t i = 1; i < places_.size(); ++i) {
      shortest_ = std::min(shortest_, places_[i] - places_[i - 1]);
    }
    const double first = places_[1] - places_[0];
    const double last = places_.back() - places_[places_.size() - 2];
    places_.insert(places_.begin(), places_.front() - first);
    places_.push_back(places_.back() + last);
    from_ = places_[1] - first / 2;
    to_ = places_[places_.size() - 2] + last / 2;
  }

  [[nodiscard]] double from() const { return from_; }
  [[nodiscard]] double to() const { return to_; }
  /// Samples of the quickest compression.
  [[nodiscard]] double shortest() const { return shortest_; }

  /// Phase of a sample, in turns from the deepest point before it; samples asked for one after the
  /// other, in any direction.
  [[nodiscard]] double phaseOf(double sample) {
    while (turn_ > 0 && sample < places_[turn_]) {
      --turn_;
    }
    while (turn_ + 2 < places_.size() && sample >= places_[turn_ + 1]) {
      ++turn_;
    }
    return (sample - places_[turn_]) / length();
  }

  /// How much of the artefact is taken off.
  [[nodiscard]] double shareAt(double sample) const {
    const double inside = std::min(sample - from_, to_ - sample) / (kFade * length());
    return inside >= 1 ? 1 : (1 - std::cos(std::numbers::pi * std::max(0.0, inside))) / 2;
  }

private:
  [[nodiscard]] double length() const { return places_[turn_ + 1] - places_[turn_]; }
  /// With one more at each end.
  std::vector<double> places_;
  double from_ = 0, to_ = 0, shortest_ = std::numeric_limits<double>::infinity();
  std::size_t turn_ = 0;
};

/// The harmonics and what is known of their amplitudes.
class Harmonics {
public:
  /// `highestHz`: the highest rate of compressions.
  Harmonics(const ArtefactFilter& filter, double rateHz, double highestHz) {
    for (int k = 1; k <= filter.harmonics && k * highestHz < rateHz / 2; ++k) {
      all_.push_back({.step = 2 / (filter.followSeconds * rateHz * k)});
    }
  }

  /// What the artefact is at a phase in turns; then learns from the sample that stands there,
  /// unless it is NaN.
  double follow(double phase, double value) {
    const double angle = 2 * std::numbers::pi * phase;
    const double firstCos = std::cos(angle), firstSin = std::sin(angle);
    double c = 1, s = 0, sum = 0;
    for (One& one : all_) {
      const double next = c * firstCos - s * firstSin;
      s = s * firstCos + c * firstSin;
      c = next;
      one.cosine = c;
      one.sine = s;
      sum += one.a * c + one.b * s;
    }
    const double error = value - sum;
    if (!std::isnan(error)) {
      for (One& one : all_) {
        one.a += one.step * error * one.cosine;
        one.b += one.step * error * one.sine;
      }
    }
    return sum;
  }

private:
  struct One {
    double a = 0, b = 0, cosine = 0, sine = 0, step = 0;
  };
  std::vector<One> all_;
};

/// Filters one series in place: once forwards to learn the amplitudes, then backwards and forwards
/// again, taking off half of what each says. Returns the samples [first, second) it touched.
std::pair<double, double> suppress(const SignalView& ecg, Series series,
                                   const ArtefactFilter& filter, std::vector<double>& values) {
  const auto n = static_cast<double>(values.size());
  const double from = std::clamp(std::ceil(series.from()), 0.0, n);
  const double to = std::clamp(std::floor(series.to()) + 1, from, n);
  const auto begin = static_cast<std::size_t>(from), end = static_cast<std::size_t>(to);
  Harmonics harmonics(filter, ecg.rateHz, ecg.rateHz / series.shortest());
  const auto estimate = [&](std::size_t i) {
    return harmonics.follow(series.phaseOf(static_cast<double>(i)), ecg.values[i]);
  };
  const auto takeOff = [&](std::size_t i) {
    const double half = estimate(i) / 2;
    values[i] -= half * series.shareAt(static_cast<double>(i));
  };
  for (std::size_t i = begin; i < end; ++i) {
    estimate(i);
  }
  for (std::size_t i = end; i-- > begin;) {
    takeOff(i);
  }
  for (std::size_t i = begin; i < end; ++i) {
    takeOff(i);
  }
  return {from, to};
}

} // namespace

FilteredEcg suppressCompressions(const SignalView& ecg, std::span<const Time> deepest,
                                 const ArtefactFilter& filter) {
  FilteredEcg out{{ecg.values.begin(), ecg.values.end()}, {}};
  for (std::size_t first = 0; first < deepest.size();) {
    std::size_t end = first + 1;
    while (end < deepest.size() && deepest[end] - deepest[end - 1] <= kLongestBetween) {
      ++end;
    }
    if (end - first >= kShortestSeries) {
      const auto [from, to] =
          suppress(ecg, Series(ecg, deepest.subspan(first, end - first)), filter, out.values);
      if (from < to) {
        out.filtered.push_back({ecg.timeAt(from), ecg.timeAt(to)});
      }
    }
    first = end;
  }
  return out;
}

} // namespace afterbeat
