/// What a noted event means in the words of the event log.
#pragma once

#include "core/record/entry.h"

#include <optional>
#include <string>
#include <string_view>

namespace afterbeat {

/// How a note fits in with the ones around it.
enum class NoteRole : unsigned char {
  moment,   ///< `data` as it stands
  remark,   ///< a remark in so many words; its text is in the other columns
  analysis, ///< an analysis, or what one advised
  analysisBegins,
  analysisEnds,
  advice,            ///< only what an analysis advised
  compressionsBegin, ///< until `compressionsEnd`
  compressionsEnd,
  cprBegins, ///< a stretch where its end is noted, otherwise a known moment
  rhythm,    ///< until the next one
};

/// A note understood.
struct NoteMeaning {
  NoteRole role = NoteRole::moment;
  EntryData data;
  /// How many of it at that moment ("2 breaths").
  int times = 1;
  /// What stands in the value cell, or beside the known words, and was not used: goes into the
  /// entry's note.
  std::string leftOver;
};

/// Understands the cells "what" and "value" of a note; nothing if the words are not known. Numbers
/// in `what` count only with a unit (J, ml, mm, mg) or before a word of plural ("2 breaths"); a
/// bare number there is a running number ("Shock 2").
[[nodiscard]] std::optional<NoteMeaning> meaningOf(std::string_view what, std::string_view value);

} // namespace afterbeat
