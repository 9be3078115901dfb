/// A line of text that gives way: cut with "…" where there is no room, whole in its tooltip.
#pragma once

#include <QLabel>

namespace afterbeat::window {

class ElidedLabel final : public QLabel {
  Q_OBJECT

public:
  explicit ElidedLabel(QWidget* parent = nullptr);
  void setWhole(const QString& text);
  [[nodiscard]] const QString& whole() const { return whole_; }
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void cut();
  QString whole_;
};

} // namespace afterbeat::window
