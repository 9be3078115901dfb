/// Gathers the lines of one record, and settles at its end what only the end can tell.
#pragma once

#include "core/resuslog/line_reader.h"
#include "core/resuslog/read_entry.h"
#include "core/resuslog/read_header.h"
#include "core/resuslog/read_log.h"
#include "core/resuslog/sample_store.h"

#include <deque>
#include <map>
#include <optional>
#include <tuple>
#include <vector>

namespace afterbeat {

/// What the closing line says.
struct EndLine {
  double entries = 0;
  std::string sha256;
};

/// The closing line's content; nothing if a required key is missing or unusable.
[[nodiscard]] std::optional<EndLine> readEndLine(FlatObject& object);

/// Whether the object's type is `end`.
[[nodiscard]] bool isEndLine(FlatObject& object);

class RecordReader {
public:
  /// `bytesToCome`: at most so much of the file can belong to the record.
  RecordReader(HeaderRead header, std::uint64_t bytesToCome, bool keepSamples,
               std::vector<Problem>& problems);
  RecordReader(const RecordReader&) = delete;
  RecordReader& operator=(const RecordReader&) = delete;

  /// Takes note of a line that holds no entry.
  void note(const Line& line, LineFate fate);
  /// Reads an entry line.
  void entry(FlatObject& object, const Line& line);
  /// The closing line; `actual` are acceptable digests of what stands before it, the first one the
  /// usual.
  void seal(FlatObject& object, const EndLine& end, const std::vector<std::string>& actual,
            const Line& line);

  [[nodiscard]] bool sealed() const { return out_.record.seal.present; }
  /// Entry lines so far, lost ones included.
  [[nodiscard]] std::size_t lineCount() const { return entryLines_; }
  [[nodiscard]] LogRecord& log() { return out_; }

  /// Settles the rest; `end` is the offset after the record's last byte.
  [[nodiscard]] LogRecord finish(std::uint64_t end);

private:
  using StretchKey = std::tuple<std::size_t, Time, Source, int>;
  /// A stretch whose end may still come.
  struct OpenStretch {
    std::size_t index = 0;
    std::vector<Problem> problems;
  };

  void makeStores(std::uint64_t bytesToCome, bool keepSamples);
  void span(const Line& line, LineFate fate);
  /// Keeps account of the times of a line; reports one out of order.
  void place(std::optional<Time> t, std::optional<Time> end, bool complete, const Line& line);
  [[nodiscard]] bool takeSamples(FlatObject& object, EntryRead& read);
  [[nodiscard]] bool lose(EntryRead& read, ProblemKind kind, std::vector<std::string> args);
  void keep(EntryRead read);
  void closeOpenOnes();
  void dropReplaced();

  std::vector<Problem>& problems_;
  LogRecord out_;
  std::vector<ChannelUse> uses_;
  /// One for each channel.
  std::deque<SampleStore> stores_;
  std::map<StretchKey, OpenStretch> open_;
  /// Open stretches without a time, which nothing can close.
  std::vector<OpenStretch> openForEver_;
  std::vector<std::size_t> replaced_;
  std::size_t entryLines_ = 0;
  /// `t` of the last line that has one; the writing time of the last line that has one.
  Time lastT_{};
  std::optional<Time> lastWritten_;
  /// The latest time of any complete entry.
  std::optional<Time> lastComplete_;
  int lastLine_ = 0;
};

} // namespace afterbeat
