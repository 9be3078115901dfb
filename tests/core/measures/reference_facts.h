/// What the reference finds in a record before anything is measured.
#pragma once

#include "core/measures/figures.h"
#include "tests/core/measures/reference_grid.h"

#include <optional>
#include <vector>

namespace afterbeat::reference {

/// A stretch or moment on the grid and the entry it comes from.
struct Found {
  int from = 0, to = 0;
  std::size_t entry = 0;
};

/// A delivered shock and everything around it.
struct DeliveredShock {
  int at = 0;
  std::size_t entry = 0;
  /// End of the analysis it used.
  std::optional<int> analysisEnd;
  std::optional<int> pre, post;
};

/// Two consecutive kept compressions of one arrest interval, at most the threshold apart.
struct Beat {
  int first = 0, second = 0;
};

/// The whole record on its grid.
struct Facts {
  Facts(const Record& r, const FigureSettings& s)
      : record(r), settings(s), grid(r), handsOn(grid.points()), arrest(grid.points()),
        arrestNumber(static_cast<std::size_t>(grid.points()), -1), countedGaps(grid.points()) {}

  const Record& record;
  const FigureSettings& settings;
  Grid grid;

  std::vector<Found> kept, cpr, analyses, ventilations;
  std::vector<DeliveredShock> delivered;
  int droppedTwice = 0;
  GridSet handsOn, arrest;
  std::optional<int> windowBegin, windowEnd;
  std::vector<std::pair<int, int>> circulation, excludedInWindow;
  /// Of the arrest interval that holds a point; -1: none does.
  std::vector<int> arrestNumber;
  std::vector<std::pair<int, int>> gaps;
  GridSet countedGaps;
  std::vector<Beat> beats;

  [[nodiscard]] int arrestAt(int point) const {
    return arrestNumber[static_cast<std::size_t>(point)];
  }
  [[nodiscard]] bool evidence() const { return !kept.empty() || !cpr.empty(); }
  template <typename T>
  [[nodiscard]] const T& data(const Found& found) const {
    return std::get<T>(record.entries[found.entry].data);
  }
};

/// Finds everything but the figures themselves.
[[nodiscard]] Facts findFacts(const Record& record, const FigureSettings& settings);

/// Whether an entry has a type that does not move the record's end (setting `record_end`).
[[nodiscard]] bool outsideRecordEnd(const Entry& entry);

} // namespace afterbeat::reference
