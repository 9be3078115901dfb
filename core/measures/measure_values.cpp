#include "core/measures/measure_values.h"

#include <algorithm>

namespace afterbeat {

Measure recorded(MeasureId id, double value, std::vector<WorkingPart> working,
                 std::optional<double> numerator, std::optional<double> denominator) {
  return {id, Status::ok, value, numerator, denominator, std::move(working)};
}

Measure ratio(MeasureId id, double numerator, double denominator, std::vector<WorkingPart> working,
              double factor) {
  if (denominator == 0) {
    return notApplicable(id);
  }
  return recorded(id, factor * numerator / denominator, std::move(working), numerator, denominator);
}

Measure notRecorded(MeasureId id) {
  return {id, Status::notRecorded, {}, {}, {}, {}};
}

Measure notApplicable(MeasureId id) {
  return {id, Status::notApplicable, {}, {}, {}, {}};
}

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  return n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2;
}

} // namespace afterbeat
