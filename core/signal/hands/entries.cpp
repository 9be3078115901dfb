#include "core/signal/hands/entries.h"

#include <algorithm>

namespace afterbeat {

Findings begunWith(Pieces& read) {
  Findings result;
  result.unusable = std::move(read.faults);
  result.length = read.length;
  for (const Piece& piece : read.pieces) {
    result.judged += piece.span().length();
  }
  return result;
}

Entry compressionEntry(Time t, double quality, entry::Compression what) {
  Entry result;
  result.t = t;
  result.source = Source::derived;
  result.quality = quality;
  result.data = what;
  return result;
}

void putInOrder(Findings& findings) {
  std::stable_sort(findings.entries.begin(), findings.entries.end(),
                   [](const Entry& a, const Entry& b) { return a.t < b.t; });
  auto& faults = findings.unusable;
  std::stable_sort(faults.begin(), faults.end(), [](const auto& a, const auto& b) {
    return a.fault != b.fault ? a.fault < b.fault : a.where.begin < b.where.begin;
  });
  std::vector<FaultyStretch> joined;
  for (const FaultyStretch& fault : faults) {
    if (!joined.empty() && joined.back().fault == fault.fault &&
        joined.back().where.touches(fault.where)) {
      joined.back().where.end = std::max(joined.back().where.end, fault.where.end);
    } else {
      joined.push_back(fault);
    }
  }
  std::stable_sort(joined.begin(), joined.end(),
                   [](const auto& a, const auto& b) { return a.where.begin < b.where.begin; });
  faults = std::move(joined);
}

std::vector<Interval> unusableStretches(const Findings& findings) {
  std::vector<Interval> stretches;
  for (const FaultyStretch& fault : findings.unusable) {
    stretches.push_back(fault.where);
  }
  return merged(std::move(stretches));
}

} // namespace afterbeat
