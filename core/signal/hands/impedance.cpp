#include "core/signal/hands/contact.h"
#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/pieces.h"
#include "core/signal/hands/polarity.h"
#include "core/signal/hands/trains.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <utility>
#include <vector>

namespace afterbeat {
namespace {

/// What one look at the signal lets through.
struct Look {
  double lowHz = 1, highHz = 3, fairOhm = 0.15;
};

/// Two first looks, for slow and for fast presses: in a wider one the second harmonic of slow
/// presses has maxima of its own.
constexpr Look kSlowPresses{0.7, 2.0, 0.15}, kFastPresses{1.0, 3.0, 0.15};
constexpr double kLeastHeightOhm = 0.06;
constexpr double kShapeLowHz = 0.7, kShapeHz = 6;
constexpr double kLeastShare = 0.45;
/// Impedance moves with more than presses: never as sure as a sensor on the chest.
constexpr double kMostSure = 0.9;
constexpr int kFewestKnown = 20;
/// A heartbeat is hardly higher; what is less than half as high as other presses may be one.
constexpr double kHighestBeatOhm = 0.25;
/// Where the heart is known to beat, presses are higher than this, and than this share of others.
constexpr double kAboveBeatsOhm = 0.25, kAboveBeats = 0.5;

/// One piece of an impedance channel on its way to compressions.
class Waves {
public:
  explicit Waves(const Piece& piece) : piece_(piece) {}

  void find() {
    look(std::array{kSlowPresses, kFastPresses});
    lookCloser();
  }

  /// Above 0 where presses raise the signal.
  [[nodiscard]] double polarity() const {
    std::vector<std::vector<Series>> bySight(waves_.size());
    for (const Series& one : series_) {
      bySight[pulses_[one.front()].look].push_back(one);
    }
    double sum = 0;
    for (std::size_t i = 0; i < waves_.size(); ++i) {
      sum += polarityOf(bySight[i], pulses_, waves_[i], piece_.values, piece_.rateHz);
    }
    return sum;
  }

  /// How far the signal lies up (above 0) or down at presses known from elsewhere, summed, and how
  /// many there are.
  [[nodiscard]] std::pair<double, int> at(std::span<const Time> known) const {
    std::pair<double, int> result;
    for (const Time t : known) {
      const double i = std::round(piece_.view().indexOf(t));
      if (i >= 0 && i < static_cast<double>(waves_.front().size())) {
        for (const auto& wave : waves_) {
          result.first += wave[static_cast<std::size_t>(i)];
        }
        ++result.second;
      }
    }
    return result;
  }

  /// Presses lower the signal: what was found are the releases.
  void turnOver() {
    sign_ = -1;
    for (auto& wave : waves_) {
      for (double& x : wave) {
        x = -x;
      }
    }
    track();
  }

  void write(const std::vector<Interval>& beating, Findings& result) {
    std::vector<double> shape = bandPassed(piece_.values, kShapeLowHz, kShapeHz, piece_.rateHz);
    for (double& x : shape) {
      x *= sign_;
    }
    const std::vector<Train> trains =
        trustedTrains(series_, pulses_, shape, shape, piece_.rateHz, kLeastShare, kHighestBeatOhm);
    const double least = leastBesideBeats(trains, beating);
    for (const Train& train : trains) {
      for (std::size_t k = 0; k < train.series.size(); ++k) {
        const Pulse& pulse = pulses_[train.series[k]];
        const Time t = timeOf(pulse);
        if (indexHolding(beating, t) < 0 || pulse.height >= least) {
          result.entries.push_back(compressionEntry(t, std::min(kMostSure, surenessOf(train, k))));
        }
      }
    }
  }

private:
  [[nodiscard]] Time timeOf(const Pulse& pulse) const {
    return piece_.timeAt(static_cast<double>(pulse.top));
  }

  /// How high pulses must be where the heart beats, Ohm.
  [[nodiscard]] double leastBesideBeats(const std::vector<Train>& trains,
                                        const std::vector<Interval>& beating) const {
    std::vector<double> heights;
    for (const Train& train : trains) {
      for (const std::size_t i : train.series) {
        if (!beating.empty() && indexHolding(beating, timeOf(pulses_[i])) < 0) {
          heights.push_back(pulses_[i].height);
        }
      }
    }
    return std::max(kAboveBeatsOhm, kAboveBeats * upperMedian(std::move(heights)));
  }

  /// A look at each of the paces that the last one found.
  void lookCloser() {
    std::vector<Look> closer;
    for (const Usual& usual : usualRates(series_, pulses_, piece_.rateHz)) {
      closer.push_back({std::clamp(0.62 * usual.slowHz, 0.65, 1.7),
                        std::clamp(1.5 * usual.fastHz, 1.6, 4.0),
                        std::max(kFastPresses.fairOhm, 0.35 * usual.height)});
    }
    if (!closer.empty()) {
      look(closer);
    }
  }

  void look(std::span<const Look> looks) {
    looks_.assign(looks.begin(), looks.end());
    waves_.clear();
    for (const Look& how : looks) {
      waves_.push_back(bandPassed(piece_.values, how.lowHz, how.highHz, piece_.rateHz));
    }
    track();
  }

  void track() {
    std::vector<std::vector<Pulse>> seen;
    for (std::size_t i = 0; i < waves_.size(); ++i) {
      seen.push_back(findPulses(waves_[i], kLeastHeightOhm));
      for (Pulse& pulse : seen.back()) {
        pulse.fairHeight = looks_[i].fairOhm;
      }
    }
    pulses_ = joined(seen);
    SeriesRules rules;
    rules.rateHz = piece_.rateHz;
    series_ = findSeries(pulses_, rules).series;
  }

  const Piece& piece_;
  double sign_ = 1;
  std::vector<Look> looks_;
  /// What each look shows.
  std::vector<std::vector<double>> waves_;
  std::vector<Pulse> pulses_;
  std::vector<Series> series_;
};

} // namespace

Findings compressionsFromImpedance(const Channel& channel, std::span<const Time> known,
                                   const std::vector<Interval>& beating) {
  if (channel.quantity != "impedance") {
    return {};
  }
  Pieces read = readImpedance(channel);
  Findings result = begunWith(read);
  std::vector<Waves> waves;
  double polarity = 0, atKnown = 0;
  int knownInside = 0;
  for (const Piece& piece : read.pieces) {
    waves.emplace_back(piece).find();
    polarity += waves.back().polarity();
    const auto [sum, count] = waves.back().at(known);
    atKnown += sum;
    knownInside += count;
  }
  if (knownInside >= kFewestKnown) {
    polarity = atKnown;
  }
  for (Waves& wave : waves) {
    if (polarity < 0) {
      wave.turnOver();
    }
    wave.write(beating, result);
  }
  putInOrder(result);
  return result;
}

} // namespace afterbeat
