/// The squares of ECG paper: 1 mm is 0.04 s and 0.1 mV, 5 mm are 0.2 s and 0.5 mV (25 mm/s and
/// 10 mm/mV, the usual setting of an electrocardiograph; common practice, no source).
#pragma once

#include "app/window/look/look.h"
#include "core/record/channel.h"

class QCPAxisRect;
class QCPPainter;
class QWidget;

namespace afterbeat::window {

inline constexpr double kSmallSquareSeconds = 0.04, kLargeSquareSeconds = 0.2;
inline constexpr double kSmallSquareMillivolts = 0.1, kLargeSquareMillivolts = 0.5;
inline constexpr double kPaperSpeed = 25; ///< mm/s
inline constexpr double kPaperGain = 10;  ///< mm/mV

/// An ECG in millivolts: what the squares are made for.
[[nodiscard]] bool isEcg(const Channel& channel);

/// Which squares can be told apart where one of 1 mm is this many pixels wide: those of 1 mm from 4
/// pixels on, those of 5 mm from 6 on.
struct Squares {
  bool small = false, large = false;
};
[[nodiscard]] Squares squaresFor(double smallSquarePixels);

/// Draws the squares over a track; across and upwards each as far as they can be told apart.
void drawPaperGrid(QCPPainter& painter, const QCPAxisRect& track, const Look& look);

/// Millimetres of this screen for a second and a millivolt of a track.
struct PaperScale {
  double mmPerSecond = 0, mmPerMillivolt = 0;
};
[[nodiscard]] PaperScale paperScale(const QCPAxisRect& track, const QWidget& screen);

/// Pixels of a millimetre on the screen a widget is on, as the screen reports its size; where the
/// report cannot be true, as the system's scale has it.
[[nodiscard]] double pixelsPerMillimetre(const QWidget& screen);

} // namespace afterbeat::window
