/// A slow, plain second computation of the figures, to compare the real one with.
///
/// Written from the definitions alone. It shares no code with core/measures: time is booleans on a
/// grid (reference_grid.h), everything else loops over lists. Times must be whole milliseconds.
/// Not filled: `working`, `coverage`, and of `notices` only the kinds and arguments are meant to
/// be compared.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat::reference {

[[nodiscard]] Figures computeFigures(const Record& record, const FigureSettings& settings);

} // namespace afterbeat::reference
