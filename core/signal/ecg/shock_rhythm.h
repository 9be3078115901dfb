/// What an ECG and its rhythm hints say about the moments before and after a shock.
#pragma once

#include "core/record/entry.h"
#include "core/signal/ecg/fibrillation.h"

#include <optional>
#include <string>

namespace afterbeat {

/// What became of the fibrillation a shock was given for.
enum class AfterShock : std::uint8_t {
  /// Five seconds after the shock the rhythm was no longer fibrillation.
  ended,
  /// Five seconds after the shock it still was.
  wentOn,
  /// It cannot be told.
  notKnown,
};

/// A shock between two rhythms. A reviewer's aid, not a diagnosis.
struct ShockRhythm {
  Time shock{};
  /// The 2 s before it, if they were fibrillation.
  tl::expected<Fibrillation, EcgObstacle> before = tl::unexpected(EcgObstacle::notRecorded);
  AfterShock after = AfterShock::notKnown;
  /// Why `after` is not known: `notFibrillation` or `rhythmUnclear` (before the shock, or five
  /// seconds after it; then `reason` holds what the hint says).
  std::optional<EcgObstacle> whyNotKnown;
  /// The words of the unclear hint, e.g. "chest compressions"; may be empty.
  std::string reason;
  /// The first clear rhythm from five seconds after the shock to the next shock or 60 s, and the
  /// moment from which it is known; empty: none was clear.
  std::optional<RhythmKind> followed;
  std::optional<double> followedRatePerMin;
  Time followedFrom{};
  /// Fibrillation that began again after it had ended, up to the next shock or 60 s.
  std::optional<Time> returned;
};

/// Judges one shock. The rhythm before it is the last clear hint of the 15 s before it. `hints`:
/// complete `rhythm` entries in time order, not overlapping, from one source. `next`: the next
/// shock of the record. The end of fibrillation within five seconds as the success of a shock:
/// Gliner and White, Resuscitation 1999;41:133-144 (from memory).
[[nodiscard]] ShockRhythm judgeShock(Time shock, std::optional<Time> next,
                                     std::span<const Entry> hints, const SignalView& ecg,
                                     std::span<const FaultyStretch> faults,
                                     std::span<const Interval> moved);

} // namespace afterbeat
