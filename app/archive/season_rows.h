/// Records and columns of an archive as a season.
#pragma once

#include "app/archive/making_store.h"

#include <atomic>
#include <condition_variable>
#include <map>
#include <memory>
#include <mutex>
#include <set>
#include <thread>

namespace afterbeat::archive {

/// Facts of the newest versions. `limit` 0: all, in no order; else that many with the latest days,
/// latest first.
[[nodiscard]] std::vector<RecordFacts> readFacts(Database& database, std::int64_t making,
                                                 std::size_t limit);

/// By day, those without one last, and as they came.
[[nodiscard]] bool earlier(const RecordFacts& a, const RecordFacts& b);
void sortByDay(std::vector<RecordFacts>& records);

/// Statements whose plans are worth a test: `?` is the making (and measure, or limit).
[[nodiscard]] QString latestSql();
[[nodiscard]] QString undatedSql();
[[nodiscard]] QString allFactsSql();
[[nodiscard]] QString columnSql();
/// A column of these versions alone; a thousand or fewer.
[[nodiscard]] QString columnSql(const std::vector<std::int64_t>& numbers);

/// Columns of a season by measure, fetched once each. Views ask for many, one after another: once
/// the first is asked for, a thread of its own that gives way to others fetches the rest from a
/// file, each from its own connection.
class ColumnShelf {
public:
  /// `few`: each column is fetched for these records alone, and only when it is asked for.
  ColumnShelf(ArchivePlace place, std::int64_t making, const std::vector<RecordFacts>& records,
              bool few);
  ~ColumnShelf();
  ColumnShelf(const ColumnShelf&) = delete;
  ColumnShelf& operator=(const ColumnShelf&) = delete;
  const FigureColumn& column(MeasureId id);
  /// How many are there; for tests.
  [[nodiscard]] std::size_t ready();

private:
  /// Empty: it was stopped on the way.
  [[nodiscard]] std::unique_ptr<const FigureColumn> fetch(MeasureId id, bool ahead) const;
  void fetchAhead();
  [[nodiscard]] bool begin(MeasureId id);

  ArchivePlace place_;
  std::int64_t making_;
  std::size_t size_;
  QString sql_;
  /// Place in the season by the number of the version, -1: not in it. Numbers are dense.
  std::vector<std::int32_t> places_;
  std::mutex mutex_;
  std::condition_variable done_;
  std::map<MeasureId, std::unique_ptr<const FigureColumn>> columns_;
  /// Being fetched.
  std::set<MeasureId> begun_;
  bool ahead_ = false;
  std::atomic<bool> stop_ = false;
  std::thread thread_;
};

} // namespace afterbeat::archive
