/// One column of the debrief: a heading, a note where one is due, its lines, and what was struck.
#pragma once

#include "app/window/debrief/line_card.h"

#include <QList>
#include <QWidget>

class QAction;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace afterbeat::window {

class DeckColumnView final : public QWidget {
  Q_OBJECT

public:
  DeckColumnView(Deck& deck, DeckColumn column, QWidget* parent = nullptr);
  /// In their order.
  [[nodiscard]] const QList<LineCard*>& cards() const { return cards_; }
  [[nodiscard]] LineCard* card(const QString& id) const;
  [[nodiscard]] DeckColumn column() const { return column_; }
  /// The note over the lines and what stands below them.
  [[nodiscard]] QString notes() const;
  void refresh();
  /// Whether sources of targets are written.
  void setSources(bool shown);
  /// A field at the end for one more line: Enter adds it, Escape does not.
  void startAdding();
  [[nodiscard]] QLineEdit* adder() const { return adder_; }
  /// What a line can be done with, by its context menu.
  void setLineActions(const QList<QAction*>& actions) { lineActions_ = actions; }

signals:
  void activated(afterbeat::window::LineCard* card);
  void focused(afterbeat::window::LineCard* card);

protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void restyle();

  Deck& deck_;
  DeckColumn column_;
  QLabel *heading_, *note_, *below_;
  QVBoxLayout* lines_;
  QLineEdit* adder_;
  QList<QAction*> lineActions_;
  QList<LineCard*> cards_;
  bool sources_ = true;
};

} // namespace afterbeat::window
