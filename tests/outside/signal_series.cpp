#include "tests/outside/signal_series.h"

#include "core/statistics/control_chart.h"
#include "core/statistics/quantile.h"

namespace afterbeat {

int seriesWithSignal(int series, std::size_t points, const SignalRules& rules, Line line,
                     const Draw& draw, std::uint64_t seed) {
  Random random(seed);
  int found = 0;
  std::vector<double> values(points);
  for (int i = 0; i < series; ++i) {
    for (double& value : values) {
      value = draw(random);
    }
    ChartLimits limits;
    if (line == Line::known) {
      limits.deviation.assign(points, 1);
    } else if (line == Line::ownMedian) {
      limits.centre = *medianOf(values);
    } else {
      limits = individualsLimits(values);
    }
    found += findSignals(values, limits.centre, limits.deviation, rules).empty() ? 0 : 1;
  }
  return found;
}

} // namespace afterbeat
