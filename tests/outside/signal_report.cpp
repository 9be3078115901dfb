// False alarms of the signal rules in steady series, and how often the median's interval holds the
// true median; in per cent: signal_report [SERIES]
#include "core/statistics/bootstrap.h"
#include "tests/outside/signal_series.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include <fmt/format.h>

using namespace afterbeat;

namespace {

/// Of so many samples of n values with median `middle`, in how many the interval holds it.
int intervalsThatHold(int samples, std::size_t n, double middle, const Draw& draw) {
  Random random(n);
  int holding = 0;
  std::vector<double> values(n);
  for (int i = 0; i < samples; ++i) {
    for (double& value : values) {
      value = draw(random);
    }
    std::sort(values.begin(), values.end());
    const auto interval = medianInterval(values, {2000, 0.95, static_cast<std::uint64_t>(i)});
    holding += interval.low <= middle && middle <= interval.high ? 1 : 0;
  }
  return holding;
}

void printIntervals(int samples, const Draw& normal, const Draw& leaning) {
  fmt::print("\n{:<34}", "interval of the median holds it, n");
  const std::size_t sizes[] = {5, 6, 8, 10, 20, 100};
  for (const std::size_t n : sizes) {
    fmt::print("{:>8}", n);
  }
  fmt::print("\n{:<34}", "  even spread");
  for (const std::size_t n : sizes) {
    fmt::print("{:8.1f}", 100.0 * intervalsThatHold(samples, n, 0, normal) / samples);
  }
  fmt::print("\n{:<34}", "  leaning spread");
  for (const std::size_t n : sizes) {
    fmt::print("{:8.1f}", 100.0 * intervalsThatHold(samples, n, 1, leaning) / samples);
  }
  fmt::print("\n");
}

} // namespace

int main(int argc, char** argv) {
  const int series = argc > 1 ? std::atoi(argv[1]) : 20'000;
  const Draw normal = [](Random& random) { return random.normal(); };
  const Draw leaning = [](Random& random) { return std::exp(0.5 * random.normal()); };
  struct Row {
    const char* what;
    SignalRules rules;
    Line line;
    const Draw& draw;
  };
  const Row rows[] = {
      {"run chart: run, crossings", runChartRules(), Line::ownMedian, normal},
      {"  run alone", {SignalRule::longRun}, Line::ownMedian, normal},
      {"  crossings alone", {SignalRule::fewCrossings}, Line::ownMedian, normal},
      {"individuals, even spread", controlChartRules(), Line::ownLimits, normal},
      {"  limits alone", {SignalRule::beyondLimits}, Line::ownLimits, normal},
      {"  Western Electric's four", westernElectricRules(), Line::ownLimits, normal},
      {"individuals, leaning spread", controlChartRules(), Line::ownLimits, leaning},
      {"  limits alone", {SignalRule::beyondLimits}, Line::ownLimits, leaning},
      {"  run and crossings alone", runChartRules(), Line::ownLimits, leaning},
      {"run chart, leaning spread", runChartRules(), Line::ownMedian, leaning},
  };
  fmt::print("{:<34}", "points");
  for (const std::size_t points : {12U, 24U, 36U, 60U, 100U, 300U}) {
    fmt::print("{:>8}", points);
  }
  for (const Row& row : rows) {
    fmt::print("\n{:<34}", row.what);
    for (const std::size_t points : {12U, 24U, 36U, 60U, 100U, 300U}) {
      const int found = seriesWithSignal(series, points, row.rules, row.line, row.draw, points);
      fmt::print("{:8.1f}", 100.0 * found / series);
    }
  }
  fmt::print("\n");
  printIntervals(series / 5, normal, leaning);
  return 0;
}
