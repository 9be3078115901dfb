/// A season made from files, in memory.
#pragma once

#include "app/cli/command.h"
#include "core/compare/season.h"

#include <functional>

namespace afterbeat::cli {

/// A file that is in no figure.
struct NotRead {
  std::string file, why;
};

struct SeasonOfFiles {
  Season season;
  std::vector<NotRead> notRead;
  /// Files whose bytes another file has as well: one record.
  std::vector<std::string> twice;
  Exit exit = Exit::fine;
};

struct SeasonWords {
  /// Files, and folders in which every event log (*.resuslog) is taken, in the order of names.
  std::vector<std::string> sources;
  FigureSettings settings;
  std::string derive = "auto";
  /// Called with each file's problems.
  std::function<void(const std::string& file, const std::vector<Problem>&)> problems;
};

/// Reads and computes every file.
[[nodiscard]] SeasonOfFiles seasonOfFiles(const SeasonWords& words);

} // namespace afterbeat::cli
