#include "app/cli/commands.h"
#include "core/bytes/byte_source.h"
#include "core/bytes/digest.h"
#include "core/resuslog/write_log.h"
#include "importers/gather/gather.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include <fmt/format.h>

namespace afterbeat::cli {
namespace {

/// SOURCE@OFFSET_S taken apart; an @ that no number follows belongs to the name.
struct Named {
  std::string path;
  std::optional<Duration> offset;
  /// What follows the @ and is no number.
  std::string notANumber;
};

/// Said where a name with an @ does not exist: the offset was probably meant.
std::string offsetHint(const Named& named) {
  return named.notANumber.empty()
             ? std::string{}
             : fmt::format(" (\"{}\" after the @ is no number of seconds, so it was taken as part "
                           "of the name.)",
                           named.notANumber);
}

Named takeApart(const std::string& word) {
  const auto at = word.rfind('@');
  if (at == std::string::npos || at + 1 == word.size()) {
    return {word, {}, {}};
  }
  const char* begin = word.c_str() + at + 1;
  char* end = nullptr;
  const double s = std::strtod(begin, &end); // the program keeps the "C" number locale
  const auto offset = durationFromSeconds(s);
  return *end == '\0' && offset ? Named{word.substr(0, at), offset, {}}
                                : Named{word, {}, word.substr(at + 1)};
}

std::string digestOf(const std::string& path) {
  auto source = openFile(path);
  if (!source) {
    source = openFile(path + ".hea");
  }
  if (!source) {
    return {};
  }
  const auto bytes = readAll(**source, std::uint64_t{2} << 30);
  return bytes ? sha256Hex(*bytes) : std::string{};
}

} // namespace

Exit gatherSources(const GatherOptions& options) {
  std::vector<GatherSource> sources;
  Exit exit = Exit::fine;
  for (const std::string& word : options.sources) {
    const Named named = takeApart(word);
    if (sameFile(options.output, named.path)) {
      tell(fmt::format("{} would be overwritten; choose another name for the output.", named.path));
      return Exit::wrongUse;
    }
    auto imported = readAnySource(named.path, options.columns);
    if (!imported) {
      tell(fmt::format("{}: {}{}", named.path, imported.error().sentence(), offsetHint(named)));
      return Exit::readOrWriteFailed;
    }
    const std::string digest = digestOf(named.path);
    const auto same =
        std::find_if(sources.begin(), sources.end(), [&digest](const GatherSource& earlier) {
          return !digest.empty() && earlier.sha256 == digest;
        });
    if (same != sources.end()) {
      tell(fmt::format("{} holds the same as {}; it is left out, so that nothing counts twice.",
                       named.path, same->label));
      continue;
    }
    exit = worse(exit, tellProblems(named.path, imported->problems, Severity::info));
    sources.push_back({std::move(*imported), std::filesystem::path(named.path).filename().string(),
                       digest, named.offset});
  }
  Imported merged = gather(std::move(sources));
  exit = worse(exit, tellProblems(options.output, merged.problems, Severity::info));
  if (const auto kind = recordKindFrom(options.kind)) {
    merged.record.header.kind = *kind;
  }
  const auto written = replaceFile(
      options.output, [&](const ByteSink& sink) { return writeRecord(merged.record, sink); });
  if (!written) {
    tell(fmt::format("{} could not be written: {}.", options.output, written.error().what));
    return Exit::readOrWriteFailed;
  }
  return exit;
}

} // namespace afterbeat::cli
