/// What the rows show, in time and words, before anything has a place on paper.
#pragma once

#include "app/papers/rows.h"
#include "app/papers/words.h"
#include "core/measures/figures.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace afterbeat::papers {

/// Hands on the chest at one rate: between two compressions (mean of three intervals), or a whole
/// stretch. Unknown rate: hands on, and nothing known about how fast.
struct BandPiece {
  Interval stretch;
  std::optional<double> rate;
};

/// Hands on without a pause.
struct BandRun {
  Interval stretch;
  /// One after the other without a break; empty for a compression with a pause on both sides.
  std::vector<BandPiece> pieces;
  /// Made of single compressions.
  bool beats = false;
  /// Read off the signals by a program.
  bool derived = false;
  [[nodiscard]] bool rateKnown() const { return !pieces.empty() && pieces.front().rate; }
};

struct BreathShown {
  Time t{};
  bool derived = false;
};

/// A counted pause.
struct PauseShown {
  Interval stretch;
  bool beyondLimit = false;
  /// Longest first: "28 s", "28".
  QStringList words;
};

enum class MarkKind : std::uint8_t {
  shockGiven,
  shockNotGiven,
  shockUnknown,
  analysisShock,
  analysisNoShock,
  analysisInconclusive,
  circulationReturned,
  circulationLost,
  remark,
  medication,
  /// The device was switched on before the rows begin.
  deviceOn,
};

/// Something with a shape and a word. The shape is always painted; of the words, longest first, the
/// longest that finds room.
struct RowMark {
  MarkKind kind = MarkKind::remark;
  Interval stretch;
  QStringList words;
  /// Higher goes first where room is short.
  int importance = 0;
};

/// A stretch that counts in no figure, with the words for it, longest first.
struct ExcludedShown {
  Interval stretch;
  QStringList words;
};

/// Where a cycle begins (the table of cycles), with its number.
struct CycleShown {
  Time begin{};
  /// Longest first: "cycle 2", "2".
  QStringList words;
};

/// The label of a row: "0–2 min", and the clock time of its begin where the clock can be trusted.
struct RowLabel {
  QString minutes, clock;
};

struct RowsModel {
  Words words;
  /// Empty: nothing in the record begins a resuscitation window.
  std::optional<Interval> span;
  Duration rowLength = RowsPicture::kRowLength;
  /// What the record covers of `span`; empty: all of it.
  std::optional<Interval> covered;
  /// The part of it that counts.
  Interval counted;
  std::vector<RowLabel> labels;
  /// Target corridor, and where it comes from.
  std::optional<Range> corridor;
  QString profileName;
  std::optional<double> pauseLimit;
  /// All sorted by begin.
  std::vector<BandRun> runs;
  std::vector<PauseShown> pauses;
  std::vector<BreathShown> breaths;
  std::vector<Interval> circulation;
  std::vector<ExcludedShown> excluded;
  std::vector<RowMark> marks;
  std::vector<CycleShown> cycles;
  /// Where the recording broke off, if that lies in the last row.
  std::optional<Time> brokeOff;

  /// There is a target for the rate, and a rate to hold against it.
  [[nodiscard]] bool showsTarget() const;
  [[nodiscard]] int rowCount() const;
  [[nodiscard]] Interval row(int index) const;
  /// Whether a moment belongs to a row; the last row holds its end as well.
  [[nodiscard]] bool inRow(int index, Time t) const;
};

[[nodiscard]] RowsModel makeRowsModel(const Record& record, const Figures& figures, Words words);

/// Whether a mark is a shock, given or not.
[[nodiscard]] bool isShock(MarkKind kind);
/// Whether a mark is a remark or a medication: a small sign at its moment, with words where there
/// is room.
[[nodiscard]] bool isRemark(MarkKind kind);
/// Whether a mark is an analysis.
[[nodiscard]] bool isAnalysis(MarkKind kind);

/// Hands off longer than this, in seconds, is beyond the profile's limit for a pause of this cause;
/// empty: no limit.
[[nodiscard]] std::optional<double> limitFor(const Profile& profile, PauseCause cause);

/// The words for a milestone: "crew arrived"; one of the record's own as it stands.
[[nodiscard]] QString milestoneWords(const std::string& what, const Words& say);

} // namespace afterbeat::papers
