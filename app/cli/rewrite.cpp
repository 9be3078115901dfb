#include "app/cli/commands.h"
#include "core/resuslog/write_log.h"

#include <fmt/format.h>

namespace afterbeat::cli {
namespace {

std::filesystem::path outputFor(const std::string& output, std::size_t index) {
  std::filesystem::path path(output);
  if (index > 0) {
    path.replace_filename(
        fmt::format("{}-{}{}", path.stem().string(), index + 1, path.extension().string()));
  }
  return path;
}

ReadOptions readOptions(const std::string& newHeader) {
  ReadOptions options;
  options.keepSamples = false;
  options.madeUpHeader = recordKindFrom(newHeader);
  return options;
}

void report(const std::filesystem::path& path, const RewriteReport& what) {
  if (!what.changed) {
    tell(fmt::format("{}: written and sealed; nothing had to be mended.", path.string()));
    return;
  }
  tell(fmt::format("{}: salvaged and sealed under a new id; {} broken lines kept as unreadable, {} "
                   "repeated lines left out.",
                   path.string(), what.broken, what.repeated));
}

} // namespace

Exit rewrite(const RewriteOptions& options) {
  if (sameFile(options.output, options.file)) {
    tell("The original is never written to; choose another name for the output.");
    return Exit::wrongUse;
  }
  auto source = openFile(options.file);
  if (!source) {
    tell(fmt::format("{}: {}", options.file, source.error().what));
    return Exit::readOrWriteFailed;
  }
  const auto log = readLog(**source, readOptions(options.newHeader));
  if (!log) {
    tell(fmt::format("{}: {}", options.file, sentence(log.error())));
    return Exit::readOrWriteFailed;
  }
  for (std::size_t i = 1; i < log->records.size(); ++i) {
    if (std::filesystem::exists(outputFor(options.output, i))) {
      tell(fmt::format("The file holds {} records, and {} is there already; choose another name.",
                       log->records.size(), outputFor(options.output, i).string()));
      return Exit::wrongUse;
    }
  }
  const Exit exit = tellProblems(options.file, log->problems);
  for (std::size_t i = 0; i < log->records.size(); ++i) {
    const auto path = outputFor(options.output, i);
    tl::expected<RewriteReport, IoError> done;
    const auto written = replaceFile(path, [&](const ByteSink& sink) {
      done = rewriteRecord(**source, *log, i, sink);
      return done.has_value();
    });
    if (!written || !done) {
      tell(fmt::format("{} could not be written: {}.", path.string(),
                       done ? written.error().what : done.error().what));
      return Exit::readOrWriteFailed;
    }
    report(path, *done);
  }
  return exit;
}

} // namespace afterbeat::cli
