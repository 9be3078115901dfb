/// How the archive fails.
#pragma once

#include "core/record/phrase.h"

#include <stdexcept>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat::archive {

/// For a person: what happened, and what to do.
struct ArchiveError {
  ArchiveError() = default;
  /// A sentence each, in order.
  explicit ArchiveError(std::vector<Phrase> phrases);
  template <typename... Values>
  explicit ArchiveError(EnglishText text, const Values&... values)
      : ArchiveError(std::vector<Phrase>{phrase(text, values...)}) {}

  /// For the edge, where they are translated (context "Importers").
  std::vector<Phrase> said;
  /// All of it in English.
  std::string sentence;
};

template <typename T>
using Expected = tl::expected<T, ArchiveError>;

/// Inside this room a failing statement is thrown, so that a transaction ends wherever it happens;
/// the functions that others call turn it into an `ArchiveError`. The one exception is a column of
/// a season (`FetchColumn`), which has no other way to fail: it throws this.
struct ArchiveFailure : std::runtime_error {
  explicit ArchiveFailure(ArchiveError failed)
      : std::runtime_error(failed.sentence), error(std::move(failed)) {}
  template <typename... Values>
  explicit ArchiveFailure(EnglishText text, const Values&... values)
      : ArchiveFailure(ArchiveError(text, values...)) {}

  ArchiveError error;
};

} // namespace afterbeat::archive
