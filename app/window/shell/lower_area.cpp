#include "app/window/shell/lower_area.h"

#include <QAction>
#include <QTabBar>

namespace afterbeat::window {

LowerArea::LowerArea(QWidget* parent) : QTabWidget(parent) {
  setDocumentMode(true);
  setTabBarAutoHide(true);
  setAccessibleName(tr("Waves and tables"));
  tabBar()->setAccessibleName(tr("What is shown under the rows"));
}

void LowerArea::addPage(QWidget* page, const QString& name, const QString& text,
                        const QKeySequence& shortcut) {
  addTab(page, name);
  // A hidden tab bar must not take the keyboard: Tab would go no further.
  setFocusPolicy(count() > 1 ? Qt::TabFocus : Qt::NoFocus);
  auto* action = new QAction(text, this);
  action->setShortcut(shortcut);
  connect(action, &QAction::triggered, this, [this, page] {
    setCurrentWidget(page);
    page->setFocus(Qt::OtherFocusReason);
  });
  actions_ << action;
}

} // namespace afterbeat::window
