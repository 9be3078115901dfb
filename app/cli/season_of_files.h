/// A season for the command: from files, in memory, or from an archive.
#pragma once

#include "app/archive/archive.h"
#include "app/cli/command.h"

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
  /// Files that were read and are not whole.
  std::vector<std::string> faulty;
};

/// Reads and computes files, and of folders every event log (*.resuslog) at any depth, in the order
/// of names.
[[nodiscard]] SeasonOfFiles seasonOfFiles(const std::vector<std::string>& sources,
                                          const archive::MakingSettings& settings);

/// The making of an archive that has exactly these settings under the present definitions; a
/// sentence where there is none.
[[nodiscard]] archive::Expected<archive::Making> makingOf(const archive::Archive& from,
                                                          const archive::MakingSettings& settings);

} // namespace afterbeat::cli
