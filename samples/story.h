/// Tells what happens in an invented rescue or drill, step by step, and keeps beside the record
/// what is true by construction: it is the author who knows each pause and its cause, nothing is
/// measured.
#pragma once

#include "core/record/record.h"
#include "samples/dice.h"

#include <string>
#include <vector>

namespace afterbeat::samples {

/// How compressions are given. From the run's begin to its end rate and depth go in a straight line
/// from the first to the second number.
struct Hands {
  double rate = 110, rateEnd = 110;
  /// Millimetres; 0: the sensor does not give it.
  double depth = 54, depthEnd = 54;
  /// Millimetres, mean; negative: not given.
  double leaning = 1.5;
  /// Spread of the intervals (share) and of the depths (mm).
  double unsteady = 0.02, depthSpread = 2;
};

/// A pause of more than the threshold, and why, in the words of the measures.
struct TruePause {
  Time from{}, to{};
  std::string cause;
};

struct TrueShock {
  Time t{};
  bool delivered = true;
  std::optional<double> energyJ;
  /// Only for delivered ones.
  std::optional<Duration> pre, post, adviceToShock;
};

/// The heart's true rhythm, for the waveforms and for whoever checks rhythm hints.
struct TrueRhythm {
  Time from{}, to{};
  RhythmKind is = RhythmKind::asystole;
  /// Beats a minute of an organised rhythm; amplitude in mV of a shockable one.
  double rate = 0, amplitude = 0;
  bool wide = false;
};

/// What is true of the record by construction.
struct Truth {
  Time windowBegin{}, windowEnd{};
  /// Circulation returned for good at this moment, in the window.
  std::optional<Time> circulation;
  std::vector<Entry> compressions;
  std::vector<Time> breaths;
  std::vector<TruePause> pauses;
  std::vector<TrueShock> shocks;
  std::vector<TrueRhythm> rhythm;
  /// Intervals between neighbouring compressions of one run.
  std::vector<Duration> intervals;
  /// `cpr` stretches with rate (0: none).
  std::vector<std::pair<Time, Time>> stretches;
  std::vector<double> stretchRates;
  int analyses = 0, advisingShock = 0;
  /// Named durations: the measure's id and its length.
  std::vector<std::pair<std::string, Duration>> between;
};

/// A moment, `s` seconds after power-on, on the full millisecond.
[[nodiscard]] Time at(double s);

class Story {
public:
  Story(std::string name, std::uint64_t seed);

  Record record;
  Truth truth;
  Dice dice;

  /// Something happens at `s` seconds.
  void happens(double s, EntryData what, Source source = Source::device);
  /// Something lasts.
  void lasts(double from, double to, EntryData what, Source source = Source::device);
  /// Hands go off for this reason (a word of the measures) until the next run.
  void pauseBecause(std::string cause) { cause_ = std::move(cause); }
  /// One run of compressions, the first at `from`, none after `until` and at most `most`; returns
  /// the second of the last one.
  double compress(double from, double until, const Hands& hands, int most = 1'000'000);
  /// Runs of `ratio` compressions with two breaths between, up to `until`; gaps for breaths last
  /// from `gapLow` to `gapHigh` seconds. Returns the second of the last compression.
  double withBreaths(double from, double until, const Hands& hands, int ratio, double gapLow,
                     double gapHigh);
  /// Breaths every `every` seconds, whatever the hands do.
  void breathe(double from, double until, double every);
  /// A continuous stretch of compressions of which the device gives no single one.
  void keepGoing(double from, double to, std::optional<double> rate);
  void analyse(double from, double to, Advice advice);
  /// A shock; `afterAdvice`: seconds since the end of the analysis that advised it.
  void shock(double s, bool delivered, std::optional<double> energyJ,
             std::optional<double> afterAdvice = {}, std::string reason = {});
  /// The true rhythm from `from` until the next one.
  void heart(double from, RhythmKind is, double rate = 0, double amplitude = 0, bool wide = false);
  /// Ends the story: sorts the record, closes the window at `windowEnd` and the last pause.
  void finish(double windowBegin, double windowEnd, std::optional<double> circulation = {});

private:
  /// Ends the pause that lasts since the latest hands on.
  void handsOnAt(Time t);

  std::string cause_ = "before_first";
  std::optional<Time> handsOff_;
  std::vector<std::pair<Time, Time>> runs_;
};

} // namespace afterbeat::samples
