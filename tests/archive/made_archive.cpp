#include "tests/archive/made_archive.h"

#include "app/archive/making_store.h"
#include "app/archive/store.h"
#include "core/bytes/digest.h"
#include "samples/season/made_season.h"
#include "samples/season/script.h"

#include <algorithm>

namespace afterbeat::archive::testing {

namespace {

constexpr std::size_t kAtOnce = 1000;

TakenFile fileOf(const samples::SeasonPlan& plan, const Season& season, const std::string& folder,
                 std::size_t i) {
  const RecordFacts& facts = season.records[i];
  TakenFile file;
  file.path = folder + "/" + std::to_string(i) + "/" + facts.file;
  file.sha256 = sha256Hex(facts.id + facts.file + std::to_string(i));
  TakenRecord& record = file.records.emplace_back();
  record.sketch = encode(sketchOf(computeFigures(samples::outline(samples::script(plan, i)))));
  TakenFigures& figures = record.figures.emplace_back();
  figures.facts = facts;
  for (std::size_t m = 0; m < figures.cells.size(); ++m) {
    figures.cells[m] = season.column(static_cast<MeasureId>(m))[i];
  }
  return file;
}

} // namespace

void makeArchive(const ArchivePlace& place, const samples::SeasonPlan& plan,
                 const std::string& folder) {
  const samples::MadeSeason made(plan);
  const Season season = made.season();
  if (const auto archive = Archive::openOrCreate(place); !archive) {
    throw ArchiveFailure(archive.error());
  }
  Database database(place, Access::write);
  std::vector<Making> makings;
  database.inOne([&] { makings = makingsToCompute(database); });
  for (std::size_t from = 0; from < plan.records; from += kAtOnce) {
    database.inOne([&] {
      Store store(database, makings, false);
      for (std::size_t i = from; i < std::min(from + kAtOnce, plan.records); ++i) {
        store.put(fileOf(plan, season, folder, i));
      }
    });
  }
  if (place.shared) {
    database.run(QStringLiteral("VACUUM (ANALYZE) version, computed, figure, record"));
  }
}

} // namespace afterbeat::archive::testing
