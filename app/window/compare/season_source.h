/// Where a season comes from: an archive, or files that were read for the occasion.
#pragma once

#include "app/archive/archive.h"
#include "app/archive/take_in.h"

#include <QString>
#include <QStringList>

#include <atomic>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include <tl/expected.hpp>

namespace afterbeat::window {

/// A season with what leads from a line of it back to its file. Safe from several threads.
class SeasonSource {
public:
  SeasonSource() = default;
  SeasonSource(const SeasonSource&) = delete;
  SeasonSource& operator=(const SeasonSource&) = delete;
  virtual ~SeasonSource() = default;

  /// What is open, in few words.
  [[nodiscard]] virtual QString name() const = 0;
  /// Names it where things are remembered.
  [[nodiscard]] virtual QString key() const = 0;
  [[nodiscard]] const Season& season() const { return season_; }
  /// What its figures were computed with.
  [[nodiscard]] const FigureSettings& settings() const { return settings_; }
  /// These are the settings that were asked for; an archive may hold figures under others alone.
  [[nodiscard]] bool asAsked() const { return asAsked_; }
  /// What could not be read, and why. It is in no figure.
  [[nodiscard]] const std::vector<archive::RefusedFile>& refused() const { return refused_; }
  /// Small pictures of the rows, by place; those that have none are missing. May take milliseconds:
  /// for workers.
  [[nodiscard]] virtual std::map<std::uint32_t, archive::RowsSketch>
  sketches(const std::vector<std::uint32_t>& places) const = 0;
  /// The file of a record, or a sentence.
  [[nodiscard]] virtual tl::expected<QString, QString> file(std::uint32_t place) const = 0;

protected:
  Season season_;
  FigureSettings settings_;
  bool asAsked_ = true;
  std::vector<archive::RefusedFile> refused_;
};

using SharedSource = std::shared_ptr<const SeasonSource>;

/// Common ground of the two threads while a season is read.
struct SeasonWatch {
  std::atomic<bool> cancelled = false;
  std::atomic<std::size_t> done = 0, found = 0;
};

/// Reads all recordings of files and folders, those below included, without keeping anything.
[[nodiscard]] tl::expected<SharedSource, QString>
readFiles(const QStringList& sources, const FigureSettings& settings, SeasonWatch& watch);

/// The archive's records under the settings of the window where it has such figures, else under its
/// own first.
[[nodiscard]] tl::expected<SharedSource, QString> readArchive(const archive::ArchivePlace& place,
                                                              const FigureSettings& settings);

/// The latest records of an archive, to be looked at while all of them are being read.
struct LatestOf {
  SharedSource source;
  /// Records of the archive.
  std::size_t all = 0;
};

/// Quick however many the archive holds; empty where these would be all of them, or cannot be read.
[[nodiscard]] std::optional<LatestOf> readLatest(const archive::ArchivePlace& place,
                                                 const FigureSettings& settings);

/// How archives are read. On workers.
struct ArchiveReading {
  std::function<decltype(readArchive)> all = readArchive;
  std::function<decltype(readLatest)> latest = readLatest;
};

/// Takes files into an archive, which is made where there is none.
[[nodiscard]] tl::expected<archive::TakeInReport, QString>
takeIntoArchive(const archive::ArchivePlace& place, const QStringList& sources, SeasonWatch& watch);

} // namespace afterbeat::window
