/// What the ECG says around a shock, in words: a reviewer's aid, not a diagnosis.
#pragma once

#include "core/signal/ecg/shock_rhythm.h"

#include <QString>

#include <vector>

namespace afterbeat::window {

/// "coarse fibrillation", or "not told: chest compressions".
[[nodiscard]] QString beforeShockWords(const ShockRhythm& shock);
/// "no fibrillation within 5 s", "fibrillation went on", or "not known: …".
[[nodiscard]] QString afterShockWords(const ShockRhythm& shock);
/// "organised 84", with the return of fibrillation; "nothing clear" where so.
[[nodiscard]] QString followedWords(const ShockRhythm& shock);
/// All of it, line by line, with the figures of the fibrillation and the caution.
[[nodiscard]] QString shockTip(const ShockRhythm& shock);

/// The judgement of the shock at a moment; null: there is none.
[[nodiscard]] const ShockRhythm* judgedAt(const std::vector<ShockRhythm>& shocks, Time t);

} // namespace afterbeat::window
