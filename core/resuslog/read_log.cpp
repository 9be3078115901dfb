#include "core/resuslog/read_log.h"

#include "core/bytes/digest.h"
#include "core/resuslog/json_line.h"
#include "core/resuslog/line_reader.h"
#include "core/resuslog/record_reader.h"
#include "core/resuslog/seen_lines.h"

#include <algorithm>
#include <memory>

#include <fmt/format.h>

namespace afterbeat {

namespace {

constexpr std::uint64_t kLargestFile = std::uint64_t{2} << 30U;

bool isBlank(std::string_view text) {
  return text.find_first_not_of(" \t\r") == std::string_view::npos;
}

/// One reading of one file.
class LogReader {
public:
  LogReader(ByteSource& source, const ReadOptions& options)
      : source_(source), options_(options), seen_(source),
        lines_(source, [this](std::string_view bytes) { hash(bytes); }) {}

  tl::expected<LogFile, Refusal> run();

private:
  using Step = tl::expected<void, Refusal>;

  void hash(std::string_view bytes) {
    fileSha_.add(bytes);
    if (recordSha_) {
      recordSha_->add(bytes);
    }
  }

  Step take(const Line& line);
  Step takeWithoutRecord(const Line& line, FlatObject* object);
  void takeObject(FlatObject& object, const Line& line, const SeenLines::Key& key);
  void lose(const Line& line, Phrase why);
  void begin(HeaderRead header, const Line& line);
  void beginAnother(HeaderRead header, const Line& line);
  HeaderRead madeUpHeader(const Line& line) const;
  void takeHeader(FlatObject& object, const Line& line);
  void seal(FlatObject& object, const EndLine& end, const Line& line);
  LogFile finish();
  void nameMadeUpOnes();

  ByteSource& source_;
  const ReadOptions& options_;
  SeenLines seen_;
  LineReader lines_;
  ObjectParser parser_;
  Sha256 fileSha_;
  /// Of the record's bytes, where it does not begin with the file.
  std::optional<Sha256> recordSha_;
  std::unique_ptr<RecordReader> record_;
  /// The last header, for lines after `end` that have none of their own.
  HeaderRead lastHeader_;
  /// Empty lines before the first header.
  std::vector<Line> leading_;
  LogFile file_;
};

HeaderRead LogReader::madeUpHeader(const Line& line) const {
  HeaderRead read;
  read.header.kind = options_.madeUpHeader;
  read.header.clock.state = ClockState::unset;
  read.header.madeUp = true;
  read.problems.push_back({line.number, Severity::warning, ProblemKind::madeUpHeader, {}});
  return read;
}

void LogReader::begin(HeaderRead header, const Line& line) {
  lines_.settle();
  recordSha_.reset();
  if (line.offset != 0) {
    recordSha_.emplace();
  }
  lastHeader_ = header;
  lastHeader_.problems.clear();
  seen_.forgetAll();
  record_ = std::make_unique<RecordReader>(std::move(header), source_.size() - line.offset,
                                           options_.keepSamples, file_.problems);
  record_->log().begin = file_.records.empty() ? 0 : line.offset;
  for (const Line& empty : leading_) {
    record_->note(empty, LineFate::empty);
  }
  leading_.clear();
}

void LogReader::beginAnother(HeaderRead header, const Line& line) {
  file_.records.push_back(record_->finish(line.offset));
  file_.problems.push_back({line.number, Severity::warning, ProblemKind::anotherRecord, {}});
  begin(std::move(header), line);
}

void LogReader::takeHeader(FlatObject& object, const Line& line) {
  HeaderRead header = readHeader(object, line.number);
  if (record_) {
    beginAnother(std::move(header), line);
  } else {
    begin(std::move(header), line);
  }
  record_->note(line, LineFate::header);
}

void LogReader::lose(const Line& line, Phrase why) {
  // Half a line at the end of a recording that was not closed is how power loss looks; the warning
  // about the missing end says it.
  const bool cutOff = !record_->sealed() && !line.text.empty() && line.text.front() == '{' &&
                      line.offset + line.length == source_.size();
  if (!cutOff) {
    file_.problems.push_back(
        {line.number, Severity::error, ProblemKind::brokenLine, std::move(why.parts)});
    record_->log().record.lostLines += 1;
  }
  record_->note(line, LineFate::broken);
}

LogReader::Step LogReader::takeWithoutRecord(const Line& line, FlatObject* object) {
  const auto version = object != nullptr ? headerVersion(*object) : std::nullopt;
  if (version && !isReadableVersion(*version)) {
    return tl::unexpected(Refusal{RefusalKind::otherVersion, *version});
  }
  if (version) {
    takeHeader(*object, line);
    return {};
  }
  if (!options_.madeUpHeader) {
    return tl::unexpected(Refusal{RefusalKind::noHeader, {}});
  }
  begin(madeUpHeader(line), line);
  return {};
}

LogReader::Step LogReader::take(const Line& line) {
  if (!line.tooLong && isBlank(line.text)) {
    if (record_) {
      record_->note(line, LineFate::empty);
    } else {
      leading_.push_back(line);
    }
    return {};
  }
  const auto key = SeenLines::keyOf(line.text);
  if (const int earlier = record_ && !line.tooLong ? seen_.find(key, line) : 0; earlier != 0) {
    file_.problems.push_back(
        {line.number, Severity::warning, ProblemKind::repeatedLine, {std::to_string(earlier)}});
    record_->note(line, LineFate::repeated);
    return {};
  }
  const auto object =
      line.tooLong ? tl::expected<FlatObject*, Phrase>(
                         tl::unexpected(phrase(inEnglish("Importers", "it is longer than 32 MiB"))))
                   : parser_.parsePadded(line.text);
  if (!record_) {
    if (auto step = takeWithoutRecord(line, object ? *object : nullptr); !step) {
      return step;
    }
    if (!lastHeader_.header.madeUp) {
      return {};
    }
  }
  if (!object) {
    lose(line, object.error());
  } else {
    takeObject(**object, line, key);
  }
  return {};
}

void LogReader::takeObject(FlatObject& object, const Line& line, const SeenLines::Key& key) {
  const auto version = headerVersion(object);
  if (version && isReadableVersion(*version)) {
    takeHeader(object, line);
    return;
  }
  if (record_->sealed()) {
    if (isEndLine(object)) {
      lose(line, phrase(inEnglish("Importers", "it closes a recording that is closed already")));
      return;
    }
    HeaderRead copy = lastHeader_;
    copy.header.madeUp = true;
    beginAnother(std::move(copy), line);
  }
  seen_.remember(key, line);
  const auto end = isEndLine(object) ? readEndLine(object) : std::nullopt;
  if (end) {
    seal(object, *end, line);
  } else {
    record_->entry(object, line);
  }
}

void LogReader::seal(FlatObject& object, const EndLine& end, const Line& line) {
  lines_.settle();
  std::vector<std::string> digests;
  if (recordSha_) {
    digests.push_back(recordSha_->hex());
  }
  if (file_.records.empty()) {
    // A byte order mark or empty lines before the header may be part of what the writer counted.
    digests.push_back(fileSha_.hex());
  }
  record_->seal(object, end, digests, line);
}

void LogReader::nameMadeUpOnes() {
  for (std::size_t i = 0; i < file_.records.size(); ++i) {
    Header& header = file_.records[i].record.header;
    if (header.madeUp) {
      header.id = uuidFrom(fmt::format("{} made up {}", file_.sha256, i));
    }
  }
}

LogFile LogReader::finish() {
  file_.records.push_back(record_->finish(source_.size()));
  file_.sha256 = fileSha_.hex();
  for (LogRecord& log : file_.records) {
    log.record.otherRecordsInFile = static_cast<int>(file_.records.size()) - 1;
  }
  nameMadeUpOnes();
  std::stable_sort(file_.problems.begin(), file_.problems.end(),
                   [](const Problem& a, const Problem& b) { return a.line < b.line; });
  return std::move(file_);
}

tl::expected<LogFile, Refusal> LogReader::run() {
  if (source_.size() > kLargestFile) {
    return tl::unexpected(Refusal{RefusalKind::tooLarge, {}});
  }
  while (true) {
    const auto line = lines_.next();
    if (!line) {
      return tl::unexpected(Refusal{RefusalKind::unreadableFile, line.error().what});
    }
    if (!*line) {
      break;
    }
    if (auto step = take(**line); !step) {
      return tl::unexpected(step.error());
    }
  }
  if (!record_) {
    return tl::unexpected(Refusal{RefusalKind::empty, {}});
  }
  return finish();
}

} // namespace

Phrase phraseOf(const Refusal& refusal) {
  switch (refusal.kind) {
  case RefusalKind::unreadableFile:
    return phrase(inEnglish("Importers", "The file could not be read: %1."), refusal.detail);
  case RefusalKind::noHeader:
    return phrase(inEnglish(
        "Importers",
        "The file does not begin like an event log: its first line cannot be used. If it is one "
        "whose beginning was lost, it can be salvaged under a made-up first line."));
  case RefusalKind::otherVersion:
    return phrase(inEnglish("Importers",
                            "The file is written in version %1 of the event log; this program "
                            "reads versions 1.x. A newer program may read it."),
                  fmt::format("\"{}\"", refusal.detail)); // a name, not a number
  case RefusalKind::tooLarge:
    return phrase(inEnglish("Importers", "The file is larger than 2 GiB, more than this program "
                                         "reads; it can be split between two lines."));
  case RefusalKind::empty:
    break;
  }
  return phrase(inEnglish("Importers", "The file is empty; there is nothing to read."));
}

std::string sentence(const Refusal& refusal) {
  return sentence(phraseOf(refusal));
}

tl::expected<LogFile, Refusal> readLog(ByteSource& source, const ReadOptions& options) {
  return LogReader(source, options).run();
}

tl::expected<LogFile, Refusal> readLogFile(const std::filesystem::path& path,
                                           const ReadOptions& options) {
  const auto source = openFile(path);
  if (!source) {
    return tl::unexpected(Refusal{RefusalKind::unreadableFile, source.error().what});
  }
  return readLog(**source, options);
}

} // namespace afterbeat
