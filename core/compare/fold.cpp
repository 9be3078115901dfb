#include "core/compare/filter.h"

namespace afterbeat {
namespace {

/// Small letter of a code point from U+0080 to U+07FF.
unsigned small(unsigned c) {
  const auto within = [c](unsigned from, unsigned to) { return c >= from && c <= to; };
  if (within(0xC0, 0xDE)) {
    return c == 0xD7 ? c : c + 0x20;
  }
  if (within(0x100, 0x137) || within(0x14A, 0x177)) {
    // The dotted capital I has no small letter of two bytes; the dotless small i is none's.
    return c == 0x130 || c == 0x131 ? c : c | 1U;
  }
  if (within(0x139, 0x148) || within(0x179, 0x17E)) {
    return c % 2 == 1 ? c + 1 : c;
  }
  if (c == 0x178) {
    return 0xFF;
  }
  if (within(0x391, 0x3A9)) {
    return c == 0x3A2 ? c : c + 0x20;
  }
  if (within(0x400, 0x40F)) {
    return c + 0x50;
  }
  return within(0x410, 0x42F) ? c + 0x20 : c;
}

} // namespace

void appendFolded(std::string& to, std::string_view text) {
  const std::size_t begin = to.size();
  to.append(text);
  for (std::size_t i = begin; i < to.size(); ++i) {
    const auto c = static_cast<unsigned char>(to[i]);
    if (c < 0x80) {
      to[i] = static_cast<char>(c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
    } else if (c >= 0xC2 && c <= 0xDF && i + 1 < to.size()) {
      const auto next = static_cast<unsigned char>(to[i + 1]);
      const unsigned folded = small((c & 0x1FU) << 6U | (next & 0x3FU));
      to[i] = static_cast<char>(0xC0U | folded >> 6U);
      to[++i] = static_cast<char>(0x80U | (folded & 0x3FU));
    }
  }
}

} // namespace afterbeat
