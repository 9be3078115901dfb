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
    const auto read = openAndDerive(file, deriveModeFrom(options.derive));
    if (!read) {
      tell(fmt::format("{}: {}", file, read.error()));
      exit = worse(exit, Exit::readOrWriteFailed);
      continue;
    }
    const Opened& opened = read->opened;
    exit = worse(exit, tellProblems(file, opened.problems));
    const Figures figures = computeFigures(opened.record, *settings);
    exit = worse(exit, tellProblems(file, figures.notices));
    if (options.json) {
      objects.push_back(figuresJson(*read, figures));
    } else {
      fmt::print("{}{}", first ? "" : "\n\n", figuresText(*read, figures));
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
