/// What an archive says, in the language of the window.
#pragma once

#include "app/archive/archive.h"

#include <QString>

namespace afterbeat::window {

[[nodiscard]] QString archiveWords(const archive::ArchiveError& error);
/// Why a file is in no figure. What an archive kept of it is translated where that holds no values.
[[nodiscard]] QString archiveWords(const archive::RefusedFile& file);

} // namespace afterbeat::window
