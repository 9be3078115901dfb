#include "app/window/debrief/deck.h"

#include <QUndoCommand>

#include <algorithm>
#include <utility>

namespace afterbeat::window {

/// From one state of the edits to another.
class Deck::Step final : public QUndoCommand {
public:
  Step(Deck& deck, const QString& text, Edits after)
      : QUndoCommand(text), deck_(deck), before_(deck.edits_), after_(std::move(after)) {}
  void undo() override { set(before_); }
  void redo() override { set(after_); }

private:
  void set(const Edits& edits) {
    deck_.edits_ = edits;
    emit deck_.changed();
  }
  Deck& deck_;
  Edits before_, after_;
};

namespace {

QString ruleId(const char* column, papers::DebriefRule rule) {
  const std::string_view name = papers::ruleName(rule);
  return QLatin1String(column) +
         QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

std::vector<papers::DebriefLine> asLines(const QList<DeckLine>& lines) {
  std::vector<papers::DebriefLine> result;
  for (const DeckLine& line : lines) {
    papers::DebriefLine shown{line.text, {}, {}, {}};
    if (line.item) {
      shown.figure = line.item->figure;
      shown.target = papers::targetLine(*line.item);
      shown.when = line.item->when;
    }
    result.push_back(std::move(shown));
  }
  return result;
}

} // namespace

Deck::Deck(QObject* parent) : QObject(parent) {}

void Deck::setDebrief(papers::Debrief debrief, bool fresh) {
  debrief_ = std::move(debrief);
  if (fresh) {
    edits_ = {};
    undo_.clear();
  }
  emit changed();
}

QString Deck::textOf(const QString& id, const QString& chosenText) const {
  const auto reworded = edits_.reworded.constFind(id);
  return reworded != edits_.reworded.constEnd() && reworded->of == chosenText ? reworded->text
                                                                              : chosenText;
}

QList<DeckLine> Deck::chosen(DeckColumn column) const {
  QList<DeckLine> lines;
  if (column == DeckColumn::questions) {
    for (const QString& question : debrief_.questions) {
      lines << DeckLine{QStringLiteral("question/") + question, column, question, {}};
    }
    return lines;
  }
  const bool well = column == DeckColumn::well;
  for (const papers::DebriefItem& item : well ? debrief_.well : debrief_.practise) {
    lines << DeckLine{ruleId(well ? "well/" : "practise/", item.rule), column, item.sentence, item};
  }
  return lines;
}

QList<DeckLine> Deck::lines(DeckColumn column) const {
  QList<DeckLine> lines;
  for (DeckLine line : chosen(column)) {
    if (!edits_.struck.contains(line.id)) {
      line.text = textOf(line.id, line.text);
      lines << line;
    }
  }
  for (const Added& added : edits_.added) {
    if (added.column == column && !edits_.struck.contains(added.id)) {
      lines << DeckLine{added.id, column, textOf(added.id, added.text), {}};
    }
  }
  return lines;
}

int Deck::struck(DeckColumn column) const {
  const QList<DeckLine> all = chosen(column);
  const auto count = std::count_if(all.begin(), all.end(), [this](const DeckLine& line) {
    return edits_.struck.contains(line.id);
  });
  return static_cast<int>(count);
}

papers::DebriefShown Deck::shown() const {
  papers::DebriefShown shown;
  shown.well = asLines(lines(DeckColumn::well));
  shown.practise = asLines(lines(DeckColumn::practise));
  for (const DeckLine& line : lines(DeckColumn::questions)) {
    shown.questions << line.text;
  }
  shown.wellNote = debrief_.wellNote;
  shown.practiseNote = debrief_.practiseNote;
  shown.cannotTell = debrief_.cannotTell;
  shown.nothing = debrief_.nothing;
  return shown;
}

void Deck::push(const QString& text, Edits after) {
  undo_.push(new Step(*this, text, std::move(after)));
}

void Deck::strike(const QString& id) {
  Edits after = edits_;
  after.struck.insert(id);
  push(tr("strike a line"), std::move(after));
}

void Deck::reword(const QString& id, const QString& text) {
  const QString trimmed = text.simplified();
  for (const DeckColumn column : {DeckColumn::well, DeckColumn::practise, DeckColumn::questions}) {
    for (const DeckLine& line : lines(column)) {
      if (line.id != id || trimmed.isEmpty() || line.text == trimmed) {
        continue;
      }
      QString of = line.text;
      if (const auto before = edits_.reworded.constFind(id); before != edits_.reworded.constEnd()) {
        of = before->text == line.text ? before->of : of;
      }
      Edits after = edits_;
      after.reworded.insert(id, {of, trimmed});
      push(tr("reword a line"), std::move(after));
      return;
    }
  }
}

QString Deck::add(DeckColumn column, const QString& text) {
  const QString trimmed = text.simplified();
  if (trimmed.isEmpty()) {
    return {};
  }
  const QString id = QStringLiteral("added/%1").arg(nextAdded_++);
  Edits after = edits_;
  after.added << Added{id, trimmed, column};
  push(tr("add a line"), std::move(after));
  return id;
}

} // namespace afterbeat::window
