/// Entries and faulty stretches as findings want them.
#pragma once

#include "core/signal/findings.h"
#include "core/signal/hands/pieces.h"

#include <vector>

namespace afterbeat {

/// Findings without entries: what of a channel was read, and what not. Takes the faults of `read`.
[[nodiscard]] Findings begunWith(Pieces& read);

/// A derived compression.
[[nodiscard]] Entry compressionEntry(Time t, double quality, entry::Compression what = {});

/// Sorts entries by time, and joins faulty stretches of one kind that touch.
void putInOrder(Findings& findings);

/// All faulty stretches together, whatever their kind, merged.
[[nodiscard]] std::vector<Interval> unusableStretches(const Findings& findings);

} // namespace afterbeat
