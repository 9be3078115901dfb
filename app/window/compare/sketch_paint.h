/// A record's rows in one line: small enough for a table.
#pragma once

#include "app/archive/sketch.h"
#include "app/window/look/look.h"

class QPainter;
class QRectF;

namespace afterbeat::window {

/// So long a window fills the line; a longer one is pressed together.
inline constexpr Duration kSketchLength{15LL * 60 * 1'000'000};

/// Hands on filled, hands off open, shocks as poles, circulation as a line, as in the rows.
void paintSketch(QPainter& painter, const QRectF& area, const archive::RowsSketch& sketch,
                 const Look& look);

/// The same in words.
[[nodiscard]] QString sketchWords(const archive::RowsSketch& sketch);

} // namespace afterbeat::window
