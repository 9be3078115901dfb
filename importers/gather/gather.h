/// Any source as a record, and several sources of one case on one time axis.
#pragma once

#include "importers/csv/read_csv.h"
#include "importers/imported.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// Reads an event log, a WFDB record or CSV notes, told apart by what is in the file.
[[nodiscard]] tl::expected<Imported, ImportError> readAnySource(const std::filesystem::path& path,
                                                                const CsvColumns& columns = {});

/// One source of a case.
struct GatherSource {
  Imported imported;
  /// Shown as the part's label (file name).
  std::string label;
  /// Hex SHA-256 of the file.
  std::string sha256;
  /// Added to every time of the source. Empty: from the clocks where both are known, else 0.
  std::optional<Duration> offset;
};

/// Merges sources onto the axis of the first. The result has a new id, `parts`, `part` on every
/// entry, and channel ids prefixed with the part's number. Problems say how offsets were found.
[[nodiscard]] Imported gather(std::vector<GatherSource> sources);

} // namespace afterbeat
