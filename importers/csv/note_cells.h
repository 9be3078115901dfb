/// The cells of a note taken apart, and the phrases found in them.
#pragma once

#include "importers/csv/vocabulary.h"

namespace afterbeat {

using Words = std::vector<std::string>;

/// A number of a note with the word behind it.
struct Quantity {
  double number = 0;
  std::string unit;
  /// It stands in the value cell.
  bool inValue = false;
  /// No other words stand before it in its cell.
  bool leads = false;
};

/// A cell taken apart: words that matter, numbers, and whether something was set aside.
struct CellWords {
  Words words;
  std::vector<Quantity> quantities;
  bool aside = false;
};

[[nodiscard]] CellWords takeApart(std::string_view text, bool inValue);

/// The longest phrase in the words, the earlier one at a tie, and where it begins; null if there
/// is none.
[[nodiscard]] const TopicPhrase* findTopic(const Words& words, std::size_t& at);

/// Everything these words, all of them together, can say about a topic.
[[nodiscard]] std::vector<State> statesOf(const Words& words);

/// Whether these words do nothing but name the topic.
[[nodiscard]] bool namesTopic(const Words& words, Topic topic);

} // namespace afterbeat
