#include "app/window/shell/side_panel.h"

#include "app/window/figures/measures_list.h"
#include "app/window/figures/working_panel.h"
#include "app/window/finding/happenings_view.h"
#include "app/window/problems/problems_view.h"

#include <QAction>
#include <QEvent>
#include <QStyle>
#include <QTabBar>

#include <algorithm>

namespace afterbeat::window {

SidePanel::SidePanel(Session& session, Selection& selection, QWidget* parent)
    : QTabWidget(parent), working_(new WorkingPanel(session, selection)),
      measures_(new MeasuresList(session, selection)),
      happenings_(new HappeningsView(session, selection)),
      problems_(new ProblemsView(session, selection)) {
  setDocumentMode(true);
  setAccessibleName(tr("Figures and problems"));
  tabBar()->setAccessibleName(tr("What the panel shows"));
  // All tabs in view, and uncut where the window leaves the room, however long their names are.
  tabBar()->setElideMode(Qt::ElideNone);
  addPage(working_, tr("Working"), tr("Show the working of the figure"), Qt::Key_F2);
  addPage(measures_, tr("Figures"), tr("Show all figures"), Qt::Key_F3);
  addPage(happenings_, tr("Events"), tr("Show what happened"), Qt::Key_F10);
  showProblems_ = addPage(problems_, tr("Problems"), tr("Show the problems"), Qt::Key_F5);
  connect(measures_, &MeasuresList::chosen, this, &SidePanel::showWorking);
  connect(happenings_, &HappeningsView::wanted, this, [this] { setCurrentWidget(happenings_); });
  connect(problems_, &ProblemsView::changed, this, [this] {
    const int found = problems_->problems().total();
    setTabText(indexOf(problems_), found > 0 ? tr("Problems (%1)").arg(found) : tr("Problems"));
    fitTabs();
  });
  fitTabs();
}

QAction* SidePanel::addPage(QWidget* page, const QString& name, const QString& text, Qt::Key key) {
  const int index = addTab(page, name);
  auto* action = new QAction(text, this);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, [this, index] {
    setCurrentIndex(index);
    widget(index)->setFocus();
  });
  actions_ << action;
  return action;
}

void SidePanel::fitTabs() {
  constexpr int kLeast = 280, kMost = 480;
  const int around = style()->pixelMetric(QStyle::PM_TabBarTabHSpace, nullptr, tabBar());
  int wanted = 0;
  for (int i = 0; i < count(); ++i) {
    wanted += tabBar()->fontMetrics().horizontalAdvance(tabText(i)) + around + 4;
  }
  // Where even the widest panel has not the room, the tabs scroll.
  tabBar()->setUsesScrollButtons(wanted > kMost);
  setMinimumWidth(std::clamp(wanted, kLeast, kMost));
}

void SidePanel::changeEvent(QEvent* event) {
  QTabWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    fitTabs();
  }
}

void SidePanel::showWorking() {
  setCurrentWidget(working_);
}

} // namespace afterbeat::window
