// Reads lines of a word and numbers, writes what the statistics make of them; for beside_scipy.py.
//   quantile P V...   bootstrap RESAMPLES SEED V...   rank M V... (the first M are one group)
#include "core/statistics/bootstrap.h"
#include "core/statistics/quantile.h"
#include "core/statistics/rank_test.h"

#include <algorithm>
#include <iostream>
#include <sstream>
#include <string>

#include <fmt/format.h>

using namespace afterbeat;

namespace {

std::vector<double> rest(std::istream& in) {
  std::vector<double> values;
  for (double v = 0; in >> v;) {
    values.push_back(v);
  }
  return values;
}

void answer(std::istream& in) {
  std::string what;
  in >> what;
  if (what == "quantile") {
    double p = 0;
    in >> p;
    fmt::print("{:.17g}\n", quantile(rest(in), p));
  } else if (what == "bootstrap") {
    BootstrapSettings settings;
    in >> settings.resamples >> settings.seed;
    auto values = rest(in);
    std::sort(values.begin(), values.end());
    const auto interval = medianInterval(values, settings);
    fmt::print("{:.17g} {:.17g}", interval.low, interval.high);
    for (const double m : bootstrapMedians(values, settings)) {
      fmt::print(" {:.17g}", m);
    }
    fmt::print("\n");
  } else {
    std::size_t m = 0;
    in >> m;
    const auto values = rest(in);
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(m);
    fmt::print("{:.17g}\n", rankTest({values.begin(), middle}, {middle, values.end()}));
  }
}

} // namespace

int main() {
  for (std::string line; std::getline(std::cin, line);) {
    std::istringstream in(line);
    answer(in);
  }
  return 0;
}
