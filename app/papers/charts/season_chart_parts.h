/// What the makers of charts share.
#pragma once

#include "app/papers/charts/season_charts.h"
#include "app/papers/said.h"

namespace afterbeat::papers {

/// An axis for values of this kind: titled, and at 0 where nothing lies below.
[[nodiscard]] ChartAxis valueAxis(const Words& words, AmountKind kind, const QString& title);

/// Widens an axis to hold a value; the first one sets it.
class AxisRange {
public:
  void add(double value);
  /// Writes the range into the axis, beginning at 0 for shares, counts and lengths of time.
  void into(ChartAxis& axis) const;

private:
  std::optional<double> from_, to_;
};

/// Each saying a sentence or more of its own.
[[nodiscard]] QStringList sentences(const std::vector<Saying>& sayings, const Words& words);

/// "12 Mar 2026".
[[nodiscard]] QString dayText(std::chrono::sys_days day, const Words& words);
/// "Mar 2026", where no more may be said.
[[nodiscard]] QString monthText(std::chrono::sys_days day, const Words& words);
/// Of a record that has a day: as much of it as may be said.
[[nodiscard]] QString dayText(const RecordFacts& record, const Words& words);

/// "rescues", "drills", "tests", "records of no stated kind".
[[nodiscard]] QString kindWords(StatedKind kind, const Words& words);

/// "23 records", "1 record".
[[nodiscard]] QString recordCount(std::size_t records, const Words& words);

} // namespace afterbeat::papers
