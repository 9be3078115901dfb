/// Which stretches of an ECG cannot be used, and why.
#pragma once

#include "core/signal/findings.h"
#include "core/signal/signal_view.h"

#include <limits>
#include <optional>
#include <span>
#include <vector>

namespace afterbeat {

/// The values at which a recording is clipped, in mV; empty: at that end nothing was clipped.
struct Rails {
  std::optional<double> low, high;
};

/// Learns a channel's rails from its flat tops: fed with all of its samples, run by run and piece
/// by piece. A rail is the channel's largest (smallest) value where the signal stays on it: for
/// 40 ms or more, or at least twice for three samples or more that end in a jump of five steps of
/// the recording. (A smooth top is flat for a few samples too, but has no such jump.)
class RailLearner {
public:
  explicit RailLearner(double rateHz) : rateHz_(rateHz) {}
  /// The next samples in mV; NaN where missing.
  void add(std::span<const double> values);
  /// A gap between two runs.
  void endRun();
  [[nodiscard]] Rails rails() const;

private:
  /// What is known of the plateaus at the most extreme value so far.
  struct End {
    double sign = 1;
    double value = -std::numeric_limits<double>::infinity();
    std::size_t run = 0, longest = 0;
    double jumpIn = 0;
    /// Jumps in mV at either side of plateaus of three samples or more, the larger of both; the two
    /// largest.
    double jumps[2] = {0, 0};

    void add(double previous, double signedValue);
    void close(double jumpOut);
  };
  [[nodiscard]] bool isRail(const End& end) const;

  double rateHz_;
  End high_{}, low_{.sign = -1};
  double previous_ = std::numeric_limits<double>::quiet_NaN();
  /// The smallest change from one sample to the next: one step of the recording.
  double step_ = std::numeric_limits<double>::infinity();
};

/// The faults of a run of ECG in mV, sorted by begin; stretches of one kind do not overlap, those
/// of different kinds may:
/// - `missing`: samples that are not there; holes with less than 0.1 s between them are one
/// stretch.
/// - `saturated`: at a rail; likewise.
/// - `off`: the value does not change (by more than 1 uV) for a second or more. A line that flat is
///   not an asystole but an input that is not connected.
/// - `spikes`: needles of at most 8 ms, 0.3 mV or more and eight times what is usual around them,
/// such
///   as pacing pulses; less than 2 s apart they are one stretch. Not looked for below 200 Hz.
/// - `noise`: in a second, half of the time more than 0.05 mV above 30 Hz, and that more than 0.3
/// of
///   the effective amplitude between 1 and 30 Hz (not looked for below 100 Hz); or a swing of the
///   baseline (below 1 Hz) by more than 5 mV within the second.
/// All limits are ours; common practice, no source.
[[nodiscard]] std::vector<FaultyStretch> ecgFaults(const SignalView& ecg, const Rails& rails);

/// The same with the rails of this run alone.
[[nodiscard]] std::vector<FaultyStretch> ecgFaults(const SignalView& ecg);

/// Whether a fault of one of the `kinds` shares more than a point with `where`.
[[nodiscard]] bool hasFault(std::span<const FaultyStretch> faults, const Interval& where,
                            std::initializer_list<SignalFault> kinds);

} // namespace afterbeat
