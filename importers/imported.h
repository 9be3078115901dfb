/// What every importer returns.
#pragma once

#include "core/bytes/byte_source.h"
#include "core/record/problem.h"
#include "core/record/record.h"

#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat {

/// A record made from something that is no event log, with what was noticed on the way.
struct Imported {
  Record record;
  std::vector<Problem> problems;
};

/// Why nothing could be imported: one sentence for a person who is not a programmer.
struct ImportError {
  std::string sentence;
};

} // namespace afterbeat
