/// Words of a text in a form that forgives case, accents and punctuation.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// A word or a number of a text.
struct Token {
  /// Folded; for a number, its digits.
  std::string word;
  std::optional<double> number;
};

/// Splits into words and numbers. Letters are made small, accents dropped (ä, ae and a are the
/// same), everything else separates; "150J" is a number and a word, "1,5" and "1.5" are numbers.
[[nodiscard]] std::vector<Token> tokensOf(std::string_view text);

/// The folded words of a text, numbers included as written.
[[nodiscard]] std::vector<std::string> wordsOf(std::string_view text);

} // namespace afterbeat
