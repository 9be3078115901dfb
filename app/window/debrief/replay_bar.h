/// The strip that starts and stops the replay and says, large, what is happening.
#pragma once

#include <QWidget>

class QLabel;
class QToolButton;

namespace afterbeat::window {

class ElidedLabel;
class Replay;

class ReplayBar final : public QWidget {
  Q_OBJECT

public:
  explicit ReplayBar(Replay& replay, QWidget* parent = nullptr);
  /// "09:15:02  Hands off for 12 s".
  [[nodiscard]] QString asText() const;

protected:
  void changeEvent(QEvent* event) override;

private:
  void follow();
  void restyle();
  void markSpeed(QToolButton* button);

  Replay& replay_;
  QToolButton* play_;
  QList<QToolButton*> speeds_;
  QLabel* clock_;
  ElidedLabel* now_;
};

} // namespace afterbeat::window
