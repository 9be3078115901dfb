/// Random scenes for measuring how well compressions and breaths are found: everything about a
/// scene is drawn from one number, and its truth is kept.
#pragma once

#include "core/measures/interval.h"
#include "samples/body/body.h"

#include <string>
#include <vector>

namespace afterbeat::samples::body {

/// One rescuer's way.
struct Way {
  /// Compressions a minute, and mm, at the start of a turn and at its end (people tire).
  double rate = 110, rateEnd = 110, depth = 54, depthEnd = 50;
  /// mm, mean.
  double lean = 1.5;
  /// Spread of the intervals (share) and of the depths (mm).
  double unsteady = 0.03, depthSpread = 2;
  Stroke stroke = Stroke::even;
};

/// All that is decided before a scene plays. Any of it can be set by hand between drawing and
/// playing.
struct Setting {
  std::uint64_t seed = 0;
  /// Seconds.
  double length = 150;
  bool mechanical = false;
  /// Rescuers take turns about every `turn` seconds.
  std::vector<Way> ways;
  double turn = 120;
  /// Compressions to two breaths; 0: no break for breaths, one every `breathEvery` seconds.
  int ratio = 30;
  double breathEvery = 6;
  /// Seconds without hands that are not for breaths: how many in the scene.
  int pauses = 1;
  Circumstances how;
  Sampling acceleration, depth, force, impedance, ecg;
  /// Fibrillation, asystole, beats: what is under the artefact.
  RhythmKind heart = RhythmKind::shockable;
};

/// Draws a setting. Rates lie between 60 and 160 a minute and depths between 20 and 70 mm, most of
/// them near 110 and 50; half of the scenes drive, up to 1.5 m/s2 RMS; impedance hisses with up to
/// half the amplitude (half of peak to trough) of a 50-mm compression. The shares are the author's.
[[nodiscard]] Setting drawSetting(std::uint64_t seed);

/// What is true and what was recorded of it.
struct Scene {
  Setting setting;
  /// Compressions carry depth below the chest at rest and leaning; breaths the begin of inflation.
  Truth truth;
  Body body;
  /// Beside `truth.compressions`: what an accelerometer on the chest travels from the highest to
  /// the deepest point, mm, what lies under the back included.
  std::vector<double> travel;
  /// The scene's begin and end; signals last as long.
  Interval window;
  /// Electrodes off: nothing can be known from the pads.
  std::vector<Interval> padsOff;
  Channel acceleration, depth, force, impedance, ecg;
};

[[nodiscard]] Scene play(const Setting& setting);

/// One line for people: "no 17: 30:2, held, 112/min, ...".
[[nodiscard]] std::string told(const Setting& setting);

/// Share of `window` without hands, measured as the figures do: gaps between neighbouring
/// compressions, and between them and the window's edges, that are longer than `threshold`, each in
/// full, over the window's length; stretches in `without` count neither above nor below.
[[nodiscard]] double handsOffShare(const std::vector<Time>& compressions, const Interval& window,
                                   const std::vector<Interval>& without,
                                   Duration threshold = Duration{1'500'000});

} // namespace afterbeat::samples::body
