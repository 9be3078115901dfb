// Records go in once, changed files are versions, broken ones stop nothing.
#include "tests/archive/archive_folder.h"

#include "core/compare/filter.h"
#include "core/compare/order.h"
#include "core/measures/definitions_version.h"
#include "core/resuslog/read_log.h"
#include "tests/archive/server.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include <fmt/format.h>

namespace afterbeat::archive {
namespace {

using namespace testing;

class TakingIn : public ::testing::TestWithParam<Engine> {
protected:
  void SetUp() override {
    if (GetParam() == Engine::server && !serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
  }
  ArchiveFolder folder_{GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Both, TakingIn, ::testing::Values(Engine::file, Engine::server),
                         [](const auto& each) { return words(each.param); });

TEST_P(TakingIn, FiguresAreThoseOfTheRecordItself) {
  const Archive archive = folder_.openArchive();
  const auto report = take(archive, {samples() / "ferry-terminal.resuslog"});
  EXPECT_EQ(report.added, 1U);
  const auto log = readLogFile(samples() / "ferry-terminal.resuslog");
  const Figures figures = computeFigures(log->records.front().record);
  const Season season = archive.season().value();
  ASSERT_EQ(season.records.size(), 1U);
  for (const Measure& measure : figures.measures) {
    const FigureCell cell = season.column(measure.id)[0];
    EXPECT_EQ(cell.status, measure.status) << measureInfo(measure.id).name;
    if (measure.value) {
      EXPECT_EQ(cell.value, *measure.value) << measureInfo(measure.id).name;
    }
  }
  EXPECT_EQ(season.records[0].site, log->records.front().record.header.site);
  EXPECT_EQ(season.records[0].kind, RecordKind::rescue);
  EXPECT_EQ(season.records[0].evidence, figures.evidence);
  EXPECT_TRUE(season.records[0].synthetic);
}

TEST_P(TakingIn, TheSameBytesTwiceAreOneRecord) {
  const Archive archive = folder_.openArchive();
  folder_.writeLog("cards/a.resuslog", idOf(1), 60);
  fs::copy_file(folder_ / "cards/a.resuslog", folder_ / "cards/b.resuslog");
  const auto first = take(archive, {folder_ / "cards"});
  EXPECT_EQ(first.added, 1U);
  EXPECT_EQ(first.known, 1U);
  const auto second = take(archive, {folder_ / "cards", folder_ / "cards/a.resuslog"});
  EXPECT_EQ(second.added + second.changed, 0U);
  EXPECT_EQ(second.known, 2U);
  EXPECT_EQ(archive.recordCount(), 1U);
}

TEST_P(TakingIn, AChangedFileIsANewVersion) {
  for (const std::string& id : {idOf(1), std::string()}) {
    ArchiveFolder folder(GetParam());
    const Archive archive = folder.openArchive();
    const fs::path log = folder.writeLog("a.resuslog", id, 60);
    std::ignore = take(archive, {log});
    folder.writeLog("a.resuslog", id, 90);
    const auto report = take(archive, {log});
    EXPECT_EQ(report.changed, 1U) << id;
    EXPECT_EQ(report.changedFiles, std::vector<fs::path>{log});
    const Season season = archive.season().value();
    ASSERT_EQ(season.records.size(), 1U);
    EXPECT_EQ(season.records[0].version, 2);
    EXPECT_EQ(season.column(MeasureId::powerOnToFirstShock)[0].value, 90);
    EXPECT_EQ(archive.versions(season.records[0].number)->size(), 2U);

    folder.writeLog("a.resuslog", id, 60); // taken back
    EXPECT_EQ(take(archive, {log}).changed, 1U);
    const Season back = archive.season().value();
    ASSERT_EQ(back.records.size(), 1U);
    EXPECT_EQ(back.records[0].version, 1);
    EXPECT_EQ(back.column(MeasureId::powerOnToFirstShock)[0].value, 60);
  }
}

TEST_P(TakingIn, AMovedFileIsFoundAtItsNewPlace) {
  const Archive archive = folder_.openArchive();
  std::ignore = take(archive, {folder_.writeLog("a.resuslog", idOf(1), 60)});
  fs::rename(folder_ / "a.resuslog", folder_ / "b.resuslog");
  EXPECT_EQ(take(archive, {folder_ / "b.resuslog"}).known, 1U);
  const Season season = archive.season().value();
  EXPECT_EQ(archive.file(season.records.at(0).number)->path, folder_ / "b.resuslog");
}

TEST_P(TakingIn, BrokenFilesAreListedAndStopNothing) {
  const Archive archive = folder_.openArchive();
  folder_.writeLog("cards/a.resuslog", idOf(1), 60);
  std::ofstream(folder_ / "cards/empty.resuslog");
  std::ofstream(folder_ / "cards/other.resuslog") << "no log at all\n";
  std::ofstream(folder_ / "cards/wave.hea") << "nonsense\n";
  std::ofstream(folder_ / "cards/letter.pdf") << "%PDF\n";
  auto report = take(archive, {folder_ / "cards", folder_ / "gone.resuslog"});
  EXPECT_EQ(report.added, 1U);
  EXPECT_EQ(report.leftAside, 1U);
  ASSERT_EQ(report.refused.size(), 4U);
  EXPECT_EQ(report.refused[0].path.filename(), "empty.resuslog");
  for (const RefusedFile& one : report.refused) {
    EXPECT_FALSE(one.sentence.empty()) << one.path;
  }
  EXPECT_EQ(archive.refused()->size(), 4U);

  folder_.writeLog("cards/other.resuslog", idOf(2), 70); // mended
  EXPECT_EQ(take(archive, {folder_ / "cards"}).added, 1U);
  EXPECT_EQ(archive.refused()->size(), 3U);
}

TEST_P(TakingIn, WhatIsKeptOfARefusedFileIsWhatWasSaid) {
  const Archive archive = folder_.openArchive();
  fs::create_directory(folder_ / "cards");
  std::ofstream(folder_ / "cards/new.resuslog")
      << R"({"resuslog":"7.5","record_id":"x","kind":"drill"})" << '\n';
  std::ofstream(folder_ / "cards" / "b\xE4r.resuslog") << "named in Latin-1\n";
  const auto report = take(archive, {folder_ / "cards"});
  fs::remove(folder_ / "cards" / "b\xE4r.resuslog"); // QTemporaryDir cannot
  ASSERT_EQ(report.refused.size(), 2U);
  const auto kept = archive.refused().value();
  ASSERT_EQ(kept.size(), 2U);
  for (const RefusedFile& one : report.refused) {
    const auto same = std::find_if(kept.begin(), kept.end(), [&one](const RefusedFile& other) {
      return other.sentence == one.sentence;
    });
    ASSERT_NE(same, kept.end()) << one.path;
    ASSERT_EQ(same->said.size(), one.said.size());
    EXPECT_EQ(same->said.front().parts, one.said.front().parts);
  }
  EXPECT_EQ(kept.back().said.front().parts.at(1), "\"7.5\"");
}

TEST_P(TakingIn, ARefusedFileThatIsGoneIsForgottenWhereItWasLookedFor) {
  const Archive archive = folder_.openArchive();
  for (const char* card : {"card", "other card"}) {
    fs::create_directory(folder_ / card);
    std::ofstream(folder_ / card / "empty.resuslog");
  }
  EXPECT_EQ(take(archive, {folder_ / "card", folder_ / "other card"}).refused.size(), 2U);
  fs::remove(folder_ / "card" / "empty.resuslog");
  std::ignore = take(archive, {folder_ / "other card"});
  EXPECT_EQ(archive.refused()->size(), 2U) << "nobody looked at that card";
  std::ignore = take(archive, {folder_ / "card"});
  ASSERT_EQ(archive.refused()->size(), 1U);
  fs::remove_all(folder_ / "other card");
  std::ignore = take(archive, {folder_ / "other card"});
  EXPECT_EQ(archive.refused()->size(), 2U) << "the card is not in, and that is said too";
}

TEST_P(TakingIn, ARecordWithAnotherThresholdGetsFiguresOfItsOwn) {
  const Archive archive = folder_.openArchive();
  const fs::path log = folder_.writeLog("a.resuslog", idOf(1), 60);
  std::ignore = take(archive, {log});
  MakingSettings five;
  five.figures.pauseThreshold = Duration{5'000'000};
  five.figures.profile = *builtInProfile("american-2025");
  const std::int64_t id = archive.use(five).value();
  EXPECT_EQ(take(archive, {}).computedAgain, 1U);
  const auto makings = archive.makings().value();
  ASSERT_EQ(makings.size(), 2U);
  EXPECT_EQ(makings[1].id, id);
  EXPECT_EQ(makings[1].records, 1U);
  EXPECT_EQ(makings[1].settings.figures.pauseThreshold, Duration{5'000'000});
  EXPECT_EQ(makings[1].settings.figures.profile.id, "american-2025");
  EXPECT_EQ(makings[1].definitions, kDefinitionsVersion);
  EXPECT_EQ(archive.use(five), id) << "the same settings are one making";
}

TEST_P(TakingIn, FiguresWithoutAFileComeFromKeptBytesOrAreNamed) {
  const Archive archive = folder_.openArchive();
  std::ignore = take(archive, {folder_.writeLog("kept.resuslog", idOf(1), 60)}, true);
  std::ignore = take(archive, {folder_.writeLog("gone.resuslog", idOf(2), 60)});
  fs::remove(folder_ / "kept.resuslog");
  fs::remove(folder_ / "gone.resuslog");
  MakingSettings other;
  other.figures.windowEnd = WindowEnd::recordEnd;
  const std::int64_t id = archive.use(other).value();
  const auto report = take(archive, {});
  EXPECT_EQ(report.computedAgain, 1U);
  ASSERT_EQ(report.notComputed.size(), 1U);
  EXPECT_EQ(report.notComputed[0].path, folder_ / "gone.resuslog");
  const Season season = archive.season(id).value();
  EXPECT_EQ(cellOf(season, "kept.resuslog", MeasureId::powerOnToFirstShock).value, 60);
  EXPECT_EQ(cellOf(season, "gone.resuslog", MeasureId::powerOnToFirstShock).status,
            Status::notRecorded);
}

TEST_P(TakingIn, WhatMovedBetweenTwoMakingsIsListed) {
  const Archive archive = folder_.openArchive();
  std::ignore = take(archive, {samples() / "ferry-terminal.resuslog"});
  MakingSettings five;
  five.figures.pauseThreshold = Duration{5'000'000};
  const std::int64_t after = archive.use(five).value();
  std::ignore = take(archive, {});
  const std::int64_t before = archive.makings()->front().id;
  const auto moved = archive.moved(before, after).value();
  const Figures was =
      computeFigures(readLogFile(samples() / "ferry-terminal.resuslog")->records.front().record);
  std::size_t share = 0;
  for (const Moved& one : moved) {
    EXPECT_TRUE(measureInfo(one.measure).dependsOnThreshold) << measureInfo(one.measure).name;
    if (one.measure == MeasureId::handsOffFraction) {
      ++share;
      EXPECT_EQ(one.before.value, *was[MeasureId::handsOffFraction].value);
      EXPECT_LT(one.after.value, one.before.value);
    }
  }
  EXPECT_EQ(share, 1U);
}

TEST_P(TakingIn, AFileOfSeveralRecordsGivesThemAll) {
  const Archive archive = folder_.openArchive();
  const fs::path one = folder_.writeLog("one.resuslog", idOf(1), 60);
  const fs::path two = folder_.writeLog("two.resuslog", idOf(2), 70);
  std::ofstream(one, std::ios::app) << std::ifstream(two).rdbuf();
  std::ignore = take(archive, {one});
  EXPECT_EQ(archive.recordCount(), 2U);
  const Season season = archive.season().value();
  EXPECT_EQ(archive.file(season.records[1].number)->part, 1);
}

TEST_P(TakingIn, IsStoppedBetweenFilesAndGoesOnNextTime) {
  const Archive archive = folder_.openArchive();
  for (int i = 0; i < 40; ++i) {
    folder_.writeLog("cards/" + std::to_string(i) + ".resuslog", idOf(i), 60 + i);
  }
  std::atomic<bool> cancel = true;
  TakeInOrder order;
  order.sources = {folder_ / "cards"};
  const auto cut = takeIn(archive, order, {}, &cancel);
  ASSERT_TRUE(cut);
  EXPECT_TRUE(cut->cancelled);
  EXPECT_EQ(cut->added, 0U);
  std::size_t done = 0;
  cancel = false;
  const auto whole = takeIn(archive, order, [&done](const TakeInProgress& progress) {
    EXPECT_GE(progress.done, done);
    EXPECT_EQ(progress.found, 40U);
    done = progress.done;
  });
  EXPECT_EQ(whole->added, 40U);
  EXPECT_EQ(done, 40U);
}

TEST_P(TakingIn, TheLatestAloneAreTheEndOfAllOfThem) {
  const Archive archive = folder_.openArchive();
  EXPECT_TRUE(archive.latestSeason(10)->records.empty());
  const std::string day = "2026-03-14";
  for (int i = 0; i < 24; ++i) {
    const fs::path log = folder_.writeLog(fmt::format("{}.resuslog", i), idOf(i), 60 + i);
    std::ifstream in(log);
    std::string text((std::istreambuf_iterator<char>(in)), {});
    // Three a day, later days first, and three without a day at the end.
    text.replace(text.find(day), day.size(), fmt::format("2026-03-{:02}", 28 - i / 3));
    if (i >= 21) {
      const auto from = text.find("\"recorded\"");
      text.erase(from, text.find(",", from) + 1 - from);
    }
    std::ofstream(log) << text;
  }
  std::ignore = take(archive, {folder_.path()});
  const Season all = archive.season().value();
  ASSERT_EQ(all.records.size(), 24U);
  Chosen latestFirst = everything(all);
  sortBy(all, latestFirst, {Fact::day, true});
  // Whole days; all of them where there are no more; one day alone is not left out.
  for (const auto& [count, expected] : std::vector<std::pair<std::size_t, std::size_t>>{
           {1, 1}, {2, 2}, {3, 3}, {4, 3}, {10, 9}, {21, 21}, {23, 21}, {24, 24}, {99, 24}}) {
    const Season some = archive.latestSeason(count).value();
    ASSERT_EQ(some.records.size(), expected) << count;
    if (count < 3) {
      continue; // of a day that is cut the last ones
    }
    Chosen chosen = everything(some);
    sortBy(some, chosen, {Fact::day, true});
    const FigureColumn& column = some.column(MeasureId::powerOnToFirstShock);
    ASSERT_EQ(column.size(), expected);
    for (std::size_t i = 0; i < expected; ++i) {
      EXPECT_EQ(some.records[chosen[i]].number, all.records[latestFirst[i]].number);
      EXPECT_EQ(column[chosen[i]].value,
                all.column(MeasureId::powerOnToFirstShock)[latestFirst[i]].value);
    }
  }
}

TEST_P(TakingIn, SmallPicturesOfTheRowsAreKept) {
  const Archive archive = folder_.openArchive();
  std::ignore = take(archive, {samples() / "boathouse.resuslog"});
  const auto number = archive.latest(5)->at(0).number;
  const RowsSketch sketch = archive.sketches({number})->at(number);
  EXPECT_TRUE(sketch.handsKnown);
  EXPECT_EQ(sketch.pauses.size(), 4U);
  EXPECT_EQ(sketch.shocks.size(), 1U);
  const auto back = decode(encode(sketch));
  ASSERT_TRUE(back);
  EXPECT_EQ(back->pauses, sketch.pauses);
  EXPECT_EQ(back->length, sketch.length);
  EXPECT_FALSE(decode("x"));
  EXPECT_FALSE(decode(encode(sketch) + "x"));
}

TEST(ArchivePlaces, AnArchiveThatIsNoneIsRefusedBySentence) {
  const ArchiveFolder folder;
  EXPECT_FALSE(Archive::open({false, (folder / "none").string()}));
  std::ofstream(folder / "text") << std::string(5000, 'x');
  const auto text = Archive::openOrCreate({false, (folder / "text").string()});
  ASSERT_FALSE(text);
  EXPECT_NE(text.error().sentence.find("text"), std::string::npos);
  EXPECT_FALSE(Archive::openOrCreate({false, (folder / "no/such/folder/a").string()}));
}

TEST_P(TakingIn, TheLaterPathIsTheNewerVersionHoweverSlowTheFirstFile) {
  const Archive archive = folder_.openArchive();
  const fs::path slow = folder_.writeLog("cards/a.resuslog", idOf(1), 60);
  folder_.writeLog("cards/b.resuslog", idOf(1), 70);
  {
    std::ofstream more(slow, std::ios::app);
    for (int i = 0; i < 60'000; ++i) {
      more << R"({"t":)" << 200 + i / 2 << (i % 2 == 0 ? "" : ".5") << R"(,"type":"compression"})"
           << "\n";
    }
  }
  TakeInOrder order;
  order.sources = {folder_ / "cards"};
  order.threads = 2;
  const auto report = takeIn(archive, order);
  ASSERT_TRUE(report) << report.error().sentence;
  EXPECT_EQ(report->changedFiles, std::vector<fs::path>{folder_ / "cards/b.resuslog"});
  const Season season = archive.season().value();
  ASSERT_EQ(season.records.size(), 1U);
  EXPECT_EQ(season.records[0].file, "b.resuslog");
  EXPECT_EQ(season.records[0].version, 2);
}

} // namespace
} // namespace afterbeat::archive
