/// Sentences and clauses that are made far from the edge, kept so that they can be translated
/// there.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

namespace afterbeat {

/// A text with numbered places (%1, %2, … up to %9) that the collector of translations finds where
/// it stands. Made by `inEnglish` alone.
class EnglishText {
public:
  [[nodiscard]] constexpr std::string_view text() const { return text_; }

private:
  explicit constexpr EnglishText(std::string_view text) : text_(text) {}
  friend constexpr EnglishText inEnglish(const char* context, const char* text);

  std::string_view text_;
};

/// Marks a text for the collector (resources/languages/update), which reads both arguments as
/// literals; `context` is the name that translations are looked up under.
[[nodiscard]] constexpr EnglishText inEnglish(const char* /*context*/, const char* text) {
  return EnglishText{text};
}

/// A text, and what stands in its places.
struct Phrase {
  /// The English text, then the values of %1, %2, …
  std::vector<std::string> parts;
};

/// Values are taken as fmt spells them.
template <typename... Values>
[[nodiscard]] Phrase phrase(EnglishText english, const Values&... values) {
  return {{std::string{english.text()}, fmt::format("{}", values)...}};
}

/// `text` with its places filled in one go, as a value may itself hold "%2". A place without a
/// value stays as it is. `values` begins with the value of %1.
[[nodiscard]] std::string filled(std::string_view text, const std::vector<std::string>& values);

/// In English; empty for a phrase without a text.
[[nodiscard]] std::string sentence(const Phrase& phrase);

} // namespace afterbeat
