/// Figures that rest on entries read off the signals say so, and how surely.
#pragma once

#include "app/window/session/load.h"

#include <QString>

namespace afterbeat::window {

/// "from the signals, 98 % judged" of a figure that has a value; "partly from the signals" where
/// only some of its entries are. Empty: nothing was derived for it.
[[nodiscard]] QString originWords(MeasureId id, const Figures& figures, const FigureOrigin& origin);

/// The same as sentences: how many entries, from which channels, of what quality, and how much of
/// the recording could be judged.
[[nodiscard]] QString originSentences(MeasureId id, const Figures& figures,
                                      const FigureOrigin& origin);

} // namespace afterbeat::window
