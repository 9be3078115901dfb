/// Whether figures and hints are taken from the signals: the reader's choice.
#pragma once

#include <QList>
#include <QObject>

class QAction;

namespace afterbeat::window {

class Session;

/// Three exclusive entries; the choice is remembered.
class DeriveActions final : public QObject {
  Q_OBJECT

public:
  explicit DeriveActions(Session& session, QObject* parent = nullptr);
  /// Where nothing else tells, never, always.
  [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }

private:
  void markChosen();

  Session& session_;
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
