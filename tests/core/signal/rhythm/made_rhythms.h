/// Made-up rhythms for the tests of the hints.
#pragma once

#include "../ecg/made_ecg.h"
#include "core/signal/ecg/quality.h"
#include "core/signal/rhythm/hints.h"
#include "core/signal/rhythm/likeness.h"

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace afterbeat {

/// Samples of `seconds` at `rateHz`.
inline std::size_t samplesOf(double seconds, double rateHz) {
  return static_cast<std::size_t>(seconds * rateHz);
}

/// Waves whose frequency wanders about 5 Hz and whose size goes up and down, `mv` from peak to
/// peak on the whole.
inline std::vector<double> madeFibrillation(double seconds, double rateHz, double mv) {
  std::vector<double> out(samplesOf(seconds, rateHz));
  for (std::size_t i = 0; i < out.size(); ++i) {
    const double t = static_cast<double>(i) / rateHz;
    const double phase =
        2 * std::numbers::pi * 5 * t + 2.1 * std::sin(1.9 * t) + 1.3 * std::sin(4.3 * t + 1);
    out[i] = mv / 2 * (1 + 0.35 * std::sin(2.7 * t) + 0.2 * std::sin(1.1 * t)) * std::sin(phase);
  }
  return out;
}

/// QRS complexes with P and T waves.
inline std::vector<double> madeNormal(double seconds, double rateHz, double perMin, double mv) {
  std::vector<double> out(samplesOf(seconds, rateHz), 0.0);
  addBeats(out, rateHz, madeBeats(0.4, seconds, 60 / perMin), mv);
  return out;
}

/// Wide complexes without P waves, with T waves to the other side.
inline std::vector<double> madeWide(double seconds, double rateHz, double perMin, double mv) {
  std::vector<double> out(samplesOf(seconds, rateHz), 0.0);
  for (const double beat : madeBeats(0.4, seconds, 60 / perMin)) {
    addBell(out, rateHz, beat, mv, 0.045);
    addBell(out, rateHz, beat + 0.15, -0.4 * mv, 0.05);
  }
  return out;
}

inline std::vector<double> sumOf(std::vector<double> a, const std::vector<double>& b) {
  for (std::size_t i = 0; i < a.size() && i < b.size(); ++i) {
    a[i] += b[i];
  }
  return a;
}

inline std::vector<double> scaled(std::vector<double> values, double factor) {
  for (double& value : values) {
    value *= factor;
  }
  return values;
}

/// Hints for one run with the faults that are found in it.
inline RhythmHints hintsFor(const std::vector<double>& values, double rateHz = 250) {
  const SignalView run{Time{}, rateHz, values};
  const auto faults = ecgFaults(run);
  return hintRhythm({.runs = {&run, 1}, .faults = faults});
}

inline const entry::Rhythm& rhythmIn(const Entry& entry) {
  return std::get<entry::Rhythm>(entry.data);
}

/// All hints of a run in few words, e.g. "organised 75; unclear noise".
inline std::string said(const RhythmHints& hints) {
  constexpr const char* kKinds[] = {"shockable", "organised", "asystole", "unclear"};
  std::string text;
  for (const auto& entry : hints.entries) {
    const auto& rhythm = rhythmIn(entry);
    text += text.empty() ? "" : "; ";
    text += kKinds[static_cast<int>(*rhythm.is)];
    text += rhythm.ratePerMin ? " " + std::to_string(std::lround(*rhythm.ratePerMin)) : "";
    text += rhythm.reason.empty() ? "" : " " + rhythm.reason;
  }
  return text;
}

} // namespace afterbeat
