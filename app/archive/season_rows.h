/// Records and columns of an archive as a season.
#pragma once

#include "app/archive/making_store.h"

#include <map>
#include <memory>
#include <mutex>

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

/// Columns of a season by measure, fetched once each.
class ColumnShelf {
public:
  /// `few`: each column is fetched for these records alone.
  ColumnShelf(ArchivePlace place, std::int64_t making, const std::vector<RecordFacts>& records,
              bool few);
  const FigureColumn& column(MeasureId id);

private:
  [[nodiscard]] FigureColumn fetch(MeasureId id) const;

  ArchivePlace place_;
  std::int64_t making_;
  std::size_t size_;
  QString sql_;
  /// Place in the season by the number of the version, -1: not in it. Numbers are dense.
  std::vector<std::int32_t> places_;
  std::mutex mutex_;
  std::map<MeasureId, std::unique_ptr<const FigureColumn>> columns_;
};

} // namespace afterbeat::archive
