/// One record's place among many: its facts and cells.
#pragma once

#include "core/compare/season.h"

namespace afterbeat {

/// What the record and its figures say; `number`, `file` and `version` stay as they are.
[[nodiscard]] RecordFacts factsOf(const Record& record, const Figures& figures);

/// The part of it that comes from the figures alone.
void addFigureFacts(const Figures& figures, RecordFacts& facts);

/// "2026-04-17"; "2026-04" where the day was taken away; empty without a day.
[[nodiscard]] std::string isoDay(const RecordFacts& record);

/// A figure as a cell of its column.
[[nodiscard]] FigureCell cellOf(const Measure& measure);

} // namespace afterbeat
