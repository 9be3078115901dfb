/// The invented world in numbers: a lake town, its ferry terminal and its boathouses.
#pragma once

#include "samples/story.h"

#include <string>
#include <vector>

namespace afterbeat::samples {

/// A made-up record with its truth.
struct Sample {
  /// File name without ending.
  std::string name;
  Story story;
  /// The file ends within the line of this compression (number in the truth), as if the power was
  /// lost while it was written.
  std::optional<std::size_t> cutAtCompression;
};

/// 22 minutes at the ferry terminal: waveforms, four shocks, circulation returned.
[[nodiscard]] Sample ferryTerminal(std::uint64_t seed);
/// A public device that keeps events only, and no time of day.
[[nodiscard]] Sample boathouse(std::uint64_t seed);
/// A child, no shock.
[[nodiscard]] Sample bathingJetty(std::uint64_t seed);
/// Drill `number` (1 to 4) of one evening; each is better than the one before.
[[nodiscard]] Sample drill(std::uint64_t seed, int number);
/// A record that stops in the middle of a line.
[[nodiscard]] Sample lakeSteamer(std::uint64_t seed);
/// Three hours of four channels: 10.8 million samples at 250 Hz, 21.6 million at 500 Hz.
[[nodiscard]] Sample threeHours(std::uint64_t seed, double rateHz);
/// 20 000 compressions and no waveform.
[[nodiscard]] Sample manyCompressions(std::uint64_t seed);

/// Those that are small enough to be kept beside the program.
[[nodiscard]] std::vector<Sample> smallSamples(std::uint64_t seed);
[[nodiscard]] std::vector<Sample> longSamples(std::uint64_t seed);

/// The bytes of NAME.resuslog; empty if they cannot be made.
[[nodiscard]] std::string logBytes(const Sample& sample);
/// The bytes of NAME.truth.json.
[[nodiscard]] std::string truthBytes(const Sample& sample);

} // namespace afterbeat::samples
