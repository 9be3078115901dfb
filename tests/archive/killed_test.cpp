// A program that dies while it takes records in: at fifty moments of its run.
#include "tests/archive/archive_folder.h"
#include "tests/archive/server.h"

#include "app/archive/database.h"
#include "samples/season/write_season.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QSqlRecord>

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <random>

namespace afterbeat::archive {
namespace {

using namespace testing;

constexpr std::size_t kLogs = 120, kInStep = 6, kSteps = kLogs / kInStep;

/// Everything kept of each state of a record, by the checksum of its bytes.
std::map<std::string, std::string> contents(const ArchivePlace& place) {
  Database database(place, Access::read);
  std::map<std::string, std::string> all;
  const auto add = [&](const QString& sql) {
    QSqlQuery row = database.run(sql);
    const int columns = row.record().count();
    while (row.next()) {
      std::string& one = all[row.value(0).toString().toStdString()];
      for (int i = 1; i < columns; ++i) {
        one +=
            (row.value(i).isNull() ? "-" : row.value(i).toByteArray().toHex().toStdString()) + " ";
      }
      one += "\n";
    }
  };
  add(QStringLiteral("SELECT v.sha256, v.number, v.current, v.path, v.site, r.name FROM version v "
                     "JOIN record r ON r.id = v.record_id"));
  add(QStringLiteral("SELECT v.sha256, s.bytes FROM version v JOIN sketch s ON s.version_id = "
                     "v.id"));
  add(QStringLiteral("SELECT v.sha256, c.evidence, c.had_shock, c.longest_cause FROM version v "
                     "JOIN computed c ON c.version_id = v.id ORDER BY c.making_id"));
  add(QStringLiteral("SELECT v.sha256, m.name, f.value, f.part_of FROM version v JOIN figure f ON "
                     "f.version_id = v.id JOIN measure m ON m.id = f.measure_id "
                     "ORDER BY f.making_id, m.name"));
  return all;
}

std::size_t rows(const ArchivePlace& place, const char* table) {
  Database database(place, Access::read);
  return database.value(QStringLiteral("SELECT count(*) FROM %1").arg(QLatin1String(table)))
      .toULongLong();
}

class Killed : public ::testing::TestWithParam<Engine> {
protected:
  void SetUp() override {
    if (GetParam() == Engine::server && !serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
    samples::SeasonPlan plan;
    plan.records = kLogs;
    fs::create_directory(folder_ / "cards");
    for (std::size_t i = 0; i < kLogs; ++i) {
      const auto file = samples::seasonFile(plan, i);
      std::ofstream(folder_ / ("cards/" + file.name), std::ios::binary) << file.bytes;
    }
  }

  /// Runs the program; kills it `delay` after the `after`th commit. How many commits it told of,
  /// and in `gaps` how long each took, ms.
  std::size_t run(std::size_t after, int delay, std::vector<int>* gaps) const {
    QProcess child;
    child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    QElapsedTimer clock;
    clock.start();
    child.start(QString::fromStdString(AFTERBEAT_BINARY_DIR "/bin/archive_child"),
                {QString::fromStdString(folder_.place().words()),
                 QString::fromStdString((folder_ / "cards").string()), QString::number(kInStep)});
    std::size_t commits = 0;
    const auto hear = [&] {
      for (qsizetype n = child.readAllStandardOutput().size(); n > 0; --n, ++commits) {
        if (gaps != nullptr) {
          gaps->push_back(static_cast<int>(clock.restart()));
        }
      }
    };
    while (commits < after && child.waitForReadyRead(60'000)) {
      hear();
    }
    if (!child.waitForFinished(gaps != nullptr ? 60'000 : delay)) {
      child.kill();
      child.waitForFinished(60'000);
    } else {
      EXPECT_EQ(child.exitCode(), 0);
    }
    hear();
    return commits;
  }

  void expectWhole(const std::map<std::string, std::string>& undisturbed) const {
    if (GetParam() == Engine::file) {
      Database database(folder_.place(), Access::read);
      EXPECT_EQ(database.value(QStringLiteral("PRAGMA integrity_check")).toString(),
                QStringLiteral("ok"));
    }
    for (const auto& [sha256, one] : contents(folder_.place())) {
      EXPECT_EQ(one, undisturbed.at(sha256)) << "half a file is in the archive";
    }
  }

  ArchiveFolder folder_{GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Both, Killed, ::testing::Values(Engine::file, Engine::server),
                         [](const auto& each) { return words(each.param); });

TEST_P(Killed, AtFiftyMomentsAndWholeEachTime) {
  std::ignore = folder_.openArchive();
  std::vector<int> gaps;
  run(kSteps, 60'000, &gaps);
  ASSERT_GE(gaps.size(), kSteps);
  const auto undisturbed = contents(folder_.place());
  ASSERT_EQ(undisturbed.size(), kLogs);

  // On a server the same is tried less often: it does not share the fate of who asks it.
  const std::size_t wanted = GetParam() == Engine::file ? 50 : 6, most = 4 * wanted;
  std::mt19937 random(11);
  std::size_t cut = 0;
  for (std::size_t round = 0; cut < wanted && round < most; ++round) {
    fs::remove(folder_ / "season.afterbeat");
    fs::remove(folder_ / "season.afterbeat-journal");
    if (GetParam() == Engine::server) {
      Server::running().empty();
    }
    for (std::size_t twice = 0; twice < 2; ++twice) {
      const std::size_t at = (round * 3 + twice * 7) % kSteps;
      cut += run(at, static_cast<int>(random() % static_cast<unsigned>(gaps[at] + 1)), nullptr) <
                     kSteps
                 ? 1
                 : 0;
      if (Archive::open(folder_.place())) {
        expectWhole(undisturbed);
      } else {
        EXPECT_LE(at, 1U) << "it could be opened once there were tables";
      }
    }
    const auto archive = Archive::openOrCreate(folder_.place());
    ASSERT_TRUE(archive) << archive.error().sentence;
    const auto report = take(*archive, {folder_ / "cards"});
    EXPECT_EQ(report.added + report.known, kLogs);
    EXPECT_EQ(contents(folder_.place()), undisturbed);
    for (const char* table : {"version", "record", "sketch", "computed"}) {
      EXPECT_EQ(rows(folder_.place(), table), kLogs) << table;
    }
  }
  EXPECT_GE(cut, wanted) << "so many were really killed before they were done";
}

TEST(CutWrites, AreUndoneByWhoOnlyReads) {
  const ArchiveFolder folder;
  const Archive archive = folder.openArchive();
  std::ignore = take(archive, {folder.writeLog("a.resuslog", idOf(1), 60)});
  const fs::path copy = folder / "copy.afterbeat";
  {
    Database database(folder.place(), Access::write);
    database.run(QStringLiteral("PRAGMA cache_size = 1")); // what is changed goes to the file early
    EXPECT_THROW(database.inOne([&] {
      for (int i = 0; i < 2000; ++i) {
        database.run(QStringLiteral("INSERT INTO note VALUES (?, 'x')"), {i});
      }
      fs::copy_file(folder / "season.afterbeat", copy);
      fs::copy_file(folder / "season.afterbeat-journal", copy.string() + "-journal");
      throw ArchiveFailure(inEnglish("Importers", "enough"));
    }),
                 ArchiveFailure);
  }
  ASSERT_NE(fs::file_size(copy), fs::file_size(folder / "season.afterbeat"));
  const auto cut = Archive::open({false, copy.string()});
  ASSERT_TRUE(cut) << cut.error().sentence;
  EXPECT_EQ(cut->recordCount(), 1U);
  EXPECT_EQ(rows({false, copy.string()}, "note"), 0U);
}

} // namespace
} // namespace afterbeat::archive
