#include "core/signal/hands/contact.h"

#include "core/signal/hands/alike.h"
#include "core/signal/hands/entries.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {
namespace {

constexpr double kOffOhm = 300, kShortOhm = 5;
/// A channel whose usual level is above this tells the whole impedance, not only its changes.
constexpr double kWholeOhm = 15;
/// A jump: this far within 40 ms; poor contact: at least four of them, none 1.5 s from the next.
constexpr double kJumpOhm = 6;
constexpr double kJumpSeconds = 0.04, kApartSeconds = 1.5;
constexpr std::size_t kJumps = 4;
/// What is left after a bad stretch is not trusted for this long.
constexpr double kMarginSeconds = 0.3;
constexpr double kShortestPieceSeconds = 1.5;

struct Bad {
  std::size_t from = 0, to = 0;
  SignalFault fault = SignalFault::off;
};

double usualLevel(const Pieces& read) {
  std::vector<double> some;
  for (const Piece& piece : read.pieces) {
    for (std::size_t i = 0; i < piece.values.size(); i += 25) {
      some.push_back(piece.values[i]);
    }
  }
  return upperMedian(std::move(some));
}

void findOff(const Piece& piece, bool whole, std::vector<Bad>& bad) {
  const auto& values = piece.values;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (std::fabs(values[i]) > kOffOhm || (whole && values[i] < kShortOhm)) {
      if (bad.empty() || bad.back().to + static_cast<std::size_t>(piece.rateHz) < i) {
        bad.push_back({i, i, SignalFault::off});
      }
      bad.back().to = i;
    }
  }
}

void findPoorContact(const Piece& piece, std::vector<Bad>& bad) {
  const auto& values = piece.values;
  const auto lag = static_cast<std::size_t>(std::max(1.0, std::round(kJumpSeconds * piece.rateHz)));
  const auto apart = static_cast<std::size_t>(kApartSeconds * piece.rateHz);
  std::size_t first = 0, last = 0, jumps = 0;
  const auto close = [&] {
    if (jumps >= kJumps) {
      bad.push_back({first, last, SignalFault::poorContact});
    }
    jumps = 0;
  };
  for (std::size_t i = lag; i < values.size(); ++i) {
    if (std::fabs(values[i] - values[i - lag]) < kJumpOhm) {
      continue;
    }
    if (jumps > 0 && i > last + apart) {
      close();
    }
    if (jumps == 0) {
      first = i;
    }
    if (jumps == 0 || i > last + lag) {
      ++jumps;
    }
    last = i;
  }
  close();
}

void cut(Piece& piece, std::vector<Bad> bad, Pieces& into) {
  std::sort(bad.begin(), bad.end(), [](const Bad& a, const Bad& b) { return a.from < b.from; });
  const auto margin = static_cast<std::size_t>(kMarginSeconds * piece.rateHz);
  const auto at = [&](std::size_t i) { return piece.timeAt(static_cast<double>(i)); };
  std::size_t from = 0;
  const auto keep = [&](std::size_t end) {
    if (end <= from) {
      return;
    }
    if (static_cast<double>(end - from) < kShortestPieceSeconds * piece.rateHz) {
      into.faults.push_back({{at(from), at(end)}, SignalFault::poorContact});
      return;
    }
    into.pieces.push_back({at(from),
                           piece.rateHz,
                           {piece.values.begin() + static_cast<std::ptrdiff_t>(from),
                            piece.values.begin() + static_cast<std::ptrdiff_t>(end)}});
  };
  for (const Bad& one : bad) {
    const std::size_t begin = std::max(from, one.from > margin ? one.from - margin : 0);
    keep(begin);
    const std::size_t end = std::min(one.to + margin + 1, piece.values.size());
    if (end > from) {
      into.faults.push_back({{at(begin), at(end)}, one.fault});
      from = end;
    }
  }
  keep(piece.values.size());
}

} // namespace

Pieces readImpedance(const Channel& channel) {
  Pieces read = readPieces(channel);
  const bool whole = std::fabs(usualLevel(read)) > kWholeOhm;
  Pieces result;
  result.faults = std::move(read.faults);
  result.length = read.length;
  for (Piece& piece : read.pieces) {
    std::vector<Bad> bad;
    findOff(piece, whole, bad);
    findPoorContact(piece, bad);
    if (bad.empty()) {
      result.pieces.push_back(std::move(piece));
    } else {
      cut(piece, std::move(bad), result);
    }
  }
  return result;
}

} // namespace afterbeat
