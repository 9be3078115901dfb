// Written by tests/outside/rhythm/train.cpp; do not edit.
#include "core/signal/rhythm/model.h"

namespace afterbeat {

const RhythmModel& rhythmModel() {
  static const RhythmModel model{
      .weights = {{
          // Leakage of the fibrillation filter
          {.mean = 0.74146832,
           .deviation = 0.150820683,
           .weight = -2.51700919,
           .limit = 0.592079679},
          // Slow repeating beats
          {.mean = 0.536312725,
           .deviation = 0.328247398,
           .weight = -1.04746413,
           .limit = 0.363239771},
          // Likeness of the beats
          {.mean = 0.919355823,
           .deviation = 0.161240953,
           .weight = -0.507665329,
           .limit = 0.841891449},
          // Large samples between 13 and 16.5 Hz
          {.mean = 0.151871355,
           .deviation = 0.0573808728,
           .weight = 1.15829872,
           .limit = 0.20212468},
          // Evenness of the amplitude
          {.mean = -1.01963228,
           .deviation = 0.763266216,
           .weight = -2.18578412,
           .limit = -0.80154735},
          // Threshold crossing sample count
          {.mean = 0.189786083,
           .deviation = 0.189734223,
           .weight = 2.56521673,
           .limit = 0.376162643},
          // Complexity
          {.mean = 1.64683275,
           .deviation = 0.309946739,
           .weight = -0.943951066,
           .limit = 1.77860099},
          // Lowest autocorrelation
          {.mean = -0.331123336,
           .deviation = 0.181865446,
           .weight = -0.997044498,
           .limit = -0.495873001},
          // Median to 98th percentile of the slope
          {.mean = 0.0896583737,
           .deviation = 0.0874257589,
           .weight = 1.68435734,
           .limit = 0.166103635},
          // Slow repeating waves
          {.mean = 0.368154111,
           .deviation = 0.281163381,
           .weight = -1.26626973,
           .limit = 0.260754953},
      }},
      .offset = -8.55269763,
  };
  return model;
}

} // namespace afterbeat
