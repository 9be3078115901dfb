/// Entries of a record in a few words each, the types this program does not know included.
#pragma once

#include "core/record/entry.h"

#include <QString>

namespace afterbeat::window {

/// "shock, 150 J", "analysis: no shock advised", "unknown entry “heart_song”". Incomplete entries
/// say so.
[[nodiscard]] QString entryWords(const Entry& entry);

/// The kind of thing it is, as a reader would look for it: "shock", "battery", "remark".
[[nodiscard]] QString entryKindWords(const EntryData& data);

/// "device", "observer", "worked out".
[[nodiscard]] QString sourceWords(Source source);

} // namespace afterbeat::window
