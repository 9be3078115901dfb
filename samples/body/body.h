/// A person under hands as the simulator knows it, and how well the device sits on them: all that
/// the made-up channels are made from.
#pragma once

#include "samples/body/chest.h"
#include "samples/body/unrest.h"
#include "samples/story.h"

#include <utility>
#include <vector>

namespace afterbeat::samples::body {

/// One breath given.
struct Breath {
  /// Where air begins to flow in, and how long it does, seconds.
  double s = 0, inflation = 1;
  /// A share of the usual volume.
  double size = 1;
  /// Seconds in which the lungs empty to a third.
  double emptying = 0.7;

  /// The moment the lungs are full.
  [[nodiscard]] double full() const { return s + inflation; }
};

/// How the signals are taken. The defaults are a quiet day.
struct Circumstances {
  /// Degrees between the sensor's axis and the vertical when the recording begins and when it ends
  /// (it changes somewhere between), and how far a full compression rocks it.
  double tiltFirst = 0, tiltLast = 0, rock = 0.5;
  /// m/s2 RMS of the vehicle's floor; 0: none.
  double vehicle = 0;
  /// m/s2: deviation of the sensor's wandering zero, and of its hiss.
  double sensorDrift = 0.05, sensorHiss = 0.06;
  /// m/s2 of pushes on the sensor now and then while nobody compresses; 0: none.
  double handling = 0;
  /// What the back sinks into, a share of the chest's depth.
  double mattress = 0;
  /// Chest impedance in Ohm: at rest, what 50 mm add to it (either sign), what a breath adds.
  double baseOhm = 82, chestOhm = -0.45, breathOhm = 0.9;
  /// How far (s) impedance lags behind the chest, and an echo of the compression: its share.
  double chestLag = 0.02, chestEcho = 0;
  /// Ohm that a beat which moves blood takes off it.
  double pulseOhm = 0;
  /// Ohm: deviation of the impedance's hiss and of its wandering; mV likewise of the ECG; mains
  /// hum.
  double ohmHiss = 0.012, ohmWander = 0.12, ecgHiss = 0.008, ecgWander = 0.03, mains = 0.004;
  /// Electrodes that are pulled: times a minute, and how much in Ohm and mV.
  double joltsPerMinute = 0, joltOhm = 0.6, joltMv = 0.3;
  /// Electrodes off, from and to (s), and what the device then writes: nothing, else the rail.
  std::vector<std::pair<double, double>> off;
  bool offIsMissing = false;
  /// mV that a compression of 50 mm puts on the ECG.
  double artefactMv = 0.7;
};

/// All of it. Times are seconds on the record's axis.
struct Body {
  double from = 0, to = 0;
  std::vector<Press> presses;
  std::vector<Breath> breaths;
  std::vector<TrueRhythm> rhythm;
  /// Delivered shocks.
  std::vector<double> shocks;
  Circumstances how;
  /// Every channel has dice of its own, made from this: leaving one out changes no other.
  std::uint64_t seed = 0;
};

/// A change of hands, and with it of how they press.
struct Rescuer {
  double from = 0;
  Stroke stroke = Stroke::even;
};

/// The body of which this is true. A compression without depth is 52 mm deep, one without leaning
/// leaves none. `rescuers` in time order; before the first one `even`.
[[nodiscard]] Body bodyOf(const Truth& truth, double from, double to, const Circumstances& how,
                          const std::vector<Rescuer>& rescuers, std::uint64_t seed);

/// How a channel is written.
struct Sampling {
  double rateHz = 100;
  /// Physical units of one step, and at raw 0.
  double scale = 0.005, offset = 0;
};

/// Out of the chest, m/s2, as the sensor feels it; what lies under the back adds to the motion.
[[nodiscard]] Channel acceleration(const Body& body, const Sampling& sampling);
/// mm, positive when pressed; the chest's own, without what lies under the back.
[[nodiscard]] Channel depth(const Body& body, const Sampling& sampling);
/// N, positive when pressed.
[[nodiscard]] Channel force(const Body& body, const Sampling& sampling);
/// Ohm between the pads.
[[nodiscard]] Channel impedance(const Body& body, const Sampling& sampling);
/// mV between the pads: heart, hands, shocks and noise; the rails are at 10 mV.
[[nodiscard]] Channel ecg(const Body& body, const Sampling& sampling);

/// What compressions alone put on the ECG, mV, one value a sample from `body.from` to `body.to`.
[[nodiscard]] std::vector<double> compressionArtefact(const Body& body, double rateHz);

/// Dice of their own for each use of a body.
[[nodiscard]] Dice diceFor(const Body& body, std::uint64_t use);

/// Moments `from` + i / rate of a body, and the channel they make: `value(s)` is called for each in
/// turn and gives a physical value; NaN: missing.
template <typename Value>
[[nodiscard]] Channel channelOf(const Body& body, const Sampling& sampling, const char* quantity,
                                const char* unit, const char* label, const Value& value) {
  Channel channel;
  channel.id = quantity;
  channel.quantity = quantity;
  channel.unit = unit;
  channel.rateHz = sampling.rateHz;
  channel.scale = sampling.scale;
  channel.offset = sampling.offset;
  channel.label = label;
  const auto count = static_cast<std::size_t>(std::floor((body.to - body.from) * sampling.rateHz));
  channel.samples.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double raw =
        (value(body.from + static_cast<double>(i) / sampling.rateHz) - sampling.offset) /
        sampling.scale;
    // A missing value fails both comparisons.
    channel.samples.push_back(raw > -32767 && raw < 32767
                                  ? static_cast<std::int16_t>(std::floor(raw + 0.5))
                              : raw >= 32767  ? std::int16_t{32767}
                              : raw <= -32767 ? std::int16_t{-32767}
                                              : kMissingSample);
  }
  channel.blocks.push_back({at(body.from), 0, count});
  return channel;
}

} // namespace afterbeat::samples::body
