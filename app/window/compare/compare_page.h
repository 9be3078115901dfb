/// The place for many records: it stands beside the open record, and needs none.
#pragma once

#include "app/window/compare/latest_work.h"

#include <QList>
#include <QWidget>

#include <functional>

class QAction;
class QActionGroup;
class QHBoxLayout;
class QPushButton;
class QStackedWidget;

namespace afterbeat::window {

class BesideView;
class ChartView;
class CompareBusy;
class CompareEmpty;
class ElidedLabel;
class FiguresMoved;
class FilterBar;
class OverTimeView;
class SaveReport;
class SeasonDesk;
class SeasonDrop;
class SeasonSource;
class SeasonTable;
class SeasonWays;
class Session;
class SpreadView;
class StagesView;
class StandOutView;

class ComparePage final : public QWidget {
  Q_OBJECT

public:
  /// `back` goes to the open record; `stop` ends what takes long.
  ComparePage(Session& session, QAction* back, QAction* stop, QWidget* parent = nullptr);

  /// Goes to this place.
  [[nodiscard]] QAction* go() const { return go_; }
  /// Lays records side by side: those that are marked, or files to be chosen.
  [[nodiscard]] QAction* putBeside() const { return putBeside_; }
  /// The open record beside the one before it.
  [[nodiscard]] QAction* besideBefore() const { return besideBefore_; }
  /// Everything of this place, for its menu; an empty group between two lines.
  [[nodiscard]] QList<QList<QAction*>> actionGroups() const;
  [[nodiscard]] const QList<QAction*>& recentArchives() const;
  [[nodiscard]] SeasonDesk* desk() const { return desk_; }
  [[nodiscard]] SeasonWays* ways() const { return ways_; }
  /// What is dropped onto this place.
  [[nodiscard]] SeasonDrop* drop() const { return drop_; }
  [[nodiscard]] FilterBar* filter() const { return filter_; }
  [[nodiscard]] SeasonTable* table() const { return table_; }
  [[nodiscard]] BesideView* beside() const { return beside_; }
  [[nodiscard]] SpreadView* spread() const { return spread_; }
  [[nodiscard]] OverTimeView* overTime() const { return overTime_; }
  [[nodiscard]] StagesView* stages() const { return stages_; }
  [[nodiscard]] StandOutView* standOut() const { return standOut_; }
  [[nodiscard]] CompareEmpty* empty() const { return empty_; }
  /// What fills the place: a view, or the page that stands there without one.
  [[nodiscard]] QWidget* current() const;
  [[nodiscard]] QString heading() const;
  void showView(QWidget* view);
  void openBeside(const QStringList& paths);
  /// Lays the marked lines side by side, or says that they are too many; false: fewer than two are
  /// marked, or none is in view.
  bool putMarkedBeside();
  void stop();
  [[nodiscard]] bool busy() const;

signals:
  void busyChanged();
  /// What was asked for is shown.
  void shown();
  /// The table of a season reached the screen; not `whole`: its latest records alone, while all of
  /// them are being read.
  void tablePainted(bool whole);
  /// The place is to be shown.
  void asked();
  /// A record is to be opened.
  void wanted(const QString& path);
  void said(const QString& sentence);
  void failed(const QString& sentence);
  /// A sentence that was said holds no longer.
  void outdated(const QString& sentence);
  /// `remark` is one more sentence about it, or empty.
  void written(const QString& path, const QString& remark);

protected:
  void changeEvent(QEvent* event) override;

private:
  void buildViews();
  void connectDesk();
  void addView(QWidget* view, const QString& name, const QString& text, const QKeySequence& key);
  QWidget* makeHeader(QAction* back);
  void openPlace(std::uint32_t place);
  void layBeside(std::function<std::vector<std::uint32_t>(const SeasonSource&)> which);
  void followMarked();
  void followSource();
  void saveChart();
  void copyChart();
  [[nodiscard]] ChartView* chartView() const;
  [[nodiscard]] QString factsText() const;
  void follow();
  void followBusy();
  void restyle();

  Session& session_;
  SeasonDesk* desk_;
  SeasonWays* ways_;
  SeasonDrop* drop_;
  FiguresMoved* moved_;
  QAction *go_, *putBeside_, *besideBefore_, *save_, *copy_;
  SaveReport* report_ = nullptr;
  ElidedLabel *title_, *facts_;
  QPushButton* back_;
  QHBoxLayout* switch_;
  QStackedWidget* stack_;
  CompareEmpty* empty_;
  CompareBusy* busyPage_;
  FilterBar* filter_;
  SeasonTable* table_ = nullptr;
  BesideView* beside_ = nullptr;
  SpreadView* spread_ = nullptr;
  OverTimeView* overTime_ = nullptr;
  StagesView* stages_ = nullptr;
  StandOutView* standOut_ = nullptr;
  QActionGroup* group_;
  QList<QAction*> views_;
  QList<QWidget*> viewWidgets_;
  /// The view that was chosen last; null: none yet.
  QWidget* view_ = nullptr;
  /// That too many are marked; empty: it was not said, or holds no longer.
  QString tooMany_;
  /// Names the season that is shown.
  QString shownKey_;
  /// A table that was not painted yet.
  bool tableAwaited_ = false;
  /// Last: it waits for its worker.
  LatestWork finding_;
};

} // namespace afterbeat::window
