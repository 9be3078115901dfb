/// Finds lines that a device wrote twice because it flushed a buffer twice.
#pragma once

#include "core/bytes/byte_source.h"
#include "core/resuslog/line_reader.h"

#include <cstdint>
#include <unordered_map>

namespace afterbeat {

/// The entry lines of one record, by a digest (XXH3, 128 bits); lines whose digests agree are
/// compared byte by byte from the source.
class SeenLines {
public:
  struct Key {
    std::uint64_t low = 0, high = 0;
    friend bool operator==(const Key&, const Key&) = default;
  };

  explicit SeenLines(ByteSource& source) : source_(source) {}

  [[nodiscard]] static Key keyOf(std::string_view text);
  /// The number of an earlier line with the same bytes; 0 if there is none.
  [[nodiscard]] int find(const Key& key, const Line& line);
  void remember(const Key& key, const Line& line);
  void forgetAll() { seen_.clear(); }

private:
  struct Hash {
    std::size_t operator()(const Key& key) const { return key.low; }
  };
  struct Place {
    std::uint64_t offset = 0, length = 0;
    int number = 0;
  };
  [[nodiscard]] bool sameBytes(const Place& place, std::string_view text);

  ByteSource& source_;
  std::unordered_map<Key, Place, Hash> seen_;
};

} // namespace afterbeat
