/// The figures of a record, each with the stretches and moments it was made from.
///
/// Definitions, sources and check values: resources/definitions/measures.md. All times are on the
/// record's axis.
#pragma once

#include "core/guideline/profile.h"
#include "core/measures/interval.h"
#include "core/record/problem.h"
#include "core/record/record.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Where the resuscitation window ends.
enum class WindowEnd : std::uint8_t { lastActivity, recordEnd };

/// What the figures were computed with.
struct FigureSettings {
  /// Hands off longer than this is a pause; 0.5 s to 5 s.
  Duration pauseThreshold{1'500'000};
  WindowEnd windowEnd = WindowEnd::lastActivity;
  Profile profile = defaultProfile();
};

/// What the hands-on time was taken from.
enum class Evidence : std::uint8_t { none, compressions, segments, both };

enum class Status : std::uint8_t { ok, notRecorded, notApplicable };

/// Every measure. Order here is the order everywhere; ids are in `measureInfo`.
enum class MeasureId : std::uint8_t {
  arrestTime,
  handsOffTime,
  handsOffFraction,
  chestCompressionFraction,
  adjustedHandsOffTime,
  compressions,
  compressionsPerMinute,
  compressionRate,
  compressionRateInRange,
  compressionDepth,
  compressionDepthInRange,
  fullRelease,
  ventilations,
  ventilationsPerMinute,
  longestPause,
  pausesOverLimit,
  preShockPauseMedian,
  preShockPauseWorst,
  postShockPauseMedian,
  postShockPauseWorst,
  periShockPauseMedian,
  periShockPauseWorst,
  shocksDelivered,
  shocksWithheld,
  shocksUnknown,
  energyTotal,
  analyses,
  analysesAdvisingShock,
  adviceToShockMedian,
  adviceToShockWorst,
  powerOnToFirstShock,
  electrodesToFirstShock,
  collapseToFirstShock,
  callToFirstShock,
  firstHandsOnToFirstShock,
  powerOnToElectrodes,
  powerOnToFirstHandsOn,
  electrodesToFirstAnalysis,
  collapseToFirstHandsOn,
  callToFirstHandsOn,
  callToDeviceArrived,
  collapseToCirculationReturned,
  circulationTime,
  longestCirculation,
  timeOn,
  count_ ///< number of measures, not one of them
};

/// The `source` of a definition that nobody published.
inline constexpr std::string_view kCommonPractice = "Common practice, no source";

/// What is the same for a measure in every record.
struct MeasureInfo {
  MeasureId id;
  /// E.g. "hands_off_fraction".
  std::string_view name;
  /// UCUM: "s", "1", "/min", "mm", "J".
  std::string_view unit;
  /// A few words for a list: "Hands-off share".
  std::string_view title;
  /// One sentence.
  std::string_view definition;
  std::string_view source;
  SourceMark mark;
  /// Its value changes with the pause threshold.
  bool dependsOnThreshold;
};

[[nodiscard]] const MeasureInfo& measureInfo(MeasureId id);
/// By name; null if there is none.
[[nodiscard]] const MeasureInfo* measureInfo(std::string_view name);

/// What a stretch or moment of a measure's working is.
enum class WorkingKind : std::uint8_t {
  arrestInterval,
  pause,
  pauseForAnalysis, ///< overlap that `adjusted_hands_off_time` takes away
  compressionRun,   ///< n compressions with no pause between
  cprStretch,       ///< n = rate per minute, where known
  ventilation,
  shock, ///< n = number of the shock in the record, from 1
  shockWithheld,
  shockUnknown,
  preShockPause,  ///< n = number of the delivered shock
  postShockPause, ///< n = number of the delivered shock
  periShockPause, ///< n = number of the delivered shock
  analysis,
  adviceToShock, ///< n = number of the delivered shock
  fromTo,        ///< between two events
  circulation,
  onPeriod,
};

/// A stretch (or moment: from = to) that went into a measure.
struct WorkingPart {
  Time from{}, to{};
  WorkingKind kind = WorkingKind::pause;
  std::optional<double> n;
};

/// A few English words for a part: "pause", "34 compressions", "before shock 2".
[[nodiscard]] std::string label(const WorkingPart& part);

/// A figure. `value` is set exactly when `status` is ok; fractions are 0 to 1, times in seconds.
struct Measure {
  MeasureId id = MeasureId::arrestTime;
  Status status = Status::notRecorded;
  std::optional<double> value, numerator, denominator;
  std::vector<WorkingPart> working;
};

/// Why hands were off, first that fits.
enum class PauseCause : std::uint8_t {
  shock,
  analysis,
  beforeFirst,
  afterLast,
  breaths,
  breathsLong,
  noReasonRecorded,
};

/// A gap that counts.
struct Pause {
  Interval stretch;
  PauseCause cause = PauseCause::noReasonRecorded;
};

/// A shock entry and the pauses around it; pauses only for delivered ones.
struct ShockFigures {
  Time t{};
  /// Empty: the record does not say.
  std::optional<bool> delivered;
  std::optional<double> energyJ;
  std::optional<Duration> pre, post, peri, adviceToShock;
  /// Number among the delivered shocks, from 1; 0 for others.
  int number = 0;
};

/// A minute of the window (the last may be shorter).
struct MinuteRow {
  Interval epoch;
  Duration arrest{};
  std::optional<Duration> handsOff;
  std::optional<int> compressions;
  std::optional<double> rate, rateInRange, depth;
  std::optional<int> ventilations;
  /// Delivered ones.
  std::optional<int> shocks;
};

/// From one analysis (and its shock) to the next; `open` before the first and after the last.
struct CycleRow {
  Interval stretch;
  bool open = false;
  std::optional<Duration> handsOff;
  std::optional<double> rate;
};

/// Why a stretch of the record is in no figure.
enum class NotCountedReason : std::uint8_t {
  beforeWindow,
  afterWindow,
  circulationReturned,
  notRescue,
  notTrusted,
  notObserved,
};

struct NotCounted {
  Interval stretch;
  NotCountedReason why = NotCountedReason::beforeWindow;
};

/// Stretches of a depth, rate or release share that were left out, and the like: how many of how
/// many could be used.
struct Coverage {
  MeasureId id = MeasureId::arrestTime;
  double used = 0, of = 0;
};

/// Everything computed from one record.
struct Figures {
  FigureSettings settings;
  Evidence evidence = Evidence::none;
  /// The resuscitation window; empty if nothing in the record begins one.
  std::optional<Interval> window;
  /// Last hands on, delivered shock or analysis end.
  std::optional<Time> lastActivity;
  /// The moments of the kept compressions, in time order, and the entries they are (same order).
  std::vector<Time> compressions;
  std::vector<std::size_t> compressionEntries;
  /// `cpr` stretches that hold no kept compression, with their rates (entry indices).
  std::vector<std::size_t> cprEntries;
  /// Hands on the chest, merged.
  std::vector<Interval> handsOn;
  /// Arrest intervals, sorted.
  std::vector<Interval> arrest;
  /// Circulation intervals as defined (may touch, may lie one in another).
  std::vector<Interval> circulation;
  std::vector<NotCounted> notCounted;
  Duration excludedLength{};
  std::vector<Pause> pauses;
  std::vector<ShockFigures> shocks;
  std::vector<MinuteRow> minutes;
  std::vector<CycleRow> cycles;
  /// One for each MeasureId, in its order.
  std::vector<Measure> measures;
  std::vector<Coverage> coverage;
  /// Double detections, a wrong adult or child setting.
  std::vector<Problem> notices;

  [[nodiscard]] const Measure& operator[](MeasureId id) const {
    return measures[static_cast<std::size_t>(id)];
  }
};

/// Computes every figure. Pure: the same record and settings give the same figures.
[[nodiscard]] Figures computeFigures(const Record& record, const FigureSettings& settings = {});

/// The format's words, as in the JSON output.
[[nodiscard]] std::string_view name(Evidence evidence);
[[nodiscard]] std::string_view name(Status status);
[[nodiscard]] std::string_view name(PauseCause cause);
[[nodiscard]] std::string_view name(WindowEnd end);
[[nodiscard]] std::string_view name(NotCountedReason why);

} // namespace afterbeat
