/// Where bytes come from, and where they go: files read in pieces, files replaced as a whole.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace afterbeat {

/// Why a file could not be read or written: a ready clause, e.g. "no such file".
struct IoError {
  std::string what;
};

/// Random read access to bytes that do not change while they are read.
class ByteSource {
public:
  ByteSource() = default;
  ByteSource(const ByteSource&) = delete;
  ByteSource& operator=(const ByteSource&) = delete;
  virtual ~ByteSource() = default;
  /// Length in bytes.
  [[nodiscard]] virtual std::uint64_t size() const = 0;
  /// Fills as much of `into` as there is from `offset`; returns the number of bytes (0 at the end).
  [[nodiscard]] virtual tl::expected<std::size_t, IoError> read(std::uint64_t offset,
                                                                std::span<char> into) = 0;
};

/// Bytes in memory; the text must outlive the source.
class MemorySource final : public ByteSource {
public:
  explicit MemorySource(std::string_view bytes) : bytes_(bytes) {}
  [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
  [[nodiscard]] tl::expected<std::size_t, IoError> read(std::uint64_t offset,
                                                        std::span<char> into) override;

private:
  std::string_view bytes_;
};

/// Opens a regular file for reading, or says why it cannot ("no such file", "is a folder", ...).
[[nodiscard]] tl::expected<std::unique_ptr<ByteSource>, IoError>
openFile(const std::filesystem::path& path);

/// The whole of a source as text; an error if it is longer than `limit` bytes.
[[nodiscard]] tl::expected<std::string, IoError> readAll(ByteSource& source, std::uint64_t limit);

/// Takes bytes one piece after the other; false: they could not be written, stop.
using ByteSink = std::function<bool(std::string_view)>;

/// Writes a file beside its final place and renames it there once it is complete and on disk, so
/// that a reader sees the old file or the new one, never half. `fill` writes through the sink it is
/// given and returns whether it is content; if it is not, the old file stays.
[[nodiscard]] tl::expected<void, IoError>
replaceFile(const std::filesystem::path& path, const std::function<bool(const ByteSink&)>& fill);

} // namespace afterbeat
