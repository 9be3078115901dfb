/// What was wrong with a file, for a person who is not a programmer.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

enum class Severity : unsigned char { info, warning, error };

/// Every kind of problem has one sentence, made at the edge so that it can be translated.
/// Comments name the arguments, in order; "why" is a short clause and what fills it, as in
/// `Phrase::parts`.
enum class ProblemKind : unsigned char {
  notClosed,          ///< no `end` line
  brokenLine,         ///< why: the line is lost
  repeatedLine,       ///< number of the earlier line: dropped
  endBeforeBegin,     ///< type
  outOfOrder,         ///< by how many seconds
  valueOutOfRange,    ///< key, written value
  wrongValue,         ///< key, written value: kept, treated as absent
  missingKey,         ///< type, key: the entry is incomplete
  deliveryUnknown,    ///< a shock without `delivered`
  neverClosedStretch, ///< type
  unknownChannel,     ///< channel
  badBlock,           ///< channel, why
  overlappingBlocks,  ///< channel, seconds
  gapInChannel,       ///< channel, seconds
  longBlock,          ///< channel, seconds
  channelNotDrawn,    ///< channel, encoding
  wrongChannel,       ///< channel id, why: a header channel that cannot be used
  checksumDiffers,    ///< (none)
  countDiffers,       ///< entries stated, entries found
  anotherRecord,      ///< (none): a second header or lines after `end`; read as a separate record
  missingHeaderKey,   ///< key
  wrongHeaderValue,   ///< key, written value
  madeUpHeader,       ///< (none)
  doubleDetection,    ///< how many compressions were dropped as detected twice
  categoryDiffers,    ///< record's category, device's setting
  importNote,         ///< a sentence of an importer, as in `Phrase::parts`
};

/// One problem, tied to a line of the file (the last line for what is missing at the end; 0 for
/// what has no line).
struct Problem {
  int line = 0;
  Severity severity = Severity::info;
  ProblemKind kind = ProblemKind::importNote;
  std::vector<std::string> args;
};

/// Where in the arguments a clause or sentence with what fills it begins; nothing for the kinds
/// whose arguments are plain values.
[[nodiscard]] std::optional<std::size_t> phraseBegin(ProblemKind kind);

/// "error", "warning" or "info".
[[nodiscard]] const char* severityName(Severity severity);

/// One English sentence a person who is not a programmer understands.
[[nodiscard]] std::string sentence(const Problem& problem);

} // namespace afterbeat
