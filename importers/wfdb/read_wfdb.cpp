#include "importers/wfdb/read_wfdb.h"

#include "core/bytes/digest.h"
#include "importers/wfdb/signal_meaning.h"
#include "importers/wfdb/wfdb_annotations.h"
#include "importers/wfdb/wfdb_header.h"
#include "importers/wfdb/wfdb_samples.h"

#include <algorithm>
#include <map>
#include <utility>

#include <fmt/format.h>

namespace afterbeat {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t kLargestHeader = 1U << 20U;
constexpr std::uint64_t kLargestFile = 2ULL << 30U;

/// The three files of a record by their common beginning.
struct RecordFiles {
  fs::path header;
  fs::path annotations;
};

bool isFile(const fs::path& path) {
  std::error_code ignored;
  return fs::is_regular_file(path, ignored);
}

/// `stem` with an ending, in capitals where only that is there.
fs::path withEnding(const fs::path& stem, const char* ending, const char* capitals) {
  auto path = stem;
  path += ending;
  auto other = stem;
  other += capitals;
  return !isFile(path) && isFile(other) ? other : path;
}

RecordFiles filesOf(const fs::path& path) {
  auto ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  auto stem = path;
  if (ending == ".hea" || ending == ".dat" || ending == ".atr") {
    stem.replace_extension();
  }
  RecordFiles files{withEnding(stem, ".hea", ".HEA"), withEnding(stem, ".atr", ".ATR")};
  if (!isFile(files.header) && ending != ".dat" && ending != ".atr" && isFile(path)) {
    files.header = path; // a header under another name
  }
  return files;
}

tl::expected<std::string, IoError> readFile(const fs::path& path, std::uint64_t limit) {
  auto source = openFile(path);
  if (!source) {
    return tl::unexpected(source.error());
  }
  return readAll(**source, limit);
}

/// Reads the files of one record and puts the parts together.
class WfdbReader {
public:
  explicit WfdbReader(const fs::path& path) : files_(filesOf(path)) {}

  tl::expected<Imported, ImportError> read() {
    const auto text = readFile(files_.header, kLargestHeader);
    if (!text) {
      return tl::unexpected(importError(
          inEnglish("Importers", "The header %1 of the WFDB record cannot be read: %2."),
          files_.header.filename().string(), text.error().what));
    }
    auto header = parseWfdbHeader(*text, result_.problems);
    if (!header) {
      return tl::unexpected(header.error());
    }
    header_ = std::move(*header);
    addToName(*text);
    readSignals();
    readAnnotationFile();
    if (result_.record.channels.empty() && result_.record.entries.empty()) {
      return tl::unexpected(nothingRead());
    }
    finish();
    return std::move(result_);
  }

private:
  template <typename... Values>
  void report(int line, Severity severity, EnglishText said, const Values&... values) {
    result_.problems.push_back(importNote(line, severity, said, values...));
  }

  void addToName(std::string_view bytes) { nameSeed_ += sha256Hex(bytes); }

  [[nodiscard]] ImportError nothingRead() const {
    const auto found =
        std::find_if(result_.problems.begin(), result_.problems.end(),
                     [](const Problem& problem) { return problem.severity == Severity::error; });
    if (found == result_.problems.end()) {
      return importError(
          inEnglish("Importers", "This WFDB record holds neither signals nor remarks."));
    }
    auto error = importError(inEnglish("Importers", "Nothing could be imported."));
    error.said.push_back({found->args});
    return error;
  }

  /// Signals that share a file stand one after the other (header(5)).
  void readSignals() {
    const auto& signals = header_.signals;
    for (std::size_t begin = 0; begin < signals.size();) {
      std::size_t end = begin + 1;
      while (end < signals.size() && signals[end].file == signals[begin].file) {
        ++end;
      }
      readGroup({signals.begin() + static_cast<std::ptrdiff_t>(begin),
                 signals.begin() + static_cast<std::ptrdiff_t>(end)});
      begin = end;
    }
  }

  /// How the samples of a file lie; nothing, and a problem, where they cannot be read.
  std::optional<SampleForm> formOf(const std::vector<WfdbSignal>& group) {
    const auto& first = group.front();
    if (std::any_of(group.begin(), group.end(), [](const auto& one) { return !one.valid; })) {
      return std::nullopt; // said when the line was read
    }
    for (const auto& one : group) {
      if (one.samplesPerFrame != 1) {
        report(one.line, Severity::error,
               inEnglish("Importers",
                         "The signal \"%1\" has %2 samples where others have one, which "
                         "is not supported; the signals of %3 are not imported."),
               one.description, one.samplesPerFrame, cleanText(one.file));
        return std::nullopt;
      }
      if (one.format != first.format || one.byteOffset != first.byteOffset) {
        report(one.line, Severity::error,
               inEnglish("Importers", "The signals of %1 are described with different storage "
                                      "forms; they are not imported."),
               cleanText(first.file));
        return std::nullopt;
      }
    }
    if (first.format == 16 || first.format == 212) {
      return first.format == 16 ? SampleForm::plain16 : SampleForm::packed12;
    }
    for (const auto& one : group) {
      report(one.line, Severity::error,
             inEnglish("Importers", "The signal \"%1\" is stored in format %2, which is not "
                                    "supported (16 and 212 are); it is not imported."),
             one.description, one.format);
    }
    return std::nullopt;
  }

  /// The bytes of a signal file beside the header, from its first sample on.
  std::optional<std::string> bytesOf(const WfdbSignal& signal) {
    const fs::path name{signal.file};
    if (name.empty() || name != name.filename() || signal.file == "-" || signal.file == "." ||
        signal.file == "..") {
      report(signal.line, Severity::error,
             inEnglish("Importers", "The signal file \"%1\" does not lie beside the header; its "
                                    "signals are not imported."),
             cleanText(signal.file));
      return std::nullopt;
    }
    auto bytes = readFile(files_.header.parent_path() / name, kLargestFile);
    if (!bytes) {
      report(signal.line, Severity::error,
             inEnglish("Importers",
                       "The signal file %1 cannot be read (%2); its signals are not imported."),
             cleanText(signal.file), bytes.error().what);
      return std::nullopt;
    }
    addToName(*bytes);
    bytes->erase(
        0, static_cast<std::size_t>(std::min<std::uint64_t>(signal.byteOffset, bytes->size())));
    return std::move(*bytes);
  }

  void readGroup(const std::vector<WfdbSignal>& group) {
    const auto form = formOf(group);
    const auto bytes = form ? bytesOf(group.front()) : std::nullopt;
    if (!bytes) {
      return;
    }
    const auto there = samplesIn(*form, bytes->size());
    const auto wanted =
        header_.samples > UINT64_MAX / group.size() ? UINT64_MAX : header_.samples * group.size();
    const bool whole = header_.samples > 0 && there >= wanted;
    if (header_.samples > 0 && there < wanted) {
      report(group.front().line, Severity::error,
             inEnglish("Importers", "The signal file %1 is shorter than its header says: %2 s of "
                                    "%3 s are there, and were read."),
             cleanText(group.front().file), fmt::format("{:.3f}", secondsOf(there / group.size())),
             fmt::format("{:.3f}", secondsOf(header_.samples)));
    } else if (header_.samples > 0 && there - wanted >= group.size()) {
      report(group.front().line, Severity::info,
             inEnglish("Importers",
                       "The signal file %1 is longer than its header says; the rest was not read."),
             cleanText(group.front().file));
    }
    auto dealt = unpackSamples(*form, *bytes, whole ? wanted : there, group.size());
    for (std::size_t i = 0; i < group.size(); ++i) {
      verify(group[i], dealt[i], whole);
      addChannel(group[i], std::move(dealt[i]), missingValue(*form));
    }
  }

  void verify(const WfdbSignal& signal, const std::vector<std::int16_t>& samples, bool whole) {
    if (signal.initialValue && !samples.empty() && samples.front() != *signal.initialValue) {
      report(signal.line, Severity::error,
             inEnglish("Importers", "The signal \"%1\" begins with %2 where its header says %3."),
             signal.description, samples.front(), *signal.initialValue);
    }
    if (!signal.checksum || !whole) {
      return;
    }
    const auto sum = sampleChecksum(samples);
    if (sum != static_cast<std::int16_t>(*signal.checksum)) {
      report(signal.line, Severity::error,
             inEnglish("Importers", "The signal \"%1\" does not match its checksum (%2 instead of "
                                    "%3); it may be damaged."),
             signal.description, sum, *signal.checksum);
    }
  }

  [[nodiscard]] double secondsOf(std::uint64_t samples) const {
    return static_cast<double>(samples) / header_.frequency;
  }

  void addChannel(const WfdbSignal& signal, std::vector<std::int16_t> samples,
                  std::int16_t missing) {
    const auto skew =
        static_cast<std::ptrdiff_t>(std::min<std::uint64_t>(signal.skew, samples.size()));
    samples.erase(samples.begin(), samples.begin() + skew);
    std::replace(samples.begin(), samples.end(), missing, kMissingSample);
    const double longest = kLargestSeconds * header_.frequency;
    if (static_cast<double>(samples.size()) > longest) {
      report(signal.line, Severity::error,
             inEnglish(
                 "Importers",
                 "The signal \"%1\" is longer than the %2 s a record can hold; the rest is lost."),
             signal.description, fmt::format("{:.0f}", kLargestSeconds));
      samples.resize(static_cast<std::size_t>(longest));
    }
    if (!signal.calibrated) {
      report(signal.line, Severity::info,
             inEnglish("Importers",
                       "The signal \"%1\" is not calibrated; %2 steps per %3 are assumed."),
             signal.description, signal.gain, signal.units);
    }
    Channel channel;
    channel.unit = ucumUnit(signal.units);
    channel.quantity = quantityOf(signal.description, channel.unit);
    channel.id = fmt::format("{}{}", channel.quantity, ++numbers_[channel.quantity]);
    channel.rateHz = header_.frequency;
    channel.scale = 1 / signal.gain;
    channel.offset = signal.baseline == 0 ? 0 : -signal.baseline / signal.gain;
    channel.label = signal.description;
    if (!samples.empty()) {
      channel.blocks.push_back({Time{}, 0, samples.size()});
    }
    channel.samples = std::move(samples);
    result_.record.channels.push_back(std::move(channel));
  }

  [[nodiscard]] Time recordEnd() const {
    auto longest = header_.samples;
    if (longest == 0) {
      for (const auto& channel : result_.record.channels) {
        longest = std::max<std::uint64_t>(longest, channel.samples.size());
      }
    }
    return timeFromSeconds(std::min(secondsOf(longest), kLargestSeconds)).value_or(Time{});
  }

  void readAnnotationFile() {
    if (!isFile(files_.annotations)) {
      report(0, Severity::info,
             inEnglish("Importers", "There is no annotation file beside the header."));
      return;
    }
    const auto bytes = readFile(files_.annotations, kLargestFile);
    if (!bytes) {
      report(0, Severity::error,
             inEnglish("Importers", "The annotation file %1 cannot be read: %2."),
             files_.annotations.filename().string(), bytes.error().what);
      return;
    }
    addToName(*bytes);
    const auto annotations = parseAnnotations(*bytes);
    if (!annotations.complete) {
      report(0, Severity::error,
             inEnglish("Importers", "The annotation file %1 ends early; what is there was read."),
             files_.annotations.filename().string());
    }
    result_.record.entries =
        entriesFrom(annotations, header_.frequency, recordEnd(), result_.problems);
  }

  void setClock() {
    auto& header = result_.record.header;
    if (header_.baseTime && header_.baseDate) {
      const auto midnight = std::chrono::sys_days{*header_.baseDate};
      header.recorded = WallTime{midnight + *header_.baseTime, std::chrono::minutes{0}, false};
      header.clock.state = ClockState::zoneUnknown;
      return;
    }
    header.clock.state = ClockState::unset;
    result_.timeOfDay = header_.baseTime;
    report(0, Severity::info,
           header_.baseTime
               ? inEnglish(
                     "Importers",
                     "The header gives a time of day and no date, so the clock time is not known.")
               : inEnglish("Importers",
                           "The header gives no date and time, so the clock time is not known."));
  }

  void finish() {
    auto& record = result_.record;
    record.header.id = uuidFrom("wfdb " + nameSeed_);
    record.header.kind = RecordKind::test;
    result_.kindAssumed = true;
    report(0, Severity::info,
           inEnglish("Importers", "The source does not say whether this was a rescue, a drill or a "
                                  "test; a test is assumed."));
    setClock();
    if (!header_.comments.empty()) {
      report(0, Severity::info,
             inEnglish(
                 "Importers",
                 "The header's comments were not taken over, as they may describe the patient."));
    }
    std::stable_sort(record.entries.begin(), record.entries.end(),
                     [](const Entry& a, const Entry& b) { return a.t < b.t; });
    record.lastTime = recordEnd();
    for (const auto& entry : record.entries) {
      record.lastTime = std::max(*record.lastTime, entry.lastTime());
    }
  }

  RecordFiles files_;
  WfdbHeader header_;
  Imported result_;
  std::map<std::string, int> numbers_;
  std::string nameSeed_;
};

} // namespace

tl::expected<Imported, ImportError> readWfdb(const std::filesystem::path& path) {
  return WfdbReader{path}.read();
}

} // namespace afterbeat
