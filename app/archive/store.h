/// Writing records and their figures.
#pragma once

#include "app/archive/archive.h"
#include "app/archive/making_store.h"

#include <chrono>

namespace afterbeat::archive {

/// What became of a file.
enum class Stored {
  /// New to the archive.
  added,
  /// Another state of a record that was there: a new version of it.
  changed,
  /// The same bytes were there; figures that were missing were added.
  known,
};

/// Writes; to be used inside a transaction.
class Store {
public:
  /// `makings`: what the figures of each record were computed with, in their order.
  Store(Database& database, const std::vector<Making>& makings, bool keepBytes);
  Stored put(const TakenFile& file);
  /// The file with these bytes is somewhere else now.
  void moved(const std::string& sha256, const std::filesystem::path& to);

private:
  struct Place {
    std::int64_t version = 0;
    Stored stored = Stored::known;
  };
  [[nodiscard]] Place versionFor(const TakenFile& file, const TakenRecord& record);
  [[nodiscard]] std::int64_t recordFor(const TakenFile& file, const TakenRecord& record);
  /// A file is again what it was before: that version is the current one once more.
  [[nodiscard]] bool takenBack(std::int64_t owner, std::int64_t version, const TakenFile& file);
  void putFigures(std::int64_t version, const TakenRecord& record);
  void putCells(std::int64_t making, std::int64_t version, const TakenFigures& figures);

  Database& database_;
  const std::vector<Making>& makings_;
  std::vector<int> measures_;
  bool keepBytes_;
};

} // namespace afterbeat::archive
