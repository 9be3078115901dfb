/// What happens in one record of a season, in seconds after the device was turned on.
#pragma once

#include "samples/season/plan.h"
#include "samples/story.h"

namespace afterbeat::samples {

/// From one analysis to the next.
struct ScriptedCycle {
  double analysis = 0, advice = 0;
  /// Empty: no shock was advised.
  std::optional<double> shock;
  bool withheld = false;
  /// Hands on from `begin` to `end`, but for a stretch without a reason.
  double begin = 0, end = 0;
  std::optional<std::pair<double, double>> unexplained;
};

/// One record before anything is made of it.
struct Script {
  RecordFacts facts;
  PatientCategory patient = PatientCategory::adult, setting = PatientCategory::adult;
  std::optional<double> call, deviceArrived;
  /// First hands on; after `electrodes` it may be the first cycle's begin.
  double handsOn = 0, electrodes = 0;
  std::vector<ScriptedCycle> cycles;
  double off = 0;
  Hands hands;
  bool showsCompressions = true;
};

/// Record number `index` of a plan; costs nothing but itself.
[[nodiscard]] Script script(const SeasonPlan& plan, std::size_t index);

/// The record without single compressions, as stretches: enough for its figures.
[[nodiscard]] Record outline(const Script& script);

/// The whole record, compression by compression, with its truth.
[[nodiscard]] Story story(const Script& script);

} // namespace afterbeat::samples
