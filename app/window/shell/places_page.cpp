#include "app/window/shell/places_page.h"

#include "app/window/look/remembered.h"
#include "app/window/look/stack.h"
#include "app/window/shell/header_strip.h"
#include "app/window/shell/incomplete_strip.h"
#include "app/window/shell/place_button.h"

#include <QAction>
#include <QActionGroup>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace afterbeat::window {

namespace {

const QString kRemembered = QStringLiteral("place");

} // namespace

PlacesPage::PlacesPage(Session& session, QWidget* parent)
    : QWidget(parent), header_(new HeaderStrip(session, this)),
      incomplete_(new IncompleteStrip(session, this)), switch_(new QHBoxLayout),
      stack_(new Stack(this)), group_(new QActionGroup(this)) {
  switch_->setSpacing(2);
  header_->addToEnd(switch_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(header_);
  layout->addWidget(incomplete_);
  layout->addWidget(stack_, 1);
  connect(stack_, &QStackedWidget::currentChanged, this, &PlacesPage::markChosen);
}

void PlacesPage::addPlace(QWidget* place, const QString& key, const QString& name,
                          const QString& text, const QKeySequence& shortcut) {
  auto* action = new QAction(text, this);
  action->setObjectName(key);
  action->setIconText(name);
  action->setShortcut(shortcut);
  action->setCheckable(true);
  action->setActionGroup(group_);
  connect(action, &QAction::triggered, this, [this, place] { goTo(place); });
  actions_ << action;
  auto* button = new PlaceButton(action, header_);
  button->setVisible(stack_->count() > 0);
  if (stack_->count() > 0) {
    switch_->itemAt(0)->widget()->setVisible(true);
  }
  switch_->addWidget(button);
  stack_->addWidget(place);
  if (remembered::text(kRemembered) == key) {
    stack_->setCurrentWidget(place);
  }
  markChosen();
}

void PlacesPage::addToHeader(QWidget* widget) {
  header_->addToEnd(widget);
}

void PlacesPage::addWayOut(QAction* action) {
  auto* button = new PlaceButton(action, header_);
  button->setCheckable(false);
  button->setAutoExclusive(false);
  switch_->addWidget(button);
}

void PlacesPage::goTo(QWidget* place) {
  if (stack_->currentWidget() == place) {
    return;
  }
  stack_->setCurrentWidget(place);
  remembered::setText(kRemembered, actions_[stack_->currentIndex()]->objectName());
  place->setFocus(Qt::OtherFocusReason);
}

QWidget* PlacesPage::place() const {
  return stack_->currentWidget();
}

void PlacesPage::markChosen() {
  const int now = stack_->currentIndex();
  if (now >= 0 && now < actions_.size()) {
    actions_[now]->setChecked(true);
  }
  emit placeChanged();
}

} // namespace afterbeat::window
