#include "samples/samples.h"

namespace afterbeat::samples {

std::vector<Sample> smallSamples(std::uint64_t seed) {
  std::vector<Sample> all;
  all.push_back(ferryTerminal(seed));
  all.push_back(boathouse(seed));
  all.push_back(bathingJetty(seed));
  for (int number = 1; number <= 4; ++number) {
    all.push_back(drill(seed, number));
  }
  all.push_back(lakeSteamer(seed));
  return all;
}

std::vector<Sample> longSamples(std::uint64_t seed) {
  std::vector<Sample> all;
  all.push_back(threeHours(seed, 250));
  all.push_back(manyCompressions(seed));
  return all;
}

} // namespace afterbeat::samples
