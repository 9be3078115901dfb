// A season of files, kept nowhere.
#include "app/archive/files_season.h"
#include "app/archive/season_rows.h"
#include "tests/archive/archive_folder.h"

#include <gtest/gtest.h>

#include <chrono>
#include <fstream>
#include <map>
#include <sstream>
#include <thread>

namespace afterbeat::archive {
namespace {

using namespace testing;

TEST(FilesSeason, CountsTheSameBytesOnceAndNamesWhatIsNotInIt) {
  const ArchiveFolder folder;
  folder.writeLog("cards/b.resuslog", "urn:uuid:00000000-0000-4000-8000-00000000000b", 70);
  folder.writeLog("cards/a.resuslog", "urn:uuid:00000000-0000-4000-8000-00000000000a", 60);
  fs::copy_file(folder / "cards/a.resuslog", folder / "cards/copy.resuslog");
  folder.writeLog("cards/.hidden/c.resuslog", "urn:uuid:00000000-0000-4000-8000-00000000000c", 80);
  std::ofstream(folder / "cards/empty.resuslog");
  std::ofstream(folder / "cards/letter.pdf") << "%PDF\n";
  std::size_t done = 0;
  const FilesSeason made = seasonOfFiles(
      {folder / "cards"}, {}, [&done](const TakeInProgress& progress) { done = progress.done; });
  ASSERT_EQ(made.season.records.size(), 2U);
  EXPECT_EQ(made.season.records[0].file, "a.resuslog");
  EXPECT_EQ(made.season.records[1].number, 1);
  EXPECT_EQ(made.paths[1], folder / "cards/b.resuslog");
  EXPECT_EQ(made.twice, std::vector<fs::path>{folder / "cards/copy.resuslog"});
  ASSERT_EQ(made.refused.size(), 1U);
  EXPECT_EQ(made.refused[0].path.filename(), "empty.resuslog");
  EXPECT_EQ(done, 4U);
  const Season kept = made.season; // columns hold with a copy
  EXPECT_EQ(kept.column(MeasureId::powerOnToFirstShock)[1].value, 70);
  EXPECT_TRUE(decode(made.sketches[0]));
}

/// The same log on another day; "" takes the day away.
void putDay(const fs::path& log, const std::string& day) {
  std::stringstream text;
  text << std::ifstream(log).rdbuf();
  std::string words = text.str();
  const std::string recorded = R"("recorded":"2026-03-14T09:12:30+01:00",)";
  words.replace(words.find(recorded), recorded.size(),
                day.empty() ? "" : R"("recorded":")" + day + R"(T09:12:30+01:00",)");
  std::ofstream(log) << words;
}

TEST(FilesSeason, StandsByDayWithEverythingOfEachRecordAtItsPlace) {
  const ArchiveFolder folder;
  // Names in another order than days; one shock after the number of seconds in the name.
  const std::map<std::string, std::string> days{
      {"a-61", ""}, {"b-62", "2026-05-01"}, {"c-63", "2026-04-01"}, {"d-64", "2026-04-02"}};
  int id = 0;
  for (const auto& [name, day] : days) {
    putDay(folder.writeLog("cards/" + name + ".resuslog", idOf(++id), std::stoi(name.substr(2))),
           day);
  }
  const FilesSeason made = seasonOfFiles({folder / "cards"}, {});
  std::vector<std::string> order;
  for (std::size_t place = 0; place < made.season.records.size(); ++place) {
    const RecordFacts& record = made.season.records[place];
    order.push_back(record.file);
    EXPECT_EQ(record.number, static_cast<std::int64_t>(place));
    EXPECT_EQ(made.paths[place].filename(), record.file) << "what a click opens";
    const int shock = std::stoi(record.file.substr(2, 2));
    EXPECT_EQ(made.season.column(MeasureId::powerOnToFirstShock)[place].value, shock);
    const FilesSeason alone = seasonOfFiles({made.paths[place]}, {});
    EXPECT_EQ(made.sketches[place], alone.sketches[0]) << "its small picture";
  }
  EXPECT_EQ(order, (std::vector<std::string>{"c-63.resuslog", "d-64.resuslog", "b-62.resuslog",
                                             "a-61.resuslog"}));
}

TEST(FilesSeason, ARecordInTwoFilesCountsOnceAsInAnArchive) {
  const ArchiveFolder folder;
  // Other bytes under the same id; those of no id are records of their own.
  folder.writeLog("cards/a.resuslog", idOf(1), 60);
  folder.writeLog("cards/b.resuslog", idOf(1), 70);
  folder.writeLog("cards/c.resuslog", "", 80);
  folder.writeLog("cards/d.resuslog", "", 90);
  const Archive archive = folder.openArchive();
  std::ignore = take(archive, {folder / "cards"});
  const Season kept = archive.season().value();
  ASSERT_EQ(kept.records.size(), 3U);
  // Named in another order than the archive sorts them.
  const FilesSeason made = seasonOfFiles({folder / "cards/b.resuslog", folder / "cards/a.resuslog",
                                          folder / "cards/c.resuslog", folder / "cards/d.resuslog"},
                                         {});
  ASSERT_EQ(made.season.records.size(), 3U);
  EXPECT_EQ(made.older, std::vector<fs::path>{folder / "cards/a.resuslog"});
  EXPECT_TRUE(made.twice.empty());
  for (std::size_t i = 0; i < 3; ++i) {
    const std::string& file = made.season.records[i].file;
    EXPECT_EQ(made.paths[i].filename(), file);
    EXPECT_EQ(cellOf(made.season, file, MeasureId::powerOnToFirstShock).value,
              cellOf(kept, file, MeasureId::powerOnToFirstShock).value);
  }
  EXPECT_EQ(made.season.records[0].file, "b.resuslog");
  EXPECT_EQ(made.season.records[0].version, 2);
}

TEST(ColumnShelf, FetchesTheRestOnceOneIsAskedFor) {
  const ArchiveFolder folder;
  const Archive archive = folder.openArchive();
  std::ignore = take(archive, {folder.writeLog("a.resuslog", idOf(1), 60)});
  const Season season = archive.season().value();
  const std::int64_t making = archive.makings()->front().id;
  ColumnShelf shelf(folder.place(), making, season.records, false);
  EXPECT_EQ(shelf.ready(), 0U);
  EXPECT_EQ(shelf.column(MeasureId::powerOnToFirstShock)[0].value, 60);
  const auto all = static_cast<std::size_t>(MeasureId::count_);
  for (int i = 0; i < 1000 && shelf.ready() < all; ++i) {
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  EXPECT_EQ(shelf.ready(), all);
  ColumnShelf few(folder.place(), making, season.records, true);
  for (std::size_t i = 0; i < all; ++i) {
    const auto id = static_cast<MeasureId>(i);
    const FigureCell ahead = shelf.column(id)[0], asked = few.column(id)[0];
    EXPECT_EQ(ahead.status, asked.status);
    EXPECT_EQ(ahead.value, asked.value);
    EXPECT_EQ(ahead.of, asked.of);
    EXPECT_EQ(few.ready(), i + 1) << "of a few records nothing is fetched unasked";
  }
}

} // namespace
} // namespace afterbeat::archive
