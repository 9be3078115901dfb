/// The minute and the cycle table.
#pragma once

#include "core/measures/compression_quality.h"

namespace afterbeat {

/// Epochs of 60 s from the window's begin [T1], [T2].
[[nodiscard]] std::vector<MinuteRow> minuteTable(const Record& record, const Figures& figures,
                                                 const CompressionQuality& quality);

/// From analysis to analysis [T3].
[[nodiscard]] std::vector<CycleRow> cycleTable(const Record& record, const Figures& figures,
                                               const CompressionQuality& quality);

} // namespace afterbeat
