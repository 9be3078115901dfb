/// The commands. Each returns how the run ends; data go to standard output, words to standard
/// error.
#pragma once

#include "app/cli/command.h"
#include "importers/csv/read_csv.h"

namespace afterbeat::cli {

/// Prints every problem of every file.
[[nodiscard]] Exit check(const std::vector<std::string>& files);

struct MeasureOptions {
  std::vector<std::string> files;
  SettingWords settings;
  bool json = false;
};
/// Prints the figures of every file.
[[nodiscard]] Exit measure(const MeasureOptions& options);

struct SheetCommand {
  std::string file, output, paper = "A4", language = "en";
  SettingWords settings;
};
/// Writes the handover sheet as PDF.
[[nodiscard]] Exit sheet(const SheetCommand& options, int& argc, char** argv);

struct GatherOptions {
  /// SOURCE or SOURCE@OFFSET_S.
  std::vector<std::string> sources;
  std::string output, kind;
  CsvColumns columns;
};
/// Imports sources of one case and merges them into one sealed log.
[[nodiscard]] Exit gatherSources(const GatherOptions& options);

struct RewriteOptions {
  std::string file, output, newHeader;
};
/// Reads, salvages, writes canonically and seals. Further records of the file go beside the output
/// as NAME-2.resuslog and so on.
[[nodiscard]] Exit rewrite(const RewriteOptions& options);

} // namespace afterbeat::cli
