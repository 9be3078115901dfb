#include "core/signal/ecg/quality.h"

#include <algorithm>
#include <cmath>

namespace afterbeat {

namespace {

constexpr std::size_t kPlateau = 3;
constexpr double kLongPlateau = 0.04;
constexpr double kJumpSteps = 5;

} // namespace

/// `signedValue` is the value times `sign`, so that larger means further out at both ends.
void RailLearner::End::add(double previous, double signedValue) {
  const double jump = std::isnan(previous) ? 0 : std::fabs(signedValue - sign * previous);
  if (signedValue > value) {
    value = signedValue;
    run = 1;
    longest = 1;
    jumpIn = jump;
    jumps[0] = jumps[1] = 0;
  } else if (signedValue == value) {
    if (run == 0) {
      jumpIn = jump;
    }
    longest = std::max(longest, ++run);
  } else if (run > 0) {
    close(jump);
  }
}

void RailLearner::End::close(double jumpOut) {
  if (run >= kPlateau) {
    const double jump = std::max(jumpIn, jumpOut);
    if (jump > jumps[0]) {
      jumps[1] = jumps[0];
      jumps[0] = jump;
    } else {
      jumps[1] = std::max(jumps[1], jump);
    }
  }
  run = 0;
}

void RailLearner::add(std::span<const double> values) {
  for (const double value : values) {
    if (std::isnan(value)) {
      endRun();
      continue;
    }
    const double change = std::fabs(value - previous_);
    step_ = change > 0 && change < step_ ? change : step_;
    // Nearly every sample lies between the extremes and leaves none.
    if (high_.run + low_.run > 0 || value >= high_.value || -value >= low_.value) {
      high_.add(previous_, value);
      low_.add(previous_, -value);
    }
    previous_ = value;
  }
}

void RailLearner::endRun() {
  high_.close(0);
  low_.close(0);
  previous_ = std::numeric_limits<double>::quiet_NaN();
}

bool RailLearner::isRail(const End& end) const {
  End closed = end;
  closed.close(0);
  // A channel that never changes has no rails.
  return std::isfinite(step_) &&
         (static_cast<double>(closed.longest) >= std::max(3.0, kLongPlateau * rateHz_) ||
          closed.jumps[1] >= 0.999 * kJumpSteps * step_);
}

Rails RailLearner::rails() const {
  Rails out;
  if (isRail(high_)) {
    out.high = high_.value;
  }
  if (isRail(low_)) {
    out.low = -low_.value;
  }
  return out;
}

} // namespace afterbeat
