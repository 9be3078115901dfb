#include "importers/csv/read_csv.h"

#include "core/bytes/digest.h"
#include "importers/csv/columns.h"
#include "importers/csv/decode_text.h"
#include "importers/csv/note_entries.h"
#include "importers/csv/note_times.h"
#include "importers/csv/words.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat {
namespace {

constexpr std::uint64_t kLargestNotes = 64ULL << 20U;

/// A row with a usable time.
struct TimedRow {
  const TableRow* row = nullptr;
  TimeCell cell;
  std::optional<std::chrono::year_month_day> date;
};

/// Makes a record of one table.
class NotesReader {
public:
  NotesReader(std::string_view bytes, const CsvColumns& named) : bytes_(bytes), named_(named) {}

  tl::expected<Imported, ImportError> read() {
    auto decoded = decodeText(bytes_);
    if (!decoded) {
      return tl::unexpected(decoded.error());
    }
    if (decoded->replaced > 0) {
      report(0, Severity::warning,
             inEnglish("Importers", "%1 characters could not be read and are shown as \uFFFD."),
             decoded->replaced);
    }
    rows_ = splitTable(decoded->text, guessSeparator(decoded->text));
    if (rows_.empty()) {
      return tl::unexpected(
          importError(inEnglish("Importers", "This file is empty; there are no notes in it.")));
    }
    if (std::all_of(rows_.begin(), rows_.end(),
                    [](const TableRow& row) { return row.cells.size() < 2; })) {
      return tl::unexpected(importError(
          inEnglish("Importers", "Only one column was found; notes need at least a time and what "
                                 "happened, with commas, semicolons or tabs between them.")));
    }
    auto plan = planColumns(rows_, named_);
    if (!plan) {
      return tl::unexpected(plan.error());
    }
    plan_ = std::move(*plan);
    return readRows();
  }

private:
  template <typename... Values>
  void report(int line, Severity severity, EnglishText said, const Values&... values) {
    result_.problems.push_back(importNote(line, severity, said, values...));
  }

  static const std::string& cellOf(const TableRow& row, std::optional<std::size_t> column) {
    static const std::string kNothing;
    return column && *column < row.cells.size() ? row.cells[*column] : kNothing;
  }

  tl::expected<Imported, ImportError> readRows() {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      if (plan_.heading != i) {
        readRow(rows_[i]);
      }
    }
    if (timed_.empty()) {
      return tl::unexpected(importError(
          inEnglish("Importers", "No line of these notes has a time that can be understood.")));
    }
    const auto meaning = decide();
    auto notes = meaning == TimeMeaning::clock ? notesByClock() : notesByElapsed();
    std::stable_sort(notes.begin(), notes.end(),
                     [](const TimedNote& a, const TimedNote& b) { return a.t < b.t; });
    auto& record = result_.record;
    record.entries = entriesFromNotes(notes, result_.problems);
    for (const auto& entry : record.entries) {
      record.lastTime = std::max(record.lastTime.value_or(entry.lastTime()), entry.lastTime());
    }
    finishHeader();
    return std::move(result_);
  }

  void readRow(const TableRow& row) {
    auto cell = parseTimeCell(cellOf(row, plan_.time));
    if (cell) {
      auto date = cell->date;
      if (!date && plan_.date) {
        date = parseDateCell(cellOf(row, plan_.date));
      }
      timed_.push_back({&row, std::move(*cell), date});
    } else if (!readFact(row)) {
      reportNoTime(row);
    }
  }

  void reportNoTime(const TableRow& row) {
    const auto& written = cellOf(row, plan_.time);
    if (written.empty()) {
      report(row.line, Severity::error,
             inEnglish("Importers", "This line has no time and is left out."));
    } else {
      report(
          row.line, Severity::error,
          inEnglish("Importers", "\"%1\" is no time that can be understood; the line is left out."),
          written);
    }
  }

  /// A line about the whole: "Date: 2026-03-14", "Datum;14.03.2026", "Kind;drill".
  bool readFact(const TableRow& row) {
    std::string text;
    for (const auto& cell : row.cells) {
      text += (text.empty() || cell.empty() ? "" : " ") + cell;
    }
    const auto end = text.find_first_of(": ");
    const auto key = wordsOf(std::string_view{text}.substr(0, end));
    const auto begin = text.find_first_not_of(": ", end);
    if (key.size() != 1 || begin == std::string::npos) {
      return false;
    }
    const auto value = text.substr(begin);
    if (key[0] == "date" || key[0] == "datum") {
      const auto date = parseDateCell(value);
      factDate_ = date ? date : factDate_;
      return date.has_value();
    }
    return (key[0] == "kind" || key[0] == "art") && readKind(value);
  }

  bool readKind(const std::string& value) {
    const auto words = wordsOf(value);
    const auto is = [&](const char* word) { return words == wordsOf(word); };
    auto& kind = result_.record.header.kind;
    if (is("drill") || is("exercise") || is("\u00dcbung")) {
      kind = RecordKind::drill;
    } else if (is("rescue") || is("Einsatz")) {
      kind = RecordKind::rescue;
    } else if (is("test") || is("Probe")) {
      kind = RecordKind::test;
    } else {
      return false;
    }
    return true;
  }

  TimeMeaning decide() {
    std::vector<TimeCell> cells;
    bool dated = false;
    for (const auto& one : timed_) {
      cells.push_back(one.cell);
      dated = dated || one.date;
    }
    const auto meaning = decideTimes(plan_.timeHeading(), cells, dated);
    report(0, Severity::info,
           meaning == TimeMeaning::clock
               ? inEnglish("Importers",
                           "The times were read as clock times (hours, minutes, seconds).")
               : inEnglish("Importers", "The times were read as time since the notes' own zero "
                                        "(minutes and seconds, or seconds)."));
    return meaning;
  }

  TimedNote noteAt(const TableRow& row, Time t) const {
    TimedNote note{t, row.line, cellOf(row, plan_.what), cellOf(row, plan_.value),
                   cellOf(row, plan_.remark)};
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      const bool known = i == plan_.time || plan_.date == i || plan_.what == i ||
                         plan_.value == i || plan_.remark == i;
      if (known || row.cells[i].empty()) {
        continue;
      }
      const auto name = i < plan_.names.size() ? plan_.names[i] : std::string{};
      note.remark += (note.remark.empty() ? "" : "; ") +
                     (name.empty() ? row.cells[i] : name + ": " + row.cells[i]);
    }
    return note;
  }

  std::vector<TimedNote> notesByElapsed() {
    std::vector<TimedNote> notes;
    for (const auto& one : timed_) {
      notes.push_back(noteAt(*one.row, Time{one.cell.elapsed}));
    }
    result_.record.header.clock.state = ClockState::unset;
    if (factDate_) {
      report(0, Severity::info,
             inEnglish("Importers",
                       "The notes name a date and no clock time, so the clock time is not known."));
    }
    return notes;
  }

  std::vector<TimedNote> notesByClock() {
    std::vector<const TimedRow*> usable;
    std::vector<Duration> readings;
    for (const auto& one : timed_) {
      if (!one.cell.clock) {
        reportNoTime(*one.row);
        continue;
      }
      usable.push_back(&one);
      readings.push_back(*one.cell.clock);
    }
    auto times = unwrapClock(readings);
    std::vector<TimedNote> notes;
    if (usable.empty()) {
      return notes;
    }
    applyDates(usable, times);
    for (std::size_t i = 0; i < usable.size(); ++i) {
      const auto t = Time{times[i] - times[0]};
      if (!timeFromSeconds(seconds(t))) {
        report(
            usable[i]->row->line, Severity::error,
            inEnglish(
                "Importers",
                "This time lies more than eleven days from the first one; the line is left out."));
        continue;
      }
      notes.push_back(noteAt(*usable[i]->row, t));
    }
    setClock(*usable[0], readings[0]);
    return notes;
  }

  /// A date in the row itself beats the order of the lines.
  static void applyDates(const std::vector<const TimedRow*>& usable, std::vector<Duration>& times) {
    std::optional<std::chrono::sys_days> first;
    for (std::size_t i = 0; i < usable.size(); ++i) {
      if (!usable[i]->date) {
        continue;
      }
      const std::chrono::sys_days day{*usable[i]->date};
      if (!first) {
        // The day of the first reading, as the order of the lines has it.
        first = day - std::chrono::floor<std::chrono::days>(times[i]);
      }
      times[i] = (day - *first) + *usable[i]->cell.clock;
    }
  }

  void setClock(const TimedRow& first, Duration reading) {
    auto& header = result_.record.header;
    const auto date = first.date ? first.date : factDate_;
    if (!date) {
      header.clock.state = ClockState::unset;
      result_.timeOfDay = reading;
      report(0, Severity::info,
             inEnglish("Importers",
                       "The notes give times of day and no date, so the clock time is not known."));
      return;
    }
    const auto zone = first.cell.zone;
    header.recorded =
        WallTime{std::chrono::sys_days{*date} + reading - zone.value_or(std::chrono::minutes{0}),
                 zone.value_or(std::chrono::minutes{0}), zone.has_value()};
    header.clock.state = zone ? ClockState::notStated : ClockState::zoneUnknown;
  }

  void finishHeader() {
    auto& header = result_.record.header;
    header.id = uuidFrom("csv " + sha256Hex(bytes_));
    if (!header.kind) {
      header.kind = RecordKind::test;
      result_.kindAssumed = true;
      report(0, Severity::info,
             inEnglish("Importers", "The notes do not say whether this was a rescue, a drill or a "
                                    "test (a line \"Kind;drill\" would); a test is assumed."));
    }
  }

  std::string_view bytes_;
  const CsvColumns& named_;
  std::vector<TableRow> rows_;
  ColumnPlan plan_;
  std::vector<TimedRow> timed_;
  std::optional<std::chrono::year_month_day> factDate_;
  Imported result_;
};

} // namespace

tl::expected<Imported, ImportError> parseCsv(std::string_view bytes, const CsvColumns& columns) {
  return NotesReader{bytes, columns}.read();
}

tl::expected<Imported, ImportError> readCsv(const std::filesystem::path& path,
                                            const CsvColumns& columns) {
  auto source = openFile(path);
  auto bytes = source ? readAll(**source, kLargestNotes)
                      : tl::expected<std::string, IoError>{tl::unexpected(source.error())};
  if (!bytes) {
    return tl::unexpected(
        importError(inEnglish("Importers", "The notes cannot be read: %1."), bytes.error().what));
  }
  return parseCsv(*bytes, columns);
}

} // namespace afterbeat
