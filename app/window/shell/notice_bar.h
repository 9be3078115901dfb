/// One sentence over everything else, until it is read: what went wrong, or what was done.
#pragma once

#include <QWidget>

class QAction;
class QLabel;

namespace afterbeat::window {

class NoticeBar final : public QWidget {
  Q_OBJECT

public:
  explicit NoticeBar(QWidget* parent = nullptr);
  void say(const QString& sentence);
  [[nodiscard]] QString text() const;
  [[nodiscard]] QAction* dismiss() const { return dismiss_; }

private:
  QLabel* text_;
  QAction* dismiss_;
};

} // namespace afterbeat::window
