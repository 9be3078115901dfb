#include "app/archive/files_season.h"

#include "app/archive/season_rows.h"
#include "app/archive/workers.h"

#include <algorithm>
#include <memory>
#include <numeric>
#include <set>

namespace afterbeat::archive {

namespace {

namespace fs = std::filesystem;

using Columns = std::array<FigureColumn, static_cast<std::size_t>(MeasureId::count_)>;

struct Job {
  std::size_t order = 0;
  fs::path path;
};
struct ReadFile {
  Job job;
  Expected<TakenFile> file;
};

void add(TakenFile& file, FilesSeason& made, Columns& columns) {
  for (TakenRecord& record : file.records) {
    TakenFigures& figures = record.figures.front();
    RecordFacts& facts = made.season.records.emplace_back(std::move(figures.facts));
    facts.number = static_cast<std::int64_t>(made.paths.size());
    facts.file = file.path.filename().string();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      columns[i].push_back(figures.cells[i]);
    }
    made.paths.push_back(file.path);
    made.sketches.push_back(std::move(record.sketch));
  }
}

std::vector<ReadFile> readAll(const std::vector<fs::path>& paths, const MakingSettings& settings,
                              const std::function<void(const TakeInProgress&)>& progress,
                              const std::atomic<bool>* cancel) {
  std::vector<Job> jobs;
  for (const fs::path& path : paths) {
    jobs.push_back({jobs.size(), path});
  }
  TakeInProgress so{jobs.size(), true, 0};
  Workers<Job, ReadFile> workers(
      std::move(jobs),
      [&settings](Job job) {
        auto file = readFile(job.path, {settings}, false);
        return ReadFile{std::move(job), std::move(file)};
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
  // The same order whichever worker was first.
  std::sort(all.begin(), all.end(),
            [](const ReadFile& a, const ReadFile& b) { return a.job.order < b.job.order; });
  return all;
}

/// As an archive has them: by day, those without one last. Paths and pictures stay where the
/// records' numbers say.
void putInOrder(Season& season, Columns& columns) {
  std::vector<std::size_t> order(season.records.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&season](std::size_t a, std::size_t b) {
    return earlier(season.records[a], season.records[b]);
  });
  std::vector<RecordFacts> records;
  for (const std::size_t place : order) {
    records.push_back(std::move(season.records[place]));
  }
  season.records = std::move(records);
  for (FigureColumn& column : columns) {
    FigureColumn cells;
    for (const std::size_t place : order) {
      cells.push_back(column[place]);
    }
    column = std::move(cells);
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
  std::set<std::string> seen;
  for (ReadFile& read : readAll(found.paths, settings, progress, cancel)) {
    if (!read.file) {
      const ArchiveError& why = read.file.error();
      made.refused.push_back({read.job.path, why.sentence, why.said});
    } else if (!seen.insert(read.file->sha256).second) {
      made.twice.push_back(read.job.path);
    } else {
      if (read.file->errors > 0) {
        made.damaged.push_back(read.job.path);
      }
      add(*read.file, made, *columns);
    }
  }
  putInOrder(made.season, *columns);
  made.season.column = [columns](MeasureId id) -> const FigureColumn& {
    return (*columns)[static_cast<std::size_t>(id)];
  };
  return made;
}

} // namespace afterbeat::archive
