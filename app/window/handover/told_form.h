/// Four questions where there is no recording, and where it was. Nothing has to be answered.
#pragma once

#include "app/window/handover/handover_actions.h"

#include <QStringList>
#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QPushButton;
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
  /// Empties every field: the next sheet is another person's. What was typed can be taken back.
  void startAnew();
  /// Puts back what `startAnew` took away.
  void takeBack();
  [[nodiscard]] QPushButton* takeBackButton() const { return takeBack_; }

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
  QPushButton* takeBack_;
  struct Typed {
    QStringList lines;
    int setting = 0, kind = 0;
    friend bool operator==(const Typed&, const Typed&) = default;
  };
  [[nodiscard]] Typed typed() const;
  void put(const Typed& typed);
  Typed before_;
};

} // namespace afterbeat::window
