/// The charts of a season: spread, over time, where the time goes.
#pragma once

#include "app/window/compare/chart_view.h"

class QAction;
class QUndoStack;

namespace afterbeat::window {

/// A measure by place, team or quarter.
class SpreadView final : public ChartView {
  Q_OBJECT

public:
  explicit SpreadView(SeasonDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QComboBox* measure() const { return measure_; }
  [[nodiscard]] QComboBox* by() const { return by_; }

protected:
  [[nodiscard]] ChartMaker maker() const override;
  [[nodiscard]] std::optional<MeasureId> measureDrawn() const override;

private:
  QComboBox *measure_, *by_;
};

/// Stages to the first shock: all in the middle, or record by record.
class StagesView final : public ChartView {
  Q_OBJECT

public:
  explicit StagesView(SeasonDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QComboBox* from() const { return from_; }
  [[nodiscard]] QComboBox* shape() const { return shape_; }

protected:
  [[nodiscard]] ChartMaker maker() const override;

private:
  QComboBox *from_, *shape_;
};

/// A measure over the days, with marks that the user sets where something was new.
class OverTimeView final : public ChartView {
  Q_OBJECT

public:
  explicit OverTimeView(SeasonDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QComboBox* measure() const { return measure_; }
  [[nodiscard]] QComboBox* drawing() const { return drawing_; }
  [[nodiscard]] QComboBox* period() const { return period_; }
  /// New mark, take one away, undo, redo.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
  [[nodiscard]] const std::vector<MarkedStep>& steps() const { return steps_; }
  /// Sets a mark; can be undone.
  void mark(std::chrono::sys_days day, const QString& words);
  /// Takes a mark away; can be undone.
  void unmark(std::size_t index);

signals:
  /// Says what was done, or why it was not.
  void said(const QString& sentence);

protected:
  [[nodiscard]] ChartMaker maker() const override;
  [[nodiscard]] std::optional<MeasureId> measureDrawn() const override;

private:
  void askMark();
  void askUnmark();
  void change(std::vector<MarkedStep> to, const QString& what);
  void setSteps(const std::vector<MarkedStep>& steps);
  void load();
  void follow();

  QComboBox *measure_, *drawing_, *period_;
  QUndoStack* undo_;
  QList<QAction*> actions_;
  std::vector<MarkedStep> steps_;
  QString loadedFor_;
};

/// Marks as text for what is remembered, and back; what cannot be read is left out.
[[nodiscard]] QString stepsAsText(const std::vector<MarkedStep>& steps);
[[nodiscard]] std::vector<MarkedStep> stepsFromText(const QString& text);

} // namespace afterbeat::window
