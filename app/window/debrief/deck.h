/// The debrief as it is shown this evening: what was chosen, without what the trainer struck, with
/// what was reworded and added. Nothing of it is stored in the record.
#pragma once

#include "app/papers/debrief.h"

#include <QHash>
#include <QObject>
#include <QSet>
#include <QUndoStack>

#include <optional>

namespace afterbeat::window {

enum class DeckColumn : std::uint8_t { well, practise, questions };

/// One line that is shown.
struct DeckLine {
  /// The same for the same line whatever else changes.
  QString id;
  DeckColumn column = DeckColumn::well;
  QString text;
  /// Nothing for a question and for a line of the trainer's own.
  std::optional<papers::DebriefItem> item;
};

class Deck final : public QObject {
  Q_OBJECT

public:
  explicit Deck(QObject* parent = nullptr);

  /// What was chosen from the record. `fresh`: of another record; all that was changed is gone.
  void setDebrief(papers::Debrief debrief, bool fresh);
  [[nodiscard]] const papers::Debrief& debrief() const { return debrief_; }
  [[nodiscard]] QList<DeckLine> lines(DeckColumn column) const;
  /// How many lines of a column were struck.
  [[nodiscard]] int struck(DeckColumn column) const;
  [[nodiscard]] papers::DebriefShown shown() const;

  /// Each can be undone.
  void strike(const QString& id);
  /// A rewording belongs to the words it replaced: where the figures change them, it is dropped.
  void reword(const QString& id, const QString& text);
  /// Returns the id of the new line.
  QString add(DeckColumn column, const QString& text);
  [[nodiscard]] QUndoStack& undo() { return undo_; }

signals:
  void changed();

private:
  struct Reworded {
    QString of, text;
  };
  struct Added {
    QString id, text;
    DeckColumn column = DeckColumn::well;
  };
  /// Small: every step keeps all of it before and after.
  struct Edits {
    QSet<QString> struck;
    QHash<QString, Reworded> reworded;
    QList<Added> added;
  };
  class Step;

  [[nodiscard]] QList<DeckLine> chosen(DeckColumn column) const;
  [[nodiscard]] QString textOf(const QString& id, const QString& chosenText) const;
  void push(const QString& text, Edits after);

  papers::Debrief debrief_;
  Edits edits_;
  int nextAdded_ = 1;
  QUndoStack undo_;
};

} // namespace afterbeat::window
