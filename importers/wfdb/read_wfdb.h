/// Reads the open PhysioNet form (WFDB): header, signals (formats 212 and 16), annotations.
#pragma once

#include "importers/imported.h"

#include <filesystem>

namespace afterbeat {

/// Reads NAME.hea and, beside it, the signal files it names and NAME.atr if there is one.
/// `path` may name any of the three, or the record without an ending. Signals become channels,
/// rhythm annotations `rhythm` entries (source observer). Checksums that differ are a problem, not
/// an end. Source of the form: header(5), signal(5) and annot(5) of the WFDB documentation.
[[nodiscard]] tl::expected<Imported, ImportError> readWfdb(const std::filesystem::path& path);

} // namespace afterbeat
