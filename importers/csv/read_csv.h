/// Reads what an observer with a watch wrote down: time, what, value, remark.
#pragma once

#include "importers/imported.h"

#include <filesystem>
#include <optional>

namespace afterbeat {

/// Columns named by the user: a heading, or a number counted from 1. Empty: guess.
struct CsvColumns {
  std::string time, what, value, remark;
};

/// Notes in memory as a record (entries of source observer). Times in seconds or mm:ss count from
/// the notes' own zero; clock times from the first one of them, which becomes `recorded` if the
/// notes name a date too.
[[nodiscard]] tl::expected<Imported, ImportError> parseCsv(std::string_view bytes,
                                                           const CsvColumns& columns = {});

/// The same from a file.
[[nodiscard]] tl::expected<Imported, ImportError> readCsv(const std::filesystem::path& path,
                                                          const CsvColumns& columns = {});

} // namespace afterbeat
