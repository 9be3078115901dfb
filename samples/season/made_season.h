/// A season in memory, from a plan.
#pragma once

#include "samples/season/plan.h"

#include <array>
#include <functional>

namespace afterbeat::samples {

/// Facts and figures of every record of a plan. Figures come from the same code as those of any
/// record, made from each record's outline (compressions as stretches); what needs single
/// compressions (their number, rate, depth) is what the plan's hands do.
class MadeSeason {
public:
  /// `measures`: the columns that are kept, for seasons of millions; empty: all.
  explicit MadeSeason(const SeasonPlan& plan, const std::vector<MeasureId>& measures = {});

  /// Refers to this object: valid as long as that stays where it is.
  [[nodiscard]] Season season() const;
  [[nodiscard]] const std::vector<RecordFacts>& records() const { return records_; }

private:
  std::vector<RecordFacts> records_;
  std::array<FigureColumn, static_cast<std::size_t>(MeasureId::count_)> columns_;
};

} // namespace afterbeat::samples
