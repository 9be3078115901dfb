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
  /// auto, never or always.
  std::string derive = "auto";
  bool json = false;
};
/// Prints the figures of every file.
[[nodiscard]] Exit measure(const MeasureOptions& options);

struct CompareOptions {
  /// Files and folders; or an archive instead.
  std::vector<std::string> files;
  std::string archive;
  SettingWords settings;
  /// auto, never or always.
  std::string derive = "auto";
  bool csv = false, json = false;
  /// Files to write; empty: not.
  std::string report, page;
  /// Folder of pictures; empty: none.
  std::string pictures;
  std::string paper = "A4", language = "en";
  /// Words that a record must hold to be taken.
  std::string only;
  /// DAY=WORDS.
  std::vector<std::string> steps;
  bool withoutIdentity = false;
  /// File of the secret that pseudonyms are made with; made where there is none.
  std::string secret;
};
/// Compares many records.
[[nodiscard]] Exit compare(const CompareOptions& options, int& argc, char** argv);

struct SheetCommand {
  std::string file, output, paper = "A4", language = "en", derive = "auto";
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

struct DeriveCommand {
  std::string file, output;
  /// compressions, ventilations, rhythm; none named: all.
  std::vector<std::string> what;
};
/// Writes a log with what its waveforms say added as derived entries.
[[nodiscard]] Exit deriveEntries(const DeriveCommand& options);

struct TakeInCommand {
  std::vector<std::string> sources;
  /// A path, or service:NAME.
  std::string archive;
  std::string derive = "auto";
  SettingWords settings;
  bool keepFiles = false, moved = false;
};
/// Takes files and folders into an archive, and brings the figures of what is there up to date.
[[nodiscard]] Exit takeFilesIn(const TakeInCommand& options, int& argc, char** argv);

struct RewriteOptions {
  std::string file, output, newHeader;
};
/// Reads, salvages, writes canonically and seals. Further records of the file go beside the output
/// as NAME-2.resuslog and so on.
[[nodiscard]] Exit rewrite(const RewriteOptions& options);

} // namespace afterbeat::cli
