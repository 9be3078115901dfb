/// The place for talking in a group: the rows, what went well, what to practise, and questions that
/// open a conversation. Large enough for a projector by one key.
#pragma once

#include "app/window/debrief/deck.h"

#include <QList>
#include <QWidget>

class QAction;
class QLabel;
class QScrollArea;
class QSplitter;

namespace afterbeat::window {

class DebriefRows;
class DeckColumnView;
class LineCard;
class Replay;
class ReplayBar;
class Selection;
class Session;

/// Nobody's name and nobody's words are on it unless they are switched on.
class DebriefPage final : public QWidget {
  Q_OBJECT

public:
  /// Type in projector size is this much larger.
  static constexpr double kProjector = 1.6;

  DebriefPage(Session& session, Selection& selection, Replay& replay, QWidget* parent = nullptr);
  ~DebriefPage() override;
  /// Strike, reword, add; undo, redo; copy; words of people; projector size.
  [[nodiscard]] QList<QAction*> actions() const { return actions_; }
  [[nodiscard]] Deck& deck() { return *deck_; }
  [[nodiscard]] DebriefRows* rows() const { return rows_; }
  [[nodiscard]] ReplayBar* bar() const { return bar_; }
  [[nodiscard]] const QList<DeckColumnView*>& columns() const { return columns_; }
  [[nodiscard]] QAction* projector() const { return projector_; }
  [[nodiscard]] QAction* words() const { return words_; }
  /// The line whose moment is marked; null: none.
  [[nodiscard]] LineCard* chosenCard() const;
  /// Marks the moment of a line in the rows and puts the cursor to its begin.
  void show(LineCard* card);
  /// Marks a stretch that is no line's, e.g. the next pause.
  void showStretch(const Interval& stretch);
  /// The next line that has a moment, or the one before; answers whether the page is in view.
  bool step(bool forward);

signals:
  /// Something was done that deserves a sentence.
  void said(const QString& sentence);

protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void changeEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;

private:
  void buildActions();
  QAction* make(const QString& text, const QKeySequence& key, std::function<void()> does);
  void refresh();
  void followDeck();
  void rebuildColumns();
  void choose(const QString& id);
  [[nodiscard]] Time firstSight(const DeckLine& line) const;
  void enableActions();
  void setType();
  void shareRoom();
  void copy();
  [[nodiscard]] LineCard* currentCard() const;
  [[nodiscard]] QList<LineCard*> cardsWithMoment() const;
  [[nodiscard]] LineCard* cardOf(const QString& id) const;

  Session& session_;
  Selection& selection_;
  Replay& replay_;
  Deck* deck_;
  QWidget* body_;
  QSplitter* splitter_;
  DebriefRows* rows_;
  ReplayBar* bar_;
  QLabel *nothing_, *cannotTell_, *hint_;
  QScrollArea* scroll_;
  QList<DeckColumnView*> columns_;
  QList<QAction*> actions_, editing_;
  QAction *undo_ = nullptr, *redo_ = nullptr, *projector_ = nullptr, *words_ = nullptr;
  QString chosen_, current_;
  bool stale_ = false, fresh_ = false;
  /// Cards are taken away and made: the keyboard wanders meanwhile.
  bool rebuilding_ = false;
};

} // namespace afterbeat::window
