/// The headline figures over the rows, one card each.
#pragma once

#include "app/window/figures/cards.h"

#include <QList>
#include <QWidget>

class QAction;
class QHBoxLayout;

namespace afterbeat::window {

class Selection;
class Session;

class HeadlineStrip final : public QWidget {
  Q_OBJECT

public:
  static constexpr int kMostCards = 6;

  HeadlineStrip(Session& session, Selection& selection, QWidget* parent = nullptr);
  /// The cards shown, left to right.
  [[nodiscard]] QList<HeadlineCard*> cards() const;
  /// One action for each place in the strip, and one that takes the working away.
  [[nodiscard]] QList<QAction*> actions() const { return actions_; }

signals:
  /// A figure was chosen by the reader.
  void chosen();

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void refresh();
  /// All cards have room for the longest one's lines.
  void fitLines();
  void markChosen();
  void choose(int index);

  Session& session_;
  Selection& selection_;
  std::vector<Card> shown_;
  QList<HeadlineCard*> cards_;
  QList<QAction*> actions_;
};

} // namespace afterbeat::window
