/// Writes annotations as annot(5) describes them, for tests.
#pragma once

#include <string>
#include <string_view>

namespace afterbeat {

inline std::string word(unsigned code, unsigned low) {
  const unsigned bits = code * 1024U + low;
  return {static_cast<char>(bits % 256U), static_cast<char>(bits / 256U)};
}

/// Moves on by `interval` steps (SKIP: high half first, each half low byte first).
inline std::string skip(int interval) {
  const auto bits = static_cast<unsigned>(interval);
  std::string bytes = word(59, 0);
  for (const unsigned half : {bits >> 16U, bits & 0xFFFFU}) {
    bytes.push_back(static_cast<char>(half % 256U));
    bytes.push_back(static_cast<char>(half / 256U));
  }
  return bytes;
}

/// The text of the annotation before (AUX), padded to an even length.
inline std::string aux(std::string_view text) {
  return word(63, static_cast<unsigned>(text.size())) + std::string{text} +
         std::string(text.size() % 2, '\0');
}

inline std::string endMark() {
  return word(0, 0);
}

} // namespace afterbeat
