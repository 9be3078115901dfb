#include "importers/wfdb/wfdb_header.h"

#include "importers/wfdb/fields.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat {
namespace {

/// header(5) lets a record line state any number; no device has more.
constexpr int kMostSignals = 1000;
/// A smaller gain makes physical values that are no finite numbers.
constexpr double kSmallestGain = 1e-100;

/// A line of the header without its line end; `#` lines and empty ones are told apart by the
/// caller.
struct Lines {
  std::string_view rest;
  int number = 0;

  std::optional<std::string_view> next() {
    if (rest.empty()) {
      return std::nullopt;
    }
    ++number;
    std::string_view line = takeUntil(rest, '\n');
    if (!line.empty() && line.back() == '\r') {
      line.remove_suffix(1);
    }
    const auto begin = line.find_first_not_of(" \t");
    return begin == std::string_view::npos ? std::string_view{} : line.substr(begin);
  }
};

bool isRecordName(std::string_view name) {
  // header(5) allows letters, digits and underscores; published records also use - and .
  return !name.empty() && std::all_of(name.begin(), name.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
           c == '-' || c == '.';
  });
}

/// HH:MM:SS with optional decimals, as the length since midnight.
std::optional<Duration> parseBaseTime(std::string_view text) {
  const auto hours = wholeNumber<unsigned>(takeUntil(text, ':'));
  const auto minutes = wholeNumber<unsigned>(takeUntil(text, ':'));
  const auto secs = wholeReal(text);
  if (!hours || !minutes || !secs || *hours > 23 || *minutes > 59 || *secs < 0 || *secs >= 60) {
    return std::nullopt;
  }
  return Duration{std::llround(*secs * 1e6)} + std::chrono::hours{*hours} +
         std::chrono::minutes{*minutes};
}

/// DD/MM/YYYY.
std::optional<std::chrono::year_month_day> parseBaseDate(std::string_view text) {
  const auto day = wholeNumber<unsigned>(takeUntil(text, '/'));
  const auto month = wholeNumber<unsigned>(takeUntil(text, '/'));
  const auto year = wholeNumber<int>(text);
  if (!day || !month || !year || *year < 1 || *year > 9999) {
    return std::nullopt;
  }
  const std::chrono::year_month_day date{std::chrono::year{*year}, std::chrono::month{*month},
                                         std::chrono::day{*day}};
  return date.ok() ? std::optional{date} : std::nullopt;
}

/// Frequency field: samples per second, then perhaps `/counter(base)`.
bool parseFrequency(std::string_view field, WfdbHeader& header) {
  const auto frequency = wholeReal(takeUntil(field, '/'));
  constexpr double kFastest = 1e6; // times are whole microseconds
  if (!frequency || *frequency <= 0 || *frequency > kFastest) {
    return false;
  }
  header.frequency = header.counterFrequency = *frequency;
  const auto counter = wholeReal(takeUntil(field, '('));
  if (counter && *counter > 0) {
    header.counterFrequency = *counter;
  }
  header.baseCounter = wholeReal(takeUntil(field, ')')).value_or(0);
  return true;
}

void parseBaseTimeAndDate(std::string_view rest, int line, WfdbHeader& header,
                          std::vector<Problem>& problems) {
  const auto time = takeField(rest);
  const auto date = takeField(rest);
  if (!time.empty()) {
    header.baseTime = parseBaseTime(time);
    if (!header.baseTime) {
      problems.push_back(importNote(
          line, Severity::warning,
          inEnglish("Importers", "The time of day \"%1\" cannot be understood and is left out."),
          cleanText(time)));
    }
  }
  if (!date.empty()) {
    header.baseDate = parseBaseDate(date);
    if (!header.baseDate) {
      problems.push_back(importNote(
          line, Severity::warning,
          inEnglish("Importers", "The date \"%1\" cannot be understood and is left out."),
          cleanText(date)));
    }
  }
}

tl::expected<WfdbHeader, ImportError> parseRecordLine(std::string_view text, int line,
                                                      std::vector<Problem>& problems) {
  WfdbHeader header;
  std::string_view rest = text;
  std::string_view name = takeField(rest);
  const bool segmented = name.find('/') != std::string_view::npos;
  header.name = takeUntil(name, '/');
  const auto signals = wholeNumber<int>(takeField(rest));
  if (!isRecordName(header.name) || !signals || *signals < 0 || *signals > kMostSignals) {
    return tl::unexpected(importError(
        inEnglish("Importers", "The header does not begin with a record line (a name and the "
                               "number of signals), so this is not a WFDB record.")));
  }
  if (segmented) {
    return tl::unexpected(importError(
        inEnglish("Importers", "This WFDB record is put together from several segments, which is "
                               "not supported; open its segments one by one.")));
  }
  header.statedSignals = *signals;
  const auto frequency = takeField(rest);
  if (!frequency.empty() && !parseFrequency(frequency, header)) {
    return tl::unexpected(importError(
        inEnglish("Importers",
                  "The header states the sampling frequency \"%1\", which is no usable number."),
        cleanText(frequency)));
  }
  const auto samples = takeField(rest);
  if (!samples.empty()) {
    const auto count = wholeNumber<std::uint64_t>(samples);
    if (!count) {
      problems.push_back(importNote(
          line, Severity::warning,
          inEnglish("Importers",
                    "The number of samples \"%1\" is no number; all there are will be read."),
          cleanText(samples)));
    }
    header.samples = count.value_or(0);
  }
  parseBaseTimeAndDate(rest, line, header, problems);
  return header;
}

/// The digits after `mark` somewhere in a format field; `fallback` where the mark is absent,
/// nothing where no number follows.
template <typename Number>
std::optional<Number> modifier(std::string_view field, char mark, Number fallback) {
  const auto at = field.find(mark);
  if (at == std::string_view::npos) {
    return fallback;
  }
  field.remove_prefix(at + 1);
  return wholeNumber<Number>(field.substr(0, field.find_first_of("x:+")));
}

/// `212`, `16x2`, `212:7+512`.
bool parseFormat(std::string_view field, WfdbSignal& signal) {
  const auto format = wholeNumber<int>(field.substr(0, field.find_first_of("x:+")));
  const auto perFrame = modifier<int>(field, 'x', 1);
  const auto skew = modifier<std::uint64_t>(field, ':', 0);
  const auto offset = modifier<std::uint64_t>(field, '+', 0);
  if (!format || !perFrame || *perFrame < 1 || !skew || !offset) {
    return false;
  }
  signal.format = *format;
  signal.samplesPerFrame = *perFrame;
  signal.skew = *skew;
  signal.byteOffset = *offset;
  return true;
}

/// `200`, `200/uV`, `200(-5)/mmHg`; returns the baseline where there is one.
bool parseGain(std::string_view field, WfdbSignal& signal, std::optional<double>& baseline) {
  const auto gain = wholeReal(field.substr(0, field.find_first_of("(/")));
  if (!gain) {
    return false;
  }
  if (*gain != 0) {
    if (std::fabs(*gain) < kSmallestGain) {
      return false;
    }
    signal.gain = *gain;
    signal.calibrated = true;
  }
  const auto open = field.find('(');
  if (open != std::string_view::npos) {
    const auto close = field.find(')', open);
    if (close == std::string_view::npos) {
      return false;
    }
    baseline = wholeReal(field.substr(open + 1, close - open - 1));
    if (!baseline) {
      return false;
    }
    field.remove_prefix(close + 1);
  }
  const auto slash = field.find('/');
  if (slash != std::string_view::npos && slash + 1 < field.size()) {
    signal.units = cleanText(field.substr(slash + 1));
  }
  return true;
}

/// The fields from the resolution to the block size; false if one of them is no whole number.
bool parseNumbers(std::string_view& rest, WfdbSignal& signal) {
  std::optional<int> resolution, adcZero, blockSize;
  for (auto* field : {&resolution, &adcZero, &signal.initialValue, &signal.checksum, &blockSize}) {
    const auto text = takeField(rest);
    if (text.empty()) {
      break;
    }
    *field = wholeNumber<int>(text);
    if (!*field) {
      return false;
    }
  }
  signal.resolution = resolution.value_or(0);
  signal.adcZero = adcZero.value_or(0);
  return true;
}

WfdbSignal parseSignalLine(std::string_view text, int line, std::size_t index,
                           const std::string& record) {
  WfdbSignal signal;
  signal.line = line;
  std::string_view rest = text;
  signal.file = std::string{takeField(rest)};
  signal.valid = parseFormat(takeField(rest), signal);
  std::optional<double> baseline;
  const auto gain = takeField(rest);
  if (signal.valid && !gain.empty()) {
    signal.valid = parseGain(gain, signal, baseline) && parseNumbers(rest, signal);
  }
  signal.baseline = baseline.value_or(signal.adcZero);
  const auto begin = rest.find_first_not_of(" \t");
  signal.description = begin == std::string_view::npos
                           ? fmt::format("record {}, signal {}", record, index)
                           : cleanText(rest.substr(begin));
  return signal;
}

/// Takes over a signal line, or what it is worth.
void addSignal(WfdbHeader& header, std::string_view text, int line,
               std::vector<Problem>& problems) {
  if (static_cast<int>(header.signals.size()) >= header.statedSignals) {
    problems.push_back(importNote(
        line, Severity::info,
        inEnglish("Importers",
                  "This line describes a signal more than the header announces; it is not read.")));
    return;
  }
  header.signals.push_back(parseSignalLine(text, line, header.signals.size(), header.name));
  if (!header.signals.back().valid) {
    problems.push_back(
        importNote(line, Severity::error,
                   inEnglish("Importers", "This line describes a signal and cannot be understood; "
                                          "the signals of its file are not imported.")));
  }
}

} // namespace

bool looksLikeWfdbHeader(std::string_view text) {
  Lines lines{text.substr(0, 4096)};
  int found = 0;
  while (const auto line = lines.next()) {
    if (line->empty() || line->front() == '#') {
      continue;
    }
    std::string_view rest = *line;
    const auto first = takeField(rest);
    const auto second = takeField(rest);
    if (found == 0) {
      const auto signals = wholeNumber<int>(second);
      if (!isRecordName(first.substr(0, first.find('/'))) || !signals || *signals < 0) {
        return false;
      }
      if (*signals == 0 || first.find('/') != std::string_view::npos) {
        return wholeReal(takeField(rest)).has_value();
      }
      ++found;
      continue;
    }
    WfdbSignal signal;
    return parseFormat(second, signal) && wholeNumber<int>(first) == std::nullopt;
  }
  return false;
}

tl::expected<WfdbHeader, ImportError> parseWfdbHeader(std::string_view text,
                                                      std::vector<Problem>& problems) {
  Lines lines{text};
  std::optional<WfdbHeader> header;
  std::vector<std::string> comments;
  while (const auto line = lines.next()) {
    if (line->empty()) {
      continue;
    }
    if (line->front() == '#') {
      comments.push_back(cleanText(line->substr(1)));
    } else if (!header) {
      auto read = parseRecordLine(*line, lines.number, problems);
      if (!read) {
        return tl::unexpected(read.error());
      }
      header = std::move(*read);
    } else {
      addSignal(*header, *line, lines.number, problems);
    }
  }
  if (!header) {
    return tl::unexpected(
        importError(inEnglish("Importers", "The header is empty, so this is not a WFDB record.")));
  }
  if (static_cast<int>(header->signals.size()) < header->statedSignals) {
    problems.push_back(importNote(
        lines.number, Severity::error,
        inEnglish("Importers", "The header announces %1 signals and describes %2; the file of the "
                               "last one described is not imported, as its layout is unknown."),
        header->statedSignals, header->signals.size()));
    if (!header->signals.empty()) {
      header->signals.back().valid = false;
    }
  }
  header->comments = std::move(comments);
  return std::move(*header);
}

} // namespace afterbeat
