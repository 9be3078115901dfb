/// The panel beside the rows: the working of the chosen figure, all figures, the file's problems.
#pragma once

#include <QList>
#include <QTabWidget>

class QAction;

namespace afterbeat::window {

class HappeningsView;
class MeasuresList;
class ProblemsView;
class Selection;
class Session;
class WorkingPanel;

class SidePanel final : public QTabWidget {
  Q_OBJECT

public:
  SidePanel(Session& session, Selection& selection, QWidget* parent = nullptr);
  [[nodiscard]] WorkingPanel* working() const { return working_; }
  [[nodiscard]] MeasuresList* measures() const { return measures_; }
  [[nodiscard]] HappeningsView* happenings() const { return happenings_; }
  [[nodiscard]] ProblemsView* problems() const { return problems_; }
  /// One for each page, in their order.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
  [[nodiscard]] QAction* showProblems() const { return showProblems_; }
  void showWorking();

protected:
  void changeEvent(QEvent* event) override;

private:
  /// Wide enough for the names of all tabs, within limits.
  void fitTabs();
  QAction* addPage(QWidget* page, const QString& name, const QString& action, Qt::Key key);

  WorkingPanel* working_;
  MeasuresList* measures_;
  HappeningsView* happenings_;
  ProblemsView* problems_;
  QList<QAction*> actions_;
  QAction* showProblems_;
};

} // namespace afterbeat::window
