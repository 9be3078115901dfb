#include "core/signal/hands/pieces.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace afterbeat {
namespace {

constexpr double kWorkingHz = 50;
constexpr double kSlowestHz = 20;
constexpr double kLongestBridgeSeconds = 0.12;
constexpr double kShortestPieceSeconds = 1.5;
constexpr double kSaturatedSeconds = 0.1;
constexpr int kRail = 32767;
constexpr double kNothing = std::numeric_limits<double>::quiet_NaN();

/// Working samples a chunk: bounds the memory beside the result.
constexpr std::size_t kChunk = 8192;

bool atRail(std::int16_t raw) {
  return raw != kMissingSample && std::abs(int{raw}) >= kRail;
}

/// Marks every working sample that lies in a long run at the end of the number range.
void markSaturated(const Channel& channel, const SampleBlock& block, std::size_t step,
                   std::vector<char>& saturated) {
  const auto least = static_cast<std::size_t>(std::ceil(kSaturatedSeconds * channel.rateHz));
  const std::int16_t* raw = channel.samples.data() + block.first;
  std::size_t run = 0;
  for (std::size_t i = 0; i <= block.count; ++i) {
    if (i < block.count && atRail(raw[i])) {
      ++run;
      continue;
    }
    if (run >= least) {
      const std::size_t last = std::min((i - 1) / step + 1, saturated.size() - 1);
      for (std::size_t j = (i - run) / step; j <= last; ++j) {
        saturated[j] = 1;
      }
    }
    run = 0;
  }
}

/// Triangular mean of the `2 step - 1` samples around working sample `j`, whose centre in `chunk`
/// is `centre`; NaN where less than half of the weight is there.
double meanAround(const std::vector<double>& chunk, std::size_t centre, std::size_t step) {
  double sum = 0;
  double weight = 0;
  double possible = 0;
  for (std::size_t m = 0; m + 1 < 2 * step; ++m) {
    const std::size_t at = centre + m + 1;
    const auto w = static_cast<double>(std::min(m + 1, 2 * step - 1 - m));
    possible += w;
    if (at >= step && at - step < chunk.size() && !std::isnan(chunk[at - step])) {
      sum += w * chunk[at - step];
      weight += w;
    }
  }
  return weight * 2 > possible ? sum / weight : kNothing;
}

/// Flattens what averaging twice over `step` samples took from the slopes of compressions: the
/// mean's gain is 1 - w^2/12 x (1 - 1/step^2) for w in radians a working sample, this filter's the
/// inverse.
void sharpen(std::vector<double>& values, std::size_t step) {
  const auto n = static_cast<double>(step);
  const double c = (1 - 1 / (n * n)) / 12;
  double before = values.empty() ? 0 : values.front();
  for (std::size_t i = 0; i + 1 < values.size(); ++i) {
    const double here = values[i];
    const double sharp = here - c * (before - 2 * here + values[i + 1]);
    before = here;
    if (!std::isnan(sharp)) {
      values[i] = sharp;
    }
  }
}

std::vector<double> atWorkingRate(const Channel& channel, const SampleBlock& block,
                                  std::size_t step, double factor) {
  const std::size_t count = (block.count + step - 1) / step;
  std::vector<double> result(count, kNothing);
  std::vector<double> chunk;
  for (std::size_t first = 0; first < count; first += kChunk) {
    const std::size_t last = std::min(count, first + kChunk);
    const std::size_t begin = first * step >= step ? first * step - step : 0;
    const std::size_t end = std::min(block.count, (last + 1) * step);
    readValues(channel, block, begin, end - begin, factor, chunk);
    for (std::size_t j = first; j < last; ++j) {
      result[j] = meanAround(chunk, j * step - begin, step);
    }
  }
  if (step > 1) {
    sharpen(result, step);
  }
  return result;
}

class Cutter {
public:
  Cutter(Pieces& into, Time begin, double rateHz) : into_(into), begin_(begin), rateHz_(rateHz) {}

  /// Cuts `values` at holes; `saturated` says which samples are not to be used.
  void cut(std::vector<double>& values, const std::vector<char>& saturated) {
    const auto bridge = static_cast<std::size_t>(kLongestBridgeSeconds * rateHz_);
    std::size_t from = 0;
    std::size_t i = 0;
    while (i < values.size()) {
      if (!bad(values, saturated, i)) {
        ++i;
        continue;
      }
      std::size_t end = i;
      bool rail = false;
      while (end < values.size() && bad(values, saturated, end)) {
        rail = rail || saturated[end] != 0;
        ++end;
      }
      if (!rail && i > from && end < values.size() && end - i <= bridge) {
        fill(values, i, end);
      } else {
        keep(values, from, i);
        fault(i, end, rail ? SignalFault::saturated : SignalFault::missing);
        from = end;
      }
      i = end;
    }
    keep(values, from, values.size());
  }

private:
  static bool bad(const std::vector<double>& values, const std::vector<char>& saturated,
                  std::size_t i) {
    return saturated[i] != 0 || std::isnan(values[i]);
  }
  static void fill(std::vector<double>& values, std::size_t i, std::size_t end) {
    const double a = values[i - 1];
    const double slope = (values[end] - a) / static_cast<double>(end - i + 1);
    for (std::size_t m = i; m < end; ++m) {
      values[m] = a + slope * static_cast<double>(m - i + 1);
    }
  }
  [[nodiscard]] Time at(std::size_t i) const {
    return begin_ + Duration{std::llround(static_cast<double>(i) * 1e6 / rateHz_)};
  }
  void fault(std::size_t i, std::size_t end, SignalFault kind) {
    into_.faults.push_back({{at(i), at(end)}, kind});
  }
  void keep(const std::vector<double>& values, std::size_t from, std::size_t end) {
    if (end <= from) {
      return;
    }
    if (static_cast<double>(end - from) < kShortestPieceSeconds * rateHz_) {
      fault(from, end, SignalFault::missing);
      return;
    }
    Piece piece{at(from), rateHz_, {}};
    piece.values.assign(values.begin() + static_cast<std::ptrdiff_t>(from),
                        values.begin() + static_cast<std::ptrdiff_t>(end));
    into_.pieces.push_back(std::move(piece));
  }

  Pieces& into_;
  Time begin_;
  double rateHz_;
};

} // namespace

Pieces readPieces(const Channel& channel) {
  Pieces result;
  const auto factor = factorToUsual(channel.quantity, channel.unit);
  if (!factor || !channel.drawable || !(channel.rateHz >= kSlowestHz) ||
      !std::isfinite(channel.rateHz) || !std::isfinite(channel.scale) ||
      !std::isfinite(channel.offset) || channel.blocks.empty()) {
    return result;
  }
  const auto step =
      static_cast<std::size_t>(std::max(1.0, std::round(channel.rateHz / kWorkingHz)));
  const double rateHz = channel.rateHz / static_cast<double>(step);
  std::optional<Time> reached;
  for (const SampleBlock& block : channel.blocks) {
    if (block.count == 0) {
      continue;
    }
    if (reached && block.t > *reached) {
      result.faults.push_back({{*reached, block.t}, SignalFault::missing});
    }
    std::vector<double> values = atWorkingRate(channel, block, step, *factor);
    std::vector<char> saturated(values.size(), 0);
    markSaturated(channel, block, step, saturated);
    Cutter(result, block.t, rateHz).cut(values, saturated);
    reached = channel.timeOf(block, block.count);
  }
  if (reached) {
    result.length = *reached - channel.blocks.front().t;
  }
  return result;
}

} // namespace afterbeat
