#include "core/signal/hands/together.h"

#include "core/signal/hands/alike.h"
#include "core/signal/hands/contact.h"
#include "core/signal/hands/entries.h"
#include "core/signal/hands/filters.h"
#include "core/signal/hands/pieces.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace afterbeat {
namespace {

constexpr Duration kSame{250'000};
/// Where presses move a channel; breaths move impedance more slowly.
constexpr double kLowHz = 1, kHighHz = 4;
constexpr std::size_t kFewestCommon = 20, kFewestNear = 6;
constexpr Duration kNear{30'000'000};
/// Half of the time in which a press moves a channel.
constexpr Duration kHalfPress{200'000};
/// Stiller than this share of what presses of that size make it: nobody presses.
constexpr double kStill = 0.5;
constexpr double kSure = 0.5, kSecondChoice = 0.8;

/// How much a channel moves, at any time.
class Unrest {
public:
  Unrest(const Pieces& read, bool isAcceleration) {
    for (const Piece& piece : read.pieces) {
      std::vector<double> moved =
          isAcceleration
              ? lowPassed(movementFrom(piece.values, kLowHz, piece.rateHz), kHighHz, piece.rateHz)
              : bandPassed(piece.values, kLowHz, kHighHz, piece.rateHz);
      double sum = 0;
      for (double& x : moved) {
        sum += x * x;
        x = sum;
      }
      parts_.push_back({piece.begin, piece.rateHz, std::move(moved)});
    }
  }

  /// Root of the mean square; nothing where the channel was not read throughout.
  [[nodiscard]] std::optional<double> over(const Interval& where) const {
    const auto next = std::upper_bound(parts_.begin(), parts_.end(), where.begin,
                                       [](Time t, const Piece& part) { return t < part.begin; });
    if (next == parts_.begin()) {
      return std::nullopt;
    }
    const Piece& part = *(next - 1);
    const double from = std::round(part.view().indexOf(where.begin));
    const double to = std::round(part.view().indexOf(where.end));
    if (from < 0 || to <= from || to >= static_cast<double>(part.values.size())) {
      return std::nullopt;
    }
    const double sum =
        part.values[static_cast<std::size_t>(to)] - part.values[static_cast<std::size_t>(from)];
    return std::sqrt(std::max(0.0, sum) / (to - from));
  }

private:
  std::vector<Piece> parts_;
};

/// One press of one channel, beside the other.
struct Seen {
  std::size_t entry = 0;
  Time t{};
  bool common = false;
  /// How much its own channel and the other move.
  std::optional<double> own, other;
};

std::vector<Seen> pressesOf(const Findings& findings, const Unrest& own, const Unrest& other) {
  std::vector<Seen> result;
  for (std::size_t i = 0; i < findings.entries.size(); ++i) {
    const Entry& entry = findings.entries[i];
    if (std::holds_alternative<entry::Compression>(entry.data)) {
      const Interval where{entry.t - kHalfPress, entry.t + kHalfPress};
      result.push_back({i, entry.t, false, own.over(where), other.over(where)});
    }
  }
  return result;
}

/// Pairs each press with the nearest of the other channel not yet taken.
void findCommon(std::vector<Seen>& a, std::vector<Seen>& b) {
  std::size_t k = 0;
  for (Seen& one : a) {
    while (k < b.size() && b[k].t < one.t - kSame) {
      ++k;
    }
    std::size_t best = b.size();
    for (std::size_t j = k; j < b.size() && b[j].t <= one.t + kSame; ++j) {
      const auto apart = [&](std::size_t i) {
        return b[i].t > one.t ? b[i].t - one.t : one.t - b[i].t;
      };
      if (!b[j].common && (best == b.size() || apart(j) < apart(best))) {
        best = j;
      }
    }
    if (best < b.size()) {
      one.common = b[best].common = true;
    }
  }
}

/// Whether the other channel lies still at each press of `presses`, runs of those that it does not
/// know judged as one.
std::vector<bool> refuted(const std::vector<Seen>& presses) {
  std::vector<bool> result(presses.size(), false);
  std::vector<std::size_t> common;
  for (std::size_t i = 0; i < presses.size(); ++i) {
    if (presses[i].common && presses[i].own && presses[i].other) {
      common.push_back(i);
    }
  }
  for (std::size_t i = 0; i < presses.size();) {
    std::size_t end = i;
    std::vector<double> own, other, usualOwn, usualOther;
    for (; end < presses.size() && !presses[end].common; ++end) {
      if (presses[end].own && presses[end].other) {
        own.push_back(*presses[end].own);
        other.push_back(*presses[end].other);
      }
    }
    if (end == i || own.empty()) {
      i = std::max(end, i + 1);
      continue;
    }
    for (const std::size_t k : common) {
      if (presses[k].t > presses[i].t - kNear && presses[k].t < presses[end - 1].t + kNear) {
        usualOwn.push_back(*presses[k].own);
        usualOther.push_back(*presses[k].other);
      }
    }
    if (usualOwn.size() >= kFewestNear) {
      const double size = std::min(1.0, upperMedian(std::move(own)) /
                                            std::max(1e-9, upperMedian(std::move(usualOwn))));
      const bool still =
          upperMedian(std::move(other)) < kStill * size * upperMedian(std::move(usualOther));
      std::fill(result.begin() + static_cast<std::ptrdiff_t>(i),
                result.begin() + static_cast<std::ptrdiff_t>(end), still);
    }
    i = end;
  }
  return result;
}

std::size_t countCommon(const std::vector<Seen>& presses) {
  return static_cast<std::size_t>(
      std::count_if(presses.begin(), presses.end(), [](const Seen& s) { return s.common; }));
}

} // namespace

void settleTogether(const Channel& accelerationChannel, Findings& acceleration,
                    const Channel& impedanceChannel, const Findings& impedance) {
  const Unrest moved(readPieces(accelerationChannel), true);
  const Unrest changed(readImpedance(impedanceChannel), false);
  std::vector<Seen> chest = pressesOf(acceleration, moved, changed);
  std::vector<Seen> pads = pressesOf(impedance, changed, moved);
  findCommon(chest, pads);
  if (countCommon(chest) < kFewestCommon) {
    return;
  }
  const std::vector<Interval> off = unusableStretches(impedance);
  const std::vector<Interval> offChest = unusableStretches(acceleration);
  const std::vector<bool> notThere = refuted(chest), notThereEither = refuted(pads);
  std::vector<Entry> kept;
  for (std::size_t i = 0; i < chest.size(); ++i) {
    if (!notThere[i] || indexHolding(off, chest[i].t) >= 0) {
      kept.push_back(std::move(acceleration.entries[chest[i].entry]));
    }
  }
  for (std::size_t i = 0; i < pads.size(); ++i) {
    const Entry& entry = impedance.entries[pads[i].entry];
    if (!pads[i].common && !notThereEither[i] && pads[i].other &&
        entry.quality.value_or(0) >= kSure && indexHolding(offChest, entry.t) < 0 &&
        indexHolding(off, entry.t) < 0) {
      kept.push_back(entry);
      kept.back().quality = entry.quality.value_or(0) * kSecondChoice;
    }
  }
  acceleration.entries = std::move(kept);
  putInOrder(acceleration);
}

} // namespace afterbeat
