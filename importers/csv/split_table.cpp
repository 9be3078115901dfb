#include "importers/csv/split_table.h"

#include "importers/csv/note_times.h"

#include <algorithm>
#include <optional>

namespace afterbeat {
namespace {

/// Rows looked at to guess the separator.
constexpr std::size_t kRowsToGuessFrom = 200;

std::string trimmed(std::string_view text) {
  const auto begin = text.find_first_not_of(" \t\r\n");
  const auto end = text.find_last_not_of(" \t\r\n");
  return begin == std::string_view::npos ? std::string{}
                                         : std::string{text.substr(begin, end - begin + 1)};
}

/// Walks over the text cell by cell.
class Splitter {
public:
  Splitter(std::string_view text, char separator) : text_(text), separator_(separator) {}

  [[nodiscard]] bool atEnd() const { return at_ >= text_.size(); }

  TableRow takeRow() {
    TableRow row;
    row.line = line_;
    while (true) {
      row.cells.push_back(takeCell());
      if (atEnd()) {
        return row;
      }
      const char mark = text_[at_++];
      if (mark != separator_) {
        takeLineEnd(mark);
        return row;
      }
      if (atEnd()) { // a separator right at the end begins one more, empty, cell
        row.cells.emplace_back();
        return row;
      }
    }
  }

private:
  void takeLineEnd(char mark) {
    ++line_;
    if (mark == '\r' && !atEnd() && text_[at_] == '\n') {
      ++at_;
    }
  }

  std::string takeCell() {
    while (!atEnd() && text_[at_] == ' ') {
      ++at_;
    }
    if (!atEnd() && text_[at_] == '"') {
      if (auto quoted = takeQuoted()) {
        return trimmed(*quoted + std::string{takePlain()});
      }
    }
    return trimmed(takePlain());
  }

  std::string_view takePlain() {
    const char marks[] = {separator_, '\n', '\r'};
    const auto end = std::min(text_.find_first_of(std::string_view{marks, 3}, at_), text_.size());
    const auto piece = text_.substr(at_, end - at_);
    at_ = end;
    return piece;
  }

  /// The content between quotes; nothing, and no step, if the quote is never closed.
  std::optional<std::string> takeQuoted() {
    if (noMoreQuotes_) {
      return std::nullopt;
    }
    std::string content;
    std::size_t i = at_ + 1;
    int lines = 0;
    for (; i < text_.size(); ++i) {
      if (text_[i] == '"') {
        if (cellEndsAfter(i)) {
          break;
        }
        i += i + 1 < text_.size() && text_[i + 1] == '"' ? 1 : 0;
      }
      lines += text_[i] == '\n' ? 1 : 0;
      content.push_back(text_[i]);
    }
    if (i >= text_.size()) {
      noMoreQuotes_ = true;
      return std::nullopt;
    }
    line_ += lines;
    at_ = i + 1;
    return content;
  }

  /// Whether a quote at `i` can close a cell: only spaces follow before the next one. Elsewhere it
  /// is a character ("24\" wide").
  [[nodiscard]] bool cellEndsAfter(std::size_t i) const {
    const auto next = text_.find_first_not_of(' ', i + 1);
    return next == std::string_view::npos || text_[next] == separator_ || text_[next] == '\n' ||
           text_[next] == '\r';
  }

  std::string_view text_;
  char separator_;
  std::size_t at_ = 0;
  int line_ = 1;
  /// A quote was found open to the end of the text; looking again would take forever.
  bool noMoreQuotes_ = false;
};

bool hasContent(const TableRow& row) {
  return std::any_of(row.cells.begin(), row.cells.end(),
                     [](const std::string& cell) { return !cell.empty(); });
}

/// Rows with several cells count; rows of which one cell is a time count for more than all of the
/// others together.
std::size_t evidenceFor(std::string_view text, char separator) {
  Splitter splitter{text, separator};
  std::size_t found = 0;
  for (std::size_t i = 0; i < kRowsToGuessFrom && !splitter.atEnd(); ++i) {
    const auto row = splitter.takeRow();
    const bool time = std::any_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
      return parseTimeCell(cell).has_value();
    });
    found += row.cells.size() < 2 ? 0 : time ? kRowsToGuessFrom + 1 : 1;
  }
  return found;
}

} // namespace

std::vector<TableRow> splitTable(std::string_view text, char separator) {
  Splitter splitter{text, separator};
  std::vector<TableRow> rows;
  while (!splitter.atEnd()) {
    auto row = splitter.takeRow();
    if (hasContent(row)) {
      rows.push_back(std::move(row));
    }
  }
  return rows;
}

char guessSeparator(std::string_view text) {
  char best = '\t';
  std::size_t most = 0;
  for (const char separator : {'\t', ';', ','}) {
    const auto found = evidenceFor(text, separator);
    if (found > most) {
      most = found;
      best = separator;
    }
  }
  return best;
}

} // namespace afterbeat
