/// The rhythms of a record as they are shown: what the device or an observer noted, and hints from
/// the signals, each in a line of its own.
#pragma once

#include "core/record/record.h"
#include "core/signal/derive/derive.h"

#include <QString>

#include <cstddef>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace afterbeat::window {

/// One rhythm and who says so.
struct RhythmStretch {
  Interval where;
  RhythmKind kind = RhythmKind::unclear;
  std::optional<double> ratePerMin;
  /// As it stands in the record, in the program's language for a hint.
  std::string reason;
  Source source = Source::device;
  std::optional<double> quality;
  [[nodiscard]] bool isHint() const { return source == Source::derived; }
};

/// Stretches in order of their begin, found quickly by time.
class RhythmLine {
public:
  RhythmLine() = default;
  /// In any order.
  explicit RhythmLine(std::vector<RhythmStretch> stretches);

  [[nodiscard]] const std::vector<RhythmStretch>& all() const { return stretches_; }
  [[nodiscard]] bool empty() const { return stretches_.empty(); }
  /// Indices [first, last) that hold all stretches touching `shown` (and, where stretches overlap,
  /// perhaps others). By binary search.
  [[nodiscard]] std::pair<std::size_t, std::size_t> within(const Interval& shown) const;
  /// The last to begin of those that hold a moment; null: none does.
  [[nodiscard]] const RhythmStretch* at(Time t) const;

private:
  std::vector<RhythmStretch> stretches_;
  /// The latest end of all stretches up to each.
  std::vector<Time> ends_;
};

/// What the lane of the waves says about rhythm.
struct Rhythms {
  /// From the device or an observer.
  RhythmLine recorded;
  /// From the signals; those that the record brought along give way to fresh ones.
  RhythmLine hints;
  /// Hints are being made: their line is kept free.
  bool awaited = false;

  /// Lines of the lane that are needed: 0 to 2.
  [[nodiscard]] int lines() const {
    return (recorded.empty() ? 0 : 1) + (hints.empty() && !awaited ? 0 : 1);
  }
};

/// `hints` may be null.
[[nodiscard]] Rhythms rhythmsOf(const Record& record, const Derived* hints, bool awaited);

/// "shockable", "organised", "asystole", "unclear".
[[nodiscard]] QString rhythmWords(RhythmKind kind);
/// A reason of the program in the reader's language; any other as it stands.
[[nodiscard]] QString rhythmReasonWords(const std::string& reason);
/// "hint: organised 84", "device: shockable", "noted: asystole"; the rate is beats a minute.
[[nodiscard]] QString stretchWords(const RhythmStretch& stretch);
/// The same, shorter and shorter.
[[nodiscard]] QStringList shortening(const RhythmStretch& stretch);
/// "A reviewer's aid, not a diagnosis".
[[nodiscard]] QString cautionWords();
/// All that is known of a stretch, line by line, with the caution for a hint.
[[nodiscard]] QString stretchTip(const Record& record, const RhythmStretch& stretch);
/// What the rhythms within a stretch of time are, in a few words; the caution where there are
/// hints. Empty without any.
[[nodiscard]] QString rhythmsIn(const Rhythms& rhythms, const Interval& shown);

} // namespace afterbeat::window
