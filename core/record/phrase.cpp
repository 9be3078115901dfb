#include "core/record/phrase.h"

namespace afterbeat {

std::string filled(std::string_view text, const std::vector<std::string>& values) {
  std::string all;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool place = text[i] == '%' && i + 1 < text.size() && text[i + 1] >= '1' &&
                       static_cast<std::size_t>(text[i + 1] - '1') < values.size();
    if (place) {
      all += values[static_cast<std::size_t>(text[++i] - '1')];
    } else {
      all.push_back(text[i]);
    }
  }
  return all;
}

std::string sentence(const Phrase& phrase) {
  return phrase.parts.empty()
             ? std::string{}
             : filled(phrase.parts.front(), {phrase.parts.begin() + 1, phrase.parts.end()});
}

} // namespace afterbeat
