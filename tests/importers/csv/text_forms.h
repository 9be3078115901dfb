/// The same text in several encodings, for tests. Only characters below U+10000.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Code points of UTF-8 of up to three bytes.
inline std::vector<unsigned> codePoints(std::string_view utf8) {
  std::vector<unsigned> points;
  for (std::size_t i = 0; i < utf8.size();) {
    const auto at = [&](std::size_t k) { return static_cast<unsigned char>(utf8[i + k]) & 0x3FU; };
    const auto lead = static_cast<unsigned char>(utf8[i]);
    if (lead < 0x80) {
      points.push_back(lead);
      i += 1;
    } else if (lead < 0xE0) {
      points.push_back((lead & 0x1FU) << 6U | at(1));
      i += 2;
    } else {
      points.push_back((lead & 0x0FU) << 12U | at(1) << 6U | at(2));
      i += 3;
    }
  }
  return points;
}

inline std::string utf16(std::string_view utf8, bool bigEndian) {
  std::string bytes;
  for (const auto point : codePoints(utf8)) {
    const char low = static_cast<char>(point % 256U);
    const char high = static_cast<char>(point / 256U);
    bytes += bigEndian ? std::string{high, low} : std::string{low, high};
  }
  return bytes;
}

/// Only for characters of Latin-1, which Windows-1252 shares.
inline std::string latin1(std::string_view utf8) {
  std::string bytes;
  for (const auto point : codePoints(utf8)) {
    bytes.push_back(static_cast<char>(point));
  }
  return bytes;
}

} // namespace afterbeat
