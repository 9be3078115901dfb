/// Rate, depth and release: the samples that shares and means are taken from.
#pragma once

#include "core/measures/figures.h"

namespace afterbeat {

/// Two neighbouring kept compressions of one arrest interval, no further apart than the threshold.
struct CompressionInterval {
  Time first{}, second{};
  [[nodiscard]] Duration length() const { return second - first; }
  [[nodiscard]] double ratePerMin() const { return 60.0 / seconds(length()); }
};

/// A kept compression inside an arrest interval.
struct CountedCompression {
  Time t{};
  /// Index into `Figures::arrest`.
  int arrest = 0;
  std::optional<double> depthMm;
  /// Depth range for the patient's category at that moment; null: no range known.
  const Range* depthRange = nullptr;
  std::optional<bool> fullRelease;
};

/// The part of a counted `cpr` stretch inside an arrest interval.
struct RatedStretch {
  Interval stretch;
  std::optional<double> ratePerMin;
};

/// What rate, depth and release are computed from.
struct CompressionQuality {
  std::vector<CountedCompression> compressions;
  std::vector<CompressionInterval> intervals;
  std::vector<RatedStretch> stretches;
  /// Some kept compression of the record has a depth, or a known release, counted or not.
  bool depthRecorded = false, releaseRecorded = false;
  /// Some counted `cpr` stretch of the record has a rate, inside an arrest interval or not.
  bool stretchRateRecorded = false;
};

/// Collects them; `figures` holds evidence and arrest intervals.
[[nodiscard]] CompressionQuality compressionQuality(const Record& record, const Figures& figures);

/// The patient category in force: the record's, or where unknown the device setting at `t`.
[[nodiscard]] PatientCategory categoryAt(const Record& record, Time t);

/// Whether a rate lies in the profile's range; false without a range.
[[nodiscard]] bool rateInRange(const Profile& profile, double ratePerMin);

/// 60 x n / sum of lengths; empty without an interval. `from` and `to` index `intervals`.
[[nodiscard]] std::optional<double> meanRate(const std::vector<CompressionInterval>& intervals,
                                             std::size_t from, std::size_t to);

} // namespace afterbeat
