/// What stands in the place for many records while there is nothing to compare.
#pragma once

#include "app/window/shell/pages.h"

#include <functional>

namespace afterbeat::window {

/// What to do first.
class CompareEmpty final : public Page {
  Q_OBJECT

public:
  /// `beside` lays some side by side; `ways` lead into a season; `recent` are archives.
  CompareEmpty(QAction* beside, const QList<QAction*>& ways, const QList<QAction*>& recent,
               QWidget* parent = nullptr);

protected:
  void showEvent(QShowEvent* event) override;

private:
  void showRecent();
  QList<QAction*> recentActions_;
  QLabel* recentHeading_;
  QList<QPushButton*> recent_;
};

/// Nothing lies side by side: how to lay something there.
class BesideEmpty final : public Page {
  Q_OBJECT

public:
  explicit BesideEmpty(QWidget* parent = nullptr);
  [[nodiscard]] QPushButton* latest() const { return latest_; }

signals:
  /// The two latest of one kind and place are wanted.
  void latestWanted();

private:
  QPushButton* latest_;
};

/// Something is being read.
class CompareBusy final : public Page {
  Q_OBJECT

public:
  explicit CompareBusy(QAction* stop, QWidget* parent = nullptr);
  /// How much is done of how much; asked again and again while this is in view.
  struct State {
    QString sentence;
    double share = 0;
  };
  void follow(std::function<State()> state) { state_ = std::move(state); }

protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  void refresh();
  std::function<State()> state_;
  QProgressBar* bar_;
  QLabel* sentence_;
  QTimer* tick_;
};

} // namespace afterbeat::window
