#include "core/record/record.h"

#include <algorithm>
#include <array>

namespace afterbeat {

namespace {

constexpr std::array<std::string_view, 3> kKinds{"rescue", "drill", "test"};

} // namespace

std::string_view name(RecordKind kind) {
  return kKinds[static_cast<std::size_t>(kind)];
}

std::optional<RecordKind> recordKindFrom(std::string_view word) {
  const auto* const found = std::find(kKinds.begin(), kKinds.end(), word);
  if (found == kKinds.end()) {
    return std::nullopt;
  }
  return static_cast<RecordKind>(found - kKinds.begin());
}

} // namespace afterbeat
