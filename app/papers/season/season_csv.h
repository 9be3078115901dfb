/// A season as CSV: one line a record, facts first, then every figure with its status.
#pragma once

#include "core/compare/season.h"

#include <functional>
#include <string>

namespace afterbeat::papers {

/// RFC 4180: CRLF, quotes doubled; numbers with a point whatever the locale. A figure without a
/// value is an empty cell, and the next column says why. A text that begins as a formula would
/// (= + - @, also full width) gets an apostrophe in front; control characters are spaces. Called
/// for each line, so that a large season never lies in memory as text.
void writeCsv(const Season& season, const Chosen& chosen,
              const std::function<void(const std::string&)>& line);

/// A text as a cell.
[[nodiscard]] std::string csvCell(const std::string& text);

} // namespace afterbeat::papers
