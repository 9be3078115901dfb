/// Words for figures, pauses and moments, the same in every place of the window.
#pragma once

#include "core/measures/figures.h"

#include <QString>

#include <optional>

namespace afterbeat::window {

/// The clock time of a moment ("09:15:07"), or its time on the record ("3:07", "−0:12") where no
/// clock can be trusted. With `tenths` one decimal.
[[nodiscard]] QString momentWords(const Record& record, Time t, bool tenths = false);

/// Tells many moments of one record: the clock is looked up once.
class Moments {
public:
  explicit Moments(const Record& record) : zero_(wallTimeAt(record, Time{})) {}
  /// The record's clock can be trusted.
  [[nodiscard]] bool hasClock() const { return zero_.has_value(); }
  /// As `momentWords`.
  [[nodiscard]] QString words(Time t, bool tenths = false) const {
    return hasClock() ? clock(t, tenths) : onRecord(t, tenths);
  }
  /// "09:15:07.3"; empty without a clock.
  [[nodiscard]] QString clock(Time t, bool tenths = true) const;
  /// "3:07.3", "−0:12.0" on the record's own axis.
  [[nodiscard]] static QString onRecord(Time t, bool tenths = true);

private:
  std::optional<WallTime> zero_;
};

/// "0.4 s", "28.4 s", "2 min 52 s": to a tenth below a minute.
[[nodiscard]] QString lengthWords(Duration length);

/// The value with its unit, or "not recorded" or "does not apply".
[[nodiscard]] QString valueWords(const Measure& measure);

/// The measure's name in the window's language.
[[nodiscard]] QString titleWords(MeasureId id);
/// How the measure is defined, and where that comes from.
[[nodiscard]] QString definitionWords(MeasureId id);

/// Why hands were off, with the shock's number where there is one.
[[nodiscard]] QString causeWords(const Pause& pause, const Figures& figures);

/// The counted pause that holds all of a stretch; null where none does.
[[nodiscard]] const Pause* pauseAround(const Figures& figures, const Interval& stretch);

/// What was going on in a part of a working.
[[nodiscard]] QString partWords(const WorkingPart& part, const Figures& figures);

/// What lies under a moment and what to look at around it.
struct PointedAt {
  Interval stretch;
  /// Empty where nothing is marked there.
  QString what;
};
/// The delivered or withheld shock within `reach` of `t`, else the pause around it.
[[nodiscard]] PointedAt pointedAt(const Figures& figures, Time t, Duration reach);

/// "adult", "child", "infant", "patient category not recorded".
[[nodiscard]] QString patientWords(PatientCategory category);
/// "rescue", "drill", "test", "kind not stated".
[[nodiscard]] QString kindWords(const std::optional<RecordKind>& kind);

} // namespace afterbeat::window
