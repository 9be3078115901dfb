/// Who one of the records side by side is; opens it.
#pragma once

#include <QAbstractButton>

namespace afterbeat::window {

/// Two lines that give way: marks that have no room are said in short, and what then has none ends
/// in "…" and is whole in the tooltip.
class BesideName final : public QAbstractButton {
  Q_OBJECT

public:
  BesideName(const QString& letter, const QString& name, const QString& marks,
             const QString& shortMarks, QWidget* parent = nullptr);
  [[nodiscard]] QString whole() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  QString letter_, name_, marks_, shortMarks_;
};

} // namespace afterbeat::window
