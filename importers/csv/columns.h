/// Which column of a table holds what.
#pragma once

#include "importers/csv/read_csv.h"
#include "importers/csv/split_table.h"

#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// Columns by number from 0.
struct ColumnPlan {
  std::size_t time = 0;
  std::optional<std::size_t> date, what, value, remark;
  /// Index of the heading row in the table; everything above it is no note.
  std::optional<std::size_t> heading;
  /// Of the heading row; empty without one.
  std::vector<std::string> names;

  [[nodiscard]] std::string timeHeading() const {
    return time < names.size() ? names[time] : std::string{};
  }
};

/// Finds the columns: those the user named first, then by the words of a heading row, then by
/// content (the first column in which most rows have a time, the column with most known words, the
/// ones behind it). An error if no column holds times, or a named one does not exist.
[[nodiscard]] tl::expected<ColumnPlan, ImportError> planColumns(const std::vector<TableRow>& rows,
                                                                const CsvColumns& named);

} // namespace afterbeat
