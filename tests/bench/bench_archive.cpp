/// What an archive of many records costs, as JSON in milliseconds, MiB and bytes for a record.
///   bench_archive make FILE RECORDS        fills a new archive with a made-up season
///   bench_archive look FILE                opens it, first page, everything
///   bench_archive take FILE FOLDER         takes a folder in
///   bench_archive server RECORDS FOLDER    the same three on a PostgreSQL server of its own
#include "tests/archive/made_archive.h"
#include "tests/archive/server.h"

#include "app/archive/season_rows.h"
#include "app/archive/take_in.h"
#include "core/compare/filter.h"
#include "core/compare/order.h"
#include "core/compare/spread.h"
#include "core/compare/stages.h"
#include "core/compare/stand_out.h"

#include <QCoreApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <thread>

#include <sys/resource.h>

#include <fmt/format.h>

using namespace afterbeat;
using namespace afterbeat::archive;

namespace {

double ms(const std::function<void()>& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin)
      .count();
}

double peakMib() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

template <typename T>
T must(Expected<T> value) {
  if (!value) {
    throw ArchiveFailure(value.error());
  }
  return std::move(*value);
}

void make(const ArchivePlace& place, std::size_t records) {
  samples::SeasonPlan plan;
  plan.records = records;
  plan.firstDay = std::chrono::year(2006) / 1 / 1;
  archive::testing::makeArchive(place, plan);
}

/// From a click to the figures of a chart when only the table was looked at before: the season is
/// read anew, with the columns of the table, and the click comes `wait` later.
double firstClick(const Archive& archive, std::chrono::milliseconds wait,
                  const std::function<void(const Season&, const Chosen&)>& chart) {
  const Season season = must(archive.season());
  for (const MeasureId id :
       {MeasureId::timeOn, MeasureId::shocksDelivered, MeasureId::powerOnToFirstShock,
        MeasureId::handsOffFraction, MeasureId::longestPause}) {
    std::ignore = season.column(id);
  }
  const Chosen rescues = ofKind(season, everything(season), RecordKind::rescue);
  std::this_thread::sleep_for(wait);
  return ms([&] { chart(season, rescues); });
}

std::string firstClicks(const Archive& archive) {
  std::string said;
  for (const auto& [name, chart] :
       std::initializer_list<std::pair<const char*, void (*)(const Season&, const Chosen&)>>{
           {"stages",
            [](const Season&season, const Chosen&some) {
              std::ignore = stages(season, some, StagesFrom::call);
            }},
           {"worth_a_look",
            [](const Season&season,
               const Chosen
                   &) { std::ignore = worthALook(season, everything(season), defaultProfile()); }},
           {"spread", [](const Season&season, const Chosen&some) {
              std::ignore =
                  spread(season, some, MeasureId::chestCompressionFraction, GroupBy::site);
            }}}) {
    for (const int wait : {0, 500}) {
      said += fmt::format(", \"first_{}{}_ms\": {:.1f}", name, wait == 0 ? "_at_once" : "",
                          firstClick(archive, std::chrono::milliseconds(wait), chart));
    }
  }
  return said;
}

std::string look(const ArchivePlace& place) {
  std::optional<Archive> archive;
  const double first = ms([&] {
    archive = must(Archive::open(place));
    std::vector<std::int64_t> numbers;
    for (const RecordFacts& one : must(archive->latest(100))) {
      numbers.push_back(one.number);
    }
    std::ignore = must(archive->sketches(numbers));
  });
  const std::string clicks = firstClicks(*archive);
  Season season;
  const double facts = ms([&] { season = must(archive->season()); });
  std::vector<double> columns;
  for (std::size_t m = 0; m < static_cast<std::size_t>(MeasureId::count_); ++m) {
    if (m % 4 == 0) {
      // Of a season read anew, of which no column was fetched ahead.
      const Season fresh = must(archive->season());
      columns.push_back(ms([&] { std::ignore = fresh.column(static_cast<MeasureId>(m)); }));
    }
    std::ignore = season.column(static_cast<MeasureId>(m));
  }
  Chosen chosen = everything(season);
  Filter filter;
  filter.words = "north rescue";
  const double filtered = ms([&] { std::ignore = matching(season, filter); });
  const double sorted = ms([&] { sortBy(season, chosen, Order{MeasureId::longestPause, true}); });
  const Chosen rescues = ofKind(season, chosen, RecordKind::rescue);
  const double chart = ms([&] {
    std::ignore = spread(season, rescues, MeasureId::chestCompressionFraction, GroupBy::site);
  });
  std::sort(columns.begin(), columns.end());
  return fmt::format("\"records\": {}, \"first_page_ms\": {:.1f}, \"facts_ms\": {:.1f}, "
                     "\"column_ms\": {:.1f}, \"slowest_column_ms\": {:.1f}, \"filter_ms\": {:.1f}, "
                     "\"sort_ms\": {:.1f}, \"chart_ms\": {:.1f}, \"peak_mib\": {:.1f}",
                     season.records.size(), first, facts, columns[columns.size() / 2],
                     columns.back(), filtered, sorted, chart, peakMib()) +
         (place.shared ? std::string() : clicks);
}

std::string take(const ArchivePlace& place, const char* folder) {
  const Archive archive = must(Archive::openOrCreate(place));
  TakeInOrder order;
  order.sources = {folder};
  TakeInReport report;
  const double first = ms([&] { report = must(takeIn(archive, order)); });
  const std::size_t added = report.added;
  const double again = ms([&] { report = must(takeIn(archive, order)); });
  return fmt::format("\"added\": {}, \"take_ms\": {:.1f}, \"known\": {}, \"again_ms\": {:.1f}",
                     added, first, report.known, again);
}

std::string server(std::size_t records, const char* folder) {
  archive::testing::Server& running = archive::testing::Server::running(true);
  const ArchivePlace place{true, "season_keeper"};
  running.empty();
  make(place, records);
  std::string said = look(place);
  {
    Database database(place, Access::read);
    QSqlQuery table = database.run(QStringLiteral(
        "SELECT relname, pg_relation_size(oid), pg_indexes_size(oid) FROM pg_class WHERE "
        "relkind = 'r' AND relname IN ('figure', 'version', 'record', 'computed', 'sketch')"));
    while (table.next()) {
      for (const int i : {1, 2}) {
        said += fmt::format(", \"{}_{}_bytes\": {:.0f}", table.value(0).toString().toStdString(),
                            i == 1 ? "rows" : "index",
                            table.value(i).toDouble() / static_cast<double>(records));
      }
    }
  }
  running.empty();
  return said + ", " + take(place, folder);
}

} // namespace

int main(int argc, char** argv) {
  const QCoreApplication app(argc, argv);
  const std::string what =
      argc == 4 || (argc == 3 && std::strcmp(argv[1], "look") == 0) ? argv[1] : "";
  std::string said;
  if (what == "make") {
    make({false, argv[2]}, std::stoul(argv[3]));
  } else if (what == "look") {
    said = look({false, argv[2]});
  } else if (what == "take") {
    said = take({false, argv[2]}, argv[3]);
  } else if (what == "server") {
    said = server(std::stoul(argv[2]), argv[3]);
  } else {
    std::fputs("bench_archive make|look|take|server ...\n", stderr);
    return 2;
  }
  std::printf("{%s}\n", said.c_str());
  return 0;
}
