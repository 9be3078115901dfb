/// The charts of a season: spread, over time, where the time goes.
#pragma once

#include "app/window/compare/chart_view.h"

class QAction;
class QUndoStack;

namespace afterbeat::window {

class StepsKeeper;
struct MarkQuestion;

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
  [[nodiscard]] const std::vector<MarkedStep>& steps() const;
  /// Those that an archive keeps are among them.
  [[nodiscard]] bool stepsKnown() const;
  /// Sets a mark and says where it is kept; can be undone.
  void mark(std::chrono::sys_days day, const QString& words);
  /// Takes a mark away, where this user may; can be undone.
  void unmark(std::size_t index);

signals:
  /// What was done.
  void said(const QString& sentence);
  void failed(const QString& sentence);
  /// Other marks, or they are known now.
  void stepsChanged();

protected:
  [[nodiscard]] ChartMaker maker() const override;
  [[nodiscard]] std::optional<MeasureId> measureDrawn() const override;
  void showEvent(QShowEvent* event) override;

private:
  [[nodiscard]] MarkQuestion markQuestion() const;
  void askMark();
  void askUnmark();
  void load();
  void follow();

  QComboBox *measure_, *drawing_, *period_;
  StepsKeeper* keeper_;
  QUndoStack* undo_;
  QList<QAction*> actions_;
  QString loadedFor_;
};

} // namespace afterbeat::window
