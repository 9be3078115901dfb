/// Writes event logs: a record from memory in canonical form, or a file again after salvage.
#pragma once

#include "core/resuslog/read_log.h"

namespace afterbeat {

/// The header as one line of JSON, without line end.
[[nodiscard]] std::string headerLine(const Header& header, const std::vector<Channel>& channels);

/// An entry as one line of JSON, without line end; `header` names its part.
[[nodiscard]] std::string entryLine(const Entry& entry, const Header& header);

/// Writes a record in canonical form and seals it: lines by `end` where there is one, else by `t`;
/// sample blocks of at most 5 s.
[[nodiscard]] bool writeRecord(const Record& record, const ByteSink& sink);

/// What writing a file again did.
struct RewriteReport {
  /// False: the bytes are those of the original (line ends and a missing `end` apart).
  bool changed = false;
  int broken = 0;
  int repeated = 0;
};

/// Writes record `index` of a file that was read, again: intact lines byte for byte, broken ones as
/// `unreadable`, repeated ones left out; sealed. A damaged record gets a new id and `derived_from`;
/// writing the result again changes nothing more.
[[nodiscard]] tl::expected<RewriteReport, IoError>
rewriteRecord(ByteSource& source, const LogFile& file, std::size_t index, const ByteSink& sink);

} // namespace afterbeat
