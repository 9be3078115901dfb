#include "core/measures/interval.h"

#include <algorithm>

namespace afterbeat {

std::vector<Interval> merged(std::vector<Interval> stretches) {
  std::sort(stretches.begin(), stretches.end(), [](const Interval& a, const Interval& b) {
    return a.begin != b.begin ? a.begin < b.begin : a.end < b.end;
  });
  std::vector<Interval> result;
  for (const Interval& stretch : stretches) {
    if (!result.empty() && stretch.begin <= result.back().end) {
      result.back().end = std::max(result.back().end, stretch.end);
    } else {
      result.push_back(stretch);
    }
  }
  return result;
}

Duration total(const std::vector<Interval>& stretches) {
  Duration sum{};
  for (const Interval& stretch : stretches) {
    sum += stretch.length();
  }
  return sum;
}

Duration overlap(const Interval& one, const std::vector<Interval>& many) {
  Duration sum{};
  auto it = std::lower_bound(many.begin(), many.end(), one.begin,
                             [](const Interval& m, Time t) { return m.end < t; });
  for (; it != many.end() && it->begin < one.end; ++it) {
    sum += std::max(Duration{}, std::min(one.end, it->end) - std::max(one.begin, it->begin));
  }
  return sum;
}

std::vector<Interval> withoutInteriors(const Interval& whole, const std::vector<Interval>& holes) {
  std::vector<Interval> rest;
  Time begin = whole.begin;
  for (const Interval& hole : holes) {
    if (hole.begin == hole.end || hole.end <= whole.begin) {
      continue;
    }
    if (hole.begin >= whole.end) {
      break;
    }
    if (hole.begin >= begin) {
      rest.push_back({begin, hole.begin});
    }
    begin = hole.end;
    if (begin > whole.end) {
      return rest;
    }
  }
  rest.push_back({begin, whole.end});
  return rest;
}

int indexHolding(const std::vector<Interval>& many, Time t) {
  const auto it = std::lower_bound(many.begin(), many.end(), t,
                                   [](const Interval& m, Time at) { return m.end < at; });
  return it != many.end() && it->begin <= t ? static_cast<int>(it - many.begin()) : -1;
}

} // namespace afterbeat
