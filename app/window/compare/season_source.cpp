#include "app/window/compare/season_source.h"

#include "app/archive/files_season.h"
#include "app/window/compare/archive_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <filesystem>

namespace afterbeat::window {

namespace {

/// More records than a screen holds, and few enough to be there at once.
constexpr std::size_t kFirstPage = 200;

std::filesystem::path filePath(const QString& path) {
  return std::filesystem::path(path.toStdU16String());
}

QString pathWords(const std::filesystem::path& path) {
  return QString::fromStdU16String(path.u16string());
}

QString sentence(const archive::ArchiveError& error) {
  return archiveWords(error);
}

class FilesSource final : public SeasonSource {
public:
  FilesSource(QStringList sources, archive::FilesSeason made)
      : sources_(std::move(sources)), paths_(std::move(made.paths)),
        sketches_(std::move(made.sketches)) {
    season_ = std::move(made.season);
    refused_ = std::move(made.refused);
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
    return pathWords(paths_[place]);
  }

private:
  QStringList sources_;
  std::vector<std::filesystem::path> paths_;
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

/// The making with the settings of the window, 0 where there is none.
std::int64_t makingFor(const archive::Archive& archive, const FigureSettings& settings) {
  const auto making = archive.makingWith({settings, DeriveMode::automatic});
  return making && *making ? (*making)->id : 0;
}

std::vector<std::filesystem::path> filePaths(const QStringList& sources) {
  std::vector<std::filesystem::path> paths;
  for (const QString& source : sources) {
    paths.push_back(filePath(source));
  }
  return paths;
}

std::function<void(const archive::TakeInProgress&)> tellTo(SeasonWatch& watch) {
  return [&watch](const archive::TakeInProgress& progress) {
    watch.found = progress.found;
    watch.done = progress.done;
  };
}

} // namespace

tl::expected<SharedSource, QString> readFiles(const QStringList& sources,
                                              const FigureSettings& settings, SeasonWatch& watch) {
  return SharedSource(std::make_shared<FilesSource>(
      sources, archive::seasonOfFiles(filePaths(sources), {settings, DeriveMode::automatic},
                                      tellTo(watch), &watch.cancelled)));
}

tl::expected<SharedSource, QString> readArchive(const archive::ArchivePlace& place,
                                                const FigureSettings& settings) {
  const auto archive = archive::Archive::open(place);
  if (!archive) {
    return tl::unexpected(sentence(archive.error()));
  }
  auto season = archive->season(makingFor(*archive, settings));
  if (!season) {
    return tl::unexpected(sentence(season.error()));
  }
  auto refused = archive->refused();
  return SharedSource(std::make_shared<ArchiveSource>(
      *archive, std::move(*season),
      refused ? std::move(*refused) : std::vector<archive::RefusedFile>()));
}

std::optional<LatestOf> readLatest(const archive::ArchivePlace& place,
                                   const FigureSettings& settings) {
  const auto archive = archive::Archive::open(place);
  if (!archive) {
    return std::nullopt;
  }
  auto season = archive->latestSeason(kFirstPage, makingFor(*archive, settings));
  const auto all = archive->recordCount();
  if (!season || !all || *all <= season->records.size()) {
    return std::nullopt;
  }
  return LatestOf{std::make_shared<ArchiveSource>(*archive, std::move(*season),
                                                  std::vector<archive::RefusedFile>()),
                  *all};
}

tl::expected<archive::TakeInReport, QString> takeIntoArchive(const archive::ArchivePlace& place,
                                                             const QStringList& sources,
                                                             SeasonWatch& watch) {
  const auto archive = archive::Archive::openOrCreate(place);
  if (!archive) {
    return tl::unexpected(sentence(archive.error()));
  }
  archive::TakeInOrder order;
  order.sources = filePaths(sources);
  return archive::takeIn(*archive, order, tellTo(watch), &watch.cancelled).map_error(sentence);
}

} // namespace afterbeat::window
