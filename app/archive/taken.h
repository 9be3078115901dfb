/// What is kept of a file of records: made by workers, written by one.
#pragma once

#include "app/archive/archive_error.h"
#include "core/compare/season.h"
#include "core/signal/derive/derive.h"

#include <array>
#include <filesystem>
#include <string>
#include <vector>

namespace afterbeat::archive {

/// What figures are computed with.
struct MakingSettings {
  FigureSettings figures;
  DeriveMode derive = DeriveMode::automatic;
};

/// A record under one making.
struct TakenFigures {
  RecordFacts facts;
  std::array<FigureCell, static_cast<std::size_t>(MeasureId::count_)> cells;
};

/// A record of a file.
struct TakenRecord {
  /// The place of the record in its file, from 0.
  int part = 0;
  /// A small picture of the rows, under the first making.
  std::string sketch;
  /// One for each making that was asked for, in their order.
  std::vector<TakenFigures> figures;
};

/// A file that was read.
struct TakenFile {
  std::filesystem::path path;
  std::string sha256;
  /// Problems that are errors: read, but not whole.
  int errors = 0;
  std::vector<TakenRecord> records;
  /// The file's bytes, where they are to be kept.
  std::string bytes;
};

/// Hex SHA-256 of a file; of a WFDB header together with the files of the same name beside it. A
/// sentence where it cannot be read.
[[nodiscard]] Expected<std::string> checksumOf(const std::filesystem::path& path);

/// Reads a file and computes all its records under each of the makings. Needs no database and no
/// event loop: meant for a worker.
[[nodiscard]] Expected<TakenFile> readFile(const std::filesystem::path& path,
                                           const std::vector<MakingSettings>& makings,
                                           bool keepBytes);
/// The same of bytes that an archive kept; `name` is the file's, for its ending.
[[nodiscard]] Expected<TakenFile> readBytes(const std::string& bytes, const std::string& name,
                                            const std::vector<MakingSettings>& makings);

/// Whether a file in a folder is taken for a recording, by its ending: an event log, a WFDB header,
/// CSV notes.
[[nodiscard]] bool looksLikeRecording(const std::filesystem::path& path);

} // namespace afterbeat::archive
