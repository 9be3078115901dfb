/// The secret that pseudonyms are made with.
#pragma once

#include "app/archive/archive.h"

#include <string>

namespace afterbeat::archive {

/// 32 random bytes, as 64 hex digits.
[[nodiscard]] std::string newSecret();

/// The archive's own, so that all who use it get the same pseudonyms. Made with the first use,
/// which needs the right to write: an error where it is not there and cannot be made.
[[nodiscard]] Expected<std::string> pseudonymSecret(const Archive& archive);

} // namespace afterbeat::archive
