/// The six figures at the head of a record, in words.
#pragma once

#include "app/papers/words.h"
#include "core/measures/figures.h"

#include <QString>

#include <vector>

namespace afterbeat::papers {

/// A figure for the head of a record. All texts are in the reader's language.
struct Headline {
  MeasureId id = MeasureId::timeOn;
  /// "Hands off".
  QString title;
  /// "33 %", or "not recorded".
  QString value;
  /// A few words beside it: "2 min 52 s of 8 min 40 s".
  QString note;
  /// "target at most 20 %"; empty where no target applies.
  QString target;
  /// Where the target comes from, or the definition where there is no target.
  QString source;
  /// Everything as one sentence.
  QString sentence;
  /// `value` is a figure.
  bool recorded = false;
  /// Beyond the target: to be shown by weight and word, not by colour alone.
  bool beyondTarget = false;
};

/// Time on, shocks, hands-off, first shock, rate in range, longest pause: always these six, in this
/// order.
[[nodiscard]] std::vector<Headline> headlines(const Record& record, const Figures& figures,
                                              const Words& words);

} // namespace afterbeat::papers
