#include "app/archive/take_in.h"

#include "app/cli/commands.h"
#include "app/cli/derived.h"

#include <QCoreApplication>

#include <cstdio>

#include <fmt/format.h>
#include <unistd.h>

namespace afterbeat::cli {
namespace {

using archive::Archive;
using archive::ArchivePlace;
using archive::Expected;
using archive::Making;
using archive::RefusedFile;
using archive::TakeInProgress;
using archive::TakeInReport;

/// How far it is, on one line that is written again and again; only where somebody watches.
class ProgressLine {
public:
  void show(const TakeInProgress& progress) {
    if (isatty(STDERR_FILENO) != 0) {
      fmt::print(stderr, "\r{} of {} files", progress.done, progress.found);
      std::fflush(stderr);
      shown_ = true;
    }
  }
  ~ProgressLine() {
    if (shown_) {
      fmt::print(stderr, "\r\033[K");
    }
  }

private:
  bool shown_ = false;
};

std::string counted(std::size_t n, const char* one, const char* many) {
  return n == 1 ? fmt::format("1 {}", one) : fmt::format("{} {}", n, many);
}

std::string makingWords(const Making& making) {
  return fmt::format(
      "pauses longer than {:g} s, {}, to {}, definitions {}",
      seconds(making.settings.figures.pauseThreshold), making.settings.figures.profile.name,
      making.settings.figures.windowEnd == WindowEnd::lastActivity ? "the last activity"
                                                                   : "the record's end",
      making.definitions);
}

void tellFiles(const std::vector<RefusedFile>& files) {
  for (const RefusedFile& file : files) {
    tell(fmt::format("{}: {}", file.path.string(), file.sentence));
  }
}

void print(const TakeInReport& report, std::size_t records) {
  fmt::print("{}, {}, {} already there.\n", counted(report.added, "new record", "new records"),
             counted(report.changed, "changed record", "changed records"), report.known);
  for (const auto& path : report.changedFiles) {
    fmt::print("  changed: {}\n", forTerminal(path.string()));
  }
  for (const auto& path : report.damaged) {
    fmt::print("  damaged, what could be read is in: {}\n", forTerminal(path.string()));
  }
  if (report.computedAgain > 0) {
    fmt::print("Figures computed again: {}.\n", counted(report.computedAgain, "file", "files"));
  }
  if (!report.refused.empty()) {
    fmt::print("Not taken in: {}, named above.\n", counted(report.refused.size(), "file", "files"));
  }
  if (report.leftAside > 0) {
    fmt::print("Left aside, no recordings by their names: {}.\n",
               counted(report.leftAside, "file", "files"));
  }
  fmt::print("The archive holds {}.\n", counted(records, "record", "records"));
}

std::string cellWords(const FigureCell& cell, const MeasureInfo& info) {
  switch (cell.status) {
  case Status::ok:
    return info.unit == "1" ? fmt::format("{:.4g}", cell.value)
                            : fmt::format("{:.6g} {}", cell.value, info.unit);
  case Status::notApplicable:
    return "not applicable";
  case Status::notRecorded:
    break;
  }
  return "not recorded";
}

/// What is another figure now: of every making that left use, against the one that took its place.
Exit printMoved(const Archive& archive) {
  const auto makings = archive.makings();
  if (!makings) {
    tell(makings.error().sentence);
    return Exit::readOrWriteFailed;
  }
  for (const auto& [before, after] : archive::pairsToCompare(*makings)) {
    const auto moved = archive.moved(before.id, after.id);
    if (!moved) {
      tell(moved.error().sentence);
      return Exit::readOrWriteFailed;
    }
    fmt::print("\nFrom: {}\nTo:   {}\n{}\n", makingWords(before), makingWords(after),
               counted(moved->size(), "figure moved", "figures moved"));
    for (const archive::Moved& one : *moved) {
      const MeasureInfo& info = measureInfo(one.measure);
      const auto file = archive.file(one.number);
      fmt::print("  {}  {}: {} -> {}\n",
                 file ? forTerminal(file->path.filename().string()) : std::string("?"), info.name,
                 cellWords(one.before, info), cellWords(one.after, info));
    }
  }
  return Exit::fine;
}

/// Whether figures under settings of one's own are wanted; else those that the archive has in use.
bool settingsTyped(const TakeInCommand& options) {
  const SettingWords usual;
  return !options.settings.profile.empty() || options.derive != "auto" ||
         options.settings.pauseThreshold != usual.pauseThreshold ||
         options.settings.windowEnd != usual.windowEnd;
}

Expected<TakeInReport> takeAll(const Archive& archive, const TakeInCommand& options) {
  archive::TakeInOrder order;
  order.sources.assign(options.sources.begin(), options.sources.end());
  order.keepBytes = options.keepFiles;
  ProgressLine line;
  return takeIn(archive, order, [&line](const TakeInProgress& progress) { line.show(progress); });
}

} // namespace

Exit takeFilesIn(const TakeInCommand& options, int& argc, char** argv) {
  const QCoreApplication app(argc, argv); // the database drivers are its plugins
  Exit failure = Exit::fine;
  const auto settings = settingsFrom(options.settings, failure);
  if (!settings) {
    tell(settings.error());
    return failure;
  }
  const auto place = ArchivePlace::from(options.archive);
  if (!place) {
    tell(place.error().sentence);
    return Exit::wrongUse;
  }
  const auto archive = Archive::openOrCreate(*place);
  if (!archive) {
    tell(archive.error().sentence);
    return Exit::readOrWriteFailed;
  }
  Expected<std::int64_t> making = 0;
  if (settingsTyped(options)) {
    making = archive->use({*settings, deriveModeFrom(options.derive)});
  }
  const auto report = making ? takeAll(*archive, options) : tl::unexpected(making.error());
  if (!report) {
    tell(report.error().sentence);
    return Exit::readOrWriteFailed;
  }
  tellFiles(report->refused);
  tellFiles(report->notComputed);
  const auto records = archive->recordCount();
  print(*report, records.value_or(0));
  Exit exit =
      report->damaged.empty() && report->notComputed.empty() ? Exit::fine : Exit::problemsInData;
  exit = report->refused.empty() ? exit : Exit::readOrWriteFailed;
  if (options.moved) {
    exit = worse(exit, printMoved(*archive));
  }
  return worse(exit, flushOutput());
}

} // namespace afterbeat::cli
