/// A few words that pass: nothing else moves or is covered by them for long.
#pragma once

#include <QLabel>

class QTimer;

namespace afterbeat::window {

/// Stands low in the middle of its parent, and goes with the next key or click, or after a while.
class Toast final : public QLabel {
  Q_OBJECT

public:
  explicit Toast(QWidget* parent);
  void say(const QString& sentence);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void place();
  QTimer* timer_;
};

} // namespace afterbeat::window
