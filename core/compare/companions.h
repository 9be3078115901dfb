/// What must stand beside a measure, and published values to hold it against.
#pragma once

#include "core/compare/season.h"

namespace afterbeat {

/// Measures that may not rank or compare records alone, with those that must stand beside them: the
/// compression fraction and the hands-off share, beside which length and number of shocks stand
/// (Christenson et al., Circulation 2009;120:1241-1247, and Cheskes et al. 2017 point opposite
/// ways). Empty for all others.
[[nodiscard]] std::vector<MeasureId> neverAlone(MeasureId id);

/// Another measure that must stand beside: median of the records that have it.
struct Beside {
  MeasureId measure = MeasureId::arrestTime;
  std::size_t records = 0;
  std::optional<double> median;
};

/// Those that must stand beside `measure`, of these records.
[[nodiscard]] std::vector<Beside> besideOf(MeasureId measure, const Season& season,
                                           const Chosen& records);

/// Median and quartiles of a published group of rescues; what others measured, not a target.
struct ReferenceBand {
  double low = 0, median = 0, high = 0;
  std::string_view source;
  SourceMark mark = SourceMark::read;
};

/// For rescues alone; null where none is known.
[[nodiscard]] const ReferenceBand* referenceBand(MeasureId id);

} // namespace afterbeat
