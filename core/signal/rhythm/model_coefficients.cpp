// Written by tests/outside/rhythm/train.cpp; do not edit.
#include "core/signal/rhythm/model.h"

namespace afterbeat {

const RhythmModel& rhythmModel() {
  static const RhythmModel model{
      .weights = {{
          // Leakage of the fibrillation filter
          {.mean = 0.741395186,
           .deviation = 0.151344707,
           .weight = -2.96135851,
           .limit = 0.591790597},
          // Slow repeating beats
          {.mean = 0.561567185,
           .deviation = 0.31389919,
           .weight = -1.66521166,
           .limit = 0.383024788},
          // Likeness of the beats
          {.mean = 0.919538326,
           .deviation = 0.160711973,
           .weight = -0.517169872,
           .limit = 0.841447951},
          // Large samples between 13 and 16.5 Hz
          {.mean = 0.151077008,
           .deviation = 0.0571725191,
           .weight = 1.68190684,
           .limit = 0.201296572},
          // Evenness of the amplitude
          {.mean = -0.884200605,
           .deviation = 0.548598685,
           .weight = -2.12020658,
           .limit = -0.72536253},
          // Threshold crossing sample count
          {.mean = 0.18843543,
           .deviation = 0.190093847,
           .weight = 2.64858339,
           .limit = 0.374446872},
          // Complexity
          {.mean = 1.64337225,
           .deviation = 0.310232522,
           .weight = -1.01184744,
           .limit = 1.77305224},
          // Lowest autocorrelation
          {.mean = -0.330259141,
           .deviation = 0.182427348,
           .weight = -0.751716635,
           .limit = -0.494513965},
          // Median to 98th percentile of the slope
          {.mean = 0.0897367249,
           .deviation = 0.087621302,
           .weight = 0.60609745,
           .limit = 0.166311019},
          // Slow repeating waves
          {.mean = 0.385841317,
           .deviation = 0.271338676,
           .weight = -1.06703342,
           .limit = 0.26976745},
      }},
      .offset = -8.46880109,
  };
  return model;
}

} // namespace afterbeat
