/// Numbers in and out of the programs that tests in other languages run: doubles as they lie in
/// memory.
#pragma once

#include <cstdio>
#include <span>
#include <vector>

namespace afterbeat {

/// All of standard input.
inline std::vector<double> probeInput() {
  std::vector<double> out;
  double value = 0;
  while (std::fread(&value, sizeof value, 1, stdin) == 1) {
    out.push_back(value);
  }
  return out;
}

inline void probeOutput(std::span<const double> values) {
  std::fwrite(values.data(), sizeof(double), values.size(), stdout);
}

} // namespace afterbeat
