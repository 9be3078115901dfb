/// The tables of a record as rows of cells: minutes, cycles, pauses, shocks, the ECG around them.
#pragma once

#include "core/measures/figures.h"
#include "core/signal/derive/derive.h"

#include <QString>

#include <optional>
#include <vector>

namespace afterbeat::window {

enum class TableKind : std::uint8_t { minutes, cycles, pauses, shocks, ecgAtShocks };

/// A column: what it says and in which unit.
struct TableColumn {
  QString title;
  /// "s", "a minute", "mm"; empty for words and counts.
  QString unit;
  /// Stands on the right and is sorted by number.
  bool number = true;
};

/// What stands in a row under a column.
struct TableCell {
  QString text;
  /// What it is sorted by; empty: not recorded (sorted last), or a word.
  std::optional<double> number;
  /// Said in words, set fainter.
  bool recorded = true;
};

struct TableRow {
  Interval stretch;
  /// "shock 2": what is selected with the row.
  QString what;
  std::vector<TableCell> cells;
};

struct TableContent {
  std::vector<TableColumn> columns;
  std::vector<TableRow> rows;
  /// Said in place of a table without rows.
  QString none;
  /// Stands under the table; empty: nothing.
  QString caution;
};

/// `hints` may be null: the ECG around shocks is then not known.
[[nodiscard]] TableContent tableContent(TableKind kind, const Record& record,
                                        const Figures& figures, const Derived* hints = nullptr);

} // namespace afterbeat::window
