#include "core/bytes/byte_source.h"

#include "core/record/phrase.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace afterbeat {

namespace {

/// A clause for a number of errno's.
IoError ioError(EnglishText clause) {
  return {std::string{clause.text()}};
}

IoError ioError(int code) {
  switch (code) {
  case ENOENT:
    return ioError(inEnglish("Importers", "no such file or folder"));
  case EISDIR:
    return ioError(inEnglish("Importers", "it is a folder"));
  case EACCES:
  case EPERM:
    return ioError(inEnglish("Importers", "access is not allowed"));
  case ENOSPC:
  case EDQUOT:
    return ioError(inEnglish("Importers", "the disk is full"));
  case EROFS:
    return ioError(inEnglish("Importers", "the disk can only be read"));
  default:
    return {std::generic_category().message(code)};
  }
}

/// An open file that closes itself.
class Descriptor {
public:
  explicit Descriptor(int fd) : fd_(fd) {}
  Descriptor(Descriptor&& other) noexcept : fd_(std::exchange(other.fd_, -1)) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  Descriptor& operator=(Descriptor&&) = delete;
  ~Descriptor() { static_cast<void>(close()); }

  [[nodiscard]] int get() const { return fd_; }
  /// Closes now; 0 or an errno.
  [[nodiscard]] int close() {
    const int fd = std::exchange(fd_, -1);
    return fd >= 0 && ::close(fd) != 0 ? errno : 0;
  }

private:
  int fd_;
};

class FileSource final : public ByteSource {
public:
  FileSource(Descriptor file, std::uint64_t size) : file_(std::move(file)), size_(size) {}

  [[nodiscard]] std::uint64_t size() const override { return size_; }

  [[nodiscard]] tl::expected<std::size_t, IoError> read(std::uint64_t offset,
                                                        std::span<char> into) override {
    std::size_t done = 0;
    while (done < into.size()) {
      const ssize_t n = ::pread(file_.get(), into.data() + done, into.size() - done,
                                static_cast<off_t>(offset + done));
      if (n < 0 && errno == EINTR) {
        continue;
      }
      if (n < 0) {
        return tl::unexpected(ioError(errno));
      }
      if (n == 0) {
        break;
      }
      done += static_cast<std::size_t>(n);
    }
    return done;
  }

private:
  Descriptor file_;
  std::uint64_t size_;
};

/// The file beside the final place: removed unless it was renamed.
class TemporaryFile {
public:
  explicit TemporaryFile(const std::filesystem::path& target) {
    for (int attempt = 0; attempt < 1000; ++attempt) {
      path_ = target;
      path_ += ".part" + std::to_string(::getpid()) + "-" + std::to_string(attempt);
      fd_ = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
      if (fd_ >= 0 || errno != EEXIST) {
        break;
      }
    }
    error_ = fd_ < 0 ? errno : 0;
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile() {
    if (fd_ >= 0) {
      ::close(fd_);
    }
    if (!renamed_ && error_ == 0) {
      ::unlink(path_.c_str());
    }
  }

  /// Why it could not be made; 0 if it was.
  [[nodiscard]] int error() const { return error_; }
  [[nodiscard]] int fd() const { return fd_; }

  /// On disk, closed and in its place; 0 or an errno.
  [[nodiscard]] int moveTo(const std::filesystem::path& target) {
    if (::fsync(fd_) != 0) {
      return errno;
    }
    if (::close(std::exchange(fd_, -1)) != 0) {
      return errno;
    }
    if (::rename(path_.c_str(), target.c_str()) != 0) {
      return errno;
    }
    renamed_ = true;
    return 0;
  }

private:
  std::filesystem::path path_;
  int fd_ = -1;
  int error_ = 0;
  bool renamed_ = false;
};

/// Collects small pieces; remembers the first failure.
class BufferedWriter {
public:
  explicit BufferedWriter(int fd) : fd_(fd) { buffer_.reserve(kPiece); }

  bool write(std::string_view bytes) {
    if (buffer_.size() + bytes.size() > kPiece && !flush()) {
      return false;
    }
    if (bytes.size() >= kPiece) {
      return put(bytes);
    }
    buffer_.append(bytes);
    return error_ == 0;
  }

  bool flush() {
    const bool good = put(buffer_);
    buffer_.clear();
    return good;
  }

  [[nodiscard]] int error() const { return error_; }

private:
  static constexpr std::size_t kPiece = std::size_t{1} << 20U;

  bool put(std::string_view bytes) {
    while (error_ == 0 && !bytes.empty()) {
      const ssize_t n = ::write(fd_, bytes.data(), bytes.size());
      if (n >= 0) {
        bytes.remove_prefix(static_cast<std::size_t>(n));
      } else if (errno != EINTR) {
        error_ = errno;
      }
    }
    return error_ == 0;
  }

  int fd_;
  int error_ = 0;
  std::string buffer_;
};

/// A rename is only safe from a power cut once the folder is on disk too. File systems that cannot
/// do this (some network ones) are left alone.
void syncFolderOf(const std::filesystem::path& path) {
  const auto parent = path.has_parent_path() ? path.parent_path() : std::filesystem::path{"."};
  const Descriptor folder(::open(parent.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (folder.get() >= 0) {
    static_cast<void>(::fsync(folder.get()));
  }
}

/// Where the bytes go: through a link to what it points at.
std::filesystem::path resolved(const std::filesystem::path& path) {
  std::error_code failed;
  if (!std::filesystem::is_symlink(path, failed)) {
    return path;
  }
  auto target = std::filesystem::weakly_canonical(path, failed);
  return failed ? path : target;
}

} // namespace

tl::expected<std::size_t, IoError> MemorySource::read(std::uint64_t offset, std::span<char> into) {
  if (offset >= bytes_.size()) {
    return 0;
  }
  const std::size_t n = std::min(into.size(), bytes_.size() - static_cast<std::size_t>(offset));
  if (n > 0) {
    std::memcpy(into.data(), bytes_.data() + offset, n);
  }
  return n;
}

tl::expected<std::unique_ptr<ByteSource>, IoError> openFile(const std::filesystem::path& path) {
  // Without O_NONBLOCK, opening a named pipe would wait for its writer.
  Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (file.get() < 0) {
    return tl::unexpected(ioError(errno));
  }
  struct stat facts {};
  if (::fstat(file.get(), &facts) != 0) {
    return tl::unexpected(ioError(errno));
  }
  if (S_ISDIR(facts.st_mode)) {
    return tl::unexpected(ioError(EISDIR));
  }
  if (!S_ISREG(facts.st_mode)) {
    return tl::unexpected(ioError(inEnglish("Importers", "it is not an ordinary file")));
  }
  return std::make_unique<FileSource>(std::move(file), static_cast<std::uint64_t>(facts.st_size));
}

tl::expected<std::string, IoError> readAll(ByteSource& source, std::uint64_t limit) {
  if (source.size() > limit) {
    return tl::unexpected(ioError(inEnglish("Importers", "it is larger than this program reads")));
  }
  std::string bytes(static_cast<std::size_t>(source.size()), '\0');
  const auto n = source.read(0, bytes);
  if (!n) {
    return tl::unexpected(n.error());
  }
  bytes.resize(*n);
  return bytes;
}

tl::expected<void, IoError> replaceFile(const std::filesystem::path& path,
                                        const std::function<bool(const ByteSink&)>& fill) {
  const auto target = resolved(path);
  struct stat before {};
  const bool exists = ::stat(target.c_str(), &before) == 0;
  if (exists && S_ISDIR(before.st_mode)) {
    return tl::unexpected(ioError(EISDIR));
  }
  if (exists && !S_ISREG(before.st_mode)) {
    return tl::unexpected(ioError(inEnglish("Importers", "it is not an ordinary file")));
  }
  TemporaryFile temporary(target);
  if (temporary.error() != 0) {
    return tl::unexpected(ioError(temporary.error()));
  }
  BufferedWriter writer(temporary.fd());
  const bool content = fill([&](std::string_view bytes) { return writer.write(bytes); });
  const bool flushed = content && writer.flush();
  if (writer.error() != 0) {
    return tl::unexpected(ioError(writer.error()));
  }
  if (!content || !flushed) {
    return tl::unexpected(ioError(inEnglish("Importers", "writing was given up")));
  }
  if (exists) {
    // The rights of the file that is replaced stay; where that is not possible, the new ones hold.
    static_cast<void>(::fchmod(temporary.fd(), before.st_mode & 07777U));
  }
  if (const int code = temporary.moveTo(target); code != 0) {
    return tl::unexpected(ioError(code));
  }
  syncFolderOf(target);
  return {};
}

} // namespace afterbeat
