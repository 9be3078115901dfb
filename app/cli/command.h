/// What the commands of `afterbeat-cli` share: how a run ends, where words and data go.
#pragma once

#include "core/measures/figures.h"
#include "core/resuslog/read_log.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat::cli {

/// How a run ends. The larger one wins where several files are worked on.
enum class Exit { fine = 0, problemsInData = 1, wrongUse = 2, readOrWriteFailed = 3 };

[[nodiscard]] inline Exit worse(Exit a, Exit b) {
  return a > b ? a : b;
}

/// A source that was read: one record and what was wrong with its file.
struct Opened {
  std::string file;
  Record record;
  std::vector<Problem> problems;
  /// Hex SHA-256 of the file's bytes.
  std::string sha256;
};

/// Reads a log, or by way of an importer a WFDB record or CSV notes; of several records in a log
/// the first. A failure is a sentence.
[[nodiscard]] tl::expected<Opened, std::string> open(const std::string& file, bool keepSamples);

/// "FILE:LINE: severity: sentence".
[[nodiscard]] std::string problemLine(const std::string& file, const Problem& problem);

/// Prints problems of at least `least` to standard error; problemsInData if one is an error.
Exit tellProblems(const std::string& file, const std::vector<Problem>& problems,
                  Severity least = Severity::warning);

/// A record's own text without control characters, which a terminal would obey.
[[nodiscard]] std::string forTerminal(std::string_view text);

/// Clock time where the clock is known, seconds from the record's zero otherwise.
[[nodiscard]] std::string moment(const Record& record, Time t);

/// One line to standard error, after the program's name.
void tell(const std::string& line);

/// Flushes standard output; readOrWriteFailed if it could not be written.
[[nodiscard]] Exit flushOutput();

/// Whether writing `output` would overwrite `source`, however they are spelled.
[[nodiscard]] bool sameFile(const std::filesystem::path& output,
                            const std::filesystem::path& source);

/// The settings of figures as typed by the user.
struct SettingWords {
  std::string profile;
  double pauseThreshold = 1.5;
  std::string windowEnd = "last_activity";
};

/// What the words mean; a sentence if they mean nothing. `failure` says how the run then ends.
[[nodiscard]] tl::expected<FigureSettings, std::string> settingsFrom(const SettingWords& words,
                                                                     Exit& failure);

} // namespace afterbeat::cli
