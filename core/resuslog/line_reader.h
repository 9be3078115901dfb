/// Cuts a source into lines without ever holding all of it.
#pragma once

#include "core/bytes/byte_source.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace afterbeat {

/// A longer line is skipped without being kept.
inline constexpr std::uint64_t kLongestLine = std::uint64_t{32} << 20U;

/// One line, without its end (LF, and any CR before it).
struct Line {
  std::uint64_t offset = 0;
  std::uint64_t length = 0;
  /// Counted from 1.
  int number = 0;
  /// Empty if `tooLong`. Good until the next line is asked for; `ObjectParser::kPadding` bytes
  /// after it are readable.
  std::string_view text;
  bool tooLong = false;
};

class LineReader {
public:
  /// `onBytes` gets every byte of the source once, in order.
  LineReader(ByteSource& source, std::function<void(std::string_view)> onBytes);

  /// The next line; nothing at the end. A byte order mark at the very start is skipped.
  [[nodiscard]] tl::expected<std::optional<Line>, IoError> next();

  /// Hands all bytes before the current line to `onBytes`.
  void settle();

private:
  [[nodiscard]] tl::expected<void, IoError> refill();
  [[nodiscard]] tl::expected<std::optional<Line>, IoError> skipLongLine();
  void handOverUpTo(std::size_t position);
  [[nodiscard]] Line take(std::size_t lineFeed, bool hasLineFeed);

  ByteSource& source_;
  std::function<void(std::string_view)> onBytes_;
  std::vector<char> buffer_;
  /// In the buffer: first byte not handed over yet, first byte of the current line, first byte
  /// after it, end of what was read.
  std::size_t handed_ = 0, line_ = 0, next_ = 0, end_ = 0;
  /// The source's offset of the buffer's first byte.
  std::uint64_t base_ = 0;
  int number_ = 0;
  bool sourceEnded_ = false;
};

} // namespace afterbeat
