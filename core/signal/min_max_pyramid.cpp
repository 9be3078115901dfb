#include "core/signal/min_max_pyramid.h"

#include <algorithm>
#include <thread>

namespace afterbeat {

namespace {

constexpr std::size_t kFewestSamplesPerThread = 1'000'000;

std::size_t binsFor(std::size_t items, std::size_t perBin) {
  return (items + perBin - 1) / perBin;
}

/// Branch-free over a full bin, so that the compiler can use wide registers: a missing sample is
/// the smallest of all values, so it never becomes the maximum, and it is lifted out of the way of
/// the minimum.
MinMax ofBin(std::span<const std::int16_t> bin) {
  std::int16_t low = std::numeric_limits<std::int16_t>::max();
  std::int16_t high = std::numeric_limits<std::int16_t>::min();
  for (const std::int16_t raw : bin) {
    const std::int16_t lifted =
        raw == kMissingSample ? std::numeric_limits<std::int16_t>::max() : raw;
    low = std::min(low, lifted);
    high = std::max(high, raw);
  }
  // Only missing samples: nothing was lowered or raised.
  return high == kMissingSample ? MinMax{} : MinMax{low, high};
}

void fillLowest(std::span<const std::int16_t> samples, std::vector<MinMax>& bins, std::size_t begin,
                std::size_t end) {
  constexpr std::size_t width = MinMaxPyramid::kLowestBin;
  for (std::size_t i = begin; i < end; ++i) {
    const std::size_t first = i * width;
    bins[i] = ofBin(samples.subspan(first, std::min(width, samples.size() - first)));
  }
}

std::vector<MinMax> lowestLevel(std::span<const std::int16_t> samples, unsigned threads) {
  std::vector<MinMax> bins(binsFor(samples.size(), MinMaxPyramid::kLowestBin));
  const std::size_t useful = samples.size() / kFewestSamplesPerThread + 1;
  const std::size_t workers = std::clamp<std::size_t>(threads, 1, useful);
  const std::size_t share = binsFor(bins.size(), workers);
  std::vector<std::thread> helpers;
  for (std::size_t w = 1; w < workers; ++w) {
    helpers.emplace_back([&, w] {
      fillLowest(samples, bins, std::min(bins.size(), w * share),
                 std::min(bins.size(), (w + 1) * share));
    });
  }
  fillLowest(samples, bins, 0, std::min(bins.size(), share));
  for (std::thread& helper : helpers) {
    helper.join();
  }
  return bins;
}

std::vector<MinMax> nextLevel(const std::vector<MinMax>& below) {
  std::vector<MinMax> bins(binsFor(below.size(), MinMaxPyramid::kFanOut));
  for (std::size_t i = 0; i < below.size(); ++i) {
    bins[i / MinMaxPyramid::kFanOut].add(below[i]);
  }
  return bins;
}

} // namespace

MinMaxPyramid::MinMaxPyramid(std::span<const std::int16_t> samples, unsigned threads)
    : samples_(samples) {
  if (samples.empty()) {
    return;
  }
  levels_.push_back(lowestLevel(samples, threads));
  while (levels_.back().size() > kFanOut) {
    levels_.push_back(nextLevel(levels_.back()));
  }
}

MinMax MinMaxPyramid::over(std::size_t begin, std::size_t end) const {
  end = std::min(end, samples_.size());
  MinMax result;
  if (begin >= end) {
    return result;
  }
  const std::size_t firstBin = binsFor(begin, kLowestBin);
  const std::size_t lastBin = end / kLowestBin;
  if (firstBin >= lastBin) {
    return minMaxOf(samples_, begin, end);
  }
  result.add(minMaxOf(samples_, begin, firstBin * kLowestBin));
  addFrom(0, firstBin, lastBin, result);
  result.add(minMaxOf(samples_, lastBin * kLowestBin, end));
  return result;
}

void MinMaxPyramid::addFrom(std::size_t level, std::size_t begin, std::size_t end,
                            MinMax& into) const {
  const std::vector<MinMax>& bins = levels_[level];
  const std::size_t above = level + 1;
  const std::size_t firstAbove = binsFor(begin, kFanOut);
  const std::size_t lastAbove = end / kFanOut;
  if (above >= levels_.size() || firstAbove >= lastAbove) {
    for (std::size_t i = begin; i < end; ++i) {
      into.add(bins[i]);
    }
    return;
  }
  for (std::size_t i = begin; i < firstAbove * kFanOut; ++i) {
    into.add(bins[i]);
  }
  addFrom(above, firstAbove, lastAbove, into);
  for (std::size_t i = lastAbove * kFanOut; i < end; ++i) {
    into.add(bins[i]);
  }
}

MinMax minMaxOf(std::span<const std::int16_t> samples, std::size_t begin, std::size_t end) {
  MinMax result;
  for (std::size_t i = begin; i < std::min(end, samples.size()); ++i) {
    result.add(samples[i]);
  }
  return result;
}

} // namespace afterbeat
