/// Which rhythm an ECG shows, as far as it can be told: a reviewer's aid, not a diagnosis.
#pragma once

#include "core/signal/findings.h"
#include "core/signal/rhythm/judge.h"
#include "core/signal/signal_view.h"

#include <span>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Stands in the `note` of every hint and belongs wherever one is shown.
inline constexpr std::string_view kHintCaution = "A reviewer's aid, not a diagnosis";

/// What the hints are read from. All times in order.
struct RhythmInput {
  /// The blocks of one ECG channel, in mV; a missing sample is NaN.
  std::span<const SignalView> runs;
  /// What is wrong with them.
  std::span<const FaultyStretch> faults = {};
  /// Chest compressions, singly and as stretches.
  std::span<const Time> compressions = {};
  std::span<const Interval> cpr = {};
  /// Heartbeats, for the rate of organised rhythms; without them the hints use their own.
  std::span<const Time> beats = {};
};

struct RhythmHints {
  /// `rhythm` stretches, source derived, that touch and cover each run from its first sample to its
  /// last. `reason` says why an unclear one is, and of an organised one "wide and fast" where so.
  std::vector<Entry> entries;
  /// The working: windows of 8 s, one every 2 s of each run.
  std::vector<RhythmWindow> windows;
};

/// Hints for a channel. Windows of 8 s are judged by their amplitude, then by a logistic regression
/// of ten published features smoothed over the neighbours, and decide about the 2 s around their
/// middle. Where that is not possible they say "unclear" and why. Memory beyond the result: one
/// run at 125 Hz.
[[nodiscard]] RhythmHints hintRhythm(const RhythmInput& input,
                                     const RhythmModel& model = rhythmModel());

/// A run that was read in pieces: from its first sample to one step beyond its last.
struct EcgRun {
  Interval where;
  double rateHz = 0;
};

/// What `hintRhythm` does for one run, given all of its windows, not judged yet: those of its
/// pieces one after the other, as `measuredWindows` gives them. None: the run is unclear, and why.
void addRun(RhythmHints& hints, std::vector<RhythmWindow> windows, const EcgRun& run,
            std::span<const Time> beats, const RhythmModel& model = rhythmModel());

/// The windows of all runs with their measures and obstacles, not judged.
[[nodiscard]] std::vector<RhythmWindow> measuredWindows(const RhythmInput& input);

/// The hints that judged windows of one run make. `windows` must not be empty.
[[nodiscard]] std::vector<Entry> rhythmEntries(std::span<const RhythmWindow> windows,
                                               const Interval& run, std::span<const Time> beats);

} // namespace afterbeat
