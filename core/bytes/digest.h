/// SHA-256 (FIPS 180-4, by OpenSSL), names made from it, and base64 (RFC 4648).
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace afterbeat {

/// Running SHA-256.
class Sha256 {
public:
  Sha256();
  ~Sha256();
  Sha256(Sha256&&) noexcept;
  Sha256& operator=(Sha256&&) noexcept;
  Sha256(const Sha256&) = delete;
  Sha256& operator=(const Sha256&) = delete;
  void add(std::string_view bytes);
  /// Hex digest of all bytes so far; more may be added after.
  [[nodiscard]] std::string hex() const;

private:
  struct State;
  std::unique_ptr<State> state_;
};

/// Hex SHA-256 of a text.
[[nodiscard]] std::string sha256Hex(std::string_view bytes);

/// A name for something that is fully described by `seed`: `urn:uuid:` with a version 8 UUID
/// (RFC 9562) made from the seed's SHA-256. The same seed always gives the same name.
[[nodiscard]] std::string uuidFrom(std::string_view seed);

/// Base64 with padding.
[[nodiscard]] std::string base64Encode(std::string_view bytes);

/// Strict base64 with padding; nothing if it is not.
[[nodiscard]] std::optional<std::string> base64Decode(std::string_view text);

/// Appends `count` little-endian int16 values from strict base64; false (and `into` unchanged) if
/// the text is not base64 or does not hold exactly `count` values.
[[nodiscard]] bool appendInt16FromBase64(std::string_view text, std::size_t count,
                                         std::vector<std::int16_t>& into);

/// Base64 of little-endian int16 values.
[[nodiscard]] std::string base64FromInt16(std::span<const std::int16_t> values);

} // namespace afterbeat
