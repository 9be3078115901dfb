/// Where an axis is labelled.
#pragma once

#include "app/papers/charts/chart.h"

namespace afterbeat::papers {

struct ChartTick {
  double at = 0;
  QString text;
};

/// An axis rounded outwards to its own ticks.
struct TickedAxis {
  double from = 0, to = 1;
  std::vector<ChartTick> ticks;
};

/// At most about `most` ticks, at least two of them on an axis of numbers. Lengths of time step by
/// whole seconds or minutes, days by months, quarters or years where they are long enough. Lanes
/// have no ticks.
[[nodiscard]] TickedAxis tickedAxis(const Words& words, const ChartAxis& axis, int most);

} // namespace afterbeat::papers
