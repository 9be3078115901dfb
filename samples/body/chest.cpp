#include "samples/body/chest.h"

namespace afterbeat::samples::body {

namespace {

bool sameRun(const Press& a, const Press& b) {
  return b.s - a.s <= kLongestBeat;
}

/// Seconds that a lonely compression takes from one end to the other.
constexpr double kLonely = 0.6;

} // namespace

Chest::Chest(const std::vector<Press>& presses) {
  const std::size_t n = presses.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Press& now = presses[i];
    const bool begins = i == 0 || !sameRun(presses[i - 1], now);
    const bool ends = i + 1 == n || !sameRun(now, presses[i + 1]);
    const double after = ends ? kLonely : presses[i + 1].s - now.s;
    const double before = begins ? after : now.s - presses[i - 1].s;
    const StrokeShares shares = sharesOf(now.stroke);
    const double down = shares.down * before;
    parts_.push_back(
        {now.s - down, now.s, begins ? 0 : presses[i - 1].lean, now.depth, now.stroke, begins});
    // The way up must be done before the next one's stroke, which may be of another kind, begins.
    const double room = ends ? 1 : 1 - sharesOf(presses[i + 1].stroke).down;
    const double up = (shares.up < room ? shares.up : room) * (ends ? before : after);
    parts_.push_back({now.s, now.s + up, now.depth, ends ? 0 : now.lean, now.stroke, ends});
  }
}

Curve Chest::Follower::at(double s) {
  const auto& parts = *parts_;
  while (next_ < parts.size() && parts[next_].to <= s) {
    level_ = parts[next_++].last;
  }
  if (next_ == parts.size() || s < parts[next_].from) {
    return {level_, 0, 0};
  }
  const ChestPart& part = parts[next_];
  const double length = part.to - part.from, x = (s - part.from) / length;
  const bool down = part.last > part.first;
  const double low = down ? part.first : part.last, size = (down ? part.last : part.first) - low;
  const Curve c = strokeCurve(part.stroke, down ? x : 1 - x, part.fromRest);
  return {low + size * c.value, (down ? size : -size) * c.slope / length,
          size * c.bend / (length * length)};
}

std::vector<double> travelOf(const std::vector<Press>& presses) {
  std::vector<double> travel;
  travel.reserve(presses.size());
  for (std::size_t i = 0; i < presses.size(); ++i) {
    const bool begins = i == 0 || !sameRun(presses[i - 1], presses[i]);
    travel.push_back(presses[i].depth - (begins ? 0 : presses[i - 1].lean));
  }
  return travel;
}

} // namespace afterbeat::samples::body
