#include "core/resuslog/write_log.h"

#include "core/bytes/digest.h"
#include "core/resuslog/json_line.h"
#include "core/resuslog/json_text.h"
#include "core/resuslog/sealed_output.h"
#include "core/resuslog/seen_lines.h"

#include <algorithm>
#include <set>

#include <fmt/format.h>

namespace afterbeat {

namespace {

/// So many bytes of a broken line go into one `unreadable` entry: a multiple of three, and in
/// base64 still shorter than the longest line.
constexpr std::uint64_t kUnreadablePiece = (std::uint64_t{24} << 20U) - 3072;

/// One rewriting of one record.
class Rewriter {
public:
  Rewriter(ByteSource& source, const LogFile& file, std::size_t index, const ByteSink& sink)
      : source_(source), file_(file), index_(index), log_(file.records[index]), out_(sink) {}

  tl::expected<RewriteReport, IoError> run();

private:
  using Step = tl::expected<void, IoError>;

  [[nodiscard]] bool isMine(const Problem& problem) const;
  [[nodiscard]] bool damaged() const;
  [[nodiscard]] tl::expected<std::string, IoError> bytes(std::uint64_t offset,
                                                         std::uint64_t length);
  [[nodiscard]] std::string newHeader(std::string_view asFound);
  [[nodiscard]] std::string madeUpHeader() const;
  [[nodiscard]] DerivedFrom origin() const;
  [[nodiscard]] std::string renewedSeal(const LineSpan& span, std::string_view asFound);
  [[nodiscard]] tl::expected<bool, IoError> endsWithLineFeed();
  Step copy();
  Step copyLine(const LineSpan& span, bool lineFeed);
  Step salvage();
  Step salvageLine(const LineSpan& span, int number);
  Step keepUnreadable(const LineSpan& span, int number);
  void entry(std::string_view text);

  ByteSource& source_;
  const LogFile& file_;
  std::size_t index_;
  const LogRecord& log_;
  SealedOutput out_;
  RewriteReport report_;
  /// Entry lines written, so that no line repeats another.
  std::set<std::pair<std::uint64_t, std::uint64_t>> written_;
};

/// Whether the problem lies in a line of this record.
bool Rewriter::isMine(const Problem& problem) const {
  std::size_t first = 1;
  for (std::size_t i = 0; i < index_; ++i) {
    first += file_.records[i].lines.size();
  }
  const auto line = static_cast<std::size_t>(std::max(problem.line, 0));
  return line >= first && line < first + log_.lines.size();
}

/// Damage to lines, not to what they say: that is the writer's business and stays.
bool Rewriter::damaged() const {
  const Seal& seal = log_.record.seal;
  if (file_.records.size() > 1 || log_.record.header.madeUp || (seal.present && !seal.matches)) {
    return true;
  }
  const bool lines = std::any_of(log_.lines.begin(), log_.lines.end(), [](const LineSpan& span) {
    return span.fate == LineFate::broken || span.fate == LineFate::repeated;
  });
  return lines || std::any_of(file_.problems.begin(), file_.problems.end(),
                              [](const Problem& p) { return p.kind == ProblemKind::countDiffers; });
}

tl::expected<std::string, IoError> Rewriter::bytes(std::uint64_t offset, std::uint64_t length) {
  std::string text(static_cast<std::size_t>(length), '\0');
  const auto n = source_.read(offset, text);
  if (!n) {
    return tl::unexpected(n.error());
  }
  if (*n != text.size()) {
    return tl::unexpected(
        IoError{std::string{inEnglish("Importers", "it became shorter while it was read").text()}});
  }
  return text;
}

DerivedFrom Rewriter::origin() const {
  const auto problems =
      std::count_if(file_.problems.begin(), file_.problems.end(), [&](const Problem& problem) {
        return problem.severity != Severity::info && isMine(problem);
      });
  const Header& header = log_.record.header;
  return {header.madeUp ? std::string{} : header.id, file_.sha256, static_cast<double>(problems)};
}

std::string derivedFromText(const DerivedFrom& from) {
  ObjectText text({});
  text.textIfAny("id", from.id);
  text.text("sha256", from.sha256);
  text.number("problems", from.problems.value_or(0));
  return text.close();
}

std::string newId(const LogFile& file, std::size_t index) {
  return uuidFrom(fmt::format("{} rewritten {}", file.sha256, index));
}

/// Another value for a key, in the spelling of the line around it; added at the end if missing.
void setValue(std::string& line, std::string_view key, std::string_view value) {
  ObjectParser parser;
  const auto object = parser.parse(line);
  if (!object) {
    return; // cannot be: it was read as a header
  }
  if (const JsonMember* member = (*object)->find(key)) {
    const auto raw = (*object)->raw(*member);
    const auto at = static_cast<std::size_t>(raw.data() - (*object)->text().data());
    line.replace(at, raw.size(), value);
    return;
  }
  const bool first = splitObject(line).empty();
  line.insert(line.rfind('}'), fmt::format("{}\"{}\":{}", first ? "" : ",", key, value));
}

std::string Rewriter::newHeader(std::string_view asFound) {
  std::string line(asFound);
  setValue(line, "id", jsonString(newId(file_, index_)));
  setValue(line, "derived_from", derivedFromText(origin()));
  return line;
}

std::string Rewriter::madeUpHeader() const {
  Header header = log_.record.header;
  header.id = newId(file_, index_);
  header.derivedFrom = origin();
  if (!header.recorded) { // required; a clock that was never set shows that it means nothing
    header.recorded = WallTime{{}, {}, false};
    header.clock.state = ClockState::unset;
  }
  return headerLine(header, log_.record.channels);
}

/// The closing line of an intact record: as found, unless bytes before it were left out.
std::string Rewriter::renewedSeal(const LineSpan& span, std::string_view asFound) {
  std::string line(asFound);
  if (out_.size() != span.offset) {
    setValue(line, "sha256", jsonString(out_.sha256()));
  }
  return line;
}

tl::expected<bool, IoError> Rewriter::endsWithLineFeed() {
  if (log_.end == 0) {
    return false;
  }
  const auto last = bytes(log_.end - 1, 1);
  return last ? tl::expected<bool, IoError>(*last == "\n") : tl::unexpected(last.error());
}

Rewriter::Step Rewriter::copyLine(const LineSpan& span, bool lineFeed) {
  auto text = bytes(span.offset, span.length);
  if (!text) {
    return tl::unexpected(text.error());
  }
  if (span.fate == LineFate::seal) {
    *text = renewedSeal(span, *text);
  }
  if (!lineFeed) {
    out_.write(*text);
  } else if (span.fate == LineFate::entry) {
    out_.entry(*text);
  } else {
    out_.line(*text);
  }
  return {};
}

/// An intact record: the same bytes, closed if it was not.
Rewriter::Step Rewriter::copy() {
  const auto lineFeed = endsWithLineFeed();
  if (!lineFeed) {
    return tl::unexpected(lineFeed.error());
  }
  const bool sealed = log_.record.seal.present;
  for (std::size_t i = 0; i < log_.lines.size(); ++i) {
    const bool last = i + 1 == log_.lines.size();
    if (auto step = copyLine(log_.lines[i], !last || *lineFeed || !sealed); !step || !out_.good()) {
      return step;
    }
  }
  if (!sealed) {
    out_.close(closingTime(log_.record).value_or(Time{}));
  }
  return {};
}

void Rewriter::entry(std::string_view text) {
  const auto key = SeenLines::keyOf(text);
  written_.emplace(key.low, key.high);
  out_.entry(text);
}

Rewriter::Step Rewriter::keepUnreadable(const LineSpan& span, int number) {
  ++report_.broken;
  int piece = 1;
  for (std::uint64_t done = 0; done < span.length; done += kUnreadablePiece, ++piece) {
    const auto text =
        bytes(span.offset + done, std::min<std::uint64_t>(kUnreadablePiece, span.length - done));
    if (!text) {
      return tl::unexpected(text.error());
    }
    const std::string begin =
        fmt::format(R"({{"t":{},"type":"unreadable","base64":"{}")",
                    secondsText(span.writtenAt.time_since_epoch()), base64Encode(*text));
    std::string line = begin + "}";
    const auto key = SeenLines::keyOf(line);
    if (written_.count({key.low, key.high}) > 0) {
      // Rubbish repeats itself; a line that repeats another would be dropped by the next reader.
      line = fmt::format(R"({},"note":"line {}, piece {}"}})", begin, number, piece);
    }
    entry(line);
  }
  return {};
}

Rewriter::Step Rewriter::salvageLine(const LineSpan& span, int number) {
  switch (span.fate) {
  case LineFate::broken:
    return keepUnreadable(span, number);
  case LineFate::repeated:
    ++report_.repeated;
    return {};
  case LineFate::seal:
    return {};
  case LineFate::header:
  case LineFate::entry:
  case LineFate::empty:
    break;
  }
  const auto text = bytes(span.offset, span.length);
  if (!text) {
    return tl::unexpected(text.error());
  }
  if (span.fate == LineFate::header) {
    out_.line(newHeader(*text));
  } else if (span.fate == LineFate::entry) {
    entry(*text);
  } else {
    out_.line(*text);
  }
  return {};
}

/// A damaged record: what is intact stays, under a new name.
Rewriter::Step Rewriter::salvage() {
  const bool hasHeader = std::any_of(log_.lines.begin(), log_.lines.end(),
                                     [](const LineSpan& l) { return l.fate == LineFate::header; });
  if (!hasHeader) {
    out_.line(madeUpHeader());
  }
  int number = 0;
  for (const LineSpan& span : log_.lines) {
    if (auto step = salvageLine(span, ++number); !step || !out_.good()) {
      return step;
    }
  }
  out_.close(closingTime(log_.record).value_or(Time{}));
  return {};
}

tl::expected<RewriteReport, IoError> Rewriter::run() {
  report_.changed = damaged();
  const auto step = report_.changed ? salvage() : copy();
  if (!step) {
    return tl::unexpected(step.error());
  }
  if (!out_.good()) {
    return tl::unexpected(
        IoError{std::string{inEnglish("Importers", "it could not be written").text()}});
  }
  return report_;
}

} // namespace

tl::expected<RewriteReport, IoError> rewriteRecord(ByteSource& source, const LogFile& file,
                                                   std::size_t index, const ByteSink& sink) {
  if (index >= file.records.size()) {
    return tl::unexpected(
        IoError{std::string{inEnglish("Importers", "it holds no such record").text()}});
  }
  return Rewriter(source, file, index, sink).run();
}

} // namespace afterbeat
