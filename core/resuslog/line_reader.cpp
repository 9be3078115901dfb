#include "core/resuslog/line_reader.h"

#include "core/resuslog/json_line.h"

#include <algorithm>
#include <cstring>
#include <limits>

namespace afterbeat {

namespace {

constexpr std::size_t kPiece = std::size_t{1} << 20U;

} // namespace

LineReader::LineReader(ByteSource& source, std::function<void(std::string_view)> onBytes)
    : source_(source), onBytes_(std::move(onBytes)) {}

void LineReader::handOverUpTo(std::size_t position) {
  if (position > handed_) {
    onBytes_({buffer_.data() + handed_, position - handed_});
    handed_ = position;
  }
}

void LineReader::settle() {
  handOverUpTo(line_);
}

/// Moves the unfinished line to the front and reads a piece behind it.
tl::expected<void, IoError> LineReader::refill() {
  handOverUpTo(next_);
  const std::size_t kept = end_ - next_;
  if (next_ > 0 && kept > 0) {
    std::memmove(buffer_.data(), buffer_.data() + next_, kept);
  }
  handed_ -= std::min(handed_, next_);
  base_ += next_;
  line_ = next_ = 0;
  end_ = kept;
  const std::size_t needed = kept + kPiece + ObjectParser::kPadding;
  if (buffer_.size() < needed) {
    buffer_.resize(kept == 0 ? needed : std::max(needed, 2 * kept));
  }
  const std::size_t room = std::min(kPiece, buffer_.size() - ObjectParser::kPadding - kept);
  const auto n = source_.read(base_ + kept, {buffer_.data() + kept, room});
  if (!n) {
    return tl::unexpected(n.error());
  }
  sourceEnded_ = *n < room;
  end_ += *n;
  if (base_ == 0 && kept == 0 &&
      std::string_view(buffer_.data(), end_).substr(0, 3) == "\xEF\xBB\xBF") {
    line_ = next_ = 3;
  }
  return {};
}

Line LineReader::take(std::size_t lineFeed, bool hasLineFeed) {
  line_ = next_;
  next_ = lineFeed + (hasLineFeed ? 1 : 0);
  std::size_t stop = lineFeed;
  while (stop > line_ && buffer_[stop - 1] == '\r') {
    --stop;
  }
  Line line;
  line.offset = base_ + line_;
  line.length = stop - line_;
  line.number = number_ < std::numeric_limits<int>::max() ? ++number_ : number_;
  line.tooLong = line.length > kLongestLine;
  line.text =
      line.tooLong ? std::string_view{} : std::string_view(buffer_.data() + line_, stop - line_);
  return line;
}

tl::expected<std::optional<Line>, IoError> LineReader::next() {
  line_ = next_;
  std::size_t searched = next_;
  while (true) {
    const void* found =
        end_ > searched ? std::memchr(buffer_.data() + searched, '\n', end_ - searched) : nullptr;
    if (found != nullptr) {
      return take(static_cast<std::size_t>(static_cast<const char*>(found) - buffer_.data()), true);
    }
    if (sourceEnded_) {
      if (end_ > next_) {
        return take(end_, false);
      }
      handOverUpTo(end_);
      return std::optional<Line>{};
    }
    if (end_ - next_ > kLongestLine + 1) {
      return skipLongLine();
    }
    const std::size_t unfinished = end_ - next_;
    if (auto good = refill(); !good) {
      return tl::unexpected(good.error());
    }
    searched = next_ + unfinished;
  }
}

/// The buffer holds the beginning of a line that is too long already: let it go, up to its end.
tl::expected<std::optional<Line>, IoError> LineReader::skipLongLine() {
  Line line;
  line.offset = base_ + next_;
  line.number = number_ < std::numeric_limits<int>::max() ? ++number_ : number_;
  line.tooLong = true;
  std::uint64_t stop = 0;
  while (true) {
    const void* found = std::memchr(buffer_.data() + next_, '\n', end_ - next_);
    if (found != nullptr) {
      next_ = static_cast<std::size_t>(static_cast<const char*>(found) - buffer_.data()) + 1;
      stop = base_ + next_ - 1;
      break;
    }
    next_ = end_;
    stop = base_ + end_;
    if (sourceEnded_) {
      break;
    }
    if (auto good = refill(); !good) {
      return tl::unexpected(good.error());
    }
    if (end_ == 0) {
      break;
    }
  }
  line_ = next_;
  line.length = stop - line.offset;
  return std::optional<Line>{line};
}

} // namespace afterbeat
