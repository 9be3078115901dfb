/// What the tests ask of findings.
#pragma once

#include "core/signal/findings.h"

#include <vector>

namespace afterbeat {

/// Seconds of all entries of one type.
template <typename T>
std::vector<double> timesOf(const Findings& findings) {
  std::vector<double> times;
  for (const Entry& entry : findings.entries) {
    if (entry.complete<T>() != nullptr) {
      times.push_back(seconds(entry.t));
    }
  }
  return times;
}

inline const entry::Compression& compressionAt(const Findings& findings, std::size_t i) {
  return std::get<entry::Compression>(findings.entries[i].data);
}

/// Entries in time order, derived, with a quality from 0 to 1.
inline bool wellFormed(const Findings& findings) {
  Time last = Time::min();
  for (const Entry& entry : findings.entries) {
    if (entry.t < last || entry.source != Source::derived || !entry.quality ||
        !(*entry.quality >= 0 && *entry.quality <= 1)) {
      return false;
    }
    last = entry.t;
  }
  return findings.judged <= findings.length && findings.judged >= Duration{};
}

} // namespace afterbeat
