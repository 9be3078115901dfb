/// Impedance as it would be without chest compressions.
#pragma once

#include "core/signal/hands/pieces.h"

#include <span>
#include <vector>

namespace afterbeat {

/// The piece's values without what the compressions (in time order) add to them: around each, the
/// mean of the ten before and after it, stretched to the steps to its neighbours, scaled to fit,
/// and measured from the straight line between the releases, so that what remains goes on from one
/// release to the next as the signal of a chest nobody presses. Template subtraction of this kind:
/// Aramendi et al., Resuscitation 2015;95:53-59 use an adaptive filter to the same end [from
/// memory].
[[nodiscard]] std::vector<double> withoutPresses(const Piece& piece,
                                                 std::span<const Time> compressions);

} // namespace afterbeat
