/// The strip of rhythms in the lane over the waves: a shape of its own for each, and its word.
#pragma once

#include "app/window/look/look.h"
#include "app/window/signals/rhythms.h"

#include <QRect>

class QPainter;

namespace afterbeat::window {

/// Where a line of the strip is painted, and what time it spans from its left edge to its right.
struct StripFrame {
  QRect line;
  Interval shown;

  [[nodiscard]] double x(Time t) const {
    return line.left() + line.width() * (seconds(t - shown.begin) / seconds(shown.length()));
  }
};

/// Paints the stretches in view: shockable as a zigzag, organised as even ticks, asystole as a flat
/// line, unclear as dots, each with its word where there is room. What was recorded stands on a
/// ground with a frame; hints stand free and say "hint".
void paintRhythms(QPainter& painter, const RhythmLine& rhythms, const StripFrame& frame,
                  const Look& look);

/// The shape alone, from `left` to `right` around the middle of a line this high.
void paintRhythmShape(QPainter& painter, RhythmKind kind, double left, double right,
                      const QRectF& line, const QColor& color);

} // namespace afterbeat::window
