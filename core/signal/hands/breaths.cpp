#include "core/signal/hands/alike.h"
#include "core/signal/hands/contact.h"
#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/pulses.h"
#include "core/signal/hands/without_presses.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace afterbeat {
namespace {

constexpr double kBreathHz = 1.0;
constexpr double kLeastOhm = 0.12;
/// A breath's rise and fall, s.
constexpr double kShortestRise = 0.25, kLongestRise = 3.5, kShortestFall = 0.25;
/// A wave whose smaller flank is less than this of the larger is a step.
constexpr double kFlankShare = 0.3;
/// Beside the usual breath: lower waves are none.
constexpr double kLeastShare = 0.4;
/// Breaths a minute that a record with breaths has at least: their heights tell the usual one.
constexpr double kFewestPerMin = 3;

struct Wave {
  /// In the middle of the rise; the highest point; the lowest after it.
  Time moment{}, top{}, end{};
  double rise = 0, fall = 0, height = 0;
};

/// Where the rise from `from` to `top` has last passed a share of its height.
std::size_t passed(const std::vector<double>& values, std::size_t from, std::size_t top,
                   double share) {
  const double level = values[from] + share * (values[top] - values[from]);
  std::size_t i = top;
  while (i > from && values[i - 1] > level) {
    --i;
  }
  return i;
}

void addWaves(const Piece& piece, const std::vector<double>& values, std::vector<Wave>& waves) {
  for (const Pulse& pulse : findPulses(values, kLeastOhm)) {
    const double up = values[pulse.top] - values[pulse.before];
    const double down = values[pulse.top] - values[pulse.after];
    const std::size_t begin = passed(values, pulse.before, pulse.top, 0.15);
    const std::size_t middle = passed(values, pulse.before, pulse.top, 0.5);
    const double rise = static_cast<double>(pulse.top - begin) / piece.rateHz;
    const double fall = static_cast<double>(pulse.after - pulse.top) / piece.rateHz;
    if (rise < kShortestRise || rise > kLongestRise || fall < kShortestFall ||
        std::min(up, down) < kFlankShare * std::max(up, down)) {
      continue;
    }
    const auto at = [&](std::size_t i) { return piece.timeAt(static_cast<double>(i)); };
    waves.push_back({at(middle), at(pulse.top), at(pulse.after), rise, fall, std::min(up, down)});
  }
}

/// The usual breath's height: the median of the highest waves, as many as a patient is ventilated
/// at least; 0 without waves.
double usualHeight(const std::vector<Wave>& waves, Duration judged) {
  std::vector<double> heights;
  for (const Wave& wave : waves) {
    heights.push_back(wave.height);
  }
  std::sort(heights.begin(), heights.end(), std::greater<>());
  const auto most = static_cast<std::size_t>(std::max(4.0, kFewestPerMin * seconds(judged) / 60));
  heights.resize(std::min(heights.size(), most));
  return medianOf(std::move(heights));
}

} // namespace

Findings breathsFromImpedance(const Channel& channel, std::span<const Time> compressions) {
  Findings result;
  if (channel.quantity != "impedance") {
    return result;
  }
  Pieces read = readImpedance(channel);
  result.unusable = std::move(read.faults);
  result.length = read.length;
  std::vector<Wave> waves;
  for (const Piece& piece : read.pieces) {
    result.judged += piece.span().length();
    addWaves(piece, lowPassed(withoutPresses(piece, compressions), kBreathHz, piece.rateHz), waves);
  }
  const double usual = usualHeight(waves, result.judged);
  for (const Wave& wave : waves) {
    if (wave.height < kLeastShare * usual) {
      continue;
    }
    Entry entry;
    entry.t = wave.moment;
    entry.source = Source::derived;
    entry.quality = std::clamp(wave.height / usual * 0.8, 0.2, 0.9);
    entry.data = entry::Ventilation{};
    result.entries.push_back(std::move(entry));
  }
  putInOrder(result);
  return result;
}

} // namespace afterbeat
