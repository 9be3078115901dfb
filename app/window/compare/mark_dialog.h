/// Asks from which day on something was new.
#pragma once

#include <QDate>
#include <QDialog>

#include <vector>

class QDateEdit;
class QLabel;
class QLineEdit;

namespace afterbeat::window {

/// What the dialog begins with, and what it says before anything is kept.
struct MarkQuestion {
  /// Proposed.
  QDate day;
  /// Of the records of the kind in view, in any order; and how many of them have no day.
  std::vector<QDate> days;
  std::size_t withoutDay = 0;
  /// Where the mark will be kept; a sentence.
  QString kept;
};

/// While a day is chosen a line says how many records lie before it and how many from it on.
class MarkDialog final : public QDialog {
  Q_OBJECT

public:
  explicit MarkDialog(MarkQuestion question, QWidget* parent = nullptr);
  [[nodiscard]] QDate day() const;
  [[nodiscard]] QString words() const;
  /// "12 records before, 4 from this day on."
  [[nodiscard]] QString counts() const;
  /// Where it will be kept.
  [[nodiscard]] const QString& kept() const { return question_.kept; }
  [[nodiscard]] QDateEdit* dayField() const { return day_; }

private:
  void count();

  MarkQuestion question_;
  QDateEdit* day_;
  QLabel* counts_;
  QLineEdit* words_;
};

} // namespace afterbeat::window
