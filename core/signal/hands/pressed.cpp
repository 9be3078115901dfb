#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/hands.h"
#include "core/signal/hands/pieces.h"
#include "core/signal/hands/resting.h"
#include "core/signal/hands/tops.h"
#include "core/signal/hands/trains.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// What differs between depth (mm) and force (N).
struct Kind {
  double leastHeight, fairHeight;
  bool isDepth;
};

constexpr Kind kDepth{5, 10, true};
constexpr Kind kForce{20, 60, false};
/// Force left at release is at most this: fully released. 2.5 kilograms-force, as in the
/// guidelines' profiles (from memory). Of depth the profile decides, from the leaning.
constexpr double kReleasedBelowN = 24.5;
/// Presses are looked for below, and measured below.
constexpr double kLookHz = 4, kMeasureHz = 12;
constexpr double kLeastShare = 0.35;
/// The deepest point is the middle of the time in which this share of the height is gone.
constexpr double kTopShare = 0.04;

void write(const Piece& piece, const Train& train, const std::vector<double>& releases,
           const std::vector<double>& values, const RestingLevel& resting, const Kind& kind,
           Findings& result) {
  for (std::size_t k = 0; k < train.series.size(); ++k) {
    const auto from = static_cast<std::size_t>(releases[k]);
    const auto to = static_cast<std::size_t>(releases[k + 1]);
    const auto a = values.begin() + static_cast<std::ptrdiff_t>(from);
    const auto b = values.begin() + static_cast<std::ptrdiff_t>(to) + 1;
    const auto top = static_cast<std::size_t>(std::max_element(a, b) - values.begin());
    const double before =
        *std::min_element(a, values.begin() + static_cast<std::ptrdiff_t>(top) + 1);
    const double after = *std::min_element(values.begin() + static_cast<std::ptrdiff_t>(top), b);
    const double height = values[top] - before;
    const double left = std::max(0.0, after - resting.at(top));
    entry::Compression what;
    if (kind.isDepth) {
      what.depthMm = height;
      what.leaningMm = left;
    } else {
      what.fullRelease = left <= kReleasedBelowN;
    }
    const double moment = middleOfTop(values, top, values[top] - kTopShare * height, from, to);
    result.entries.push_back(compressionEntry(piece.timeAt(moment), surenessOf(train, k), what));
  }
}

void findIn(const Piece& piece, const Kind& kind, Findings& result) {
  const auto look = lowPassed(piece.values, kLookHz, piece.rateHz);
  const auto pulses = findPulses(look, kind.leastHeight);
  SeriesRules rules;
  rules.rateHz = piece.rateHz;
  rules.fairHeight = kind.fairHeight;
  const auto trains = trustedTrains(findSeries(pulses, rules).series, pulses, look, look,
                                    piece.rateHz, kLeastShare);
  const auto values = lowPassed(piece.values, kMeasureHz, piece.rateHz);
  std::vector<std::vector<double>> releases;
  std::vector<std::pair<std::size_t, std::size_t>> pressed;
  for (const Train& train : trains) {
    releases.push_back(releasesOf(train.series, pulses, look));
    pressed.emplace_back(static_cast<std::size_t>(releases.back().front()),
                         static_cast<std::size_t>(releases.back().back()));
  }
  const RestingLevel resting(values, pressed, piece.rateHz);
  for (std::size_t i = 0; i < trains.size(); ++i) {
    write(piece, trains[i], releases[i], values, resting, kind, result);
  }
}

Findings findPressed(const Channel& channel, const Kind& kind) {
  Pieces read = readPieces(channel);
  Findings result = begunWith(read);
  for (const Piece& piece : read.pieces) {
    findIn(piece, kind, result);
  }
  putInOrder(result);
  return result;
}

} // namespace

Findings compressionsFromDepth(const Channel& channel) {
  return channel.quantity == "depth" ? findPressed(channel, kDepth) : Findings{};
}

Findings compressionsFromForce(const Channel& channel) {
  return channel.quantity == "force" ? findPressed(channel, kForce) : Findings{};
}

} // namespace afterbeat
