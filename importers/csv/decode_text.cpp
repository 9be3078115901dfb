#include "importers/csv/decode_text.h"

#include <algorithm>
#include <array>
#include <cerrno>

#include <iconv.h>

namespace afterbeat {
namespace {

/// An open conversion of the C library.
class Converter {
public:
  explicit Converter(const char* from) : handle_(iconv_open("UTF-8", from)) {}
  Converter(const Converter&) = delete;
  Converter& operator=(const Converter&) = delete;
  ~Converter() {
    if (usable()) {
      iconv_close(handle_);
    }
  }
  [[nodiscard]] bool usable() const {
    // iconv_open answers (iconv_t)-1; comparing as a number needs no cast to a pointer.
    return reinterpret_cast<std::intptr_t>(handle_) != -1;
  }

  /// Converts all of `bytes`, a unit of `unit` bytes at a time being replaced where it means
  /// nothing; counts those.
  std::string convert(std::string_view bytes, std::size_t unit, std::size_t& replaced) {
    std::string text;
    std::string input{bytes};
    char* in = input.data();
    std::size_t left = input.size();
    std::array<char, 4096> buffer{};
    while (left > 0) {
      char* out = buffer.data();
      std::size_t room = buffer.size();
      const auto result = iconv(handle_, &in, &left, &out, &room);
      text.append(buffer.data(), buffer.size() - room);
      if (result != static_cast<std::size_t>(-1) || errno == E2BIG) {
        continue;
      }
      text += "\xEF\xBF\xBD";
      ++replaced;
      const auto step = std::min(unit, left);
      in += step;
      left -= step;
    }
    return text;
  }

private:
  iconv_t handle_;
};

/// Whether UTF-16 without a byte order mark is likely: NULs on one side of the byte pairs only.
std::optional<TextEncoding> guessUtf16(std::string_view bytes) {
  std::array<std::size_t, 2> nuls{};
  const std::size_t looked = std::min<std::size_t>(bytes.size(), 4096) / 2 * 2;
  for (std::size_t i = 0; i < looked; ++i) {
    nuls[i % 2] += bytes[i] == '\0' ? 1 : 0;
  }
  const auto many = [&](std::size_t count) { return count * 10 > looked / 2 * 4; };
  const auto few = [&](std::size_t count) { return count * 20 <= looked / 2; };
  if (looked >= 4 && many(nuls[1]) && few(nuls[0])) {
    return TextEncoding::utf16LittleEndian;
  }
  if (looked >= 4 && many(nuls[0]) && few(nuls[1])) {
    return TextEncoding::utf16BigEndian;
  }
  return std::nullopt;
}

const char* iconvName(TextEncoding encoding) {
  switch (encoding) {
  case TextEncoding::utf16LittleEndian:
    return "UTF-16LE";
  case TextEncoding::utf16BigEndian:
    return "UTF-16BE";
  case TextEncoding::windows1252:
    return "WINDOWS-1252";
  case TextEncoding::utf8:
    break;
  }
  return "UTF-8";
}

bool isText(std::string_view text) {
  std::size_t control = 0;
  for (const char c : text) {
    if (c == '\0') {
      return false;
    }
    const bool layout = c == '\t' || c == '\n' || c == '\r' || c == '\f';
    control += static_cast<unsigned char>(c) < 0x20 && !layout ? 1 : 0;
  }
  return control * 50 <= text.size();
}

tl::expected<DecodedText, ImportError> decodeAs(TextEncoding encoding, std::string_view bytes) {
  DecodedText decoded;
  decoded.encoding = encoding;
  Converter converter{iconvName(encoding)};
  if (!converter.usable()) {
    return tl::unexpected(importError(
        inEnglish("Importers", "This system cannot convert text from %1."), iconvName(encoding)));
  }
  const bool pairs =
      encoding == TextEncoding::utf16LittleEndian || encoding == TextEncoding::utf16BigEndian;
  decoded.text = converter.convert(bytes, pairs ? 2 : 1, decoded.replaced);
  return decoded;
}

tl::expected<DecodedText, ImportError> decode(std::string_view bytes) {
  if (bytes.substr(0, 3) == "\xEF\xBB\xBF") {
    return decodeAs(TextEncoding::utf8, bytes.substr(3));
  }
  if (bytes.substr(0, 2) == "\xFF\xFE") {
    return decodeAs(TextEncoding::utf16LittleEndian, bytes.substr(2));
  }
  if (bytes.substr(0, 2) == "\xFE\xFF") {
    return decodeAs(TextEncoding::utf16BigEndian, bytes.substr(2));
  }
  if (const auto guessed = guessUtf16(bytes)) {
    return decodeAs(*guessed, bytes);
  }
  auto utf8 = decodeAs(TextEncoding::utf8, bytes);
  return !utf8 || utf8->replaced == 0 ? std::move(utf8)
                                      : decodeAs(TextEncoding::windows1252, bytes);
}

} // namespace

tl::expected<DecodedText, ImportError> decodeText(std::string_view bytes) {
  auto decoded = decode(bytes);
  if (decoded && !isText(decoded->text)) {
    return tl::unexpected(importError(inEnglish(
        "Importers", "This file holds no text; notes must be a table saved as text (CSV).")));
  }
  return decoded;
}

} // namespace afterbeat
