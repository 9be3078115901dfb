#include "app/archive/recordings_in.h"

#include <QString>

#include <algorithm>

namespace afterbeat::archive {

namespace {

namespace fs = std::filesystem;

void refuse(const fs::path& path, const ArchiveError& why, FoundRecordings& found) {
  found.refused.push_back({path, why.sentence, why.said});
}

/// An archive keeps names as text, and would not find such a file again.
void add(const fs::path& path, FoundRecordings& found) {
  const QByteArray name = QByteArray::fromStdString(path.string());
  if (QString::fromUtf8(name).toUtf8() == name) {
    found.paths.push_back(path);
  } else {
    refuse(path,
           ArchiveError(inEnglish(
               "Importers", "Its name is not written in UTF-8; rename it and take it in again.")),
           found);
  }
}

void addFolder(const fs::path& folder, const std::atomic<bool>* cancel, FoundRecordings& found) {
  const std::size_t first = found.paths.size();
  std::error_code error;
  auto at = fs::recursive_directory_iterator(folder, fs::directory_options::skip_permission_denied,
                                             error);
  for (; !error && at != fs::recursive_directory_iterator() && (cancel == nullptr || !*cancel);
       at.increment(error)) {
    const fs::path& path = at->path();
    if (path.filename().string().starts_with(".")) {
      if (at->is_directory(error)) {
        at.disable_recursion_pending();
      }
    } else if (at->is_regular_file(error)) {
      if (looksLikeRecording(path)) {
        add(path, found);
      } else {
        ++found.leftAside;
      }
    }
  }
  if (error) {
    refuse(folder,
           ArchiveError(inEnglish("Importers", "This folder could not be looked through: %1."),
                        error.message()),
           found);
  }
  std::sort(found.paths.begin() + static_cast<std::ptrdiff_t>(first), found.paths.end());
}

} // namespace

FoundRecordings recordingsIn(const std::vector<fs::path>& sources,
                             const std::atomic<bool>* cancel) {
  FoundRecordings found;
  for (const fs::path& source : sources) {
    std::error_code error;
    if (fs::is_directory(source, error)) {
      addFolder(source, cancel, found);
    } else {
      add(source, found);
    }
  }
  return found;
}

} // namespace afterbeat::archive
