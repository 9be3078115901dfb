/// The header of a WFDB record: which signals there are, where, and what their numbers mean.
///
/// Source: WFDB Applications Guide, header(5) (PhysioNet).
#pragma once

#include "importers/imported.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// One signal specification line. Defaults are those of header(5).
struct WfdbSignal {
  /// Of the header file, counted from 1.
  int line = 0;
  std::string file;
  int format = 0;
  int samplesPerFrame = 1;
  /// Samples of this signal in the file that lie before sample 0.
  std::uint64_t skew = 0;
  /// Bytes in the file before the first sample.
  std::uint64_t byteOffset = 0;
  /// ADC units per physical unit.
  double gain = 200;
  /// False: the gain was zero or missing, and 200 is assumed.
  bool calibrated = false;
  /// The raw value of 0 physical units.
  double baseline = 0;
  std::string units = "mV";
  int resolution = 0;
  int adcZero = 0;
  std::optional<int> initialValue;
  /// 16-bit sum of all samples, as a signed number.
  std::optional<int> checksum;
  std::string description;
  /// False: the line could not be understood; the file's layout is then unknown.
  bool valid = true;
};

/// What a header file says.
struct WfdbHeader {
  std::string name;
  /// Signals the record line speaks of; `signals` may hold fewer.
  int statedSignals = 0;
  /// Samples per second and signal.
  double frequency = 250;
  double counterFrequency = 250;
  double baseCounter = 0;
  /// Samples per signal; 0: not stated.
  std::uint64_t samples = 0;
  /// Time of day at sample 0, since midnight.
  std::optional<Duration> baseTime;
  std::optional<std::chrono::year_month_day> baseDate;
  std::vector<WfdbSignal> signals;
  /// Lines that begin with `#`, without it.
  std::vector<std::string> comments;
};

/// Whether a line can be a record line of header(5): a name and a number of signals.
[[nodiscard]] bool looksLikeWfdbHeader(std::string_view text);

/// Reads a header. Lines that cannot be used are added to `problems`; without a usable record
/// line, or for a record in segments, there is an error.
[[nodiscard]] tl::expected<WfdbHeader, ImportError> parseWfdbHeader(std::string_view text,
                                                                    std::vector<Problem>& problems);

/// Text as UTF-8 without control characters: bytes that are no UTF-8 are taken as Latin-1.
[[nodiscard]] std::string cleanText(std::string_view bytes);

} // namespace afterbeat
