/// What every importer returns.
#pragma once

#include "core/bytes/byte_source.h"
#include "core/record/phrase.h"
#include "core/record/problem.h"
#include "core/record/record.h"

#include <optional>
#include <string>
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

/// Why nothing could be imported, for a person who is not a programmer.
struct ImportError {
  /// One sentence each, in order.
  std::vector<Phrase> said;

  /// All of it in English.
  [[nodiscard]] std::string sentence() const {
    std::string all;
    for (const Phrase& one : said) {
      all += (all.empty() ? "" : " ") + afterbeat::sentence(one);
    }
    return all;
  }
};

/// An error of one sentence; `values` stand in its places.
template <typename... Values>
[[nodiscard]] ImportError importError(EnglishText said, const Values&... values) {
  return {{phrase(said, values...)}};
}

/// A problem that is one sentence of an importer; `values` stand in its places.
template <typename... Values>
[[nodiscard]] Problem importNote(int line, Severity severity, EnglishText said,
                                 const Values&... values) {
  return {line, severity, ProblemKind::importNote, phrase(said, values...).parts};
}

} // namespace afterbeat
