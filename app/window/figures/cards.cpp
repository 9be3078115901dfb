#include "app/window/figures/cards.h"

#include "app/papers/facts.h"
#include "app/papers/headlines.h"
#include "app/window/figures/incomplete.h"

#include <QCoreApplication>

namespace afterbeat::window {

namespace {

/// Each on a line of its own: the last shock, and those of which delivery is not known or that were
/// not given.
QStringList shockNotes(const Record& record, const Figures& figures) {
  const papers::ShockCount count = papers::countShocks(record, figures);
  QStringList notes;
  if (const ShockFigures* last = papers::lastDelivered(figures)) {
    notes << words()("last %1").arg(papers::momentWords(record, last->t, words()));
  }
  if (count.withheld > 0) {
    notes << words()("%1 prepared, not given").arg(count.withheld);
  }
  if (count.unknown > 0) {
    notes << words()(count.given ? "%1 more: delivery not recorded"
                                 : "%1 noted, delivery not recorded")
                 .arg(count.unknown);
  }
  return notes;
}

/// A number that a recording which is not whole cannot hold in full says so first, in the words of
/// the sheet.
void warn(const Incomplete& incomplete, MeasureId id, CardText& text) {
  if (id == MeasureId::timeOn) {
    text.warned =
        text.notes.value(0) == words()("at least: the end was not recorded") && text.isNumber;
  } else if (id == MeasureId::shocksDelivered && incomplete.any() && text.isNumber) {
    text.notes.prepend(words()(incomplete.linesLost > 0 ? "may be more: lines were lost"
                                                        : "may be more: recording broke off"));
    text.warned = true;
  }
}

} // namespace

std::vector<Card> cardsOf(const Record& record, const Figures& figures) {
  const Incomplete incomplete = incompleteOf(record, figures);
  std::vector<Card> cards;
  for (papers::Headline& headline : papers::headlines(record, figures, words())) {
    Card card;
    card.id = headline.id;
    card.text.title = headline.title;
    card.text.number = headline.value;
    card.text.notes = headline.id == MeasureId::shocksDelivered ? shockNotes(record, figures)
                                                                : QStringList{headline.note};
    card.text.notes.removeAll(QString());
    card.text.target = headline.target;
    // The source of a figure without a target comes from the core, in its language.
    const QString source =
        QCoreApplication::translate("Measures", headline.source.toUtf8().constData());
    card.text.sentence =
        source.isEmpty() ? headline.sentence : headline.sentence + QLatin1Char('\n') + source;
    card.text.attention = headline.beyondTarget;
    card.text.isNumber = headline.recorded;
    warn(incomplete, headline.id, card.text);
    cards.push_back(std::move(card));
  }
  return cards;
}

} // namespace afterbeat::window
