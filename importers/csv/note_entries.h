/// Notes in time order as entries of a record.
#pragma once

#include "core/record/entry.h"
#include "core/record/problem.h"

#include <string>
#include <vector>

namespace afterbeat {

/// One line of notes with its moment.
struct TimedNote {
  Time t{};
  /// Of the file, counted from 1.
  int line = 0;
  std::string what, value, remark;
};

/// Makes entries (source observer) of notes sorted by time. Beginnings and ends become stretches:
/// compressions from a begin to the next end, rhythms until the next one, an analysis from its
/// begin to its end or to what it advised (alone, it has no length). A stretch that is never ended
/// goes to the last note. What is not understood becomes a remark, so that nothing is lost; each
/// such line, and everything taken for granted, is added to `problems`.
[[nodiscard]] std::vector<Entry> entriesFromNotes(const std::vector<TimedNote>& notes,
                                                  std::vector<Problem>& problems);

} // namespace afterbeat
