/// Charts made from what `core/compare` found: each with its sentences, its key and its marks.
#pragma once

#include "app/papers/charts/chart.h"
#include "core/compare/over_time.h"
#include "core/compare/spread.h"
#include "core/compare/stages.h"

namespace afterbeat::papers {

/// "DRILL", "SYNTHETIC", "TEST" as they hold for any of the records.
[[nodiscard]] QStringList seasonMarks(const Season& season, const Chosen& chosen,
                                      const Words& words);

/// What a record is called: its file, or else its id, or else its day.
[[nodiscard]] QString recordName(const RecordFacts& record, const Words& words);

/// A site's or team's name; "not recorded" where it is empty.
[[nodiscard]] QString groupName(const SpreadGroup& group, GroupBy by, const Words& words);

/// Lanes of points by site, team or quarter, in the order of names or time.
[[nodiscard]] Chart spreadChart(const Season& season, const Spread& spread, const Words& words);

/// Run and control charts.
[[nodiscard]] Chart overTimeChart(const Season& season, const OverTime& overTime,
                                  const Words& words);

/// A lane for each stage: every record a point, the middle and the middle half of the records.
[[nodiscard]] Chart stageChart(const Season& season, const Stages& stages, const Words& words);

/// A bar for each of the latest records, at most `most`; the sentences say how many are left out.
[[nodiscard]] Chart stageBarsChart(const Season& season, const Stages& stages, const Words& words,
                                   std::size_t most = 30);

} // namespace afterbeat::papers
