/// What the reader looks at: a stretch of the rescue, and the figure whose working is laid open.
#pragma once

#include "core/measures/figures.h"

#include <QObject>
#include <QString>

#include <optional>

namespace afterbeat::window {

/// Shared by all places: rows, waves and lists follow each other through it.
class Selection final : public QObject {
  Q_OBJECT

public:
  /// Zoom goes from here ...
  static constexpr Duration kShortest{2'000'000};
  /// ... to here.
  static constexpr Duration kLongest{3 * 3600LL * 1'000'000};
  /// Shown around a moment that was pointed at.
  static constexpr Duration kAround{20'000'000};

  using QObject::QObject;

  /// The stretch that the waves show and the rows mark.
  [[nodiscard]] const Interval& stretch() const { return stretch_; }
  /// What was chosen, e.g. "shock 2"; empty for a stretch pointed at.
  [[nodiscard]] const QString& what() const { return what_; }
  /// The figure whose working is shown; none: the rows stand alone.
  [[nodiscard]] std::optional<MeasureId> measure() const { return measure_; }
  /// Where the record begins and ends; the middle of the stretch stays inside.
  [[nodiscard]] const Interval& extent() const { return extent_; }

  void setExtent(const Interval& extent) { extent_ = extent; }
  /// Lengths beyond the limits are cut, the middle kept.
  void setStretch(const Interval& stretch, const QString& what = {});
  /// The default length around a moment.
  void lookAt(Time t, const QString& what = {});
  /// All of `part` with some room on both sides.
  void lookAtAll(const Interval& part, const QString& what = {});
  /// Later by this much, or earlier.
  void moveBy(Duration by);
  /// Longer (> 1) or shorter by a factor; the moment `fixed` stays where it is.
  void zoom(double factor, std::optional<Time> fixed = std::nullopt);
  void setMeasure(std::optional<MeasureId> measure);
  /// The moment under the pointer, or where a replay is; nothing while nobody points.
  [[nodiscard]] std::optional<Time> cursor() const { return cursor_; }
  void setCursor(std::optional<Time> t);

signals:
  void stretchChanged();
  void measureChanged();
  void cursorChanged();

private:
  Interval stretch_{Time{}, Time{kAround}};
  Interval extent_{Time{}, Time{kAround}};
  QString what_;
  std::optional<MeasureId> measure_;
  std::optional<Time> cursor_;
};

/// From the first to the last moment that a record speaks of.
[[nodiscard]] Interval extentOf(const Record& record, const Figures& figures);

} // namespace afterbeat::window
