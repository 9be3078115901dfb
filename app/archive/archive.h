/// An archive of many records with their figures: opened, asked, and written to.
#pragma once

#include "app/archive/place.h"
#include "app/archive/sketch.h"
#include "app/archive/taken.h"
#include "core/compare/season.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>

namespace afterbeat::archive {

/// What figures of the archive were computed with, and by which definitions.
struct Making {
  std::int64_t id = 0;
  MakingSettings settings;
  /// `kDefinitionsVersion` when they were computed.
  int definitions = 0;
  /// New records get figures under it.
  bool inUse = false;
  /// Records of which the newest version has figures under it.
  std::size_t records = 0;
};

/// Two makings whose figures can be set against each other.
struct MakingPair {
  Making before, after;
};

/// Of an archive's makings each that has figures, with each later one that is in use.
[[nodiscard]] std::vector<MakingPair> pairsToCompare(const std::vector<Making>& makings);

/// Where a record's file is.
struct KeptFile {
  std::filesystem::path path;
  std::string sha256;
  /// Place of the record in its file.
  int part = 0;
  /// The file's bytes are in the archive itself.
  bool kept = false;
};

/// A file that could not be taken in, and why.
struct RefusedFile {
  std::filesystem::path path;
  /// In English.
  std::string sentence;
  /// The same for the edge, where it is translated; empty where an older program kept the sentence
  /// alone.
  std::vector<Phrase> said = {};
};

/// A figure that is another under other definitions or settings.
struct Moved {
  std::int64_t number = 0;
  MeasureId measure = MeasureId::arrestTime;
  FigureCell before, after;
};

/// Every call opens its own connection, so that any thread may ask; an object is a place and no
/// more. All of it takes longer than a window may wait: for workers.
class Archive {
public:
  /// Makes the tables where there are none, or brings older ones up to date.
  [[nodiscard]] static Expected<Archive> openOrCreate(const ArchivePlace& place);
  /// An archive that is there; to read it, no right to write is needed. Older tables are brought up
  /// to date by the first who may write.
  [[nodiscard]] static Expected<Archive> open(const ArchivePlace& place);

  [[nodiscard]] const ArchivePlace& place() const { return place_; }

  /// Those in use first, each group in the order they came.
  [[nodiscard]] Expected<std::vector<Making>> makings() const;
  /// The one in use with exactly these settings; empty: there is none.
  [[nodiscard]] Expected<std::optional<Making>> makingWith(const MakingSettings& settings) const;
  /// Figures are computed under it from now on; an empty archive begins with the program's own
  /// settings unless another was added first. What is there already gets its figures by the next
  /// `takeIn`. Gives its id.
  [[nodiscard]] Expected<std::int64_t> use(const MakingSettings& settings) const;
  /// No new figures under it; those that are there stay.
  [[nodiscard]] Expected<void> stopUsing(std::int64_t making) const;

  [[nodiscard]] Expected<std::size_t> recordCount() const;
  /// The facts of the `count` records with the latest day, latest first: quick however many there
  /// are. `making` 0: the first in use.
  [[nodiscard]] Expected<std::vector<RecordFacts>> latest(std::size_t count,
                                                          std::int64_t making = 0) const;
  /// The latest records alone, at most `count`, as a season of their own: quick however many there
  /// are. Whole days only, unless that leaves none, so that both seasons have the same order from
  /// the latest day on. Columns as of `season`, of these records alone.
  [[nodiscard]] Expected<Season> latestSeason(std::size_t count, std::int64_t making = 0) const;
  /// All records by day, those without one last; columns are fetched when they are asked for and
  /// kept; safe from several threads. Fetching one throws `ArchiveFailure` where the archive cannot
  /// be read any more. `making` 0: the first in use.
  [[nodiscard]] Expected<Season> season(std::int64_t making = 0) const;
  /// Small pictures by the record's number.
  [[nodiscard]] Expected<std::map<std::int64_t, RowsSketch>>
  sketches(const std::vector<std::int64_t>& numbers) const;

  [[nodiscard]] Expected<KeptFile> file(std::int64_t number) const;
  /// The bytes kept in the archive; empty where they were not.
  [[nodiscard]] Expected<std::optional<std::string>> bytes(std::int64_t number) const;
  /// All versions of the same record, by number of the version.
  [[nodiscard]] Expected<std::vector<KeptFile>> versions(std::int64_t number) const;
  [[nodiscard]] Expected<std::vector<RefusedFile>> refused() const;
  /// What is another under `after` than under `before`, of the newest versions that have both.
  [[nodiscard]] Expected<std::vector<Moved>> moved(std::int64_t before, std::int64_t after) const;

  /// Something that users of this archive share, by name; empty where it was never set.
  [[nodiscard]] Expected<std::string> note(const std::string& name) const;
  [[nodiscard]] Expected<void> setNote(const std::string& name, const std::string& value) const;
  /// Sets it to what `change` makes of it, and gives that: what somebody else wrote in between is
  /// seen, not overwritten.
  [[nodiscard]] Expected<std::string>
  changeNote(const std::string& name,
             const std::function<std::string(const std::string&)>& change) const;
  /// Whether notes may be set here, as far as rights tell: by the role of a shared archive, or by
  /// the file and its folder.
  [[nodiscard]] Expected<bool> mayWrite() const;

private:
  explicit Archive(ArchivePlace place) : place_(std::move(place)) {}
  ArchivePlace place_;
};

} // namespace afterbeat::archive
