#include "tests/core/measures/reference_grid.h"

#include <numeric>
#include <stdexcept>

namespace afterbeat::reference {

namespace {

constexpr std::int64_t kMinute = 60'000'000;

std::int64_t microseconds(Time t) {
  return t.time_since_epoch().count();
}

std::vector<std::int64_t> timesOf(const Record& record) {
  std::vector<std::int64_t> times;
  for (const Entry& e : record.entries) {
    if (e.hasTime) {
      times.push_back(microseconds(e.t));
      if (e.end) {
        times.push_back(microseconds(*e.end));
      }
    }
  }
  for (const Channel& channel : record.channels) {
    for (const SampleBlock& block : channel.blocks) {
      times.push_back(microseconds(block.t));
    }
    if (channel.lastLine) {
      times.push_back(microseconds(*channel.lastLine));
    }
  }
  return times;
}

} // namespace

Grid::Grid(const Record& record) {
  const std::vector<std::int64_t> times = timesOf(record);
  if (times.empty()) {
    return;
  }
  std::int64_t first = times[0], last = times[0];
  for (const std::int64_t t : times) {
    first = t < first ? t : first;
    last = t > last ? t : last;
  }
  origin_ = first;
  // The coarsest grid that holds every time keeps coarse records quick.
  tick_ = kMinute;
  for (const std::int64_t t : times) {
    tick_ = std::gcd(tick_, t - origin_);
  }
  if (tick_ % 1000 != 0) {
    throw std::logic_error("a time is not a whole millisecond");
  }
  points_ = static_cast<int>((last - first) / tick_) + 1;
}

int Grid::at(Time t) const {
  const std::int64_t distance = microseconds(t) - origin_;
  if (distance < 0 || distance % tick_ != 0 || distance / tick_ >= points_) {
    throw std::logic_error("no point of the grid");
  }
  return static_cast<int>(distance / tick_);
}

Time Grid::time(int point) const {
  return Time{Duration{origin_ + tick_ * point}};
}

Duration Grid::length(std::int64_t cells) const {
  return Duration{tick_ * cells};
}

int Grid::minute() const {
  return static_cast<int>(kMinute / tick_);
}

void GridSet::put(int from, int to) {
  for (int i = from; i <= to; ++i) {
    putPoint(i);
  }
  for (int i = from; i < to; ++i) {
    putCell(i);
  }
}

std::vector<std::pair<int, int>> GridSet::runs() const {
  std::vector<std::pair<int, int>> found;
  for (int i = 0; i < size(); ++i) {
    if (!point(i)) {
      continue;
    }
    const bool goesOn = i > 0 && point(i - 1) && cell(i - 1);
    if (goesOn) {
      found.back().second = i;
    } else {
      found.emplace_back(i, i);
    }
  }
  return found;
}

} // namespace afterbeat::reference
