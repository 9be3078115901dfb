// Rates over many made-up seasons: season_report [SEASONS] [RECORDS]
#include "tests/outside/season_effects.h"

#include <cstdlib>

#include <fmt/format.h>

int main(int argc, char** argv) {
  const int seasons = argc > 1 ? std::atoi(argv[1]) : 200;
  const auto records = static_cast<std::size_t>(argc > 2 ? std::atoi(argv[2]) : 300);
  const auto rates = afterbeat::countEffects(seasons, records);
  const auto line = [&](const char* what, int count) {
    fmt::print("{:<66}{:5} of {}  {:5.1f} %\n", what, count, seasons, 100.0 * count / seasons);
  };
  fmt::print("{} records a season, rescues and drills; rescues are looked at\n", records);
  fmt::print("Nothing differs:\n");
  line("  any site named as different", rates.siteNamedFalsely);
  line("  any site in any of eleven figures, as in a report", rates.namedInAReportFalsely);
  line("  the same, were each asked as if alone", rates.namedInAReportUncorrected);
  line("  a step where nothing happened called clear", rates.stepCalledClearFalsely);
  line("  a signal in the run chart of all records", rates.runSignalFalsely);
  line("  a signal in the share chart of months", rates.shareSignalFalsely);
  fmt::print("One site takes 1.8 times as long:\n");
  line("  it is named as slower", rates.slowSiteNamed);
  line("  it is, as one of eleven figures of a report", rates.slowSiteNamedInAReport);
  line("  another is named as slower", rates.otherNamedSlower);
  line("  another is named as different", rates.otherNamedAtAll);
  fmt::print("A training makes shocks follow advice in 0.6 of the time:\n");
  line("  the marked step is called clear, and shorter", rates.stepCalledClear);
  line("  unmarked, the run chart raises a signal", rates.runSignal);
  return 0;
}
