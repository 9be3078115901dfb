#include "core/compare/over_time_parts.h"
#include "core/statistics/quantile.h"

#include <algorithm>

namespace afterbeat::over_time {
namespace {

using std::chrono::sys_days;

/// The first day of the period that holds `day`.
sys_days beginOf(sys_days day, Period period) {
  const std::chrono::year_month_day date(day);
  const auto month = static_cast<unsigned>(date.month());
  const std::chrono::day first{1};
  switch (period) {
  case Period::week:
    return day - (std::chrono::weekday(day) - std::chrono::Monday);
  case Period::month:
    return sys_days(date.year() / date.month() / first);
  case Period::quarter:
    return sys_days(date.year() / std::chrono::month((month - 1) / 3 * 3 + 1) / first);
  case Period::year:
    return sys_days(date.year() / std::chrono::January / first);
  case Period::record:
  case Period::day:
    break;
  }
  return day;
}

bool samePoint(const Taken& a, const Taken& b, Period period) {
  return period != Period::record && a.steps == b.steps &&
         beginOf(a.day, period) == beginOf(b.day, period);
}

} // namespace

Subject::Subject(const Season& season, const ChartSubject& subject)
    : season_(season), subject_(subject) {
  if (const auto* value = std::get_if<ValueOf>(&subject_)) {
    column_ = &season.column(value->measure);
  } else if (const auto* with = std::get_if<RecordsWith>(&subject_)) {
    column_ = &season.column(with->measure);
  } else if (const auto* share = std::get_if<CountedShare>(&subject_)) {
    column_ = &season.column(share->measure);
  } else if (const auto* counted = std::get_if<CountedFor>(&subject_)) {
    column_ = &season.column(counted->count);
    exposure_ = &season.column(counted->exposure);
  }
}

bool Subject::hasCounts() const {
  if (!std::holds_alternative<CountedShare>(subject_)) {
    return true;
  }
  return amountKind(std::get<CountedShare>(subject_).measure) == AmountKind::share &&
         (std::none_of(column_->begin(), column_->end(), [](auto& cell) { return cell.ok(); }) ||
          std::any_of(column_->begin(), column_->end(),
                      [](auto& cell) { return cell.ok() && cell.of > 0; }));
}

ChartKind Subject::chart(ChartKind wished) const {
  if (std::holds_alternative<ValueOf>(subject_)) {
    return wished == ChartKind::individuals ? wished : ChartKind::run;
  }
  return std::holds_alternative<CountedFor>(subject_) ? ChartKind::counts : ChartKind::shares;
}

tl::expected<Given, Status> Subject::of(std::uint32_t place) const {
  if (std::holds_alternative<RecordsWithShock>(subject_)) {
    const auto& shock = season_.records[place].hadShock;
    if (!shock) {
      return tl::unexpected(Status::notRecorded);
    }
    return Given{0, *shock ? 1.0 : 0.0, 1};
  }
  const FigureCell& cell = (*column_)[place];
  if (!cell.ok()) {
    return tl::unexpected(cell.status);
  }
  if (exposure_ != nullptr) {
    const FigureCell& exposure = (*exposure_)[place];
    if (!exposure.ok() || exposure.value <= 0) {
      return tl::unexpected(exposure.ok() ? Status::notApplicable : exposure.status);
    }
    return Given{0, cell.value, exposure.value / std::get<CountedFor>(subject_).per};
  }
  if (std::holds_alternative<CountedShare>(subject_) && cell.of <= 0) {
    return tl::unexpected(Status::notRecorded);
  }
  return given(place);
}

Given Subject::given(std::uint32_t place) const {
  const FigureCell& cell = (*column_)[place];
  if (const auto* with = std::get_if<RecordsWith>(&subject_)) {
    const bool passes = with->atLeast ? cell.value >= with->limit : cell.value < with->limit;
    return {0, passes ? 1.0 : 0.0, 1};
  }
  if (std::holds_alternative<CountedShare>(subject_)) {
    const auto of = static_cast<double>(cell.of);
    return {0, cell.value * of, of};
  }
  return {cell.value, 0, 0};
}

void fillPoints(const std::vector<Taken>& taken, const Subject& subject, OverTime& chart) {
  const Period period = chart.settings.period;
  chart.chart = subject.chart(chart.settings.chart);
  const bool summed = chart.chart == ChartKind::shares || chart.chart == ChartKind::counts;
  chart.records.reserve(taken.size());
  for (std::size_t begin = 0; begin < taken.size();) {
    TimePoint point;
    point.firstDay = taken[begin].day;
    point.firstRecord = static_cast<std::uint32_t>(begin);
    std::vector<double> values;
    std::size_t end = begin;
    for (; end < taken.size() && (end == begin || samePoint(taken[begin], taken[end], period));
         ++end) {
      chart.records.push_back(taken[end].place);
      point.lastDay = taken[end].day;
      point.with += taken[end].given.with;
      point.of += taken[end].given.of;
      values.push_back(taken[end].given.value);
    }
    point.recordCount = static_cast<std::uint32_t>(end - begin);
    point.value = summed ? point.with / point.of : *medianOf(std::move(values));
    chart.points.push_back(point);
    begin = end;
  }
}

} // namespace afterbeat::over_time
