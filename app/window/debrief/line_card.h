/// One line of the debrief: its figure, its sentence, its target, and the moment to show.
#pragma once

#include "app/window/debrief/deck.h"

#include <QFrame>

class QGridLayout;
class QLabel;
class QLineEdit;

namespace afterbeat::window {

/// Enter or a click shows its moment. `edit` lets the sentence be reworded in place: Enter keeps
/// the new words, Escape the old ones.
class LineCard final : public QFrame {
  Q_OBJECT

public:
  explicit LineCard(const DeckLine& line, QWidget* parent = nullptr);
  [[nodiscard]] const DeckLine& line() const { return line_; }
  [[nodiscard]] bool chosen() const { return chosen_; }
  void setChosen(bool chosen);
  /// Whether the target's source is written beside it; it is in the tooltip in any case.
  void setSources(bool shown);
  void edit();
  [[nodiscard]] QLineEdit* editor() const { return editor_; }
  /// Everything on it as one text.
  [[nodiscard]] QString asText() const;

signals:
  void activated();
  void focused();
  /// Other words were entered.
  void reworded(const QString& text);

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void restyle();
  void arrange();
  void endEditing(bool keep);

  DeckLine line_;
  QLabel *figure_, *sentence_, *target_;
  QLineEdit* editor_;
  QGridLayout* layout_;
  bool chosen_ = false, beside_ = true;
};

} // namespace afterbeat::window
