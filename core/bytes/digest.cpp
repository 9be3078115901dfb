#include "core/bytes/digest.h"

#include <bit>
#include <cstring>
#include <new>

#include <modp_b64.h>
#include <openssl/evp.h>

namespace afterbeat {

namespace {

using Context = std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)>;
using Digest = std::array<unsigned char, 32>;

Context newContext() {
  Context context(EVP_MD_CTX_new(), &EVP_MD_CTX_free);
  if (!context) {
    throw std::bad_alloc();
  }
  return context;
}

constexpr std::string_view kHex = "0123456789abcdef";

std::string hexOf(std::span<const unsigned char> bytes) {
  std::string text;
  text.reserve(bytes.size() * 2);
  for (const unsigned char b : bytes) {
    text += kHex[b >> 4U];
    text += kHex[b & 15U];
  }
  return text;
}

/// The six bits a base64 letter stands for; 64 for anything else.
unsigned sextet(char c) {
  constexpr std::string_view kLetters =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  const auto at = kLetters.find(c);
  return at == std::string_view::npos ? 64U : static_cast<unsigned>(at);
}

/// The library lets bits pass that no encoder would leave set before the padding; strict base64
/// (RFC 4648, 3.5) has none, so that one value has one spelling.
bool padBitsAreZero(std::string_view text) {
  if (text.empty() || text.back() != '=') {
    return true;
  }
  const bool two = text[text.size() - 2] == '=';
  const unsigned last = sextet(text[text.size() - (two ? 3 : 2)]);
  return (last & (two ? 15U : 3U)) == 0;
}

/// Decodes into a buffer of at least text.size() / 4 * 3 + 2 bytes.
std::optional<std::size_t> decodeInto(char* buffer, std::string_view text) {
  if (text.empty()) {
    return 0;
  }
  if (text.size() % 4 != 0 || !padBitsAreZero(text)) {
    return std::nullopt;
  }
  const std::size_t length = modp_b64_decode(buffer, text.data(), text.size());
  return length == static_cast<std::size_t>(-1) ? std::nullopt : std::optional{length};
}

void swapIfBigEndian(std::span<std::int16_t> values) {
  if constexpr (std::endian::native == std::endian::big) {
    for (std::int16_t& v : values) {
      const auto bits = std::bit_cast<std::uint16_t>(v);
      v = std::bit_cast<std::int16_t>(static_cast<std::uint16_t>((bits >> 8U) | (bits << 8U)));
    }
  }
}

} // namespace

struct Sha256::State {
  Context context = newContext();
};

Sha256::Sha256() : state_(std::make_unique<State>()) {
  if (EVP_DigestInit_ex(state_->context.get(), EVP_sha256(), nullptr) != 1) {
    throw std::bad_alloc();
  }
}
Sha256::~Sha256() = default;
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;

void Sha256::add(std::string_view bytes) {
  EVP_DigestUpdate(state_->context.get(), bytes.data(), bytes.size());
}

std::string Sha256::hex() const {
  const Context copy = newContext();
  Digest digest{};
  if (EVP_MD_CTX_copy_ex(copy.get(), state_->context.get()) != 1 ||
      EVP_DigestFinal_ex(copy.get(), digest.data(), nullptr) != 1) {
    throw std::bad_alloc();
  }
  return hexOf(digest);
}

std::string sha256Hex(std::string_view bytes) {
  Sha256 sha;
  sha.add(bytes);
  return sha.hex();
}

std::string uuidFrom(std::string_view seed) {
  std::string hex = sha256Hex(seed).substr(0, 32);
  hex[12] = '8'; // version 8: made by a rule of one's own
  const unsigned variant = static_cast<unsigned>(kHex.find(hex[16]));
  hex[16] = kHex[8U | (variant & 3U)];
  return "urn:uuid:" + hex.substr(0, 8) + '-' + hex.substr(8, 4) + '-' + hex.substr(12, 4) + '-' +
         hex.substr(16, 4) + '-' + hex.substr(20);
}

std::string base64Encode(std::string_view bytes) {
  std::string text(modp_b64_encode_len(bytes.size()), '\0');
  text.resize(modp_b64_encode(text.data(), bytes.data(), bytes.size()));
  return text;
}

std::optional<std::string> base64Decode(std::string_view text) {
  std::string bytes(text.size() / 4 * 3 + 2, '\0');
  const auto length = decodeInto(bytes.data(), text);
  if (!length) {
    return std::nullopt;
  }
  bytes.resize(*length);
  return bytes;
}

bool appendInt16FromBase64(std::string_view text, std::size_t count,
                           std::vector<std::int16_t>& into) {
  // Compare lengths first: a wrong count must not cost a decoding, or an overflow.
  if (count > text.size() || (count * 2 + 2) / 3 * 4 != text.size()) {
    return false;
  }
  const auto buffer = std::make_unique_for_overwrite<std::int16_t[]>(text.size() / 8 * 3 + 4);
  const auto length = decodeInto(reinterpret_cast<char*>(buffer.get()), text);
  if (!length || *length != count * 2) {
    return false;
  }
  swapIfBigEndian({buffer.get(), count});
  into.insert(into.end(), buffer.get(), buffer.get() + count);
  return true;
}

std::string base64FromInt16(std::span<const std::int16_t> values) {
  if constexpr (std::endian::native == std::endian::big) {
    std::vector<std::int16_t> copy(values.begin(), values.end());
    swapIfBigEndian(copy);
    return base64Encode({reinterpret_cast<const char*>(copy.data()), copy.size() * 2});
  }
  return base64Encode({reinterpret_cast<const char*>(values.data()), values.size() * 2});
}

} // namespace afterbeat
