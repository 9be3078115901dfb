#include "app/archive/taken.h"

#include "app/archive/sketch.h"
#include "core/bytes/digest.h"
#include "core/compare/facts.h"
#include "core/resuslog/read_log.h"
#include "importers/gather/gather.h"

#include <algorithm>

#include <fmt/format.h>

namespace afterbeat::archive {

namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t kLargest = std::uint64_t{1} << 31U;

std::string endingOf(const fs::path& path) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return ending;
}

bool isLog(const fs::path& path) {
  const std::string ending = endingOf(path);
  return ending != ".hea" && ending != ".csv" && ending != ".tsv" && ending != ".txt";
}

template <typename... Values>
tl::unexpected<ArchiveError> failed(EnglishText text, const Values&... values) {
  return tl::unexpected(ArchiveError(text, values...));
}

Expected<void> addFile(Sha256& sum, const fs::path& path) {
  auto source = openFile(path);
  if (!source) {
    return failed(inEnglish("Importers", "It cannot be read: %1."), source.error().what);
  }
  std::string piece(1U << 20U, '\0');
  for (std::uint64_t at = 0;;) {
    const auto got = (*source)->read(at, piece);
    if (!got) {
      return failed(inEnglish("Importers", "It cannot be read: %1."), got.error().what);
    }
    if (*got == 0) {
      return {};
    }
    sum.add(std::string_view(piece).substr(0, *got));
    at += *got;
  }
}

/// What of a record has to be derived for its figures, which need no hints.
DeriveWhat toDerive(const Record& record, const MakingSettings& making) {
  DeriveWhat what = whatSignalsMightTell(record, whatToDerive(record, making.derive));
  what.rhythm = false;
  return what;
}

bool needsSamples(const Record& record, const std::vector<MakingSettings>& makings) {
  return std::any_of(makings.begin(), makings.end(), [&record](const MakingSettings& making) {
    return toDerive(record, making).any();
  });
}

TakenRecord computed(const Record& record, int part, const std::vector<MakingSettings>& makings) {
  TakenRecord taken;
  taken.part = part;
  for (const MakingSettings& making : makings) {
    const DeriveWhat what = toDerive(record, making);
    const Record* used = &record;
    Record with;
    if (what.any()) {
      with = record;
      addDerived(with, derive(with, what));
      used = &with;
    }
    const Figures figures = computeFigures(*used, making.figures);
    TakenFigures& one = taken.figures.emplace_back();
    one.facts = factsOf(*used, figures);
    for (std::size_t i = 0; i < one.cells.size(); ++i) {
      one.cells[i] = cellOf(figures.measures[i]);
    }
    if (taken.sketch.empty()) {
      taken.sketch = encode(sketchOf(figures));
    }
  }
  return taken;
}

int errorsIn(const std::vector<Problem>& problems) {
  return static_cast<int>(std::count_if(problems.begin(), problems.end(), [](const Problem& p) {
    return p.severity == Severity::error;
  }));
}

/// `read` reads the log with or without samples.
template <typename Read>
Expected<TakenFile> fromLog(const Read& read, const std::vector<MakingSettings>& makings) {
  ReadOptions options;
  options.keepSamples = false;
  auto log = read(options);
  if (!log) {
    return tl::unexpected(ArchiveError({phraseOf(log.error())}));
  }
  const auto needs = [&makings](const LogRecord& one) { return needsSamples(one.record, makings); };
  if (std::any_of(log->records.begin(), log->records.end(), needs)) {
    options.keepSamples = true;
    log = read(options);
    if (!log) {
      return tl::unexpected(ArchiveError({phraseOf(log.error())}));
    }
  }
  TakenFile taken;
  taken.sha256 = log->sha256;
  taken.errors = errorsIn(log->problems);
  for (std::size_t i = 0; i < log->records.size(); ++i) {
    taken.records.push_back(computed(log->records[i].record, static_cast<int>(i), makings));
  }
  return taken;
}

} // namespace

bool looksLikeRecording(const fs::path& path) {
  static const std::vector<std::string> kEndings{".resuslog", ".hea", ".csv", ".tsv"};
  return std::find(kEndings.begin(), kEndings.end(), endingOf(path)) != kEndings.end();
}

Expected<std::string> checksumOf(const fs::path& path) {
  Sha256 sum;
  std::vector<fs::path> files{path};
  if (endingOf(path) == ".hea") {
    std::error_code error;
    for (const auto& other :
         fs::directory_iterator(path.parent_path().empty() ? "." : path.parent_path(), error)) {
      if (other.path().stem() == path.stem() && other.path().filename() != path.filename()) {
        files.push_back(other.path());
      }
    }
    std::sort(files.begin() + 1, files.end());
  }
  for (const fs::path& file : files) {
    if (auto added = addFile(sum, file); !added) {
      return tl::unexpected(added.error());
    }
  }
  return sum.hex();
}

Expected<TakenFile> readFile(const fs::path& path, const std::vector<MakingSettings>& makings,
                             bool keepBytes) {
  Expected<TakenFile> taken;
  if (isLog(path)) {
    taken = fromLog([&path](const ReadOptions& options) { return readLogFile(path, options); },
                    makings);
  } else {
    auto imported = readAnySource(path);
    if (!imported) {
      return tl::unexpected(ArchiveError(imported.error().said));
    }
    const auto sum = checksumOf(path);
    if (!sum) {
      return tl::unexpected(sum.error());
    }
    taken->sha256 = *sum;
    taken->errors = errorsIn(imported->problems);
    if (imported->kindAssumed) {
      imported->record.header.kind.reset(); // nobody said so
    }
    taken->records.push_back(computed(imported->record, 0, makings));
  }
  if (taken) {
    taken->path = path;
  }
  if (taken && keepBytes && isLog(path)) {
    auto source = openFile(path);
    auto bytes = source ? readAll(**source, kLargest) : tl::unexpected(source.error());
    if (!bytes || sha256Hex(*bytes) != taken->sha256) {
      return failed(inEnglish("Importers", "It changed while it was read; take it in once more."));
    }
    taken->bytes = std::move(*bytes);
  }
  return taken;
}

Expected<TakenFile> readBytes(const std::string& bytes, const std::string& name,
                              const std::vector<MakingSettings>& makings) {
  auto taken = fromLog(
      [&bytes](const ReadOptions& options) {
        MemorySource source(bytes);
        return readLog(source, options);
      },
      makings);
  if (taken) {
    taken->path = name;
  }
  return taken;
}

} // namespace afterbeat::archive
