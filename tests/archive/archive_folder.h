/// A folder for one test, with small logs in it.
#pragma once

#include "app/archive/take_in.h"

#include <QTemporaryDir>

#include <filesystem>
#include <string>

namespace afterbeat::archive::testing {

namespace fs = std::filesystem;

/// Where the samples are.
[[nodiscard]] fs::path samples();

enum class Engine { file, server };
/// The `n`th id of a record.
[[nodiscard]] std::string idOf(int n);
/// For the name of a test.
[[nodiscard]] std::string words(Engine engine);

class ArchiveFolder {
public:
  explicit ArchiveFolder(Engine engine = Engine::file) : engine_(engine) {}
  [[nodiscard]] fs::path path() const { return fs::path(folder_.path().toStdString()); }
  [[nodiscard]] fs::path operator/(const std::string& name) const { return path() / name; }
  /// A log of a rescue, events only, with one shock after `shockS` seconds.
  fs::path writeLog(const std::string& name, const std::string& id, int shockS) const;
  [[nodiscard]] ArchivePlace place() const;
  /// A new one: in this folder, or in the emptied database of the test's server.
  [[nodiscard]] Archive openArchive() const;

private:
  Engine engine_;
  QTemporaryDir folder_;
};

/// Takes in; fails the test where that fails.
[[nodiscard]] TakeInReport take(const Archive& archive, const std::vector<fs::path>& sources,
                                bool keepBytes = false);

/// The cell of the only record whose file has this name.
[[nodiscard]] FigureCell cellOf(const Season& season, const std::string& file, MeasureId id);

} // namespace afterbeat::archive::testing
