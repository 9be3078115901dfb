/// What a figure is held against: the target of the chosen guideline, where it comes from, and
/// whether the figure lies within it.
#pragma once

#include "app/papers/facts.h"
#include "core/measures/figures.h"

#include <QString>

#include <optional>

namespace afterbeat::window {

using papers::Verdict;

struct TargetShown {
  /// "target at most 20 %".
  QString words;
  Citation source;
  Verdict verdict = Verdict::none;
};

/// Nothing where the guideline has no target for the figure, or where it does not apply to this
/// record (breaths a minute without an advanced airway, depth without a known patient).
[[nodiscard]] std::optional<TargetShown> targetOf(MeasureId id, const Record& record,
                                                  const Figures& figures);

/// "within the target", "below the target", "beyond the target"; empty for none.
[[nodiscard]] QString verdictWords(Verdict verdict);

/// "European guidelines 2021: read in a secondary publication": the source and how sure we are.
[[nodiscard]] QString citationWords(const Citation& source);

/// The patient a depth target is looked up for: the record's, else the device's only setting.
[[nodiscard]] PatientCategory categoryForTargets(const Record& record);

} // namespace afterbeat::window
