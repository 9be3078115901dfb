/// Everything that happened in a record, as one list in time order.
#pragma once

#include "core/measures/figures.h"

#include <QString>

#include <vector>

namespace afterbeat::window {

/// Who an item of the list comes from.
enum class Origin : std::uint8_t {
  device,
  observer,
  derived,  ///< worked out from waves by a program
  computed, ///< a pause: worked out from the figures' rules
  reading,  ///< a problem found while reading the file
};

/// One item of the list.
struct Happening {
  Interval stretch;
  Origin origin = Origin::device;
  QString what;
  /// What a reader would type to find it, besides `what`: its kind, and the format's own word.
  QString kind;
};

/// "device", "observer", "derived from waves", "worked out", "reading the file".
[[nodiscard]] QString originWords(Origin origin);

/// All entries that have a time, of every type; single compressions with no longer a gap than the
/// pause threshold are one item. Then the pauses, and the problems whose time is known. Sorted by
/// begin.
[[nodiscard]] std::vector<Happening> happenings(const Record& record, const Figures& figures,
                                                const std::vector<Problem>& problems);

} // namespace afterbeat::window
