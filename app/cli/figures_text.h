/// Figures as text for a person at a terminal.
#pragma once

#include "app/cli/derived.h"

#include <string>

namespace afterbeat::cli {

/// A page of text: who and when, every measure with unit and target, pauses, shocks, minutes, and
/// what to keep in mind.
[[nodiscard]] std::string figuresText(const OpenedAndDerived& read, const Figures& figures);

/// "2 min 52 s", "12.4 s", "-3.0 s"; tenths below a minute.
[[nodiscard]] std::string lengthText(double s);

} // namespace afterbeat::cli
