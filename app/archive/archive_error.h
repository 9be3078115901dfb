/// How the archive fails.
#pragma once

#include <stdexcept>
#include <string>

#include <tl/expected.hpp>

namespace afterbeat::archive {

/// A sentence for a person: what happened, and what to do.
struct ArchiveError {
  std::string sentence;
};

template <typename T>
using Expected = tl::expected<T, ArchiveError>;

/// Inside this room a failing statement is thrown, so that a transaction ends wherever it happens;
/// the functions that others call turn it into an `ArchiveError`. The one exception is a column of
/// a season (`FetchColumn`), which has no other way to fail: it throws this.
struct ArchiveFailure : std::runtime_error {
  using std::runtime_error::runtime_error;
};

} // namespace afterbeat::archive
