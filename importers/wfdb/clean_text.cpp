#include "importers/wfdb/wfdb_header.h"

namespace afterbeat {
namespace {

unsigned char byteAt(std::string_view text, std::size_t i) {
  return static_cast<unsigned char>(text[i]);
}

/// Length of the UTF-8 sequence that begins at `i` (RFC 3629); 0 if there is none.
std::size_t sequenceLength(std::string_view text, std::size_t i) {
  const unsigned lead = byteAt(text, i);
  const std::size_t length = lead < 0x80                    ? 1
                             : lead >= 0xC2 && lead <= 0xDF ? 2
                             : (lead & 0xF0U) == 0xE0       ? 3
                             : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                            : 0;
  if (length == 0 || i + length > text.size()) {
    return 0;
  }
  for (std::size_t k = 1; k < length; ++k) {
    if ((byteAt(text, i + k) & 0xC0U) != 0x80) {
      return 0;
    }
  }
  const unsigned second = length > 1 ? byteAt(text, i + 1) : 0;
  const bool overlongOrSurrogate =
      (lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) ||
      (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F);
  return overlongOrSurrogate ? 0 : length;
}

} // namespace

std::string cleanText(std::string_view bytes) {
  std::string text;
  for (std::size_t i = 0; i < bytes.size();) {
    const auto length = sequenceLength(bytes, i);
    const unsigned value = byteAt(bytes, i);
    if (length > 1) {
      text.append(bytes.substr(i, length));
    } else if (length == 0) {
      text.push_back(static_cast<char>(0xC0U | (value >> 6U)));
      text.push_back(static_cast<char>(0x80U | (value & 0x3FU)));
    } else {
      text.push_back(value < 0x20 || value == 0x7F ? ' ' : bytes[i]);
    }
    i += length == 0 ? 1 : length;
  }
  const auto begin = text.find_first_not_of(' ');
  const auto end = text.find_last_not_of(' ');
  return begin == std::string::npos ? std::string{} : text.substr(begin, end - begin + 1);
}

} // namespace afterbeat
