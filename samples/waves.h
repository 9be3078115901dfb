/// Waveforms for an invented rescue, made from what the story says by the simulator in `body`.
#pragma once

#include "samples/body/body.h"
#include "samples/story.h"

namespace afterbeat::samples {

/// Which channels, and how many samples a second; 0: none.
struct WaveRates {
  double ecg = 250, impedance = 125, depth = 100, acceleration = 100;
};

/// Adds the channels to the story's record, one block each from `from` to `to` seconds. Call it
/// when the story is finished.
void addWaves(Story& story, double from, double to, const WaveRates& rates,
              const body::Circumstances& how = {}, const std::vector<body::Rescuer>& rescuers = {});

} // namespace afterbeat::samples
