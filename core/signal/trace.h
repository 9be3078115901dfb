/// A waveform reduced to what a given number of pixels can show.
#pragma once

#include "core/measures/interval.h"
#include "core/record/channel.h"
#include "core/signal/min_max_pyramid.h"

#include <optional>
#include <vector>

namespace afterbeat {

/// A point of a line to be drawn; a NaN value lifts the pen.
struct TracePoint {
  /// Seconds on the record's axis.
  double seconds = 0;
  /// In the channel's unit.
  double value = 0;
};

/// The line of a channel over `shown`, drawn `pixels` wide: every sample where there is room for
/// it, else the smallest and the largest of each bin of samples, two points a pixel at most. Bins
/// are multiples of one whole number of samples counted from the channel's first, so that moving
/// the view shows the same bins again. Missing samples and gaps between blocks lift the pen. One
/// sample beyond each edge is included so that the line runs on. `pixels` > 0, `shown` not empty.
[[nodiscard]] std::vector<TracePoint> traceOf(const Channel& channel, const MinMaxPyramid& pyramid,
                                              const Interval& shown, int pixels);

/// Samples that share a bin when `shown` is drawn `pixels` wide; 1: every sample is drawn.
[[nodiscard]] std::size_t samplesPerBin(const Channel& channel, Duration shown, int pixels);

/// The value of a channel at any moment, in its unit: between two samples on the straight line that
/// joins them. Nothing outside the blocks, beyond a block's last sample, and beside a missing
/// sample.
[[nodiscard]] std::optional<double> valueAt(const Channel& channel, Time t);

/// Limits that hold all but the most extreme hundredth of a channel's course on each side, in the
/// channel's unit: a scale that a defibrillation artefact does not squash. {0, 0} without samples.
struct ValueRange {
  double low = 0, high = 0;
};
[[nodiscard]] ValueRange usualRange(const Channel& channel, const MinMaxPyramid& pyramid);

} // namespace afterbeat
