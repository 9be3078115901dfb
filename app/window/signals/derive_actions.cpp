#include "app/window/signals/derive_actions.h"

#include "app/window/look/remembered.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QActionGroup>

namespace afterbeat::window {

namespace {

const QString kKey = QStringLiteral("derive");

constexpr DeriveMode kModes[] = {DeriveMode::automatic, DeriveMode::never, DeriveMode::always};

} // namespace

DeriveActions::DeriveActions(Session& session, QObject* parent)
    : QObject(parent), session_(session) {
  const QString texts[] = {tr("Where the &device recorded nothing"), tr("&Never"), tr("&Always")};
  auto* group = new QActionGroup(this);
  for (int i = 0; i < 3; ++i) {
    const DeriveMode mode = kModes[i];
    auto* action = new QAction(texts[i], group);
    action->setCheckable(true);
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+H, %1").arg(i + 1)));
    connect(action, &QAction::triggered, this, [this, mode] { session_.setDeriveMode(mode); });
    actions_ << action;
  }
  session_.setDeriveMode(deriveModeFrom(remembered::text(kKey).toStdString()));
  connect(&session_, &Session::deriveModeChanged, this, [this] {
    markChosen();
    const std::string_view word = name(session_.deriveMode());
    remembered::setText(kKey, QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
  });
  markChosen();
}

void DeriveActions::markChosen() {
  for (int i = 0; i < 3; ++i) {
    actions_[i]->setChecked(kModes[i] == session_.deriveMode());
  }
}

} // namespace afterbeat::window
