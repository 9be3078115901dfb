/// One plain sentence over every place of a record that is not whole.
#pragma once

#include <QWidget>

class QLabel;

namespace afterbeat::window {

class Session;

class IncompleteStrip final : public QWidget {
  Q_OBJECT

public:
  explicit IncompleteStrip(Session& session, QWidget* parent = nullptr);
  [[nodiscard]] QString text() const;

protected:
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  void restyle();
  Session& session_;
  QLabel *sign_, *text_;
};

} // namespace afterbeat::window
