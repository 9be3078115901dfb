/// A small picture of a record's rows, in a few bytes: for a line in a table of many.
#pragma once

#include "core/measures/figures.h"

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat::archive {

/// All times from the window's begin. What is neither a pause nor circulation nor left out is hands
/// on, if `handsKnown`.
struct RowsSketch {
  /// 0: nothing began a window.
  Duration length{};
  /// False: nothing shows compressions, so pauses are not known either.
  bool handsKnown = false;
  std::vector<Interval> pauses, circulation, leftOut;
  /// Delivered ones.
  std::vector<Duration> shocks;
};

[[nodiscard]] RowsSketch sketchOf(const Figures& figures);

/// Rounded to tenths of a second.
[[nodiscard]] std::string encode(const RowsSketch& sketch);
/// Nothing where the bytes are not such a picture.
[[nodiscard]] std::optional<RowsSketch> decode(std::string_view bytes);

} // namespace afterbeat::archive
