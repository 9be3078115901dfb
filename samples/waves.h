/// Waveforms for an invented rescue: plausible at a glance, no more. Fibrillation is a wandering
/// tone, beats are hills put side by side, hands on the chest shake the traces; a later version
/// makes them physiological.
#pragma once

#include "samples/story.h"

namespace afterbeat::samples {

/// Which channels, and how many samples a second; 0: none.
struct WaveRates {
  double ecg = 250, impedance = 125, depth = 100, acceleration = 100;
};

/// Adds the channels to the story's record, one block each from `from` to `to` seconds. Call it
/// when the story is finished.
void addWaves(Story& story, double from, double to, const WaveRates& rates);

} // namespace afterbeat::samples
