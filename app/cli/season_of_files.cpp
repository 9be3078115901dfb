#include "app/cli/season_of_files.h"

#include <algorithm>
#include <memory>
#include <set>

#include <fmt/format.h>

namespace afterbeat::cli {
namespace {

namespace files = std::filesystem;

using Columns = std::array<FigureColumn, static_cast<std::size_t>(MeasureId::count_)>;

std::vector<std::string> listed(const std::vector<std::string>& sources) {
  std::vector<std::string> all;
  for (const std::string& source : sources) {
    std::error_code error;
    if (!files::is_directory(source, error)) {
      all.push_back(source);
      continue;
    }
    std::vector<std::string> found;
    for (files::recursive_directory_iterator at(source, error), end; !error && at != end;
         at.increment(error)) {
      if (at->path().extension() == ".resuslog") {
        found.push_back(at->path().string());
      }
    }
    std::sort(found.begin(), found.end());
    all.insert(all.end(), found.begin(), found.end());
  }
  return all;
}

void add(archive::TakenFile& file, Season& season, Columns& columns) {
  for (archive::TakenRecord& record : file.records) {
    archive::TakenFigures& figures = record.figures.front();
    season.records.push_back(std::move(figures.facts));
    season.records.back().file = file.path.filename().string();
    season.records.back().number = static_cast<std::int64_t>(season.records.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
      columns[i].push_back(figures.cells[i]);
    }
  }
}

bool same(const archive::MakingSettings& a, const archive::MakingSettings& b) {
  return a.figures.profile.id == b.figures.profile.id &&
         a.figures.pauseThreshold == b.figures.pauseThreshold &&
         a.figures.windowEnd == b.figures.windowEnd && a.derive == b.derive;
}

} // namespace

SeasonOfFiles seasonOfFiles(const std::vector<std::string>& sources,
                            const archive::MakingSettings& settings) {
  SeasonOfFiles made;
  auto columns = std::make_shared<Columns>();
  std::set<std::string> seen;
  for (const std::string& file : listed(sources)) {
    auto read = archive::readFile(file, {settings}, false);
    if (!read) {
      made.notRead.push_back({file, read.error().sentence});
    } else if (!seen.insert(read->sha256).second) {
      made.twice.push_back(file);
    } else {
      if (read->errors > 0) {
        made.faulty.push_back(file);
      }
      add(*read, made.season, *columns);
    }
  }
  made.season.column = [columns](MeasureId id) -> const FigureColumn& {
    return (*columns)[static_cast<std::size_t>(id)];
  };
  return made;
}

archive::Expected<archive::Making> makingOf(const archive::Archive& from,
                                            const archive::MakingSettings& settings) {
  auto makings = from.makings();
  if (!makings) {
    return tl::unexpected(makings.error());
  }
  for (const archive::Making& making : *makings) {
    if (making.inUse && same(making.settings, settings)) {
      return making;
    }
  }
  return tl::unexpected(archive::ArchiveError{
      fmt::format("The archive {} holds no figures with these settings.", from.place().words())});
}

} // namespace afterbeat::cli
