#include "core/resuslog/seen_lines.h"

#include <algorithm>
#include <array>

#include <xxhash.h>

namespace afterbeat {

SeenLines::Key SeenLines::keyOf(std::string_view text) {
  const XXH128_hash_t hash = XXH3_128bits(text.data(), text.size());
  return {hash.low64, hash.high64};
}

int SeenLines::find(const Key& key, const Line& line) {
  const auto found = seen_.find(key);
  return found != seen_.end() && sameBytes(found->second, line.text) ? found->second.number : 0;
}

void SeenLines::remember(const Key& key, const Line& line) {
  seen_.try_emplace(key, Place{line.offset, line.length, line.number});
}

bool SeenLines::sameBytes(const Place& place, std::string_view text) {
  if (place.length != text.size()) {
    return false;
  }
  std::array<char, 16384> piece{};
  for (std::size_t done = 0; done < text.size();) {
    const std::size_t size = std::min(piece.size(), text.size() - done);
    const auto n = source_.read(place.offset + done, {piece.data(), size});
    if (!n || *n != size || text.substr(done, size) != std::string_view(piece.data(), size)) {
      return false;
    }
    done += size;
  }
  return true;
}

} // namespace afterbeat
