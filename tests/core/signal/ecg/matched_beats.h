/// How beats that were found agree with beats that are true.
#pragma once

#include "core/signal/ecg/beats.h"

#include <vector>

namespace afterbeat {

/// How many of `truth` (seconds, in order) have one of `found` within 75 ms, one for one.
inline std::size_t matchedBeats(const std::vector<double>& truth, const std::vector<Beat>& found) {
  std::size_t count = 0, i = 0;
  for (const double beat : truth) {
    while (i < found.size() && seconds(found[i].at) < beat - 0.075) {
      ++i;
    }
    if (i < found.size() && seconds(found[i].at) <= beat + 0.075) {
      ++count;
      ++i;
    }
  }
  return count;
}

} // namespace afterbeat
