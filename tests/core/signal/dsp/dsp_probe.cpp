/// Runs one filter or transform over doubles from standard input and writes doubles to standard
/// output, as raw bytes: what another program compares with its own.
///   dsp_probe COMMAND [number...]
#include "core/signal/dsp/bridge.h"
#include "core/signal/dsp/resample.h"
#include "core/signal/dsp/sections.h"
#include "core/signal/dsp/spectrum.h"
#include "tests/core/signal/probe_io.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string>

using namespace afterbeat;

namespace {

void output(std::span<const double> values) {
  probeOutput(values);
}

void output(std::span<const Section> sections) {
  for (const Section& c : sections) {
    output(std::vector{c.b0, c.b1, c.b2, c.a1, c.a2});
  }
}

struct Numbers {
  std::vector<double> all;
  [[nodiscard]] double at(std::size_t i) const { return i < all.size() ? all[i] : 0; }
  [[nodiscard]] std::size_t count(std::size_t i) const { return static_cast<std::size_t>(at(i)); }
};

/// Order, band, low, high, rate.
std::vector<Section> designed(const Numbers& n) {
  return butterworth(static_cast<int>(n.at(0)), static_cast<Band>(n.count(1)), n.at(2), n.at(3),
                     n.at(4));
}

/// In pieces of `piece` samples.
std::vector<double> streamed(Cascade filter, std::vector<double> values, std::size_t piece) {
  for (std::size_t i = 0; i < values.size(); i += piece) {
    filter.run(std::span(values).subspan(i, std::min(piece, values.size() - i)));
  }
  return values;
}

std::vector<double> resampledInPieces(const Numbers& n, const std::vector<double>& values) {
  Resampler resampler(n.at(0), n.at(1));
  std::vector<double> out;
  const auto piece = n.count(2);
  for (std::size_t i = 0; i < values.size(); i += piece) {
    resampler.run(std::span(values).subspan(i, std::min(piece, values.size() - i)), out);
  }
  resampler.finish(out);
  return out;
}

bool run(const std::string& command, const Numbers& n) {
  if (command == "design") {
    output(designed(n));
  } else if (command == "notch") {
    output(std::vector{notch(n.at(0), n.at(1), n.at(2))});
  } else if (command == "stream") {
    output(streamed(Cascade(designed(n)), probeInput(), n.count(5)));
  } else if (command == "settled") {
    Cascade filter(designed(n));
    const auto values = probeInput();
    filter.settle(values.front());
    output(streamed(filter, values, n.count(5)));
  } else if (command == "both-ways") {
    auto values = probeInput();
    filterBothWays(designed(n), values);
    output(values);
  } else if (command == "amplitude" || command == "power") {
    const auto values = probeInput();
    Spectrum spectrum(values.size(), n.at(0), static_cast<Window>(n.count(1)));
    output(command == "power" ? spectrum.power(values) : spectrum.amplitude(values));
  } else if (command == "autocorrelation") {
    const auto values = probeInput();
    output(Autocorrelation(values.size()).of(values));
  } else if (command == "resample") {
    output(resampledInPieces(n, probeInput()));
  } else if (command == "bridge") {
    auto values = probeInput();
    bridgeMissing(values);
    output(values);
  } else {
    return false;
  }
  return true;
}

} // namespace

int main(int argc, char** argv) {
  Numbers numbers;
  for (int i = 2; i < argc; ++i) {
    numbers.all.push_back(std::atof(argv[i]));
  }
  return argc > 1 && run(argv[1], numbers) ? 0 : 2;
}
