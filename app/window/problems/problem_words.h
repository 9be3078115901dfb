/// Problems of a file in the window's language: what was found, what it means, what was done.
#pragma once

#include "core/record/problem.h"
#include "core/record/record.h"

#include <QString>

#include <map>
#include <span>

namespace afterbeat::window {

/// One sentence for one problem.
[[nodiscard]] QString problemWords(const Problem& problem);

/// What problems of a kind have in common.
struct ProblemKindWords {
  /// "Lines that could not be read": a heading over many of them.
  QString heading;
  /// What it means for the record, and what was done about it. One or two sentences.
  QString meaning;
};
[[nodiscard]] ProblemKindWords kindWords(ProblemKind kind);

/// The times of the lines that problems stand in, as far as these hold an entry with a time. Of
/// entries of one line the first counts.
[[nodiscard]] std::map<int, Time> timesOfProblems(const Record& record,
                                                  std::span<const Problem> problems);

} // namespace afterbeat::window
