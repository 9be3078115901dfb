#include "app/cli/season_of_files.h"

#include "app/cli/derived.h"

#include <algorithm>
#include <array>
#include <memory>
#include <set>

namespace afterbeat::cli {
namespace {

namespace files = std::filesystem;

constexpr auto kMeasures = static_cast<std::size_t>(MeasureId::count_);
using Columns = std::array<FigureColumn, kMeasures>;

/// Folders become the logs that lie in them, at any depth.
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

RecordFacts factsOf(const Opened& opened, const Figures& figures) {
  const Header& header = opened.record.header;
  RecordFacts facts;
  facts.id = header.id;
  facts.file = files::path(opened.file).filename().string();
  facts.kind = header.kind;
  facts.site = header.site;
  facts.team = header.team;
  facts.device = header.device.serial;
  if (const auto begin = wallTimeAt(opened.record, Time{})) {
    facts.day = std::chrono::floor<std::chrono::days>(begin->local());
  }
  facts.evidence = figures.evidence;
  const Measure& shocks = figures[MeasureId::shocksDelivered];
  if (shocks.value) {
    facts.hadShock = *shocks.value > 0;
  }
  const auto longest = std::max_element(
      figures.pauses.begin(), figures.pauses.end(),
      [](const Pause& a, const Pause& b) { return a.stretch.length() < b.stretch.length(); });
  if (longest != figures.pauses.end()) {
    facts.longestPauseCause = longest->cause;
  }
  facts.synthetic = header.synthetic;
  facts.settingDiffers =
      std::any_of(figures.notices.begin(), figures.notices.end(), [](const Problem& problem) {
        return problem.kind == ProblemKind::categoryDiffers;
      });
  return facts;
}

void addCells(const Figures& figures, Columns& columns) {
  for (const Measure& measure : figures.measures) {
    const bool share = measureInfo(measure.id).unit == "1" && measure.denominator;
    columns[static_cast<std::size_t>(measure.id)].push_back(
        {measure.value.value_or(0), measure.status,
         share ? static_cast<float>(*measure.denominator) : 0});
  }
}

} // namespace

SeasonOfFiles seasonOfFiles(const SeasonWords& words) {
  SeasonOfFiles made;
  auto columns = std::make_shared<Columns>();
  std::set<std::string> seen;
  for (const std::string& file : listed(words.sources)) {
    auto read = openAndDerive(file, deriveModeFrom(words.derive));
    if (!read) {
      made.notRead.push_back({file, read.error()});
      made.exit = worse(made.exit, Exit::readOrWriteFailed);
      continue;
    }
    if (!read->opened.sha256.empty() && !seen.insert(read->opened.sha256).second) {
      made.twice.push_back(file);
      continue;
    }
    const Figures figures = computeFigures(read->opened.record, words.settings);
    std::vector<Problem> problems = std::move(read->opened.problems);
    problems.insert(problems.end(), figures.notices.begin(), figures.notices.end());
    const bool wrong = std::any_of(problems.begin(), problems.end(), [](const Problem& problem) {
      return problem.severity == Severity::error;
    });
    made.exit = worse(made.exit, wrong ? Exit::problemsInData : Exit::fine);
    if (words.problems) {
      words.problems(file, problems);
    }
    made.season.records.push_back(factsOf(read->opened, figures));
    made.season.records.back().number = static_cast<std::int64_t>(made.season.records.size());
    addCells(figures, *columns);
  }
  made.season.column = [columns](MeasureId id) -> const FigureColumn& {
    return (*columns)[static_cast<std::size_t>(id)];
  };
  return made;
}

} // namespace afterbeat::cli
