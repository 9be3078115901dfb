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
  FilesSource(QStringList sources, archive::FilesSeason made, const FigureSettings& settings)
      : sources_(std::move(sources)), paths_(std::move(made.paths)),
        sketches_(std::move(made.sketches)) {
    season_ = std::move(made.season);
    settings_ = settings;
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

/// Which figures of an archive are shown.
struct MakingShown {
  /// 0: the archive has none in use.
  std::int64_t id = 0;
  FigureSettings settings;
  bool asAsked = true;
};

class ArchiveSource final : public SeasonSource {
public:
  ArchiveSource(archive::Archive archive, Season season, const MakingShown& making,
                std::vector<archive::RefusedFile> refusedFiles)
      : archive_(std::move(archive)) {
    season_ = std::move(season);
    settings_ = making.settings;
    asAsked_ = making.asAsked;
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

/// Those computed with the settings of the window; where there are none, the first in use.
archive::Expected<MakingShown> makingFor(const archive::Archive& archive,
                                         const FigureSettings& asked) {
  const auto exact = archive.makingWith({asked, DeriveMode::automatic});
  if (!exact) {
    return tl::unexpected(exact.error());
  }
  if (*exact) {
    return MakingShown{(*exact)->id, (*exact)->settings.figures, true};
  }
  return archive.makings().map([&asked](const std::vector<archive::Making>& all) {
    // Those in use come first.
    return all.empty() || !all.front().inUse
               ? MakingShown{0, asked, true}
               : MakingShown{all.front().id, all.front().settings.figures, false};
  });
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
      sources,
      archive::seasonOfFiles(filePaths(sources), {settings, DeriveMode::automatic}, tellTo(watch),
                             &watch.cancelled),
      settings));
}

tl::expected<SharedSource, QString> readArchive(const archive::ArchivePlace& place,
                                                const FigureSettings& settings) {
  const auto archive = archive::Archive::open(place);
  if (!archive) {
    return tl::unexpected(sentence(archive.error()));
  }
  const auto making = makingFor(*archive, settings);
  auto season = making ? archive->season(making->id) : tl::unexpected(making.error());
  if (!season) {
    return tl::unexpected(sentence(season.error()));
  }
  auto refused = archive->refused();
  return SharedSource(std::make_shared<ArchiveSource>(
      *archive, std::move(*season), *making,
      refused ? std::move(*refused) : std::vector<archive::RefusedFile>()));
}

std::optional<LatestOf> readLatest(const archive::ArchivePlace& place,
                                   const FigureSettings& settings) {
  const auto archive = archive::Archive::open(place);
  if (!archive) {
    return std::nullopt;
  }
  const auto making = makingFor(*archive, settings);
  auto season =
      making ? archive->latestSeason(kFirstPage, making->id) : tl::unexpected(making.error());
  const auto all = archive->recordCount();
  if (!season || !all || *all <= season->records.size()) {
    return std::nullopt;
  }
  return LatestOf{std::make_shared<ArchiveSource>(*archive, std::move(*season), *making,
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
