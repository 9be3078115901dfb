#include "core/signal/hands/depth_of_press.h"
#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/pieces.h"
#include "core/signal/hands/trains.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <vector>

namespace afterbeat {
namespace {

/// Movement is looked for (not measured) between these. Two first looks, for slow and for fast
/// presses: in a wider one the plateau of slow presses of a machine has two maxima.
struct Look {
  double lowHz, highHz;
};
constexpr Look kSlowPresses{0.65, 1.8}, kFastPresses{0.9, 3};
constexpr double kLeastHeightMm = 4, kFairHeightMm = 8;
/// More than a chest gives way, by what the movement's filters leave of it.
constexpr double kTallestMm = 95;
/// A hand that carries the sensor moves slowly too; a chest under presses does not.
constexpr double kWanderShare = 0.5, kLeastWander = 0.3;
constexpr double kImplausible = -5;
/// Shapes are compared up to here.
constexpr double kShapeLowHz = 0.65, kShapeHz = 6;
constexpr double kLeastShare = 0.4;
/// Gravity's share along the sensor's axis while it lies on a chest, m/s2, drift and tilt allowed
/// for.
constexpr double kLeastGravity = 7, kMostGravity = 12.5;
/// Off: gravity outside these limits for this long.
constexpr double kOffSeconds = 2;
constexpr double kSpectralSeconds = 3;
constexpr std::size_t kSpectralEvery = 4;
/// Noise in the shape, as a share of its power, at which one press and the mean of its neighbours
/// weigh the same.
constexpr double kEvenNoise = 0.07;
constexpr double kMuchNoise = 0.3;

/// How gravity stands in a channel.
enum class Gravity { outOfChest, intoChest, removed };

Gravity gravityIn(const Pieces& read) {
  std::vector<double> some;
  for (const Piece& piece : read.pieces) {
    for (std::size_t i = 0; i < piece.values.size(); i += 25) {
      some.push_back(piece.values[i]);
    }
  }
  const double usual = upperMedian(std::move(some));
  return usual > 3 ? Gravity::outOfChest : usual < -3 ? Gravity::intoChest : Gravity::removed;
}

/// How fast the sensor moves, in no unit: in it slow presses are as large beside quick ones as
/// their depth allows, and noise of high and of low frequency stays small.
std::vector<double> speedOf(const Piece& piece) {
  std::vector<double> speed =
      lowPassed(movementFrom(piece.values, kShapeLowHz, piece.rateHz), kShapeHz, piece.rateHz);
  double before = speed.empty() ? 0 : speed.front();
  for (std::size_t i = 0; i + 1 < speed.size(); ++i) {
    const double here = speed[i];
    speed[i] = speed[i + 1] - before;
    before = here;
  }
  return speed;
}

/// One piece of an acceleration channel on its way to compressions.
class Presses {
public:
  Presses(const Piece& piece, bool weighed) : piece_(piece), weighed_(weighed) {
    const double rate = piece.rateHz;
    wander_ = movingRms(bandPassed(piece.values, 0.2, 0.6, rate), 3, rate);
    shape_ = bandPassed(piece.values, 0.5, kShapeHz, rate);
    swing_ = movingRms(shape_, 3, rate);
    level_ = movingMean(piece.values, 2, rate);
  }

  void find(Findings& result) {
    look(std::array{kSlowPresses, kFastPresses});
    std::vector<Look> closer;
    for (const Usual& usual : usualRates(series_, pulses_, piece_.rateHz)) {
      closer.push_back(
          {std::clamp(0.62 * usual.slowHz, 0.65, 1.7), std::clamp(1.7 * usual.fastHz, 1.8, 4.5)});
    }
    if (!closer.empty()) {
      look(closer);
    }
    const std::vector<double> speed = speedOf(piece_);
    for (const Train& train :
         trustedTrains(series_, pulses_, shape_, speed, piece_.rateHz, kLeastShare)) {
      write(train, result);
    }
  }

  /// Where gravity says that the sensor does not lie on a chest.
  void findOff(Findings& result) const {
    const auto least = static_cast<std::size_t>(kOffSeconds * piece_.rateHz);
    std::size_t run = 0;
    for (std::size_t i = 0; weighed_ && i <= level_.size(); ++i) {
      if (i < level_.size() && !lies(i)) {
        ++run;
        continue;
      }
      if (run >= least) {
        result.unusable.push_back({{piece_.timeAt(static_cast<double>(i - run)),
                                    piece_.timeAt(static_cast<double>(i - 1))},
                                   SignalFault::off});
        result.judged -= result.unusable.back().where.length();
      }
      run = 0;
    }
  }

private:
  [[nodiscard]] bool lies(std::size_t i) const {
    return !weighed_ || (level_[i] > kLeastGravity && level_[i] < kMostGravity);
  }

  void look(std::span<const Look> looks) {
    const double rate = piece_.rateHz;
    movements_.clear();
    std::vector<std::vector<Pulse>> seen;
    for (const Look& how : looks) {
      movements_.push_back(
          lowPassed(movementFrom(piece_.values, how.lowHz, rate), how.highHz, rate));
      seen.push_back(findPulses(movements_.back(), kLeastHeightMm));
    }
    pulses_ = joined(seen);
    for (Pulse& pulse : pulses_) {
      const double wander = wander_[pulse.top];
      const bool carried = wander > kLeastWander && wander > kWanderShare * swing_[pulse.top];
      if (carried || pulse.height > kTallestMm || !lies(pulse.top)) {
        pulse.worth = kImplausible;
      }
    }
    SeriesRules rules;
    rules.rateHz = rate;
    rules.fairHeight = kFairHeightMm;
    series_ = findSeries(pulses_, rules).series;
  }

  /// Depth by the spectral method over the 3 s around pulse `k`, as far as the train reaches; 0
  /// where it is shorter than 2 s.
  [[nodiscard]] double spectral(const Train& train, const std::vector<double>& releases,
                                std::size_t k) const {
    const auto whole = static_cast<std::size_t>(kSpectralSeconds * piece_.rateHz);
    const auto first = static_cast<std::size_t>(releases.front());
    const auto last = static_cast<std::size_t>(releases.back());
    const std::size_t top = pulses_[train.series[k]].top;
    std::size_t from = std::max(first, top > whole / 2 ? top - whole / 2 : 0);
    const std::size_t to = std::min(last, from + whole);
    from = std::max(first, to > whole ? to - whole : 0);
    std::size_t a = k, b = k;
    while (a > 0 && pulses_[train.series[a - 1]].top >= from) {
      --a;
    }
    while (b + 1 < train.series.size() && pulses_[train.series[b + 1]].top <= to) {
      ++b;
    }
    if (b == a || static_cast<double>(to - from) < 2 * piece_.rateHz) {
      return 0;
    }
    const auto length =
        static_cast<double>(pulses_[train.series[b]].top - pulses_[train.series[a]].top);
    return spectralDepth(piece_.values, from, to,
                         60 * piece_.rateHz * static_cast<double>(b - a) / length, piece_.rateHz);
  }

  void write(const Train& train, Findings& result) const {
    const auto releases =
        releasesOf(train.series, pulses_, movements_[pulses_[train.series.front()].look]);
    double check = 0;
    for (std::size_t k = 0; k < train.series.size(); ++k) {
      const Press press =
          integratedPress(piece_.values, releases[k], releases[k + 1], piece_.rateHz);
      const double alike = std::max(0.3, alikeAround(train, k));
      const double noise = 1 / (alike * alike) - 1;
      const std::size_t reach = noise < kMuchNoise ? 3 : 6;
      const std::size_t from = k > reach ? k - reach : 0;
      const std::size_t to = std::min(train.series.size(), k + reach + 1);
      const double mean = meanPressDepth(
          piece_.values, std::span(releases).subspan(from, to - from + 1), piece_.rateHz);
      const double weight = 1 / (1 + noise * noise / (kEvenNoise * kEvenNoise));
      if (k % kSpectralEvery == 0) {
        check = spectral(train, releases, k);
      }
      const double apart = check > 0 ? std::fabs(check / std::max(mean, 1.0) - 1) : 0.1;
      result.entries.push_back(compressionEntry(
          piece_.timeAt(press.deepest), surenessOf(train, k) * std::clamp(1.15 - apart, 0.5, 1.0),
          {weight * press.depthMm + (1 - weight) * mean, {}, {}}));
    }
  }

  const Piece& piece_;
  bool weighed_;
  std::vector<double> wander_, shape_, swing_, level_;
  /// What each look shows.
  std::vector<std::vector<double>> movements_;
  std::vector<Pulse> pulses_;
  std::vector<Series> series_;
};

} // namespace

Findings compressionsFromAcceleration(const Channel& channel) {
  if (channel.quantity != "acceleration") {
    return {};
  }
  Pieces read = readPieces(channel);
  Findings result = begunWith(read);
  const Gravity gravity = gravityIn(read);
  for (Piece& piece : read.pieces) {
    if (gravity == Gravity::intoChest) {
      for (double& x : piece.values) {
        x = -x;
      }
    }
    Presses presses(piece, gravity != Gravity::removed);
    presses.find(result);
    presses.findOff(result);
  }
  putInOrder(result);
  return result;
}

} // namespace afterbeat
