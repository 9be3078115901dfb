/// Sentences for the findings of a debrief.
#pragma once

#include "app/papers/debrief.h"

namespace afterbeat::papers::debrief {

/// One sentence in plain words that blames nobody.
[[nodiscard]] QString sentenceFor(const Finding& finding, const Figures& figures, const Words& say);
/// "38 s", "14 %", "112 a minute"; never rounded onto the wrong side of its target.
[[nodiscard]] QString figureFor(const Finding& finding, const Words& say);
/// "target at most 10 s".
[[nodiscard]] QString targetFor(const Finding& finding, const Words& say);
/// A question that opens a conversation; `when` is the moment in words.
[[nodiscard]] QString questionFor(const Finding& finding, const QString& when, const Words& say);
/// What the record holds no evidence for, as parts of a sentence.
[[nodiscard]] QStringList notTold(const Record& record, const Figures& figures, const Words& say);

} // namespace afterbeat::papers::debrief
