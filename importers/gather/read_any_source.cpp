#include "core/resuslog/read_log.h"
#include "importers/gather/gather.h"
#include "importers/wfdb/read_wfdb.h"
#include "importers/wfdb/wfdb_header.h"

#include <array>

#include <fmt/format.h>

namespace afterbeat {
namespace {

namespace fs = std::filesystem;

enum class Form { log, wfdb, notes };

bool isFile(const fs::path& path) {
  std::error_code ignored;
  return fs::is_regular_file(path, ignored);
}

/// A record's signal or annotation file, or its name without an ending.
bool belongsToWfdbHeader(const fs::path& path) {
  const auto ending = path.extension();
  auto header = path;
  if (ending == ".dat" || ending == ".atr" || ending == ".DAT" || ending == ".ATR") {
    header.replace_extension(ending == ".dat" || ending == ".atr" ? ".hea" : ".HEA");
    return isFile(header);
  }
  header += ".hea";
  return !isFile(path) && isFile(header);
}

tl::expected<std::string, IoError> beginningOf(const fs::path& path) {
  auto source = openFile(path);
  if (!source) {
    return tl::unexpected(source.error());
  }
  std::string bytes(4096, '\0');
  const auto got = (*source)->read(0, bytes);
  if (!got) {
    return tl::unexpected(got.error());
  }
  bytes.resize(*got);
  return bytes;
}

Form formOf(const fs::path& path, std::string_view beginning) {
  if (beginning.substr(0, 3) == "\xEF\xBB\xBF") {
    beginning.remove_prefix(3);
  }
  const auto first = beginning.find_first_not_of(" \t\r\n");
  if (path.extension() == ".resuslog" ||
      (first != std::string_view::npos && beginning[first] == '{')) {
    return Form::log;
  }
  const bool header = path.extension() == ".hea" || path.extension() == ".HEA";
  return header || looksLikeWfdbHeader(beginning) ? Form::wfdb : Form::notes;
}

tl::expected<Imported, ImportError> readLogSource(const fs::path& path) {
  auto file = readLogFile(path);
  if (!file) {
    return tl::unexpected(ImportError{{phraseOf(file.error())}});
  }
  if (file->records.empty()) {
    return tl::unexpected(importError(inEnglish("Importers", "There is no record in this file.")));
  }
  Imported imported;
  imported.record = std::move(file->records.front().record);
  imported.problems = std::move(file->problems);
  imported.kindAssumed = !imported.record.header.kind;
  if (file->records.size() > 1) {
    imported.problems.push_back(importNote(
        0, Severity::error,
        inEnglish("Importers",
                  "This file holds %1 records one after the other; only the first is taken."),
        file->records.size()));
  }
  return imported;
}

} // namespace

tl::expected<Imported, ImportError> readAnySource(const std::filesystem::path& path,
                                                  const CsvColumns& columns) {
  if (belongsToWfdbHeader(path)) {
    return readWfdb(path);
  }
  const auto beginning = beginningOf(path);
  if (!beginning) {
    return tl::unexpected(importError(inEnglish("Importers", "The file cannot be read: %1."),
                                      beginning.error().what));
  }
  switch (formOf(path, *beginning)) {
  case Form::log:
    return readLogSource(path);
  case Form::wfdb:
    return readWfdb(path);
  case Form::notes:
    break;
  }
  return readCsv(path, columns);
}

} // namespace afterbeat
