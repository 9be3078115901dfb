#include "app/window/compare/season_source.h"

#include "app/archive/workers.h"

#include <QCoreApplication>
#include <QDir>
#include <QDirIterator>
#include <QFileInfo>

#include <algorithm>
#include <filesystem>

namespace afterbeat::window {

namespace {

std::filesystem::path filePath(const QString& path) {
  return std::filesystem::path(path.toStdU16String());
}

QString pathWords(const std::filesystem::path& path) {
  return QString::fromStdU16String(path.u16string());
}

QString sentence(const archive::ArchiveError& error) {
  return QString::fromStdString(error.sentence);
}

/// What was read of one file.
struct ReadFile {
  std::filesystem::path path;
  archive::Expected<archive::TakenFile> taken;
};

class FilesSource final : public SeasonSource {
public:
  explicit FilesSource(QStringList sources) : sources_(std::move(sources)) {
    season_.column = [this](MeasureId id) -> const FigureColumn& {
      return columns_[static_cast<std::size_t>(id)];
    };
  }

  void add(const ReadFile& read) {
    if (!read.taken) {
      refused_.push_back({read.path, read.taken.error().sentence});
      return;
    }
    for (const archive::TakenRecord& record : read.taken->records) {
      const archive::TakenFigures& figures = record.figures.front();
      season_.records.push_back(figures.facts);
      season_.records.back().number = static_cast<std::int64_t>(paths_.size());
      season_.records.back().file = read.path.filename().string();
      for (std::size_t i = 0; i < columns_.size(); ++i) {
        columns_[i].push_back(figures.cells[i]);
      }
      paths_.push_back(pathWords(read.path));
      sketches_.push_back(record.sketch);
    }
  }

  [[nodiscard]] QString name() const override {
    return sources_.size() == 1 ? QDir(sources_.front()).dirName()
                                : QFileInfo(sources_.value(0)).dir().dirName();
  }
  [[nodiscard]] QString key() const override {
    return QStringLiteral("files:") + sources_.value(0);
  }
  [[nodiscard]] std::map<std::uint32_t, archive::RowsSketch>
  sketches(const std::vector<std::uint32_t>& places) const override {
    std::map<std::uint32_t, archive::RowsSketch> all;
    for (const std::uint32_t place : places) {
      if (auto sketch = archive::decode(sketches_[place])) {
        all.emplace(place, std::move(*sketch));
      }
    }
    return all;
  }
  [[nodiscard]] tl::expected<QString, QString> file(std::uint32_t place) const override {
    return paths_[place];
  }

private:
  QStringList sources_;
  std::array<FigureColumn, static_cast<std::size_t>(MeasureId::count_)> columns_;
  std::vector<QString> paths_;
  std::vector<std::string> sketches_;
};

class ArchiveSource final : public SeasonSource {
public:
  ArchiveSource(archive::Archive archive, Season season,
                std::vector<archive::RefusedFile> refusedFiles)
      : archive_(std::move(archive)) {
    season_ = std::move(season);
    refused_ = std::move(refusedFiles);
  }
  [[nodiscard]] QString name() const override {
    const QString typed = QString::fromStdString(archive_.place().words());
    return archive_.place().shared ? typed : QFileInfo(typed).fileName();
  }
  [[nodiscard]] QString key() const override {
    return QString::fromStdString(archive_.place().words());
  }
  [[nodiscard]] std::map<std::uint32_t, archive::RowsSketch>
  sketches(const std::vector<std::uint32_t>& places) const override {
    std::vector<std::int64_t> numbers;
    for (const std::uint32_t place : places) {
      numbers.push_back(season_.records[place].number);
    }
    std::map<std::uint32_t, archive::RowsSketch> all;
    if (const auto found = archive_.sketches(numbers)) {
      for (std::size_t i = 0; i < places.size(); ++i) {
        if (const auto at = found->find(numbers[i]); at != found->end()) {
          all.emplace(places[i], at->second);
        }
      }
    }
    return all;
  }
  [[nodiscard]] tl::expected<QString, QString> file(std::uint32_t place) const override {
    return archive_.file(season_.records[place].number)
        .map([](const archive::KeptFile& file) { return pathWords(file.path); })
        .map_error(sentence);
  }

private:
  archive::Archive archive_;
};

std::vector<std::filesystem::path> recordingsIn(const QStringList& sources,
                                                const SeasonWatch& watch) {
  std::vector<std::filesystem::path> all;
  for (const QString& source : sources) {
    if (!QFileInfo(source).isDir()) {
      all.push_back(filePath(source));
      continue;
    }
    QDirIterator files(source, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext() && !watch.cancelled) {
      const auto path = filePath(files.next());
      if (archive::looksLikeRecording(path)) {
        all.push_back(path);
      }
    }
  }
  std::sort(all.begin(), all.end());
  return all;
}

bool sameFigures(const FigureSettings& a, const FigureSettings& b) {
  return a.pauseThreshold == b.pauseThreshold && a.windowEnd == b.windowEnd &&
         a.profile.id == b.profile.id;
}

} // namespace

tl::expected<SharedSource, QString> readFiles(const QStringList& sources,
                                              const FigureSettings& settings, SeasonWatch& watch) {
  const auto paths = recordingsIn(sources, watch);
  watch.found = paths.size();
  const std::vector<archive::MakingSettings> makings{{settings, DeriveMode::automatic}};
  archive::Workers<std::filesystem::path, ReadFile> workers(
      paths,
      [&makings](const std::filesystem::path& path) {
        return ReadFile{path, archive::readFile(path, makings, false)};
      },
      0, &watch.cancelled);
  std::vector<ReadFile> all;
  while (auto read = workers.next()) {
    all.push_back(std::move(*read));
    ++watch.done;
  }
  // The same order whichever worker was first.
  std::sort(all.begin(), all.end(),
            [](const ReadFile& a, const ReadFile& b) { return a.path < b.path; });
  auto source = std::make_shared<FilesSource>(sources);
  for (const ReadFile& read : all) {
    source->add(read);
  }
  return SharedSource(std::move(source));
}

tl::expected<SharedSource, QString> readArchive(const archive::ArchivePlace& place,
                                                const FigureSettings& settings) {
  const auto archive = archive::Archive::open(place);
  if (!archive) {
    return tl::unexpected(sentence(archive.error()));
  }
  std::int64_t wanted = 0;
  if (const auto makings = archive->makings()) {
    for (const archive::Making& making : *makings) {
      if (wanted == 0 && making.inUse && sameFigures(making.settings.figures, settings)) {
        wanted = making.id;
      }
    }
  }
  auto season = archive->season(wanted);
  if (!season) {
    return tl::unexpected(sentence(season.error()));
  }
  auto refused = archive->refused();
  return SharedSource(std::make_shared<ArchiveSource>(
      *archive, std::move(*season),
      refused ? std::move(*refused) : std::vector<archive::RefusedFile>()));
}

tl::expected<archive::TakeInReport, QString> takeIntoArchive(const archive::ArchivePlace& place,
                                                             const QStringList& sources,
                                                             SeasonWatch& watch) {
  const auto archive = archive::Archive::openOrCreate(place);
  if (!archive) {
    return tl::unexpected(sentence(archive.error()));
  }
  archive::TakeInOrder order;
  for (const QString& source : sources) {
    order.sources.push_back(filePath(source));
  }
  return archive::takeIn(
             *archive, order,
             [&watch](const archive::TakeInProgress& progress) {
               watch.found = progress.found;
               watch.done = progress.done;
             },
             &watch.cancelled)
      .map_error(sentence);
}

} // namespace afterbeat::window
