/// Two to eight records side by side: aligned at a moment, and what differs most between them.
#pragma once

#include "core/compare/saying.h"
#include "core/compare/season.h"

#include <array>

namespace afterbeat {

/// The moments that records can be aligned at or compared by, in their usual order.
enum class KeyMoment : std::uint8_t {
  collapse,
  call,
  deviceArrived,
  powerOn,
  firstHandsOn,
  electrodes,
  firstAnalysis,
  firstShock,
  circulationReturned,
};
inline constexpr std::size_t kKeyMoments = 9;

/// Few words: "first shock".
[[nodiscard]] std::string_view name(KeyMoment moment);

/// A record with its figures; both outlive the call.
struct RecordAndFigures {
  const Record* record = nullptr;
  const Figures* figures = nullptr;
};

using KeyTimes = std::array<std::optional<Time>, kKeyMoments>;
/// First of each, on the record's own axis.
[[nodiscard]] KeyTimes keyTimes(const RecordAndFigures& one);

/// The moments that every record has: what can be aligned at.
[[nodiscard]] std::vector<KeyMoment> commonMoments(const std::vector<RecordAndFigures>& records);

/// A figure of each record; differences from the first record that has it.
struct FigureRow {
  MeasureId measure = MeasureId::arrestTime;
  std::vector<FigureCell> cells;
  /// Cell by cell: value - the first value; empty where the cell has none, and for the first.
  std::vector<std::optional<double>> differences;
};

/// A moment in each record, in seconds from the moment they are aligned at.
struct MomentRow {
  KeyMoment moment = KeyMoment::powerOn;
  std::vector<std::optional<double>> seconds;
};

/// What differs most: the time from one moment to the next that they share, or a pause.
struct DiffersMost {
  enum class What : std::uint8_t { stage, preShockPause, postShockPause, longestPause };
  What what = What::stage;
  /// For a stage.
  KeyMoment from = KeyMoment::powerOn, to = KeyMoment::firstShock;
  /// Seconds in each record.
  std::vector<std::optional<double>> seconds;
  /// The records with the least and the most of it.
  std::size_t least = 0, most = 0;
  [[nodiscard]] double difference() const { return *seconds[most] - *seconds[least]; }
};

struct SideBySide {
  KeyMoment alignedAt = KeyMoment::powerOn;
  /// Take this from a record's times to get aligned ones; empty: it has no such moment.
  std::vector<std::optional<Duration>> offsets;
  std::vector<MomentRow> moments;
  /// Every measure that at least one record has.
  std::vector<FigureRow> figures;
  /// Empty: nothing is known in two records, or nothing differs.
  std::optional<DiffersMost> differsMost;
  /// Rescues and drills side by side: shown, and said so.
  bool mixedKinds = false;
};

/// Two to eight records. They may be of different kinds: each keeps its own figures, nothing is
/// added up.
[[nodiscard]] SideBySide sideBySide(const std::vector<RecordAndFigures>& records, KeyMoment at);

/// Names the one that differs most with its seconds; `names` says what the records are called, in
/// their order.
[[nodiscard]] Saying words(const DiffersMost& most, const std::vector<std::string>& names);

} // namespace afterbeat
