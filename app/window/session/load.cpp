#include "app/window/session/load.h"

#include "app/papers/phrase_words.h"
#include "core/bytes/digest.h"
#include "importers/gather/gather.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QStringList>

#include <algorithm>
#include <array>
#include <filesystem>
#include <string_view>
#include <thread>

namespace afterbeat::window {

namespace {

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

/// Counts what is read and stops it when the user wants.
class WatchedSource final : public ByteSource {
public:
  WatchedSource(ByteSource& inner, LoadWatch& watch) : inner_(inner), watch_(watch) {}

  [[nodiscard]] std::uint64_t size() const override { return inner_.size(); }

  [[nodiscard]] tl::expected<std::size_t, IoError> read(std::uint64_t offset,
                                                        std::span<char> into) override {
    if (watch_.cancelled) {
      return tl::unexpected(IoError{"reading was stopped"});
    }
    auto got = inner_.read(offset, into);
    if (got && inner_.size() > 0) {
      watch_.progress = static_cast<double>(offset + *got) / static_cast<double>(inner_.size());
    }
    return got;
  }

private:
  ByteSource& inner_;
  LoadWatch& watch_;
};

std::filesystem::path filePath(const QString& path) {
  return std::filesystem::path(path.toStdU16String());
}

bool endsLikeImport(const QString& path) {
  static const QStringList endings{"csv", "tsv", "txt", "hea", "dat", "atr"};
  return endings.contains(QFileInfo(path).suffix().toLower());
}

bool endsLikeLog(const QString& path) {
  return QFileInfo(path).suffix().compare("resuslog", Qt::CaseInsensitive) == 0;
}

Refused refusedFile(const std::string& detail) {
  return {tr("The file could not be read: %1.").arg(papers::clauseWords(detail)),
          tr("Nothing was changed on the disk."),
          tr("Check that the file is still there and that you may read it, or copy it to this "
             "computer and open the copy."),
          false, false};
}

Refused stopped() {
  return {tr("Reading was stopped."), {}, {}, false, true};
}

Refused refusedFor(const Refusal& refusal) {
  const QString unchanged = tr("The file itself was not changed.");
  switch (refusal.kind) {
  case RefusalKind::unreadableFile:
    return refusedFile(refusal.detail);
  case RefusalKind::noHeader:
    return {tr("The first line of this file is not the header of an event log, so the program "
               "cannot tell when it was recorded and what it is."),
            unchanged + " " + tr("All lines below the first can probably still be read."),
            tr("If you know that it is an event log, open it under a made-up header: choose what "
               "it was. Clock times and the patient then stay unknown."),
            true, false};
  case RefusalKind::otherVersion:
    return {tr("This file is written in version %1 of the event log; this program reads versions "
               "1.0 to 1.x.")
                .arg(QString::fromStdString(refusal.detail)),
            unchanged,
            tr("Install a newer version of Afterbeat, or write the file again in version 1 with "
               "the program it came from."),
            false, false};
  case RefusalKind::tooLarge:
    return {tr("This file is larger than 2 GiB, more than the event log allows."), unchanged,
            tr("Split the recording where the device wrote it, and open the parts one by one."),
            false, false};
  case RefusalKind::empty:
    return {tr("This file is empty: there is nothing in it to read."), unchanged,
            tr("Fetch the recording from the device once more, before its memory is cleared."),
            false, false};
  }
  return {};
}

/// No line of its begin looks like a line of a log.
bool holdsNoLine(const QString& path) {
  auto source = openFile(filePath(path));
  if (!source) {
    return false;
  }
  std::array<char, 64U << 10U> begin{};
  const auto got = (*source)->read(0, begin);
  const std::string_view text(begin.data(), got ? *got : 0);
  const auto line = text.find("\n{");
  return line == std::string_view::npos ||
         text.substr(0, line).find('\0') != std::string_view::npos;
}

Refused refusedUnknown() {
  return {tr("This is not a recording that Afterbeat knows."),
          tr("The file itself was not changed."),
          tr("Afterbeat opens event logs (.resuslog), WFDB records (.hea with its files beside it) "
             "and observer's notes as CSV."),
          false, false};
}

Refused refusedImport(const ImportError& error) {
  QStringList happened;
  for (const Phrase& one : error.said) {
    happened << papers::phraseWords(one.parts);
  }
  return {happened.join(QLatin1Char(' ')), tr("The file itself was not changed."),
          tr("Afterbeat opens event logs (.resuslog), WFDB records (.hea with its files beside it) "
             "and observer's notes as CSV."),
          false, false};
}

std::shared_ptr<const std::vector<Wave>> wavesOf(const Record& record) {
  const unsigned threads = std::max(1U, std::thread::hardware_concurrency());
  auto waves = std::make_shared<std::vector<Wave>>();
  for (const Channel& channel : record.channels) {
    Wave wave;
    if (channel.drawable) {
      wave.pyramid = MinMaxPyramid(channel.samples, threads);
      wave.usual = usualRange(channel, wave.pyramid);
    }
    waves->push_back(std::move(wave));
  }
  return waves;
}

tl::expected<LogFile, Refused> import(const QString& path) {
  auto imported = readAnySource(filePath(path));
  if (!imported) {
    return tl::unexpected(refusedImport(imported.error()));
  }
  LogFile file;
  file.records.push_back({std::move(imported->record), {}, 0, 0});
  file.problems = std::move(imported->problems);
  constexpr std::uint64_t kLargest = 64U << 20U;
  if (auto source = openFile(filePath(path))) {
    if (const auto bytes = readAll(**source, kLargest)) {
      file.sha256 = sha256Hex(*bytes);
    }
  }
  return file;
}

struct Read {
  LogFile file;
  bool imported = false;
};

tl::expected<Read, Refused> readFile(const LoadOrder& order, LoadWatch& watch) {
  if (endsLikeImport(order.path) && !order.madeUpHeader) {
    return import(order.path).map([](LogFile f) { return Read{std::move(f), true}; });
  }
  auto source = openFile(filePath(order.path));
  if (!source) {
    return tl::unexpected(refusedFile(source.error().what));
  }
  WatchedSource watched(**source, watch);
  ReadOptions options;
  options.madeUpHeader = order.madeUpHeader;
  auto file = readLog(watched, options);
  if (file) {
    return Read{std::move(*file), false};
  }
  if (watch.cancelled) {
    return tl::unexpected(stopped());
  }
  if (file.error().kind == RefusalKind::noHeader && !endsLikeLog(order.path)) {
    if (auto other = import(order.path)) {
      return Read{std::move(*other), true};
    }
  }
  if (file.error().kind == RefusalKind::noHeader && holdsNoLine(order.path)) {
    return tl::unexpected(refusedUnknown());
  }
  return tl::unexpected(refusedFor(file.error()));
}

/// Adds what the signals say about hands and breaths to each record, as far as the mode wants it.
/// Rhythm hints take longer and are made when the record is in view.
std::vector<Derived> deriveHands(std::vector<LogRecord>& records, DeriveMode mode,
                                 const LoadWatch& watch) {
  std::vector<Derived> all;
  for (LogRecord& read : records) {
    DeriveWhat what = whatToDerive(read.record, mode);
    what.rhythm = false;
    Derived& derived = all.emplace_back();
    if (what.any() && !watch.cancelled) {
      derived = derive(read.record, what);
      addDerived(read.record, derived);
    }
  }
  return all;
}

} // namespace

tl::expected<Loaded, Refused> load(const LoadOrder& order, LoadWatch& watch) {
  auto read = readFile(order, watch);
  if (!read) {
    return tl::unexpected(read.error());
  }
  if (read->file.records.empty()) {
    return tl::unexpected(refusedFor({RefusalKind::empty, {}}));
  }
  Loaded loaded;
  loaded.deriveMode = order.deriveMode;
  loaded.derived = std::make_shared<const std::vector<Derived>>(
      deriveHands(read->file.records, order.deriveMode, watch));
  if (watch.cancelled) {
    return tl::unexpected(stopped());
  }
  const std::size_t shown = order.shown < read->file.records.size() ? order.shown : 0;
  loaded.path = order.path;
  loaded.imported = read->imported;
  loaded.file = std::make_shared<const LogFile>(std::move(read->file));
  return showRecord(std::move(loaded), shown, order.settings);
}

void computeWith(const FigureSettings& settings, Loaded& loaded) {
  loaded.figures = std::make_shared<const Figures>(computeFigures(loaded.record(), settings));
  const Derived& derived = (*loaded.derived)[loaded.shown];
  loaded.origin = {derivedUse(loaded.record(), *loaded.figures), derived.compressions,
                   derived.ventilations};
  loaded.rows = std::make_shared<const papers::RowsPicture>(loaded.record(), *loaded.figures,
                                                            papers::inOwnLanguage);
}

Loaded showRecord(Loaded from, std::size_t index, const FigureSettings& settings) {
  from.shown = index;
  from.waves = wavesOf(from.record());
  computeWith(settings, from);
  return from;
}

} // namespace afterbeat::window
