#include "app/archive/take_in.h"

#include "app/archive/recordings_in.h"
#include "app/archive/refused_files.h"
#include "app/archive/schema.h"
#include "app/archive/store.h"
#include "app/archive/workers.h"

#include <algorithm>
#include <unordered_map>

#include <fmt/format.h>

namespace afterbeat::archive {

namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

/// From one commit to the next at most.
constexpr std::chrono::milliseconds kStep{500};

constexpr std::size_t kManyForServer = 1000;

/// A file that is in the archive with all the figures it should have.
struct Whole {
  fs::path path;
};

/// Something to be read: a file, or a version that lacks figures.
struct Job {
  fs::path path;
  /// Of a version: what its bytes must be, and its number where they were kept.
  std::string sha256 = {};
  std::optional<std::int64_t> kept = {};
  [[nodiscard]] bool again() const { return !sha256.empty(); }
};

struct Result {
  Job job;
  std::string sha256 = {};
  /// Nothing had to be read.
  bool whole = false;
  Expected<TakenFile> file = {};
};

std::string inUse(const std::vector<Making>& makings) {
  std::string list;
  for (const Making& making : makings) {
    list += (list.empty() ? "" : ", ") + std::to_string(making.id);
  }
  return list;
}

class TakeIn {
public:
  TakeIn(const Archive& archive, const TakeInOrder& order,
         const std::function<void(const TakeInProgress&)>& progress,
         const std::atomic<bool>* cancel)
      : archive_(archive), order_(order), tell_(progress), cancel_(cancel),
        database_(archive.place(), Access::write) {
    migrate(database_);
  }

  TakeInReport run() {
    database_.inOne([this] { makings_ = makingsToCompute(database_); });
    for (const Making& making : makings_) {
      settings_.push_back(making.settings);
    }
    findWhole();
    std::vector<Job> jobs = findFiles();
    progress_.found = jobs.size();
    progress_.allFound = true;
    work(std::move(jobs));
    if (!cancelled()) {
      jobs = findUnfinished();
      progress_.found += jobs.size();
      work(std::move(jobs));
    }
    report_.cancelled = cancelled();
    tidy();
    std::sort(report_.refused.begin(), report_.refused.end(),
              [](const RefusedFile& a, const RefusedFile& b) { return a.path < b.path; });
    return std::move(report_);
  }

private:
  [[nodiscard]] bool cancelled() const { return cancel_ != nullptr && *cancel_; }

  /// PostgreSQL reads columns without their tables once it has looked through what is new, which it
  /// does by itself some time.
  void tidy() {
    if (database_.shared() &&
        report_.added + report_.changed + report_.computedAgain >= kManyForServer) {
      database_.run(QStringLiteral("VACUUM (ANALYZE) version, computed, figure, record"));
    }
  }

  void findWhole() {
    QSqlQuery rows = database_.run(
        QStringLiteral("SELECT v.sha256, v.path, count(c.making_id) FROM version v "
                       "LEFT JOIN computed c ON c.version_id = v.id AND c.making_id IN (%1) "
                       "WHERE v.current = 1 GROUP BY v.id, v.sha256, v.path")
            .arg(QString::fromStdString(inUse(makings_))));
    while (rows.next()) {
      if (rows.value(2).toULongLong() == makings_.size()) {
        whole_[rows.value(0).toString().toStdString()] = {rows.value(1).toString().toStdString()};
      }
    }
  }

  void refuse(const fs::path& path, const ArchiveError& why) {
    report_.refused.push_back({path, why.sentence, why.said});
  }

  std::vector<Job> findFiles() {
    std::vector<fs::path> sources;
    for (const fs::path& source : order_.sources) {
      std::error_code error;
      // The place is kept, so it must hold wherever the program is started from next time.
      sources.push_back(fs::absolute(source, error).lexically_normal());
    }
    FoundRecordings found = recordingsIn(sources, cancel_);
    report_.leftAside = found.leftAside;
    report_.refused = std::move(found.refused);
    database_.inOne([&] {
      forgetGone(database_, sources);
      for (const RefusedFile& file : report_.refused) {
        putRefused(database_, file, {});
      }
    });
    std::sort(found.paths.begin(), found.paths.end());
    found.paths.erase(std::unique(found.paths.begin(), found.paths.end()), found.paths.end());
    std::vector<Job> jobs;
    for (fs::path& path : found.paths) {
      jobs.push_back({std::move(path)});
    }
    return jobs;
  }

  /// Versions that lack figures under a making in use: settings or definitions are new.
  std::vector<Job> findUnfinished() {
    std::vector<Job> jobs;
    QSqlQuery rows = database_.run(
        QStringLiteral("SELECT v.id, v.path, v.sha256, "
                       "(SELECT count(*) FROM content k WHERE k.version_id = v.id) "
                       "FROM version v LEFT JOIN computed c ON c.version_id = v.id "
                       "AND c.making_id IN (%1) WHERE v.current = 1 "
                       "GROUP BY v.id, v.path, v.sha256 HAVING count(c.making_id) < %2 "
                       "ORDER BY v.id")
            .arg(QString::fromStdString(inUse(makings_)))
            .arg(makings_.size()));
    while (rows.next()) {
      Job job{rows.value(1).toString().toStdString(), rows.value(2).toString().toStdString()};
      if (rows.value(3).toInt() > 0) {
        job.kept = rows.value(0).toLongLong();
      }
      if (jobs.empty() || jobs.back().sha256 != job.sha256) {
        jobs.push_back(std::move(job));
      }
    }
    return jobs;
  }

  /// In a worker.
  [[nodiscard]] Result read(Job job) const {
    Result result{std::move(job)};
    const auto sum = checksumOf(result.job.path);
    if (result.job.again()) {
      result.file = readAgain(result.job, sum ? *sum : std::string());
      return result;
    }
    if (!sum) {
      result.file = tl::unexpected(sum.error());
      return result;
    }
    result.sha256 = *sum;
    if (whole_.count(*sum) > 0) {
      result.whole = true;
    } else {
      result.file = readFile(result.job.path, settings_, order_.keepBytes);
    }
    return result;
  }

  [[nodiscard]] Expected<TakenFile> readAgain(const Job& job, const std::string& sum) const {
    if (sum == job.sha256) {
      return readFile(job.path, settings_, false);
    }
    if (!job.kept) {
      return tl::unexpected(ArchiveError(
          sum.empty()
              ? inEnglish("Importers", "The file is gone, and its bytes are not in the archive.")
              : inEnglish("Importers", "The file is another one now, and its old bytes are not in "
                                       "the archive.")));
    }
    const auto bytes = archive_.bytes(*job.kept);
    if (!bytes) {
      return tl::unexpected(bytes.error());
    }
    auto file = readBytes(bytes->value_or(std::string()), job.path.string(), settings_);
    return file;
  }

  void work(std::vector<Job> jobs) {
    Workers<Job, Result> workers(
        std::move(jobs), [this](Job job) { return read(std::move(job)); }, order_.threads, cancel_);
    std::vector<Result> step;
    auto begun = Clock::now();
    while (auto result = workers.next()) {
      step.push_back(std::move(*result));
      if (step.size() >= order_.filesInStep || Clock::now() - begun > kStep) {
        store(step);
        begun = Clock::now();
      }
    }
    store(step);
  }

  void store(std::vector<Result>& step) {
    database_.inOne([&] {
      Store store(database_, makings_, order_.keepBytes);
      for (const Result& result : step) {
        put(store, result);
      }
    });
    progress_.done += step.size();
    step.clear();
    if (tell_) {
      tell_(progress_);
    }
  }

  void put(Store& store, const Result& result) {
    const fs::path& path = result.job.path;
    if (result.whole) {
      ++report_.known;
      const fs::path& before = whole_.at(result.sha256).path;
      std::error_code error;
      if (before != path && !fs::exists(before, error)) {
        store.moved(result.sha256, path);
      }
      return;
    }
    if (!result.file) {
      if (result.job.again()) {
        const ArchiveError& why = result.file.error();
        report_.notComputed.push_back({path, why.sentence, why.said});
        return;
      }
      refuse(path, result.file.error());
      putRefused(database_, report_.refused.back(), result.sha256);
      return;
    }
    const Stored stored = store.put(*result.file);
    if (result.job.again()) {
      ++report_.computedAgain;
      return;
    }
    count(stored, *result.file);
  }

  void count(Stored stored, const TakenFile& file) {
    switch (stored) {
    case Stored::added:
      ++report_.added;
      break;
    case Stored::changed:
      ++report_.changed;
      report_.changedFiles.push_back(file.path);
      break;
    case Stored::known:
      ++report_.known;
      break;
    }
    if (file.errors > 0) {
      report_.damaged.push_back(file.path);
    }
  }

  const Archive& archive_;
  const TakeInOrder& order_;
  const std::function<void(const TakeInProgress&)>& tell_;
  const std::atomic<bool>* cancel_;
  Database database_;
  std::vector<Making> makings_;
  std::vector<MakingSettings> settings_;
  std::unordered_map<std::string, Whole> whole_;
  TakeInProgress progress_;
  TakeInReport report_;
};

} // namespace

Expected<TakeInReport> takeIn(const Archive& archive, const TakeInOrder& order,
                              const std::function<void(const TakeInProgress&)>& progress,
                              const std::atomic<bool>* cancel) {
  try {
    return TakeIn(archive, order, progress, cancel).run();
  } catch (const ArchiveFailure& failure) {
    return tl::unexpected(failure.error);
  }
}

} // namespace afterbeat::archive
