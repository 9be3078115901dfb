/// A season of files that are read for the occasion and kept nowhere.
#pragma once

#include "app/archive/recordings_in.h"
#include "app/archive/take_in.h"

namespace afterbeat::archive {

struct FilesSeason {
  /// A record's number is its place. Columns hold as long as any copy of the season.
  Season season;
  /// By place: where the record is, and its small picture (`decode`).
  std::vector<std::filesystem::path> paths;
  std::vector<std::string> sketches;
  /// Could not be read.
  std::vector<RefusedFile> refused;
  /// Their bytes are those of another file: one record.
  std::vector<std::filesystem::path> twice;
  /// Hold an older version of a record that is in another file too.
  std::vector<std::filesystem::path> older;
  /// Read with errors.
  std::vector<std::filesystem::path> damaged;
};

/// Reads and computes files and folders with several threads, in the order of `recordingsIn`. Of a
/// record (by its id) that is in several files the newest version counts as an archive would take
/// them in at once: the last of them in the order of whole paths.
/// `progress` is called in the caller's thread.
[[nodiscard]] FilesSeason
seasonOfFiles(const std::vector<std::filesystem::path>& sources, const MakingSettings& settings,
              const std::function<void(const TakeInProgress&)>& progress = {},
              const std::atomic<bool>* cancel = nullptr);

} // namespace afterbeat::archive
