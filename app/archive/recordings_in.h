/// The recordings among files and folders.
#pragma once

#include "app/archive/archive.h"

#include <atomic>
#include <filesystem>
#include <vector>

namespace afterbeat::archive {

struct FoundRecordings {
  /// In the order of the sources; those of a folder, with all below it, in the order of names.
  std::vector<std::filesystem::path> paths;
  /// Files in folders that are no recordings by their ending.
  std::size_t leftAside = 0;
  /// Folders that could not be looked through, and names that could not be kept.
  std::vector<RefusedFile> refused;
};

/// A file that is named is taken whatever its ending; in folders what `looksLikeRecording`, hidden
/// ones apart. Follows no links to folders; stops where `cancel` is set.
[[nodiscard]] FoundRecordings recordingsIn(const std::vector<std::filesystem::path>& sources,
                                           const std::atomic<bool>* cancel = nullptr);

} // namespace afterbeat::archive
