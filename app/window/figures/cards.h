/// The headline figures as the cards of the window.
#pragma once

#include "app/window/figures/headline_card.h"
#include "core/measures/figures.h"

#include <vector>

namespace afterbeat::window {

struct Card {
  MeasureId id = MeasureId::timeOn;
  CardText text;
};

/// Five or six, in the order in which they are read.
[[nodiscard]] std::vector<Card> cardsOf(const Record& record, const Figures& figures);

} // namespace afterbeat::window
