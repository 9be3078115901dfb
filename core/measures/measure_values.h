/// The measures, group by group. Each function returns the measures it names, made from evidence,
/// window, pauses and shocks already in `figures`.
#pragma once

#include "core/measures/compression_quality.h"

namespace afterbeat {

/// A measure with a value.
[[nodiscard]] Measure recorded(MeasureId id, double value, std::vector<WorkingPart> working = {},
                               std::optional<double> numerator = {},
                               std::optional<double> denominator = {});
/// numerator / denominator, or not applicable where the denominator is 0.
[[nodiscard]] Measure ratio(MeasureId id, double numerator, double denominator,
                            std::vector<WorkingPart> working, double factor = 1);
[[nodiscard]] Measure notRecorded(MeasureId id);
[[nodiscard]] Measure notApplicable(MeasureId id);

/// Median: the middle one, or the mean of the middle two; `values` must not be empty.
[[nodiscard]] double median(std::vector<double> values);

/// arrest_time, hands_off_time, both fractions, adjusted_hands_off_time, longest_pause,
/// pauses_over_limit.
[[nodiscard]] std::vector<Measure> handsOffMeasures(const Record& record, const Figures& figures);

/// compressions, their rates, depth, release.
[[nodiscard]] std::vector<Measure> compressionMeasures(const Figures& figures,
                                                       const CompressionQuality& quality);

/// ventilations and ventilations per minute.
[[nodiscard]] std::vector<Measure> ventilationMeasures(const Record& record,
                                                       const Figures& figures);

/// Pauses around shocks, numbers of shocks and analyses, energy, advice to shock.
[[nodiscard]] std::vector<Measure> shockMeasures(const Record& record, const Figures& figures);

/// Times from one event to another.
[[nodiscard]] std::vector<Measure> betweenEvents(const Record& record, const Figures& figures);

/// circulation_time, longest_circulation, time_on.
[[nodiscard]] std::vector<Measure> circulationAndOnTime(const Record& record,
                                                        const Figures& figures);

} // namespace afterbeat
