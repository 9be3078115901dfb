#include "core/resuslog/sample_store.h"

#include "core/bytes/digest.h"
#include "core/resuslog/json_text.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

double inSamples(Duration d, double rateHz) {
  return static_cast<double>(d.count()) * rateHz / 1e6;
}

} // namespace

Time SampleStore::endOf(Time t, std::size_t count) const {
  return t + Duration{std::llround(static_cast<double>(count) * 1e6 / channel_.rateHz)};
}

bool SampleStore::add(Time t, std::size_t count, std::string_view base64, int line) {
  auto& samples = channel_.samples;
  if (keep_ && samples.capacity() == 0) {
    samples.reserve(expected_);
  }
  if (!keep_) {
    samples.clear();
  }
  const std::size_t first = keep_ ? samples.size() : total_;
  if (!appendInt16FromBase64(base64, count, samples)) {
    return false;
  }
  written_.push_back({t, first, count, line});
  total_ += count;
  channel_.firstLine = std::min(channel_.firstLine.value_or(t), t);
  channel_.lastLine = std::max(channel_.lastLine.value_or(t), t);
  return true;
}

/// How many samples at the block's beginning lie where earlier ones are; reports gap or overlap.
std::size_t SampleStore::overlap(const Written& block, const Reach& reach,
                                 std::vector<Problem>& problems) const {
  if (!reach.any) {
    return 0;
  }
  const Duration late = block.t - reach.end;
  const double samples = inSamples(late, channel_.rateHz);
  if (samples > 0.5) {
    problems.push_back(
        {block.line, Severity::info, ProblemKind::gapInChannel, {channel_.id, secondsText(late)}});
  }
  if (samples >= -0.5) {
    return 0;
  }
  const auto twice = std::min(block.count, static_cast<std::size_t>(std::ceil(-samples - 0.5)));
  problems.push_back(
      {block.line,
       Severity::warning,
       ProblemKind::overlappingBlocks,
       {channel_.id, secondsText(std::min(-late, endOf(block.t, block.count) - block.t))}});
  return twice;
}

void SampleStore::layOut(Written block, Reach& reach, std::vector<std::int16_t>& into,
                         std::size_t& filled, std::vector<Problem>& problems) {
  const Time end = endOf(block.t, block.count);
  const std::size_t twice = overlap(block, reach, problems);
  block.t = endOf(block.t, twice);
  block.first += twice;
  block.count -= twice;
  if (block.count == 0) {
    return;
  }
  if (keep_ && (&into != &channel_.samples || block.first != filled)) {
    const auto from = channel_.samples.begin() + static_cast<std::ptrdiff_t>(block.first);
    std::copy(from, from + static_cast<std::ptrdiff_t>(block.count),
              into.begin() + static_cast<std::ptrdiff_t>(filled));
  }
  auto& blocks = channel_.blocks;
  const bool continuous =
      reach.any && std::fabs(inSamples(block.t - reach.end, channel_.rateHz)) <= 0.5;
  // The joined block's computed times must not drift away from the written ones.
  const bool joins =
      continuous &&
      std::fabs(inSamples(block.t - channel_.timeOf(blocks.back(), blocks.back().count),
                          channel_.rateHz)) <= 0.5;
  if (joins) {
    blocks.back().count += block.count;
  } else {
    blocks.push_back({block.t, filled, block.count});
  }
  filled += block.count;
  reach = {reach.any ? std::max(reach.end, end) : end, true};
}

void SampleStore::finish(std::vector<Problem>& problems) {
  const auto earlier = [](const Written& a, const Written& b) { return a.t < b.t; };
  const bool inOrder = std::is_sorted(written_.begin(), written_.end(), earlier);
  if (!keep_) {
    channel_.samples = {};
  }
  std::vector<std::int16_t> sorted;
  if (!inOrder) {
    std::stable_sort(written_.begin(), written_.end(), earlier);
    sorted.resize(channel_.samples.size());
  }
  auto& into = inOrder ? channel_.samples : sorted;
  Reach reach;
  std::size_t filled = 0;
  for (const Written& block : written_) {
    layOut(block, reach, into, filled, problems);
  }
  if (keep_) {
    into.resize(filled);
    if (!inOrder) {
      channel_.samples = std::move(sorted);
    }
  }
  if (!keep_) {
    channel_.blocks.clear(); // they would point at samples that are not there
  }
}

} // namespace afterbeat
