#include "importers/csv/note_cells.h"

#include <algorithm>

namespace afterbeat {
namespace {

constexpr std::string_view kUnits[] = {"j",  "joule", "joules", "ws", "ml",  "mm", "cm",
                                       "mg", "min",   "bpm",    "kg", "ohm", "ug", "g"};

bool isUnit(std::string_view word) {
  return std::find(std::begin(kUnits), std::end(kUnits), word) != std::end(kUnits);
}

} // namespace

CellWords takeApart(std::string_view text, bool inValue) {
  CellWords cell;
  const auto tokens = tokensOf(text);
  for (std::size_t i = 0; i < tokens.size(); ++i) {
    if (tokens[i].number) {
      Quantity quantity{*tokens[i].number, {}, inValue, cell.words.empty()};
      if (i + 1 < tokens.size() && isUnit(tokens[i + 1].word)) {
        quantity.unit = tokens[++i].word;
      }
      cell.quantities.push_back(std::move(quantity));
    } else if (opensAside(tokens[i].word) && !cell.words.empty()) {
      cell.aside = i + 1 < tokens.size();
      break;
    } else if (!isFiller(tokens[i].word)) {
      cell.words.push_back(tokens[i].word);
    }
  }
  return cell;
}

const TopicPhrase* findTopic(const Words& words, std::size_t& at) {
  const TopicPhrase* best = nullptr;
  for (const auto& phrase : topicPhrases()) {
    const auto found =
        std::search(words.begin(), words.end(), phrase.words.begin(), phrase.words.end());
    if (found == words.end()) {
      continue;
    }
    const auto place = static_cast<std::size_t>(found - words.begin());
    const bool longer = !best || phrase.words.size() > best->words.size();
    if (longer || (phrase.words.size() == best->words.size() && place < at)) {
      best = &phrase;
      at = place;
    }
  }
  return best;
}

std::vector<State> statesOf(const Words& words) {
  std::vector<State> states;
  for (const auto& phrase : statePhrases()) {
    if (phrase.words == words) {
      states.push_back(phrase.state);
    }
  }
  return states;
}

bool namesTopic(const Words& words, Topic topic) {
  return std::any_of(topicPhrases().begin(), topicPhrases().end(), [&](const auto& phrase) {
    return phrase.topic == topic && phrase.state == State::none && phrase.words == words;
  });
}

} // namespace afterbeat
