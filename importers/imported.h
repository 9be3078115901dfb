/// What every importer returns.
#pragma once

#include "core/bytes/byte_source.h"
#include "core/record/problem.h"
#include "core/record/record.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat {

/// A record made from something that is no event log, with what was noticed on the way.
struct Imported {
  Record record;
  std::vector<Problem> problems;
  /// The source does not say whether it was a rescue, a drill or a test; `kind` is only assumed.
  bool kindAssumed = false;
  /// The clock reading at t = 0 since midnight, where the source gives a time of day and no date.
  std::optional<Duration> timeOfDay;
};

/// Why nothing could be imported: one sentence for a person who is not a programmer.
struct ImportError {
  std::string sentence;
};

/// A problem that is one ready sentence.
[[nodiscard]] inline Problem importNote(int line, Severity severity, std::string text) {
  return {line, severity, ProblemKind::importNote, {std::move(text)}};
}

} // namespace afterbeat
