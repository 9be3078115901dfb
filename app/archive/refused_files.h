/// Files that could not be taken in, as an archive keeps them.
#pragma once

#include "app/archive/archive.h"
#include "app/archive/database.h"

namespace afterbeat::archive {

/// Keeps why a file was refused, in place of what was said of it before. `sha256` may be empty.
/// Inside a transaction.
void putRefused(Database& database, const RefusedFile& file, const std::string& sha256);

/// It was read after all. Inside a transaction.
void forgetRefused(Database& database, const std::filesystem::path& path);

/// Forgets those below one of `sources` that are not there any more, and what was said of folders
/// there. What lies elsewhere may be on somebody else's computer, and what lies on a card that is
/// not in may come back: both stay. Inside a transaction.
void forgetGone(Database& database, const std::vector<std::filesystem::path>& sources);

/// All of them, by path.
[[nodiscard]] std::vector<RefusedFile> readRefused(Database& database);

} // namespace afterbeat::archive
