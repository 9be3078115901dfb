/// The first moment of each event that times are measured from or to.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat {

/// Empty: the record has no such event.
struct FirstEvents {
  std::optional<Time> powerOn, electrodes, analysis, handsOn, shock, collapse, call, deviceArrived,
      circulationReturned;
};

/// Electrodes: attached; shock: delivered; hands on: of `figures`; milestones by their words.
[[nodiscard]] FirstEvents firstEvents(const Record& record, const Figures& figures);

} // namespace afterbeat
