/// Reads doubles (mV, NaN where missing) from standard input, and writes what was found in them.
///   ecg_probe beats RATE            times of beats in seconds
///   ecg_probe faults RATE           kind (as numbered), begin and end in seconds of each
///   ecg_probe amsa RATE             amplitude spectrum area in mV Hz of all of it
#include "core/signal/ecg/beats.h"
#include "core/signal/ecg/fibrillation.h"
#include "core/signal/ecg/quality.h"
#include "tests/core/signal/probe_io.h"

#include <cstdio>
#include <cstdlib>
#include <string>

using namespace afterbeat;

namespace {

void output(double value) {
  probeOutput({&value, 1});
}

} // namespace

int main(int argc, char** argv) {
  if (argc < 3) {
    return 2;
  }
  const std::string what = argv[1];
  const auto values = probeInput();
  const SignalView ecg{Time{}, std::atof(argv[2]), values};
  if (what == "beats") {
    for (const Beat& beat : findBeats(ecg)) {
      output(seconds(beat.at));
    }
    return 0;
  }
  if (what == "faults") {
    for (const FaultyStretch& stretch : ecgFaults(ecg)) {
      output(static_cast<double>(stretch.fault));
      output(seconds(stretch.where.begin));
      output(seconds(stretch.where.end));
    }
    return 0;
  }
  if (what == "amsa") {
    output(fibrillationOf(values, ecg.rateHz).amsaMvHz);
    return 0;
  }
  return 2;
}
