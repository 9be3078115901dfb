/// Many records at once: who they are by row, their figures by column.
///
/// A season may hold 100 000 records. What is known of each is in memory; a column of one measure
/// is fetched when it is needed. Everything in `core/compare` is made from these two, and names a
/// record by its place in the season.
#pragma once

#include "core/measures/figures.h"
#include "core/record/record.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// What is known of one record among many, apart from its figures.
struct RecordFacts {
  /// Names the record where it is kept (the archive's own number); opens it.
  std::int64_t number = 0;
  /// The record's own id; empty if it has none.
  std::string id;
  /// Name of the file, without its folder.
  std::string file;
  /// Empty: the record does not say. A record of no stated kind is neither rescue nor drill.
  std::optional<RecordKind> kind;
  /// Empty: not recorded.
  std::string site, team, device;
  /// The local day it was recorded, where its clock is known.
  std::optional<std::chrono::sys_days> day;
  /// `day` is the first of its month and stands for all of it: the day itself was taken away.
  bool monthOnly = false;
  Evidence evidence = Evidence::none;
  /// Empty: nothing shows whether a shock was given.
  std::optional<bool> hadShock;
  /// Empty: no pause counts, or nothing shows compressions (`evidence`).
  std::optional<PauseCause> longestPauseCause;
  bool synthetic = false;
  /// False: no figures were computed with these settings, so nothing of what follows from figures
  /// is known (shock, pauses, evidence, setting, every cell).
  bool hasFigures = true;
  /// The device's adult or child setting was not the patient's, as the record itself says (a notice
  /// `ProblemKind::categoryDiffers` among the figures').
  bool settingDiffers = false;
  /// From 2 on: the file was changed since it was first taken in.
  int version = 1;
};

/// One figure of one record. `value` means something only where `status` is ok; units as in
/// `measureInfo`.
struct FigureCell {
  double value = 0;
  Status status = Status::notRecorded;
  /// Of a share: its `Measure::denominator`; 0 where it is not known, or the measure is no share.
  float of = 0;
  [[nodiscard]] bool ok() const { return status == Status::ok; }
};

/// One measure of every record of a season, in the season's order.
using FigureColumn = std::vector<FigureCell>;

/// Places in a season: which records, and in which order.
using Chosen = std::vector<std::uint32_t>;

/// Fetches a column of the season; may take tens of milliseconds the first time. The reference
/// holds as long as what it came from.
using FetchColumn = std::function<const FigureColumn&(MeasureId)>;

/// All records of an archive or a list of files (of several versions of one the newest).
struct Season {
  std::vector<RecordFacts> records;
  FetchColumn column;
};

} // namespace afterbeat
