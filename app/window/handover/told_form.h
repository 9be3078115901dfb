/// Four questions where there is no recording, and where it was. Nothing has to be answered.
#pragma once

#include "app/window/handover/handover_actions.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace afterbeat::window {

class ToldForm final : public QWidget {
  Q_OBJECT

public:
  explicit ToldForm(QWidget* parent = nullptr);
  /// What is typed; what cannot be understood, or contradicts itself, is left to the pen.
  [[nodiscard]] ToldSheet told() const;
  /// Why something typed is not on the sheet; empty where everything is.
  [[nodiscard]] QString hint() const;
  [[nodiscard]] QLineEdit* minutes() const { return minutes_; }
  [[nodiscard]] QLineEdit* shocks() const { return shocks_; }
  [[nodiscard]] QLineEdit* lastShock() const { return lastShock_; }
  [[nodiscard]] QLineEdit* site() const { return site_; }
  [[nodiscard]] QComboBox* setting() const { return setting_; }
  [[nodiscard]] QComboBox* kind() const { return kind_; }
  /// Empties every field.
  void clear();

signals:
  void changed();

private:
  void tell();
  QLineEdit* line(QFormLayout* form, const QString& label, const QString& example);
  QComboBox* choice(QFormLayout* form, const QString& label, const QStringList& words);
  [[nodiscard]] QString clockTime() const;
  [[nodiscard]] bool contradicts() const;

  QLineEdit *minutes_, *shocks_, *lastShock_, *site_;
  QComboBox *setting_, *kind_;
  QLabel* hint_;
};

} // namespace afterbeat::window
