#include "importers/csv/columns.h"

#include "importers/csv/meaning.h"
#include "importers/csv/note_times.h"
#include "importers/csv/vocabulary.h"

#include <algorithm>
#include <charconv>

#include <fmt/format.h>

namespace afterbeat {
namespace {

/// Rows looked at to guess what a column holds.
constexpr std::size_t kRowsToGuessFrom = 200;

bool isTime(const std::string& cell) {
  return parseTimeCell(cell).has_value();
}
bool isDate(const std::string& cell) {
  return parseDateCell(cell).has_value();
}
bool isKnownEvent(const std::string& cell) {
  return meaningOf(cell, {}).has_value();
}
bool isWords(const std::string& cell) {
  return !cell.empty() && !isTime(cell) && !tokensOf(cell).empty();
}

/// Plans the columns of one table.
class Planner {
public:
  Planner(const std::vector<TableRow>& rows, const CsvColumns& named) : rows_(rows), named_(named) {
    for (const auto& row : rows) {
      width_ = std::max(width_, row.cells.size());
    }
    used_.resize(width_, false);
  }

  tl::expected<ColumnPlan, ImportError> plan() {
    findHeading();
    for (const auto& [wanted, role] : {std::pair{&named_.time, ColumnRole::time},
                                       {&named_.what, ColumnRole::what},
                                       {&named_.value, ColumnRole::value},
                                       {&named_.remark, ColumnRole::remark}}) {
      if (!wanted->empty() && !takeNamed(*wanted, role)) {
        return tl::unexpected(noSuchColumn(*wanted));
      }
    }
    takeByHeading();
    takeByContent();
    if (!time_) {
      return tl::unexpected(importError(
          inEnglish("Importers", "No column with times was found; one with seconds (95), minutes "
                                 "and seconds (1:35) or clock times (14:05:30) is needed.")));
    }
    plan_.time = *time_;
    return plan_;
  }

private:
  /// Among the rows above the first one with a time, the one with most heading words; the last
  /// such row at a tie. A row that names an event and no heading is a note whose time is missing.
  void findHeading() {
    const auto end = std::min<std::size_t>(rows_.size(), 20);
    std::ptrdiff_t most = -1;
    for (std::size_t i = 0; i < end && !holdsAny(rows_[i].cells, isTime); ++i) {
      const auto& cells = rows_[i].cells;
      const auto filled =
          std::count_if(cells.begin(), cells.end(), [](const auto& cell) { return !cell.empty(); });
      const auto known = std::count_if(cells.begin(), cells.end(), [](const auto& cell) {
        return roleOfHeading(cell) != ColumnRole::other;
      });
      const bool note = known == 0 && holdsAny(cells, isKnownEvent);
      if (filled > 1 && known >= most && !note && !holdsAny(cells, isDate) && !isFact(cells)) {
        most = known;
        plan_.heading = i;
        plan_.names = cells;
      }
    }
  }

  template <typename Test>
  static bool holdsAny(const std::vector<std::string>& cells, Test&& test) {
    return std::any_of(cells.begin(), cells.end(), test);
  }

  /// A line about the whole, such as "Kind;drill".
  static bool isFact(const std::vector<std::string>& cells) {
    const auto words = wordsOf(cells.front());
    return cells.size() == 2 && words.size() == 1 && (words[0] == "kind" || words[0] == "art");
  }

  bool takeNamed(const std::string& wanted, ColumnRole role) {
    const auto folded = wordsOf(wanted);
    for (std::size_t i = 0; i < plan_.names.size(); ++i) {
      if (!used_[i] && (plan_.names[i] == wanted || wordsOf(plan_.names[i]) == folded)) {
        take(i, role);
        return true;
      }
    }
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(wanted.data(), wanted.data() + wanted.size(), number);
    if (error != std::errc{} || end != wanted.data() + wanted.size() || number < 1 ||
        number > width_ || used_[number - 1]) {
      return false;
    }
    take(number - 1, role);
    return true;
  }

  [[nodiscard]] ImportError noSuchColumn(const std::string& wanted) const {
    return plan_.names.empty()
               ? importError(
                     inEnglish(
                         "Importers",
                         "There is no column \"%1\"; the table has no headings and %2 columns."),
                     wanted, width_)
               : importError(
                     inEnglish("Importers", "There is no column \"%1\"; the headings are: %2."),
                     wanted, fmt::format("{}", fmt::join(plan_.names, ", ")));
  }

  void take(std::size_t column, ColumnRole role) {
    std::optional<std::size_t>* const places[] = {&time_, &plan_.date, &plan_.what, &plan_.value,
                                                  &plan_.remark};
    auto* place = places[static_cast<std::size_t>(role)];
    if (!*place) {
      *place = column;
      used_[column] = true;
    }
  }

  void takeByHeading() {
    for (std::size_t i = 0; i < plan_.names.size(); ++i) {
      const auto role = roleOfHeading(plan_.names[i]);
      const bool fits = role != ColumnRole::time || share(i, isTime) > 0;
      if (!used_[i] && role != ColumnRole::other && fits) {
        take(i, role);
      }
    }
  }

  template <typename Test>
  double share(std::size_t column, Test&& test) const {
    const std::size_t begin = plan_.heading ? *plan_.heading + 1 : 0;
    const auto end = std::min(rows_.size(), begin + kRowsToGuessFrom);
    std::size_t fits = 0;
    for (std::size_t i = begin; i < end; ++i) {
      const auto& cells = rows_[i].cells;
      fits += column < cells.size() && test(cells[column]) ? 1 : 0;
    }
    return end > begin ? static_cast<double>(fits) / static_cast<double>(end - begin) : 0;
  }

  /// The free column with the largest share, the first at a tie; nothing below `least`.
  template <typename Test>
  std::optional<std::size_t> best(Test&& test, double least) const {
    std::optional<std::size_t> found;
    double largest = least;
    for (std::size_t i = 0; i < width_; ++i) {
      const double here = used_[i] ? 0 : share(i, test);
      if (here > largest || (here == largest && here > 0 && !found)) {
        largest = here;
        found = i;
      }
    }
    return found;
  }

  void takeByContent() {
    if (!time_) {
      takeTimeByContent();
    }
    if (!plan_.date) {
      takeIf(best(isDate, 0.5), ColumnRole::date);
    }
    if (!plan_.what) {
      const auto known = best(isKnownEvent, 0.2);
      takeIf(known ? known : best(isWords, 0.01), ColumnRole::what);
    }
    if (plan_.heading) {
      return; // columns with other headings are kept as remarks, with their name
    }
    for (const auto role : {ColumnRole::value, ColumnRole::remark}) {
      takeIf(nextFree(), role);
    }
  }

  /// The first column in which half of the rows hold a time, else the one with most of them.
  void takeTimeByContent() {
    for (std::size_t i = 0; i < width_; ++i) {
      if (!used_[i] && share(i, isTime) >= 0.5) {
        take(i, ColumnRole::time);
        return;
      }
    }
    takeIf(best(isTime, 0.01), ColumnRole::time);
  }

  void takeIf(std::optional<std::size_t> column, ColumnRole role) {
    if (column) {
      take(*column, role);
    }
  }

  [[nodiscard]] std::optional<std::size_t> nextFree() const {
    const auto found = std::find(used_.begin(), used_.end(), false);
    return found == used_.end() ? std::nullopt
                                : std::optional{static_cast<std::size_t>(found - used_.begin())};
  }

  const std::vector<TableRow>& rows_;
  const CsvColumns& named_;
  std::size_t width_ = 0;
  std::vector<bool> used_;
  std::optional<std::size_t> time_;
  ColumnPlan plan_;
};

} // namespace

tl::expected<ColumnPlan, ImportError> planColumns(const std::vector<TableRow>& rows,
                                                  const CsvColumns& named) {
  return Planner{rows, named}.plan();
}

} // namespace afterbeat
