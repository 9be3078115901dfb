#include "app/cli/commands.h"
#include "app/cli/derived.h"
#include "core/bytes/byte_source.h"
#include "core/resuslog/write_log.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat::cli {

namespace {

DeriveWhat whatFrom(const std::vector<std::string>& words) {
  if (words.empty()) {
    return DeriveWhat::all();
  }
  const auto named = [&words](const char* word) {
    return std::find(words.begin(), words.end(), word) != words.end();
  };
  return {named("compressions"), named("ventilations"), named("rhythm")};
}

template <typename T>
long counted(const Derived& derived) {
  return std::count_if(derived.entries.begin(), derived.entries.end(),
                       [](const Entry& entry) { return entry.complete<T>() != nullptr; });
}

void tellKind(const char* what, bool asked, const std::optional<SignalCoverage>& coverage,
              long count) {
  if (!asked) {
    return;
  }
  if (!coverage) {
    tell(fmt::format("{}: no channel of this record can tell.", what));
    return;
  }
  tell(fmt::format("{}: {} found, {:.0f} % of the signal could be judged.", what, count,
                   100 * coverage->share()));
}

} // namespace

Exit deriveEntries(const DeriveCommand& options) {
  if (sameFile(options.output, options.file)) {
    tell("The original is never written to; choose another name for the output.");
    return Exit::wrongUse;
  }
  auto opened = open(options.file, true);
  if (!opened) {
    tell(fmt::format("{}: {}", options.file, opened.error()));
    return Exit::readOrWriteFailed;
  }
  const Exit exit = tellProblems(options.file, opened->problems);
  if (opened->record.otherRecordsInFile > 0) {
    tell("The file holds further records; only the first is read.");
  }
  const Derived derived = derive(opened->record, whatFrom(options.what));
  const auto errors =
      std::count_if(opened->problems.begin(), opened->problems.end(),
                    [](const Problem& problem) { return problem.severity == Severity::error; });
  makeDerivedLog(opened->record, derived, opened->sha256, static_cast<std::size_t>(errors));
  const auto written = replaceFile(
      options.output, [&](const ByteSink& sink) { return writeRecord(opened->record, sink); });
  if (!written) {
    tell(fmt::format("{} could not be written: {}.", options.output, written.error().what));
    return Exit::readOrWriteFailed;
  }
  const DeriveWhat& what = derived.what;
  tellKind("Compressions", what.compressions, derived.compressions,
           counted<entry::Compression>(derived));
  tellKind("Breaths", what.ventilations, derived.ventilations,
           counted<entry::Ventilation>(derived));
  tellKind("Rhythm", what.rhythm, derived.rhythm, counted<entry::Rhythm>(derived));
  tell(fmt::format("{}: written and sealed. {}.", options.output, kHintCaution));
  return exit;
}

} // namespace afterbeat::cli
