#include "app/window/session/selection.h"

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

Time middleOf(const Interval& stretch) {
  return stretch.begin + stretch.length() / 2;
}

Interval around(Time middle, Duration length) {
  const Time begin = middle - length / 2;
  return {begin, begin + length};
}

} // namespace

void Selection::setStretch(const Interval& stretch, const QString& what) {
  const Duration longest = std::clamp(extent_.length() + extent_.length() / 10, kAround, kLongest);
  const Duration length = std::clamp(stretch.length(), kShortest, longest);
  const Time middle = std::clamp(middleOf(stretch), extent_.begin, extent_.end);
  const Interval cut =
      length == stretch.length() && middle == middleOf(stretch) ? stretch : around(middle, length);
  if (cut == stretch_ && what == what_) {
    return;
  }
  stretch_ = cut;
  what_ = what;
  emit stretchChanged();
}

void Selection::lookAt(Time t, const QString& what) {
  setStretch(around(t, kAround), what);
}

void Selection::lookAtAll(const Interval& part, const QString& what) {
  setStretch(around(middleOf(part), std::max(kAround, part.length() * 5 / 4)), what);
}

void Selection::moveBy(Duration by) {
  setStretch({stretch_.begin + by, stretch_.end + by});
}

void Selection::zoom(double factor, std::optional<Time> fixed) {
  const Time still = fixed.value_or(middleOf(stretch_));
  const double old = static_cast<double>(stretch_.length().count());
  const double wanted = std::clamp(old * factor, static_cast<double>(kShortest.count()),
                                   static_cast<double>(kLongest.count()));
  const double before = static_cast<double>((still - stretch_.begin).count()) * wanted / old;
  const Time begin = still - Duration{std::llround(before)};
  setStretch({begin, begin + Duration{std::llround(wanted)}}, what_);
}

void Selection::setCursor(std::optional<Time> t) {
  if (t != cursor_) {
    cursor_ = t;
    emit cursorChanged();
  }
}

void Selection::setMeasure(std::optional<MeasureId> measure) {
  if (measure != measure_) {
    measure_ = measure;
    emit measureChanged();
  }
}

Interval extentOf(const Record& record, const Figures& figures) {
  std::optional<Interval> all = figures.window;
  const auto add = [&all](Time begin, Time end) {
    all =
        all ? Interval{std::min(all->begin, begin), std::max(all->end, end)} : Interval{begin, end};
  };
  for (const Entry& entry : record.entries) {
    if (entry.hasTime && !entry.incomplete) {
      add(entry.t, entry.lastTime());
    }
  }
  const std::vector<SampleBlock> none;
  for (const Channel& channel : record.channels) {
    for (const SampleBlock& block : channel.drawable ? channel.blocks : none) {
      add(block.t, channel.timeOf(block, block.count));
    }
  }
  if (!all || all->length() < Selection::kAround) {
    const Time begin = all ? all->begin : Time{};
    return {begin, begin + Selection::kAround};
  }
  return *all;
}

} // namespace afterbeat::window
