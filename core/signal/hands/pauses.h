/// Pauses that noise has bridged.
#pragma once

#include "core/signal/hands/pulses.h"

#include <span>
#include <vector>

namespace afterbeat {

/// Takes from a series what is noise in a pause rather than presses, and parts it there.
///
/// Two states, pressed and paused, one after the other at the least cost (Viterbi, IEEE Trans Inf
/// Theory 1967;13:260-269). What a pulse says for either follows from how much of a typical press
/// of its surroundings is in it (a matched filter), from how much the pulses around differ from
/// that press (which tells the noise, and thereby what noise alone would look like), and from how
/// well it keeps step. Typical is the mean of those of the 32 around that have more of it than
/// the others, so that a pause among them does not blur it.
///
/// Series come back in time order; `shape` is the signal whose shapes are compared.
[[nodiscard]] std::vector<Series> withoutPauses(const Series& series, std::span<const Pulse> pulses,
                                                std::span<const double> shape, double rateHz);

} // namespace afterbeat
