/// Asks from which day on something was new.
#pragma once

#include <QDate>
#include <QDialog>

class QDateEdit;
class QLineEdit;

namespace afterbeat::window {

class MarkDialog final : public QDialog {
  Q_OBJECT

public:
  explicit MarkDialog(const QDate& day, QWidget* parent = nullptr);
  [[nodiscard]] QDate day() const;
  [[nodiscard]] QString words() const;

private:
  QDateEdit* day_;
  QLineEdit* words_;
};

} // namespace afterbeat::window
