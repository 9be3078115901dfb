/// Unpacks the samples of a WFDB signal file.
///
/// Source: WFDB Applications Guide, signal(5) (PhysioNet), formats 16 and 212.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace afterbeat {

/// How samples lie in a file, where this program can read it.
enum class SampleForm : std::uint8_t {
  /// Format 16: two bytes, least significant first, two's complement; -32768 is "no value".
  plain16,
  /// Format 212: two 12-bit samples in three bytes, two's complement; -2048 is "no value".
  packed12,
};

/// How many whole samples `bytes` bytes hold.
[[nodiscard]] std::uint64_t samplesIn(SampleForm form, std::uint64_t bytes);

/// The first `count` samples, as numbers (missing ones as -32768 or -2048), dealt out to
/// `signals` signals in turn. `count` must not be more than the bytes hold.
[[nodiscard]] std::vector<std::vector<std::int16_t>>
unpackSamples(SampleForm form, std::string_view bytes, std::uint64_t count, std::size_t signals);

/// The 16-bit sum of samples that header(5) calls checksum, as a signed number.
[[nodiscard]] std::int16_t sampleChecksum(const std::vector<std::int16_t>& samples);

/// The number that means "no value" in a form.
[[nodiscard]] constexpr std::int16_t missingValue(SampleForm form) {
  return form == SampleForm::packed12 ? std::int16_t{-2048} : std::int16_t{-32768};
}

} // namespace afterbeat
