#include "importers/csv/words.h"

#include <charconv>

namespace afterbeat {
namespace {

/// The base letters of U+00C0 to U+00FF; a space where there is none.
constexpr std::string_view kBaseLetters = "aaaaaaaceeeeiiiidnooooo ouuuuytsaaaaaaaceeeeiiiidnooooo "
                                          "ouuuuyty";
static_assert(kBaseLetters.size() == 64);

/// Small letters without accents; letters of other scripts stay as they are.
std::string folded(std::string_view text) {
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto c = static_cast<unsigned char>(text[i]);
    const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0U;
    if (c == 0xC3 && next >= 0x80 && next <= 0xBF) {
      if (next == 0x9F) {
        plain += "ss";
      } else {
        plain.push_back(kBaseLetters[next - 0x80]);
      }
      ++i;
    } else if ((c == 0xCC && next >= 0x80) || (c == 0xCD && next >= 0x80 && next <= 0xAF)) {
      ++i; // a combining accent
    } else if (c == 0xC2 && next >= 0x80) {
      plain.push_back(' '); // no-break space, degree sign and the like
      ++i;
    } else {
      plain.push_back(c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : text[i]);
    }
  }
  return plain;
}

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}
bool isLetter(char c) {
  return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// ae, oe and ue as written without the dots.
std::string withoutDigraphs(std::string_view word) {
  std::string plain;
  for (const char c : word) {
    const bool dotted = !plain.empty() && c == 'e' &&
                        (plain.back() == 'a' || plain.back() == 'o' || plain.back() == 'u');
    if (!dotted) {
      plain.push_back(c);
    }
  }
  return plain;
}

Token numberToken(std::string_view digits) {
  std::string plain{digits};
  const auto comma = plain.find(',');
  if (comma != std::string::npos) {
    plain[comma] = '.';
  }
  double value = 0;
  std::from_chars(plain.data(), plain.data() + plain.size(), value);
  return {plain, value};
}

} // namespace

std::vector<Token> tokensOf(std::string_view text) {
  const auto plain = folded(text);
  std::vector<Token> tokens;
  for (std::size_t i = 0; i < plain.size();) {
    std::size_t end = i;
    if (isDigit(plain[i])) {
      while (end < plain.size() && isDigit(plain[end])) {
        ++end;
      }
      const bool decimals = end + 1 < plain.size() && (plain[end] == '.' || plain[end] == ',') &&
                            isDigit(plain[end + 1]);
      if (decimals) {
        for (++end; end < plain.size() && isDigit(plain[end]); ++end) {
        }
      }
      tokens.push_back(numberToken(std::string_view{plain}.substr(i, end - i)));
    } else if (isLetter(plain[i])) {
      while (end < plain.size() && isLetter(plain[end])) {
        ++end;
      }
      tokens.push_back({withoutDigraphs(std::string_view{plain}.substr(i, end - i)), {}});
    } else {
      end = i + 1;
    }
    i = end;
  }
  return tokens;
}

std::vector<std::string> wordsOf(std::string_view text) {
  std::vector<std::string> words;
  for (auto& token : tokensOf(text)) {
    words.push_back(std::move(token.word));
  }
  return words;
}

} // namespace afterbeat
