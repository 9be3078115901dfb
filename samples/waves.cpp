#include "samples/waves.h"

namespace afterbeat::samples {

void addWaves(Story& story, double from, double to, const WaveRates& rates,
              const body::Circumstances& how, const std::vector<body::Rescuer>& rescuers) {
  const body::Body body =
      body::bodyOf(story.truth, from, to, how, rescuers, story.dice.next() >> 16U);
  auto& channels = story.record.channels;
  if (rates.ecg > 0) {
    channels.push_back(body::ecg(body, {rates.ecg, 0.001, 0}));
  }
  if (rates.impedance > 0) {
    channels.push_back(body::impedance(body, {rates.impedance, 0.005, 0}));
  }
  if (rates.depth > 0) {
    channels.push_back(body::depth(body, {rates.depth, 0.01, 0}));
  }
  if (rates.acceleration > 0) {
    channels.push_back(body::acceleration(body, {rates.acceleration, 0.005, 0}));
  }
}

} // namespace afterbeat::samples
