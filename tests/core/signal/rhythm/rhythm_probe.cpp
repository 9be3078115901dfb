// For checks from outside: reads "RATE VALUES", then that many numbers in mV ("nan": missing), and
// prints one line a window (its begin in s, ten features, amplitude, smallest and largest second,
// both repetitions, beats and their rate; log-odds, smoothed log-odds), then one line an entry.

#include "core/signal/ecg/quality.h"
#include "core/signal/rhythm/hints.h"

#include <cstdio>
#include <string>

using namespace afterbeat;

namespace {

void print(double value) {
  std::printf(" %.17g", value);
}

void print(const RhythmWindow& w) {
  std::printf("window");
  print(seconds(w.where.begin));
  for (const double feature : w.measures.features) {
    print(feature);
  }
  const auto& m = w.measures;
  for (const double value :
       {m.amplitudeMv, m.smallestMv, m.largestMv, m.repeat.correlation, m.repeat.ratePerMin,
        m.slopeRepeat.correlation, m.slopeRepeat.ratePerMin, static_cast<double>(m.beats),
        m.beatRatePerMin, w.logOdds, w.smoothedLogOdds}) {
    print(value);
  }
  std::printf("\n");
}

void print(const Entry& entry) {
  constexpr const char* kKinds[] = {"shockable", "organised", "asystole", "unclear"};
  const auto& rhythm = std::get<entry::Rhythm>(entry.data);
  std::printf("entry %.3f %.3f %s %.3f rate %g (%s)\n", seconds(entry.t), seconds(*entry.end),
              kKinds[static_cast<int>(*rhythm.is)], entry.quality.value_or(-1),
              rhythm.ratePerMin.value_or(0), rhythm.reason.c_str());
}

} // namespace

int main() {
  double rate = 0;
  std::size_t count = 0;
  if (std::scanf("%lf %zu", &rate, &count) != 2) {
    return 2;
  }
  std::vector<double> values(count);
  for (double& value : values) {
    if (std::scanf("%lf", &value) != 1) {
      return 2;
    }
  }
  const SignalView run{Time{}, rate, values};
  const auto faults = ecgFaults(run);
  const auto hints = hintRhythm({.runs = {&run, 1}, .faults = faults});
  for (const auto& window : hints.windows) {
    print(window);
  }
  for (const auto& entry : hints.entries) {
    print(entry);
  }
  return 0;
}
