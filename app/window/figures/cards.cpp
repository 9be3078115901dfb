#include "app/window/figures/cards.h"

#include "app/papers/headlines.h"

#include <QCoreApplication>

namespace afterbeat::window {

std::vector<Card> cardsOf(const Record& record, const Figures& figures) {
  std::vector<Card> cards;
  for (papers::Headline& headline : papers::headlines(record, figures, words())) {
    Card card;
    card.id = headline.id;
    card.text.title = headline.title;
    card.text.number = headline.value;
    card.text.note = headline.note;
    card.text.target = headline.target;
    // The source of a figure without a target comes from the core, in its language.
    const QString source =
        QCoreApplication::translate("Measures", headline.source.toUtf8().constData());
    card.text.sentence =
        source.isEmpty() ? headline.sentence : headline.sentence + QLatin1Char('\n') + source;
    card.text.attention = headline.beyondTarget;
    card.text.isNumber = headline.recorded;
    cards.push_back(std::move(card));
  }
  return cards;
}

} // namespace afterbeat::window
