/// Why a figure has no value, and what it leaves out, in sentences.
#pragma once

#include "core/measures/figures.h"

#include <QString>

namespace afterbeat::window {

/// Why there is no value: "no breath was recorded". Empty where there is one.
[[nodiscard]] QString reasonWords(MeasureId id, const Record& record, const Figures& figures);

/// What a value rests on and leaves out: the pause threshold, what is known for a part only, what
/// was excluded. Empty where there is nothing to say.
[[nodiscard]] QString leftOutWords(MeasureId id, const Figures& figures);

} // namespace afterbeat::window
