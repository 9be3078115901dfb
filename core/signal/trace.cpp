#include "core/signal/trace.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace afterbeat {

namespace {

constexpr double kPenUp = std::numeric_limits<double>::quiet_NaN();

/// Builds the line point by point.
class Pen {
public:
  explicit Pen(std::vector<TracePoint>& points) : points_(points) {}

  void lift(double seconds) {
    if (down_) {
      points_.push_back({seconds, kPenUp});
      down_ = false;
    }
  }
  void to(double seconds, double value) {
    points_.push_back({seconds, value});
    last_ = value;
    down_ = true;
  }
  /// The nearer end first, so that the line does not cross the bin twice.
  void through(double seconds, double low, double high) {
    const bool lowFirst = !down_ || std::fabs(last_ - low) <= std::fabs(last_ - high);
    to(seconds, lowFirst ? low : high);
    to(seconds, lowFirst ? high : low);
  }

private:
  std::vector<TracePoint>& points_;
  double last_ = 0;
  bool down_ = false;
};

/// Indices within a block whose samples lie in `shown`, one more on each side.
struct Part {
  std::size_t begin = 0, end = 0;
};

Part partOf(const Channel& channel, const SampleBlock& block, const Interval& shown) {
  const double before = seconds(shown.begin - block.t) * channel.rateHz;
  const double after = seconds(shown.end - block.t) * channel.rateHz;
  const auto count = static_cast<double>(block.count);
  Part part;
  part.begin = static_cast<std::size_t>(std::clamp(std::floor(before), 0.0, count));
  part.end = static_cast<std::size_t>(std::clamp(std::ceil(after) + 1, 0.0, count));
  return part;
}

double secondsAt(const Channel& channel, const SampleBlock& block, double index) {
  return seconds(block.t) + index / channel.rateHz;
}

void drawSamples(const Channel& channel, const SampleBlock& block, Part part, Pen& pen) {
  for (std::size_t i = part.begin; i < part.end; ++i) {
    const double t = secondsAt(channel, block, static_cast<double>(i));
    const std::int16_t raw = channel.samples[block.first + i];
    if (raw == kMissingSample) {
      pen.lift(t);
    } else {
      pen.to(t, channel.physical(raw));
    }
  }
}

void drawBins(const Channel& channel, const MinMaxPyramid& pyramid, const SampleBlock& block,
              Part part, std::size_t width, Pen& pen) {
  // Whole bins, also where the view cuts one: else the edge would change while the view moves.
  const std::size_t firstBin = (block.first + part.begin) / width;
  const std::size_t lastBin = (block.first + part.end + width - 1) / width;
  for (std::size_t bin = firstBin; bin < lastBin; ++bin) {
    const std::size_t begin = std::max(bin * width, block.first);
    const std::size_t end = std::min((bin + 1) * width, block.first + block.count);
    const double middle = static_cast<double>(begin + end - 1) / 2.0;
    const double t = secondsAt(channel, block, middle - static_cast<double>(block.first));
    const MinMax extremes = pyramid.over(begin, end);
    if (extremes.empty()) {
      pen.lift(t);
    } else {
      pen.through(t, channel.physical(extremes.low), channel.physical(extremes.high));
    }
  }
}

} // namespace

std::size_t samplesPerBin(const Channel& channel, Duration shown, int pixels) {
  const double perPixel = seconds(shown) * channel.rateHz / std::max(pixels, 1);
  // Up to two samples a pixel are drawn as they are: as many points as a bin would have.
  // The allowance keeps a view that is a whole number of samples a pixel wide from flickering
  // between two widths with the rounding of its edges.
  constexpr double kAllowance = 1e-3;
  if (perPixel <= 2.0) {
    return 1;
  }
  const auto width = static_cast<std::size_t>(std::ceil(perPixel - kAllowance));
  // Wide bins are whole bins of the pyramid: their minima are ready, no sample is looked at.
  constexpr std::size_t kWide = 16 * MinMaxPyramid::kLowestBin;
  constexpr std::size_t kBin = MinMaxPyramid::kLowestBin;
  return width < kWide ? width : (width + kBin - 1) / kBin * kBin;
}

std::vector<TracePoint> traceOf(const Channel& channel, const MinMaxPyramid& pyramid,
                                const Interval& shown, int pixels) {
  std::vector<TracePoint> points;
  if (!channel.drawable || !(channel.rateHz > 0)) {
    return points;
  }
  const std::size_t width = samplesPerBin(channel, shown.length(), pixels);
  Pen pen(points);
  for (const SampleBlock& block : channel.blocks) {
    const Part part = partOf(channel, block, shown);
    if (part.begin >= part.end || block.t > shown.end) {
      continue;
    }
    pen.lift(seconds(block.t));
    if (width == 1) {
      drawSamples(channel, block, part, pen);
    } else {
      drawBins(channel, pyramid, block, part, width, pen);
    }
  }
  return points;
}

std::optional<double> valueAt(const Channel& channel, Time t) {
  if (!channel.drawable || !(channel.rateHz > 0)) {
    return std::nullopt;
  }
  const auto after =
      std::upper_bound(channel.blocks.begin(), channel.blocks.end(), t,
                       [](Time at, const SampleBlock& block) { return at < block.t; });
  if (after == channel.blocks.begin()) {
    return std::nullopt;
  }
  const SampleBlock& block = *(after - 1);
  const double place = seconds(t - block.t) * channel.rateHz;
  if (block.count == 0 || place > static_cast<double>(block.count - 1)) {
    return std::nullopt;
  }
  const auto index = static_cast<std::size_t>(place);
  const double share = place - static_cast<double>(index);
  const std::int16_t here = channel.samples[block.first + index];
  if (here == kMissingSample) {
    return std::nullopt;
  }
  if (share == 0) {
    return channel.physical(here);
  }
  const std::int16_t next = channel.samples[block.first + index + 1];
  if (next == kMissingSample) {
    return std::nullopt;
  }
  return channel.physical(here) * (1 - share) + channel.physical(next) * share;
}

ValueRange usualRange(const Channel& channel, const MinMaxPyramid& pyramid) {
  constexpr std::size_t kPieces = 2000;
  const std::size_t width = std::max<std::size_t>(1, pyramid.sampleCount() / kPieces);
  std::vector<std::int16_t> lows, highs;
  for (std::size_t begin = 0; begin < pyramid.sampleCount(); begin += width) {
    const MinMax extremes = pyramid.over(begin, begin + width);
    if (!extremes.empty()) {
      lows.push_back(extremes.low);
      highs.push_back(extremes.high);
    }
  }
  if (lows.empty()) {
    return {};
  }
  const std::size_t cut = lows.size() / 100;
  std::sort(lows.begin(), lows.end());
  std::sort(highs.begin(), highs.end());
  const double a = channel.physical(lows[cut]);
  const double b = channel.physical(highs[highs.size() - 1 - cut]);
  // A negative scale turns the order round.
  return {std::min(a, b), std::max(a, b)};
}

} // namespace afterbeat
