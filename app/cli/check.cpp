#include "app/cli/commands.h"

#include <fmt/format.h>

namespace afterbeat::cli {

Exit check(const std::vector<std::string>& files) {
  Exit exit = Exit::fine;
  for (const std::string& file : files) {
    const auto opened = open(file, false);
    if (!opened) {
      fmt::print("{}:1: error: {}\n", file, opened.error());
      exit = worse(exit, Exit::readOrWriteFailed);
      continue;
    }
    for (const Problem& problem : opened->problems) {
      fmt::print("{}\n", problemLine(file, problem));
      if (problem.severity != Severity::info) {
        exit = worse(exit, Exit::problemsInData);
      }
    }
  }
  return worse(exit, flushOutput());
}

} // namespace afterbeat::cli
