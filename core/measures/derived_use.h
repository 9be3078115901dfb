/// Which figures rest on entries that a program derived from waveforms, and how surely.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat {

/// Derived entries among those that a kind of figure was made from.
struct DerivedShare {
  std::size_t derived = 0, of = 0;
  /// Mean of their `quality`; empty: none is derived, or none says.
  std::optional<double> quality;
  [[nodiscard]] bool any() const { return derived > 0; }
};

struct DerivedUse {
  /// Kept compressions; breaths inside arrest intervals.
  DerivedShare compressions, ventilations;
  [[nodiscard]] bool any() const { return compressions.any() || ventilations.any(); }
};

/// What of the record the figures took that was derived.
[[nodiscard]] DerivedUse derivedUse(const Record& record, const Figures& figures);

/// Whether a measure is made from compressions or stretches of them.
[[nodiscard]] bool restsOnHands(MeasureId id);

/// Whether a measure that has a value rests on derived entries, wholly or in part.
[[nodiscard]] bool restsOnDerived(MeasureId id, const DerivedUse& use);

} // namespace afterbeat
