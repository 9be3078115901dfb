/// Reads an event log, however damaged: everything that can be understood, plus what was wrong.
#pragma once

#include "core/bytes/byte_source.h"
#include "core/record/phrase.h"
#include "core/record/problem.h"
#include "core/record/record.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace afterbeat {

/// Why a file was refused as a whole.
enum class RefusalKind {
  unreadableFile, ///< detail: why
  noHeader,       ///< the first line is no usable header; reading can be tried under a made-up one
  otherVersion,   ///< detail: the version
  tooLarge,       ///< more than 2 GiB
  empty,          ///< nothing in it
};

struct Refusal {
  RefusalKind kind = RefusalKind::noHeader;
  std::string detail;
};

/// One sentence, with what can be done next.
[[nodiscard]] Phrase phraseOf(const Refusal& refusal);

/// The same in English.
[[nodiscard]] std::string sentence(const Refusal& refusal);

/// What became of a line of the file.
enum class LineFate : std::uint8_t { header, entry, broken, repeated, empty, seal };

/// A line of the file: where it is and what became of it. Needed to write the file again.
struct LineSpan {
  std::uint64_t offset = 0;
  /// Without line end.
  std::uint64_t length = 0;
  LineFate fate = LineFate::entry;
  /// The writing time (end, else t) of the line, or of the last line above that has one.
  Time writtenAt{};
};

/// A record of the file with its lines.
struct LogRecord {
  Record record;
  std::vector<LineSpan> lines;
  /// Bytes [begin, end) of the file that belong to it.
  std::uint64_t begin = 0, end = 0;
};

/// A whole file. Most hold one record; a second header, or entry lines after `end`, begin another.
struct LogFile {
  std::vector<LogRecord> records;
  std::vector<Problem> problems;
  /// Hex SHA-256 of the whole file.
  std::string sha256;
};

struct ReadOptions {
  /// Read a file without a usable header under a made-up one of this kind.
  std::optional<RecordKind> madeUpHeader;
  /// False: check sample blocks but do not keep their values (figures need none).
  bool keepSamples = true;
};

/// Reads a log. Never throws for what the bytes hold; the same bytes always give the same result.
[[nodiscard]] tl::expected<LogFile, Refusal> readLog(ByteSource& source,
                                                     const ReadOptions& options = {});

/// Reads the log in that file.
[[nodiscard]] tl::expected<LogFile, Refusal> readLogFile(const std::filesystem::path& path,
                                                         const ReadOptions& options = {});

} // namespace afterbeat
