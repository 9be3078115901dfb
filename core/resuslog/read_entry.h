/// Turns one object of a log into an entry, and says what it could not use.
#pragma once

#include "core/record/entry.h"
#include "core/record/problem.h"
#include "core/record/record.h"
#include "core/resuslog/json_line.h"

#include <string>
#include <vector>

namespace afterbeat {

/// An entry as one line gives it.
struct EntryRead {
  Entry entry;
  /// The line's problems.
  std::vector<Problem> problems;
  /// `open: true` and no usable `end`: a later line may still replace it.
  bool open = false;
};

/// A value as spelled, cut to a length fit for a problem's argument.
[[nodiscard]] std::string spelledBriefly(std::string_view raw);

/// The entry's usual parts: time, end, source, part, quality, note and the payload of its type. A
/// `samples` line comes back as `LostSamples` with the channel's name and without `otherKeys` (they
/// would copy the data); the caller decides whether the block is lost.
[[nodiscard]] EntryRead readEntry(FlatObject& object, const Header& header, int line);

} // namespace afterbeat
