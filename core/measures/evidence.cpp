#include "core/measures/evidence.h"

#include <algorithm>

namespace afterbeat {
namespace {

/// Two compressions no further apart than this are one, detected twice.
constexpr Duration kDoubleDetection{200'000};

/// The compressions of one source in one part, in time order.
struct Stream {
  Source source = Source::device;
  int part = -1;
  std::vector<std::size_t> entries;
};

int rank(Source source) {
  switch (source) {
  case Source::device:
    return 0;
  case Source::derived:
    return 1;
  case Source::observer:
    return 2;
  }
  return 3;
}

/// Best first. Streams begin in order of their first compression, which decides a tie.
std::vector<Stream> rankedStreams(const Record& record) {
  std::vector<Stream> streams;
  for (std::size_t i = 0; i < record.entries.size(); ++i) {
    const Entry& entry = record.entries[i];
    if (!entry.complete<entry::Compression>()) {
      continue;
    }
    auto it = std::find_if(streams.begin(), streams.end(), [&](const Stream& s) {
      return s.source == entry.source && s.part == entry.part;
    });
    if (it == streams.end()) {
      it = streams.insert(streams.end(), {entry.source, entry.part, {}});
    }
    it->entries.push_back(i);
  }
  std::stable_sort(streams.begin(), streams.end(), [](const Stream& a, const Stream& b) {
    return rank(a.source) != rank(b.source) ? rank(a.source) < rank(b.source)
                                            : a.entries.size() > b.entries.size();
  });
  return streams;
}

} // namespace

KeptCompressions keptCompressions(const Record& record) {
  std::vector<Interval> betterSpans;
  std::vector<std::size_t> used;
  for (const Stream& stream : rankedStreams(record)) {
    for (const std::size_t i : stream.entries) {
      const Time t = record.entries[i].t;
      if (std::none_of(betterSpans.begin(), betterSpans.end(),
                       [t](const Interval& span) { return span.holds(t); })) {
        used.push_back(i);
      }
    }
    betterSpans.push_back(
        {record.entries[stream.entries.front()].t, record.entries[stream.entries.back()].t});
  }
  std::sort(used.begin(), used.end()); // entries are in time order, ties as found

  KeptCompressions kept;
  kept.entries.reserve(used.size());
  kept.times.reserve(used.size());
  for (const std::size_t i : used) {
    const Time t = record.entries[i].t;
    if (!kept.times.empty() && t - kept.times.back() <= kDoubleDetection) {
      ++kept.doubleDetections;
      continue;
    }
    kept.entries.push_back(i);
    kept.times.push_back(t);
  }
  return kept;
}

std::vector<std::size_t> countedCpr(const Record& record, const std::vector<Time>& kept) {
  std::vector<std::size_t> counted;
  for (std::size_t i = 0; i < record.entries.size(); ++i) {
    const Entry& entry = record.entries[i];
    if (!entry.complete<entry::Cpr>()) {
      continue;
    }
    const auto it = std::lower_bound(kept.begin(), kept.end(), entry.t);
    if (it == kept.end() || *it > entry.lastTime()) {
      counted.push_back(i);
    }
  }
  return counted;
}

std::vector<Interval> handsOn(const Record& record, const std::vector<Time>& kept,
                              const std::vector<std::size_t>& cprEntries) {
  std::vector<Interval> stretches;
  stretches.reserve(kept.size() + cprEntries.size());
  for (const Time t : kept) {
    stretches.push_back({t, t});
  }
  for (const std::size_t i : cprEntries) {
    stretches.push_back(spanOf(record.entries[i]));
  }
  return merged(std::move(stretches));
}

} // namespace afterbeat
