#include "app/archive/files_season.h"

#include "app/archive/season_rows.h"
#include "app/archive/workers.h"

#include <algorithm>
#include <map>
#include <memory>
#include <numeric>
#include <set>

namespace afterbeat::archive {

namespace {

namespace fs = std::filesystem;

using Columns = std::array<FigureColumn, static_cast<std::size_t>(MeasureId::count_)>;

struct ReadFile {
  fs::path path;
  Expected<TakenFile> file;
};

/// Which of the files' records count.
class Newest {
public:
  explicit Newest(const std::vector<ReadFile>& files) {
    std::vector<const ReadFile*> byPath;
    for (const ReadFile& one : files) {
      if (one.file) {
        byPath.push_back(&one);
      }
    }
    const auto whole = [](const ReadFile* one) {
      std::error_code error;
      return fs::absolute(one->path, error).lexically_normal();
    };
    std::stable_sort(byPath.begin(), byPath.end(),
                     [&](const ReadFile* a, const ReadFile* b) { return whole(a) < whole(b); });
    for (const ReadFile* one : byPath) {
      if (!first_.emplace(one->file->sha256, one).second) {
        continue;
      }
      for (const TakenRecord& record : one->file->records) {
        if (const std::string& id = record.figures.front().facts.id; !id.empty()) {
          Version& version = newest_[id];
          version = {&record, version.number + 1};
        }
      }
    }
  }
  /// No other file has the same bytes, or they come later.
  [[nodiscard]] bool isFirst(const ReadFile& file) const {
    return first_.at(file.file->sha256) == &file;
  }
  /// The number of the version; 0: there is a newer one.
  [[nodiscard]] int versionOf(const TakenRecord& record) const {
    const auto at = newest_.find(record.figures.front().facts.id);
    return at == newest_.end() ? 1 : at->second.record == &record ? at->second.number : 0;
  }

private:
  struct Version {
    const TakenRecord* record = nullptr;
    int number = 0;
  };
  /// By the checksum.
  std::map<std::string, const ReadFile*> first_;
  /// By the record's id.
  std::map<std::string, Version> newest_;
};

void add(TakenFile& file, const Newest& newest, FilesSeason& made, Columns& columns) {
  bool older = false;
  for (TakenRecord& record : file.records) {
    const int version = newest.versionOf(record);
    if (version == 0) {
      older = true;
      continue;
    }
    TakenFigures& figures = record.figures.front();
    RecordFacts& facts = made.season.records.emplace_back(std::move(figures.facts));
    facts.version = version;
    facts.number = static_cast<std::int64_t>(made.paths.size());
    facts.file = file.path.filename().string();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      columns[i].push_back(figures.cells[i]);
    }
    made.paths.push_back(file.path);
    made.sketches.push_back(std::move(record.sketch));
  }
  if (older) {
    made.older.push_back(file.path);
  }
}

std::vector<ReadFile> readAll(const std::vector<fs::path>& paths, const MakingSettings& settings,
                              const std::function<void(const TakeInProgress&)>& progress,
                              const std::atomic<bool>* cancel) {
  TakeInProgress so{paths.size(), true, 0};
  Workers<fs::path, ReadFile> workers(
      paths,
      [&settings](fs::path path) {
        auto file = readFile(path, {settings}, false);
        return ReadFile{std::move(path), std::move(file)};
      },
      0, cancel);
  std::vector<ReadFile> all;
  while (auto read = workers.next()) {
    all.push_back(std::move(*read));
    ++so.done;
    if (progress) {
      progress(so);
    }
  }
  return all;
}

/// `things` in this order of their places.
template <typename Things>
void rearrange(Things& things, const std::vector<std::size_t>& order) {
  Things arranged;
  for (const std::size_t place : order) {
    arranged.push_back(std::move(things[place]));
  }
  things = std::move(arranged);
}

/// As an archive has them: by day, those without one last.
void putInOrder(FilesSeason& made, Columns& columns) {
  std::vector<std::size_t> order(made.season.records.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&made](std::size_t a, std::size_t b) {
    return earlier(made.season.records[a], made.season.records[b]);
  });
  rearrange(made.season.records, order);
  rearrange(made.paths, order);
  rearrange(made.sketches, order);
  for (FigureColumn& column : columns) {
    rearrange(column, order);
  }
  for (std::size_t place = 0; place < order.size(); ++place) {
    made.season.records[place].number = static_cast<std::int64_t>(place);
  }
}

} // namespace

FilesSeason seasonOfFiles(const std::vector<fs::path>& sources, const MakingSettings& settings,
                          const std::function<void(const TakeInProgress&)>& progress,
                          const std::atomic<bool>* cancel) {
  FoundRecordings found = recordingsIn(sources, cancel);
  FilesSeason made;
  made.refused = std::move(found.refused);
  auto columns = std::make_shared<Columns>();
  std::vector<ReadFile> files = readAll(found.paths, settings, progress, cancel);
  const Newest newest(files);
  for (ReadFile& read : files) {
    if (!read.file) {
      const ArchiveError& why = read.file.error();
      made.refused.push_back({read.path, why.sentence, why.said});
    } else if (!newest.isFirst(read)) {
      made.twice.push_back(read.path);
    } else {
      if (read.file->errors > 0) {
        made.damaged.push_back(read.path);
      }
      add(*read.file, newest, made, *columns);
    }
  }
  putInOrder(made, *columns);
  made.season.column = [columns](MeasureId id) -> const FigureColumn& {
    return (*columns)[static_cast<std::size_t>(id)];
  };
  return made;
}

} // namespace afterbeat::archive
