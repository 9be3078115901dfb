/// A log on its way out: counts and digests what is written, so that it can be closed.
#pragma once

#include "core/bytes/byte_source.h"
#include "core/bytes/digest.h"
#include "core/record/record.h"

#include <optional>
#include <string>
#include <string_view>

namespace afterbeat {

class SealedOutput {
public:
  explicit SealedOutput(const ByteSink& sink) : sink_(sink) {}

  /// Bytes as they are.
  void write(std::string_view bytes) {
    sha_.add(bytes);
    size_ += bytes.size();
    good_ = good_ && sink_(bytes);
  }
  /// A line that is no entry.
  void line(std::string_view text) {
    write(text);
    write("\n");
  }
  /// An entry's line.
  void entry(std::string_view text) {
    line(text);
    ++entries_;
  }
  /// The closing line.
  void close(Time t);

  /// False once the sink gave up.
  [[nodiscard]] bool good() const { return good_; }
  /// Bytes written so far.
  [[nodiscard]] std::uint64_t size() const { return size_; }
  /// Digest of everything written so far.
  [[nodiscard]] std::string sha256() const { return sha_.hex(); }

private:
  const ByteSink& sink_;
  Sha256 sha_;
  std::size_t entries_ = 0;
  std::uint64_t size_ = 0;
  bool good_ = true;
};

/// The time a record's closing line gets: the latest in the record; nothing if it holds none.
[[nodiscard]] std::optional<Time> closingTime(const Record& record);

} // namespace afterbeat
