#include "core/signal/ecg/shock_rhythm.h"

#include <algorithm>

namespace afterbeat {

namespace {

/// When it is looked for what became of the fibrillation, and how long what follows is followed.
constexpr Duration kAfter = std::chrono::seconds(5);
constexpr Duration kFollowed = std::chrono::seconds(60);
/// The rhythm before a shock: the last clear hint that reaches to this long before it. Hands may be
/// on the chest again while the device charges. Common practice, no source.
constexpr Duration kBefore = std::chrono::seconds(15);

struct Hint {
  Interval where;
  RhythmKind kind = RhythmKind::unclear;
  const entry::Rhythm* rhythm = nullptr;
};

std::vector<Hint> hintsOf(std::span<const Entry> entries) {
  std::vector<Hint> out;
  for (const Entry& entry : entries) {
    const auto* rhythm = entry.complete<entry::Rhythm>();
    if (rhythm != nullptr && rhythm->is && entry.end) {
      out.push_back({{entry.t, *entry.end}, *rhythm->is, rhythm});
    }
  }
  return out;
}

/// The hint for a moment; of two that touch there, the later one.
const Hint* hintAt(const std::vector<Hint>& hints, Time t) {
  const auto found = std::find_if(hints.rbegin(), hints.rend(),
                                  [t](const Hint& hint) { return hint.where.holds(t); });
  return found == hints.rend() ? nullptr : &*found;
}

/// The last clear hint within `kBefore` before the shock.
const Hint* clearBefore(const std::vector<Hint>& hints, Time shock) {
  const Hint* out = nullptr;
  for (const Hint& hint : hints) {
    if (hint.where.begin < shock && hint.where.end >= shock - kBefore &&
        hint.kind != RhythmKind::unclear) {
      out = &hint;
    }
  }
  return out;
}

void follow(ShockRhythm& out, const std::vector<Hint>& hints, Time from, Time until) {
  for (const Hint& hint : hints) {
    if (hint.where.end < from || hint.where.begin >= until || hint.kind == RhythmKind::unclear) {
      continue;
    }
    const Time begin = std::max(from, hint.where.begin);
    if (!out.followed) {
      out.followed = hint.kind;
      out.followedFrom = begin;
      out.followedRatePerMin = hint.rhythm->ratePerMin;
    } else if (hint.kind == RhythmKind::shockable && *out.followed != RhythmKind::shockable &&
               !out.returned) {
      out.returned = begin;
    }
  }
}

} // namespace

ShockRhythm judgeShock(Time shock, std::optional<Time> next, std::span<const Entry> entries,
                       const SignalView& ecg, std::span<const FaultyStretch> faults,
                       std::span<const Interval> moved) {
  const auto hints = hintsOf(entries);
  ShockRhythm out;
  out.shock = shock;
  const Hint* before = clearBefore(hints, shock);
  if (before == nullptr) {
    out.before = tl::unexpected(EcgObstacle::rhythmUnclear);
    out.whyNotKnown = EcgObstacle::rhythmUnclear;
  } else if (before->kind != RhythmKind::shockable) {
    out.before = tl::unexpected(EcgObstacle::notFibrillation);
    out.whyNotKnown = EcgObstacle::notFibrillation;
  } else {
    out.before = fibrillationBefore(ecg, shock, faults, moved);
  }

  const Time then = shock + kAfter;
  const Time until = std::min(next.value_or(shock + kFollowed), shock + kFollowed);
  if (then <= until) {
    follow(out, hints, then, until);
  }
  if (out.whyNotKnown) {
    return out;
  }
  const Hint* after = then <= until ? hintAt(hints, then) : nullptr;
  if (after == nullptr || after->kind == RhythmKind::unclear) {
    out.whyNotKnown = EcgObstacle::rhythmUnclear;
    out.reason = after != nullptr ? after->rhythm->reason : "";
  } else {
    out.after = after->kind == RhythmKind::shockable ? AfterShock::wentOn : AfterShock::ended;
  }
  return out;
}

} // namespace afterbeat
