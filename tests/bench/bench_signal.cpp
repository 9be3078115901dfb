/// Times filters, transforms and what is read off an ECG, on the samples of a file.
///   bench_signal FILE RATE [passes]
/// FILE holds doubles (mV). Writes an object of name to {ms, value}: the least milliseconds of the
/// passes, and one number of the result, by which a plain program shows that it did the same.
#include "core/signal/dsp/resample.h"
#include "core/signal/dsp/sections.h"
#include "core/signal/dsp/spectrum.h"
#include "core/signal/ecg/artefact_filter.h"
#include "core/signal/ecg/beats.h"
#include "core/signal/ecg/fibrillation.h"
#include "core/signal/ecg/quality.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <cmath>
#include <fstream>
#include <functional>
#include <iostream>
#include <limits>

using namespace afterbeat;

namespace {

std::vector<double> contents(const char* path) {
  std::ifstream in(path, std::ios::binary | std::ios::ate);
  std::vector<double> out(static_cast<std::size_t>(in.tellg()) / sizeof(double));
  in.seekg(0);
  in.read(reinterpret_cast<char*>(out.data()),
          static_cast<std::streamsize>(out.size() * sizeof(double)));
  return out;
}

double effective(std::span<const double> values) {
  double squares = 0;
  for (const double value : values) {
    squares += value * value;
  }
  return std::sqrt(squares / static_cast<double>(values.size()));
}

double filteredBothWays(const SignalView& ecg) {
  std::vector<double> values(ecg.values.begin(), ecg.values.end());
  filterBothWays(butterworth(2, Band::bandPass, 0.5, 40, ecg.rateHz), values);
  return effective(values);
}

double filteredForwards(const SignalView& ecg) {
  std::vector<double> values(ecg.values.begin(), ecg.values.end());
  Cascade(butterworth(8, Band::lowPass, 0, 20, ecg.rateHz)).run(values);
  return effective(values);
}

double halvedRate(const SignalView& ecg) {
  return effective(resampled(ecg.values, ecg.rateHz, ecg.rateHz / 2));
}

/// Amplitude spectrum area of every 2 s, one every second: the largest.
double spectra(const SignalView& ecg) {
  const auto window = static_cast<std::size_t>(2 * ecg.rateHz);
  Spectrum spectrum(window, ecg.rateHz);
  const auto first = static_cast<std::size_t>(std::ceil(2 / spectrum.hzPerBin()));
  const auto last = static_cast<std::size_t>(std::floor(48 / spectrum.hzPerBin()));
  double largest = 0;
  for (std::size_t begin = 0; begin + window <= ecg.values.size(); begin += window / 2) {
    const auto amplitude = spectrum.amplitude(ecg.values.subspan(begin, window));
    double sum = 0;
    for (std::size_t k = first; k <= last; ++k) {
      sum += amplitude[k] * static_cast<double>(k) * spectrum.hzPerBin();
    }
    largest = std::max(largest, sum);
  }
  return largest;
}

double beatCount(const SignalView& ecg) {
  return static_cast<double>(findBeats(ecg).size());
}

double faultCount(const SignalView& ecg) {
  return static_cast<double>(ecgFaults(ecg).size());
}

/// Compressions every 0.54 s throughout.
double suppressed(const SignalView& ecg) {
  std::vector<Time> deepest;
  for (std::int64_t t = 1'000'000;
       ecg.indexOf(Time{Duration{t}}) < static_cast<double>(ecg.values.size()); t += 540'000) {
    deepest.push_back(Time{Duration{t}});
  }
  return effective(suppressCompressions(ecg, deepest).values);
}

} // namespace

int main(int argc, char** argv) {
  if (argc < 3) {
    std::cerr << "bench_signal FILE RATE [passes]\n";
    return 2;
  }
  const auto values = contents(argv[1]);
  const SignalView ecg{Time{}, std::atof(argv[2]), values};
  const int passes = argc > 3 ? std::atoi(argv[3]) : 3;
  const std::vector<std::pair<const char*, std::function<double(const SignalView&)>>> all{
      {"band filter, both ways", filteredBothWays},
      {"low-pass filter, 8th order", filteredForwards},
      {"half the rate", halvedRate},
      {"spectrum area, every second", spectra},
      {"beats", beatCount},
      {"faults", faultCount},
      {"artefact filter", suppressed},
  };
  nlohmann::ordered_json out;
  for (const auto& [name, run] : all) {
    double least = std::numeric_limits<double>::infinity(), value = 0;
    for (int pass = 0; pass < passes; ++pass) {
      const auto begin = std::chrono::steady_clock::now();
      value = run(ecg);
      const std::chrono::duration<double, std::milli> length =
          std::chrono::steady_clock::now() - begin;
      least = std::min(least, length.count());
    }
    out[name] = {{"ms", least}, {"value", value}};
  }
  std::cout << out.dump(1) << "\n";
  return 0;
}
