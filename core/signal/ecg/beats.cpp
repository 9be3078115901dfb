#include "core/signal/ecg/beats.h"

#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/sections.h"
#include "core/signal/ecg/beat_candidates.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

/// What makes a candidate a beat; times in seconds. The first three after Pan and Tompkins.
constexpr double kRefractory = 0.2;
constexpr double kTWave = 0.36, kTWaveShare = 0.5;
constexpr double kMissedBeats = 1.66;
/// The threshold: a share of the median of the strongest candidates of bins this long, so many bins
/// to each side. Even at 40 beats a minute each bin holds one; a few bins with an artefact or
/// without a beat do not move a median.
constexpr double kBin = 1.5;
constexpr std::ptrdiff_t kBinsAside = 5;
constexpr std::ptrdiff_t kSilenceAside = 20;
constexpr double kSilence = 0.1;
constexpr double kShare = 0.33, kSecondLook = 0.5;
/// Weaker than any complex that can be told from noise: an R wave of some 0.05 mV.
constexpr double kLeastMv = 0.015;

/// What `of` makes of the values up to `aside` to each side of every one.
template <typename Of>
std::vector<double> windowed(const std::vector<double>& values, std::ptrdiff_t aside, Of of) {
  std::vector<double> out, near;
  const auto n = static_cast<std::ptrdiff_t>(values.size());
  for (std::ptrdiff_t i = 0; i < n; ++i) {
    near.assign(values.begin() + std::max<std::ptrdiff_t>(0, i - aside),
                values.begin() + std::min(n, i + aside + 1));
    out.push_back(of(near));
  }
  return out;
}

/// Threshold for the candidates of each bin; candidates are in order.
class Threshold {
public:
  Threshold(const std::vector<BeatCandidate>& candidates, double rateHz)
      : perSample_(1 / (kBin * rateHz)) {
    std::vector<double> strongest;
    for (const BeatCandidate& c : candidates) {
      const auto bin = binOf(c.sample);
      strongest.resize(std::max(strongest.size(), bin + 1), 0.0);
      strongest[bin] = std::max(strongest[bin], c.strength);
    }
    const auto usual = windowed(strongest, kBinsAside, [](std::vector<double>& near) {
      std::erase(near, 0.0);
      const auto high = near.begin() + static_cast<std::ptrdiff_t>(near.size() * 7 / 10);
      std::nth_element(near.begin(), high, near.end());
      return near.empty() ? 0 : *high;
    });
    const auto highest = windowed(usual, kSilenceAside, [](const std::vector<double>& near) {
      return *std::max_element(near.begin(), near.end());
    });
    for (std::size_t b = 0; b < usual.size(); ++b) {
      levels_.push_back(std::max({kLeastMv, kShare * usual[b], kSilence * highest[b]}));
    }
  }
  [[nodiscard]] double at(std::size_t sample) const { return levels_[binOf(sample)]; }

private:
  [[nodiscard]] std::size_t binOf(std::size_t sample) const {
    return static_cast<std::size_t>(static_cast<double>(sample) * perSample_);
  }
  double perSample_;
  std::vector<double> levels_;
};

/// Samples between two candidates.
double distance(const BeatCandidate& a, const BeatCandidate& b) {
  return static_cast<double>(b.sample) - static_cast<double>(a.sample);
}

/// Whether `later` is the T wave of `beat` rather than the next beat.
bool isTWave(const BeatCandidate& beat, const BeatCandidate& later, double rateHz) {
  return distance(beat, later) < kTWave * rateHz && later.strength < kTWaveShare * beat.strength;
}

/// Candidates above the threshold; of two within the refractory time the stronger.
std::vector<BeatCandidate> firstLook(const std::vector<BeatCandidate>& candidates,
                                     const Threshold& threshold, double rateHz) {
  std::vector<BeatCandidate> out;
  for (const BeatCandidate& c : candidates) {
    if (c.strength < threshold.at(c.sample) || (!out.empty() && isTWave(out.back(), c, rateHz))) {
      continue;
    }
    if (out.empty() || distance(out.back(), c) >= kRefractory * rateHz) {
      out.push_back(c);
    } else if (c.strength > out.back().strength) {
      out.back() = c;
    }
  }
  return out;
}

/// The median of the last eight distances before beat `i`, or of what there is around it.
double usualDistance(const std::vector<BeatCandidate>& beats, std::size_t i) {
  std::vector<double> near;
  const std::size_t first = i > 4 ? i - 4 : 1;
  for (std::size_t k = first; k < beats.size() && k < first + 8; ++k) {
    near.push_back(distance(beats[k - 1], beats[k]));
  }
  const auto middle = near.begin() + static_cast<std::ptrdiff_t>(near.size() / 2);
  std::nth_element(near.begin(), middle, near.end());
  return *middle;
}

/// A stretch of a gap between two beats that is looked into again, in samples.
struct Gap {
  const BeatCandidate &left, &right;
  double from, to;
};

/// The strongest candidate of a stretch that may stand in the gap; null if there is none.
const BeatCandidate* missedIn(const Gap& gap, const std::vector<BeatCandidate>& candidates,
                              const Threshold& threshold, double rateHz) {
  const BeatCandidate* best = nullptr;
  auto it = std::lower_bound(
      candidates.begin(), candidates.end(), gap.from,
      [](const BeatCandidate& c, double sample) { return static_cast<double>(c.sample) < sample; });
  for (; it != candidates.end() && static_cast<double>(it->sample) <= gap.to; ++it) {
    const bool apart = distance(gap.left, *it) >= kTWave * rateHz &&
                       distance(*it, gap.right) >= kRefractory * rateHz;
    if (apart && it->strength >= kSecondLook * threshold.at(it->sample) &&
        it->strength >= kLeastMv && (best == nullptr || it->strength > best->strength)) {
      best = &*it;
    }
  }
  return best;
}

/// Looks again into every gap, from left to right, over the length in which a beat was due.
std::vector<BeatCandidate> secondLook(const std::vector<BeatCandidate>& beats,
                                      const std::vector<BeatCandidate>& candidates,
                                      const Threshold& threshold, double rateHz) {
  std::vector<BeatCandidate> out;
  for (std::size_t i = 0; i < beats.size(); ++i) {
    if (i > 0) {
      const double longest = kMissedBeats * usualDistance(beats, i);
      const auto end = static_cast<double>(beats[i].sample);
      auto from = static_cast<double>(beats[i - 1].sample);
      while (end - from > longest) {
        const auto* missed = missedIn({out.back(), beats[i], from, std::min(end, from + longest)},
                                      candidates, threshold, rateHz);
        from = missed != nullptr ? static_cast<double>(missed->sample) : from + longest;
        if (missed != nullptr) {
          out.push_back(*missed);
        }
      }
    }
    out.push_back(beats[i]);
  }
  return out;
}

} // namespace

std::vector<Beat> findBeats(const SignalView& ecg) {
  const auto candidates = beatCandidates(ecg);
  const Threshold threshold(candidates, ecg.rateHz);
  const auto beats =
      secondLook(firstLook(candidates, threshold, ecg.rateHz), candidates, threshold, ecg.rateHz);
  std::vector<Beat> out;
  out.reserve(beats.size());
  for (const BeatCandidate& beat : beats) {
    out.push_back({ecg.timeAt(static_cast<double>(beat.sample)), beat.strength});
  }
  return out;
}

std::optional<double> heartRate(std::span<const Beat> beats, const Interval& where) {
  constexpr double kNoNeighbours = 3;
  std::vector<double> distances;
  std::size_t inside = 0;
  for (std::size_t i = 0; i < beats.size(); ++i) {
    if (!where.holds(beats[i].at)) {
      continue;
    }
    ++inside;
    if (i > 0 && where.holds(beats[i - 1].at)) {
      const double apart = seconds(beats[i].at - beats[i - 1].at);
      if (apart < kNoNeighbours) {
        distances.push_back(apart);
      }
    }
  }
  if (inside < 3 || distances.empty()) {
    return std::nullopt;
  }
  std::sort(distances.begin(), distances.end());
  const std::size_t half = distances.size() / 2;
  const double median =
      distances.size() % 2 != 0 ? distances[half] : (distances[half - 1] + distances[half]) / 2;
  return 60 / median;
}

} // namespace afterbeat
