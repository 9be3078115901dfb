/// A measure over the days: run charts and control charts with steps where the user marks them.
#pragma once

#include "core/compare/companions.h"
#include "core/compare/kinds.h"
#include "core/compare/marked_step.h"
#include "core/statistics/control_chart.h"
#include "core/statistics/signal_rules.h"

#include <variant>

namespace afterbeat {

enum class ChartKind : std::uint8_t {
  /// Values along their median; asks nothing of how they are spread.
  run,
  /// Values along their mean, limits from the moving range.
  individuals,
  /// Shares of records or of counts (p).
  shares,
  /// Counts for an exposure (u).
  counts,
};

/// What one point stands for.
enum class Period : std::uint8_t { record, day, week, month, quarter, year };

/// For run and individuals charts: each record's value, or the median of a period's.
struct ValueOf {
  MeasureId measure = MeasureId::arrestTime;
};

/// Share of the records whose value passes; records without a value are missing, not failed.
struct RecordsWith {
  MeasureId measure = MeasureId::arrestTime;
  /// True: the value is `limit` or more; false: it is below `limit`.
  bool atLeast = false;
  double limit = 0;
};

/// Share of the records in which a shock was given; those that do not show it are missing.
struct RecordsWithShock {};

/// A share that each record has (rate in range, full release), weighted by what it was counted
/// over: `FigureCell::of`. Limits are widened, because what happens within one rescue is not
/// independent.
struct CountedShare {
  MeasureId measure = MeasureId::compressionRateInRange;
};

/// A counting measure for every `per` of a measured exposure: pauses over the limit for every 600 s
/// of time without circulation.
struct CountedFor {
  MeasureId count = MeasureId::pausesOverLimit;
  MeasureId exposure = MeasureId::arrestTime;
  double per = 600;
};

/// `ValueOf` is drawn by run and individuals charts; `RecordsWith`, `RecordsWithShock` and
/// `CountedShare` as shares; `CountedFor` as counts.
using ChartSubject = std::variant<ValueOf, RecordsWith, RecordsWithShock, CountedShare, CountedFor>;

struct OverTimeSettings {
  ChartSubject subject = ValueOf{};
  /// For a `ValueOf`: run or individuals; the others have their own.
  ChartKind chart = ChartKind::run;
  /// A share of records has no single record as its point: `record` becomes `month` there, and
  /// `OverTime::settings` says so.
  Period period = Period::record;
  std::vector<MarkedStep> steps = {};
  /// Empty: the program's choice for the kind of chart.
  SignalRules rules = {};
};

/// One point; its records are `OverTime::records` from `firstRecord` on.
struct TimePoint {
  /// The record's day, or the first and last day of the period that hold one of its records.
  std::chrono::sys_days firstDay, lastDay;
  double value = 0;
  /// Shares and counts: value = with / of (counts: times `per`).
  double with = 0, of = 0;
  /// Empty where the chart has none or there are too few points for limits.
  std::optional<double> lower, upper;
  std::uint32_t firstRecord = 0, recordCount = 0;
};

/// What is compared where the user marked a step: the points before it and after.
struct StepChange {
  std::size_t step = 0;
  double before = 0, after = 0;
  /// `rankTest` of the values on either side; of records where each has one, else of points.
  double chance = 1;
  bool clear = false;
};

/// The points between two steps, with a centre line of their own.
struct ChartSegment {
  std::size_t firstPoint = 0, lastPoint = 0;
  /// Median (run), mean (individuals), sum / sum (shares, counts).
  double centre = 0;
  /// Index of the step it begins with; empty for the first.
  std::optional<std::size_t> step;
  /// Fewer points than `kLeastPointsForSignals`: no limits, no signals.
  bool tooFew = false;
  /// Fewer than `kFirmPoints`: the limits may still move.
  bool provisional = false;
  /// Individuals: the values lean to one side, and a point beyond a limit says less.
  bool skewed = false;
  /// Shares and counts: how many times the limits were widened; 1: not.
  double widened = 1;
  /// What must stand beside the measure that is drawn (`neverAlone`), of the segment's records.
  std::vector<Beside> beside = {};
};

/// From this many points on limits are called firm; common practice.
inline constexpr std::size_t kFirmPoints = 20;

/// A rule's find, in the points of the whole chart.
struct ChartSignal {
  RuleHit hit;
  std::size_t segment = 0;
  Saying saying;
};

struct OverTime {
  OverTimeSettings settings;
  ChartKind chart = ChartKind::run;
  StatedKind kind;
  std::vector<TimePoint> points;
  /// Places in the season; each point owns a stretch of it.
  Chosen records;
  std::vector<ChartSegment> segments;
  std::vector<StepChange> changes;
  std::vector<ChartSignal> signals;
  Missing missing;
  /// Have a value and no day: in no point.
  std::size_t withoutDay = 0;
};

/// Refused where kinds are mixed, or where a counted share's counts are not known.
[[nodiscard]] tl::expected<OverTime, SeasonRefusal>
overTime(const Season& season, const Chosen& chosen, const OverTimeSettings& settings);

/// The chart this program offers first for a measure: run for lengths of time, which lean to one
/// side; shares for those counted over something; counts for pauses over the limit; individuals for
/// rates and depths.
[[nodiscard]] ChartKind usualChart(MeasureId id);

/// Sentences for under the picture: whether anything changed, as steps and signals say; then what
/// is drawn; then cautions and what is missing.
[[nodiscard]] std::vector<Saying> words(const OverTime& chart);

/// The rule in a sentence, and where it was published.
[[nodiscard]] std::string_view ruleWords(SignalRule rule);
[[nodiscard]] std::string_view ruleSource(SignalRule rule);

} // namespace afterbeat
