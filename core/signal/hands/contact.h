/// Whether the electrodes touch the patient, as impedance tells it.
#pragma once

#include "core/signal/hands/pieces.h"

namespace afterbeat {

/// As `readPieces`, without the stretches in which the electrodes are off (above 300 Ohm, or next
/// to nothing on a channel that otherwise tells the whole impedance) or touch badly (jumps of many
/// Ohm, again and again). Limits: common practice, no source; adults measure 25 to 180 Ohm (Kerber
/// et al., Circulation 1984;70:303-308 [from memory]).
[[nodiscard]] Pieces readImpedance(const Channel& channel);

} // namespace afterbeat
