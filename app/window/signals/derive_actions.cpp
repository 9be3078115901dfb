#include "app/window/signals/derive_actions.h"

#include "app/window/look/remembered.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QActionGroup>

namespace afterbeat::window {

namespace {

const QString kKey = QStringLiteral("derive");

struct Choice {
  DeriveMode mode;
  /// As it is remembered.
  const char* word;
};
constexpr Choice kChoices[] = {
    {DeriveMode::automatic, "auto"}, {DeriveMode::never, "never"}, {DeriveMode::always, "always"}};

} // namespace

DeriveActions::DeriveActions(Session& session, QObject* parent)
    : QObject(parent), session_(session) {
  const QString texts[] = {tr("Where the &device recorded nothing"), tr("&Never"), tr("&Always")};
  auto* group = new QActionGroup(this);
  for (int i = 0; i < 3; ++i) {
    const Choice choice = kChoices[i];
    auto* action = new QAction(texts[i], group);
    action->setCheckable(true);
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+H, %1").arg(i + 1)));
    connect(action, &QAction::triggered, this,
            [this, choice] { session_.setDeriveMode(choice.mode); });
    actions_ << action;
    if (remembered::text(kKey) == QLatin1String(choice.word)) {
      session_.setDeriveMode(choice.mode);
    }
  }
  connect(&session_, &Session::deriveModeChanged, this, [this] {
    markChosen();
    for (const Choice& choice : kChoices) {
      if (choice.mode == session_.deriveMode()) {
        remembered::setText(kKey, QString::fromLatin1(choice.word));
      }
    }
  });
  markChosen();
}

void DeriveActions::markChosen() {
  for (int i = 0; i < 3; ++i) {
    actions_[i]->setChecked(kChoices[i].mode == session_.deriveMode());
  }
}

} // namespace afterbeat::window
