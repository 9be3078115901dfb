/// Sets of time as booleans on a grid: the moments themselves, and the open cells between them.
///
/// Closed edges and stretches of zero length come out right by themselves: a stretch [a, b] is the
/// points a to b and the cells between them; a single moment is a point without cells.
#pragma once

#include "core/record/record.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace afterbeat::reference {

/// Points at equal distances, a whole number of milliseconds apart. Every time of the record, and
/// every whole minute from any of them, is a point.
class Grid {
public:
  /// Throws std::logic_error if a time of the record is not a whole millisecond.
  explicit Grid(const Record& record);

  [[nodiscard]] int points() const { return points_; }
  /// The point at `t`; throws std::logic_error where there is none.
  [[nodiscard]] int at(Time t) const;
  [[nodiscard]] Time time(int point) const;
  [[nodiscard]] Duration length(std::int64_t cells) const;
  /// Points from one to one a minute later.
  [[nodiscard]] int minute() const;

private:
  std::int64_t origin_ = 0, tick_ = 1000;
  int points_ = 1;
};

/// A set of time on a grid.
class GridSet {
public:
  explicit GridSet(int points)
      : points_(static_cast<std::size_t>(points), 0), cells_(static_cast<std::size_t>(points), 0) {}

  [[nodiscard]] bool point(int i) const { return points_[static_cast<std::size_t>(i)] != 0; }
  /// The open cell between the points i and i + 1.
  [[nodiscard]] bool cell(int i) const { return cells_[static_cast<std::size_t>(i)] != 0; }
  void putPoint(int i) { points_[static_cast<std::size_t>(i)] = 1; }
  void putCell(int i) { cells_[static_cast<std::size_t>(i)] = 1; }
  void dropPoint(int i) { points_[static_cast<std::size_t>(i)] = 0; }
  void dropCell(int i) { cells_[static_cast<std::size_t>(i)] = 0; }
  [[nodiscard]] int size() const { return static_cast<int>(points_.size()); }

  /// The closed stretch from one point to another.
  void put(int from, int to);
  /// Maximal connected stretches (first and last point). Only for closed sets.
  [[nodiscard]] std::vector<std::pair<int, int>> runs() const;

private:
  std::vector<char> points_, cells_;
};

} // namespace afterbeat::reference
