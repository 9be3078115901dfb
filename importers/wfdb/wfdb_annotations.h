/// Annotation files in MIT format, and what their rhythm marks say about the record.
///
/// Source: WFDB Applications Guide, annot(5) (PhysioNet); the numbers of the codes are those of
/// the WFDB library's ecgcodes.h (from memory).
#pragma once

#include "core/record/entry.h"
#include "core/record/problem.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Codes this program understands; all others are beats and waves.
enum class AnnotationCode : std::uint8_t {
  signalQuality = 14,
  comment = 22,
  rhythmChange = 28,
  fibrillationBegins = 32,
  fibrillationEnds = 33,
};

struct WfdbAnnotation {
  /// Sample intervals from the beginning of the record.
  std::int64_t sample = 0;
  int code = 0;
  int subtype = 0;
  int channel = 0;
  int num = 0;
  /// The text attached, without the NULs at its end.
  std::string text;
};

struct WfdbAnnotations {
  std::vector<WfdbAnnotation> all;
  /// Time steps per second where the file states its own; 0: the record's sampling frequency.
  double frequency = 0;
  /// False: the file ends in the middle of an annotation, or without an end mark.
  bool complete = true;
};

/// Reads as many annotations as the bytes hold.
[[nodiscard]] WfdbAnnotations parseAnnotations(std::string_view bytes);

/// What a rhythm label such as `VFIB` means here. VT is `organised`: neither its rate nor the
/// pulse is stated, so whether it is to be shocked is not known. An unknown label is `unclear`.
[[nodiscard]] RhythmKind rhythmOfLabel(std::string_view label);

/// Rhythm stretches and remarks of a record that ends at `recordEnd` and has `frequency` time
/// steps a second; what was left out is added to `problems`. Each rhythm mark holds until the next
/// one; fibrillation between [ and ] ends at the ], or without it at the record's end. A [ less
/// than a second after a mark that says fibrillation or flutter gives its begin exactly.
[[nodiscard]] std::vector<Entry> entriesFrom(const WfdbAnnotations& annotations, double frequency,
                                             Time recordEnd, std::vector<Problem>& problems);

} // namespace afterbeat
