/// Text as rows of cells.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

struct TableRow {
  /// Where the row begins, counted from 1.
  int line = 0;
  /// Without quotes and without spaces around.
  std::vector<std::string> cells;
};

/// Splits at `separator` outside quotes (RFC 4180; a quote that is never closed is an ordinary
/// character). Rows without any content are left out.
[[nodiscard]] std::vector<TableRow> splitTable(std::string_view text, char separator);

/// The separator among tab, semicolon and comma that gives most rows several cells of which one is
/// a time; at a tie the first in that order, as commas also stand in numbers and sentences.
[[nodiscard]] char guessSeparator(std::string_view text);

} // namespace afterbeat
