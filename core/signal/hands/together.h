/// What acceleration and impedance say about compressions together.
#pragma once

#include "core/record/channel.h"
#include "core/signal/findings.h"

namespace afterbeat {

/// Settles where two channels that are both disturbed contradict each other, and leaves the result
/// in `acceleration`.
///
/// A press moves the chest and the impedance. Where one channel tells presses and the other lies
/// much stiller than presses of that size make it elsewhere, nobody presses: what a swaying vehicle
/// or an arm on the chest does to one alone is taken out, and what impedance alone tells is not
/// taken in. Where the other is not still, each is believed in what it tells: presses of impedance
/// that acceleration has lost come in, without depth. How large presses make a channel elsewhere is
/// known from those that both tell; without twenty of them nothing is changed.
void settleTogether(const Channel& accelerationChannel, Findings& acceleration,
                    const Channel& impedanceChannel, const Findings& impedance);

} // namespace afterbeat
