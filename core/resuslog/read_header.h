/// Turns a log's first line into a header and its channels.
#pragma once

#include "core/record/problem.h"
#include "core/record/record.h"
#include "core/resuslog/json_line.h"

#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// What can be done with the blocks of a channel.
enum class ChannelUse : unsigned char {
  decoded,  ///< samples are read
  notDrawn, ///< unknown encoding: blocks are kept as they are
  unusable, ///< described wrongly: blocks are lost
};

/// A header line as understood.
struct HeaderRead {
  Header header;
  std::vector<Channel> channels;
  /// One for each channel.
  std::vector<ChannelUse> uses;
  std::vector<Problem> problems;
};

/// The format version of a line that is a header of any version, e.g. "1.0"; nothing for others.
[[nodiscard]] std::optional<std::string> headerVersion(FlatObject& object);

/// Whether this program reads that version: any 1.x.
[[nodiscard]] bool isReadableVersion(std::string_view version);

/// Whether it is a URN of a UUID (RFC 9562), `urn:uuid:` and 8-4-4-4-12 hexadecimal digits.
[[nodiscard]] bool isUuidUrn(std::string_view text);

/// Reads a header of a readable version.
[[nodiscard]] HeaderRead readHeader(FlatObject& object, int line);

} // namespace afterbeat
