#include "core/signal/hands/alike.h"
#include "core/signal/hands/contact.h"
#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/pulses.h"
#include "core/signal/hands/without_presses.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace afterbeat {
namespace {

constexpr double kBreathHz = 1.1, kSharpHz = 5;
/// Less than that is the heart or nothing (common practice, no source).
constexpr double kLeastOhm = 0.1;
/// A breath's rise and fall, s.
constexpr double kShortestRise = 0.25, kLongestRise = 3.5, kShortestFall = 0.2;
/// A second breath may begin while the first still flows out: then one flank is short.
constexpr double kFlankShare = 0.12;
/// A rise of which this much happens within `kJoltSeconds` is an electrode that moved.
constexpr double kJoltShare = 0.7, kJoltSeconds = 0.16;
/// Beside the usual breath: lower waves are none. In a pause of 2 to 12 s between compressions,
/// during compressions, and elsewhere.
constexpr double kShareInPause = 0.3, kShareDuring = 0.43, kShareElsewhere = 0.5;
constexpr double kShortestPause = 2, kLongestPause = 12, kSamePress = 1.5;
/// Fewer waves than this a minute of compressions: breaths are given in the pauses, and what looks
/// like one elsewhere has to be as high as they are.
constexpr double kFewPerMin = 4, kShareUnlikely = 0.85;
/// Breaths a minute that a record with breaths has at least: their heights tell the usual one.
constexpr double kFewestPerMin = 3;

struct Wave {
  /// In the middle of the rise.
  Time moment{};
  double height = 0;
  enum class Place : unsigned char { inPause, during, elsewhere } place = Place::elsewhere;
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

/// Whether most of the rise up to `top` comes at once.
bool isJolt(const std::vector<double>& sharp, std::size_t from, std::size_t top, double rateHz) {
  const auto lag = static_cast<std::size_t>(std::max(1.0, kJoltSeconds * rateHz));
  const auto margin = static_cast<std::size_t>(0.2 * rateHz);
  const std::size_t begin = from > margin ? from - margin : 0;
  const std::size_t end = std::min(sharp.size(), top + margin + 1);
  double steepest = 0, low = sharp[begin], high = sharp[begin];
  for (std::size_t i = begin; i < end; ++i) {
    low = std::min(low, sharp[i]);
    high = std::max(high, sharp[i]);
    if (i >= begin + lag) {
      steepest = std::max(steepest, sharp[i] - sharp[i - lag]);
    }
  }
  return steepest > kJoltShare * (high - low);
}

Wave::Place placeOf(Time t, std::span<const Time> compressions) {
  const auto next = std::upper_bound(compressions.begin(), compressions.end(), t);
  if (next == compressions.begin() || next == compressions.end()) {
    return Wave::Place::elsewhere;
  }
  const double gap = seconds(*next - *(next - 1));
  return gap <= kSamePress      ? Wave::Place::during
         : gap < kShortestPause ? Wave::Place::elsewhere
         : gap <= kLongestPause ? Wave::Place::inPause
                                : Wave::Place::elsewhere;
}

void addWaves(const Piece& piece, std::span<const Time> compressions, std::vector<Wave>& waves) {
  std::vector<double> clean = withoutPresses(piece, compressions);
  const auto sharp = lowPassed(clean, kSharpHz, piece.rateHz);
  const auto values = lowPassed(std::move(clean), kBreathHz, piece.rateHz);
  for (const Pulse& pulse : findPulses(values, kLeastOhm)) {
    const double up = values[pulse.top] - values[pulse.before];
    const double down = values[pulse.top] - values[pulse.after];
    const std::size_t begin = passed(values, pulse.before, pulse.top, 0.15);
    const double rise = static_cast<double>(pulse.top - begin) / piece.rateHz;
    const double fall = static_cast<double>(pulse.after - pulse.top) / piece.rateHz;
    if (rise < kShortestRise || rise > kLongestRise || fall < kShortestFall ||
        std::min(up, down) < kFlankShare * std::max(up, down) ||
        isJolt(sharp, begin, pulse.top, piece.rateHz)) {
      continue;
    }
    const Time moment =
        piece.timeAt(static_cast<double>(passed(values, pulse.before, pulse.top, 0.5)));
    waves.push_back({moment, std::sqrt(up * down), placeOf(moment, compressions)});
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
  return upperMedian(std::move(heights));
}

/// How high a wave has to be beside the usual breath, by where it is.
struct Shares {
  double inPause = kShareInPause, during = kShareDuring, elsewhere = kShareElsewhere;
  [[nodiscard]] double at(Wave::Place place) const {
    return place == Wave::Place::inPause  ? inPause
           : place == Wave::Place::during ? during
                                          : elsewhere;
  }
};

Shares sharesFor(const std::vector<Wave>& waves, double usual, std::span<const Time> compressions) {
  double during = 0, inPause = 0, minutes = 0;
  for (const Wave& wave : waves) {
    if (wave.height >= kShareElsewhere * usual) {
      during += wave.place == Wave::Place::during ? 1 : 0;
      inPause += wave.place == Wave::Place::inPause ? 1 : 0;
    }
  }
  for (std::size_t i = 1; i < compressions.size(); ++i) {
    const double gap = seconds(compressions[i] - compressions[i - 1]);
    minutes += gap <= kSamePress ? gap / 60 : 0;
  }
  Shares shares;
  if (inPause >= 3 && during < kFewPerMin * minutes) {
    shares.during = kShareUnlikely;
    shares.elsewhere = kShareUnlikely;
  }
  return shares;
}

} // namespace

Findings breathsFromImpedance(const Channel& channel, std::span<const Time> compressions) {
  if (channel.quantity != "impedance") {
    return {};
  }
  Pieces read = readImpedance(channel);
  Findings result = begunWith(read);
  std::vector<Wave> waves;
  for (const Piece& piece : read.pieces) {
    addWaves(piece, compressions, waves);
  }
  const double usual = usualHeight(waves, result.judged);
  const Shares shares = sharesFor(waves, usual, compressions);
  for (const Wave& wave : waves) {
    if (wave.height < shares.at(wave.place) * usual) {
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
