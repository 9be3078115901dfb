/// Bytes of a text file as UTF-8, whatever it was written with.
#pragma once

#include "importers/imported.h"

#include <string>
#include <string_view>

namespace afterbeat {

enum class TextEncoding : std::uint8_t { utf8, utf16LittleEndian, utf16BigEndian, windows1252 };

struct DecodedText {
  /// UTF-8, without a byte order mark.
  std::string text;
  TextEncoding encoding = TextEncoding::utf8;
  /// Bytes that mean nothing in the encoding; each stands as U+FFFD in the text.
  std::size_t replaced = 0;
};

/// UTF-8 or UTF-16 with a byte order mark, UTF-16 without one (every other byte is NUL), UTF-8 if
/// all bytes fit, else Windows-1252. An error where the bytes are no text at all.
[[nodiscard]] tl::expected<DecodedText, ImportError> decodeText(std::string_view bytes);

} // namespace afterbeat
