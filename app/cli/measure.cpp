#include "app/cli/commands.h"
#include "app/cli/figures_json.h"
#include "app/cli/figures_text.h"

#include <fmt/format.h>

namespace afterbeat::cli {

Exit measure(const MeasureOptions& options) {
  Exit failure = Exit::fine;
  const auto settings = settingsFrom(options.settings, failure);
  if (!settings) {
    tell(settings.error());
    return failure;
  }
  Exit exit = Exit::fine;
  auto objects = nlohmann::ordered_json::array();
  bool first = true;
  for (const std::string& file : options.files) {
    const auto opened = open(file, false);
    if (!opened) {
      tell(fmt::format("{}: {}", file, opened.error()));
      exit = worse(exit, Exit::readOrWriteFailed);
      continue;
    }
    exit = worse(exit, tellProblems(file, opened->problems));
    const Figures figures = computeFigures(opened->record, *settings);
    exit = worse(exit, tellProblems(file, figures.notices));
    if (options.json) {
      objects.push_back(figuresJson(*opened, figures));
    } else {
      fmt::print("{}{}", first ? "" : "\n\n", figuresText(*opened, figures));
    }
    first = false;
  }
  if (options.json && options.files.size() > 1) {
    fmt::print("{}\n", objects.dump());
  } else if (options.json && !objects.empty()) {
    fmt::print("{}\n", objects.front().dump());
  }
  return worse(exit, flushOutput());
}

} // namespace afterbeat::cli
