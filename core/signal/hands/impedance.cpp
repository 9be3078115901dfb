#include "core/signal/hands/contact.h"
#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/pieces.h"
#include "core/signal/hands/polarity.h"
#include "core/signal/hands/trains.h"

#include <algorithm>
#include <cmath>
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
constexpr double kShapeHz = 6;
constexpr double kLeastShare = 0.45;
/// Impedance moves with more than presses: never as sure as a sensor on the chest.
constexpr double kMostSure = 0.9;
constexpr int kFewestKnown = 20;

/// One piece of an impedance channel on its way to compressions.
class Waves {
public:
  explicit Waves(const Piece& piece) : piece_(piece) {}

  void find() {
    const double slow = look(kSlowPresses);
    if (look(kFastPresses) < slow) {
      look(kSlowPresses);
    }
    lookCloser();
  }

  /// Above 0 where presses raise the signal.
  [[nodiscard]] double polarity() const {
    return polarityOf(series_, pulses_, wave_, piece_.values, piece_.rateHz);
  }

  /// How far the signal lies up (above 0) or down at presses known from elsewhere, summed, and how
  /// many there are.
  [[nodiscard]] std::pair<double, int> at(std::span<const Time> known) const {
    std::pair<double, int> result;
    for (const Time t : known) {
      const double i = std::round(piece_.view().indexOf(t));
      if (i >= 0 && i < static_cast<double>(wave_.size())) {
        result.first += wave_[static_cast<std::size_t>(i)];
        ++result.second;
      }
    }
    return result;
  }

  /// Presses lower the signal: what was found are the releases.
  void turnOver() {
    sign_ = -1;
    for (double& x : wave_) {
      x = -x;
    }
    track(closest_.fairOhm);
  }

  void write(Findings& result) {
    std::vector<double> shape = bandPassed(piece_.values, closest_.lowHz, kShapeHz, piece_.rateHz);
    for (double& x : shape) {
      x *= sign_;
    }
    for (const Train& train :
         trustedTrains(std::move(series_), pulses_, shape, piece_.rateHz, kLeastShare)) {
      for (std::size_t k = 0; k < train.series.size(); ++k) {
        const auto top = static_cast<double>(pulses_[train.series[k]].top);
        result.entries.push_back(
            compressionEntry(piece_.timeAt(top), std::min(kMostSure, surenessOf(train, k))));
      }
    }
  }

private:
  /// A look at the rates that the last one found.
  void lookCloser() {
    const Usual usual = usualOf(series_, pulses_, piece_.rateHz);
    if (usual.slowHz > 0) {
      look({std::clamp(0.62 * usual.slowHz, 0.65, 1.3), std::clamp(1.5 * usual.fastHz, 1.6, 3.5),
            std::max(kFastPresses.fairOhm, 0.35 * usual.height)});
    }
  }

  double look(const Look& how) {
    closest_ = how;
    wave_ = bandPassed(piece_.values, how.lowHz, how.highHz, piece_.rateHz);
    return track(how.fairOhm);
  }

  double track(double fairOhm) {
    pulses_ = findPulses(wave_, kLeastHeightOhm);
    SeriesRules rules;
    rules.rateHz = piece_.rateHz;
    rules.fairHeight = fairOhm;
    SeriesFound found = findSeries(pulses_, rules);
    series_ = std::move(found.series);
    return found.gain;
  }

  const Piece& piece_;
  double sign_ = 1;
  Look closest_;
  std::vector<double> wave_;
  std::vector<Pulse> pulses_;
  std::vector<Series> series_;
};

} // namespace

Findings compressionsFromImpedance(const Channel& channel, std::span<const Time> known) {
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
    wave.write(result);
  }
  putInOrder(result);
  return result;
}

} // namespace afterbeat
