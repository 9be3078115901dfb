/// Steps on the way from records to a chart over time; for over_time*.cpp alone.
#pragma once

#include "core/compare/over_time.h"

namespace afterbeat::over_time {

/// What one record gives to a chart: a value, or counts to add up.
struct Given {
  double value = 0, with = 0, of = 0;
};

/// Gives what each record has, or why it has nothing.
class Subject {
public:
  Subject(const Season& season, const ChartSubject& subject);
  [[nodiscard]] tl::expected<Given, Status> of(std::uint32_t place) const;
  /// The measure is a share whose counts are known for at least one record, or no counts are asked.
  [[nodiscard]] bool hasCounts() const;
  [[nodiscard]] ChartKind chart(ChartKind wished) const;

private:
  [[nodiscard]] Given given(std::uint32_t place) const;
  const Season& season_;
  ChartSubject subject_;
  const FigureColumn* column_ = nullptr;
  const FigureColumn* exposure_ = nullptr;
};

/// A record that takes part: when, and with what.
struct Taken {
  std::chrono::sys_days day;
  /// How many steps lie at or before its day.
  std::size_t steps = 0;
  std::uint32_t place = 0;
  Given given;
};

/// The sum or median of the records of each period; a period that holds a step is cut there.
void fillPoints(const std::vector<Taken>& taken, const Subject& subject, OverTime& chart);

/// Centre lines, limits, signals; `stepOf` says for each point how many steps lie before it.
void fillSegments(const std::vector<Taken>& taken, OverTime& chart);

[[nodiscard]] Saying words(const OverTime& chart, const RuleHit& hit);
[[nodiscard]] Amount amountOf(const OverTime& chart, double value);

} // namespace afterbeat::over_time
