// Tables by version, and archives that may not or cannot be written.
#include "tests/archive/archive_folder.h"
#include "tests/archive/server.h"

#include "app/archive/schema.h"
#include "core/measures/definitions_version.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <fstream>
#include <sys/resource.h>
#include <unistd.h>

namespace afterbeat::archive {
namespace {

using namespace testing;
using ::testing::HasSubstr;

class Schemas : public ::testing::TestWithParam<Engine> {
protected:
  void SetUp() override {
    if (GetParam() == Engine::server && !serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
    archive_ = folder_.openArchive();
    std::ignore = take(*archive_, {folder_.writeLog("a.resuslog", idOf(1), 60)});
  }
  void change(const char* sql) const {
    Database database(folder_.place(), Access::write);
    database.run(QLatin1String(sql));
  }
  [[nodiscard]] TakeInOrder order() const {
    TakeInOrder order;
    order.sources = {folder_.path()};
    return order;
  }
  ArchiveFolder folder_{GetParam()};
  std::optional<Archive> archive_;
};

INSTANTIATE_TEST_SUITE_P(Both, Schemas, ::testing::Values(Engine::file, Engine::server),
                         [](const auto& each) { return words(each.param); });

TEST_P(Schemas, ANewerOneIsRefusedByName) {
  change("UPDATE archive_schema SET version = 99");
  for (const auto& opened :
       {Archive::open(folder_.place()), Archive::openOrCreate(folder_.place())}) {
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("version 99"));
  }
  EXPECT_FALSE(archive_->recordCount());
  EXPECT_FALSE(takeIn(*archive_, order()));
}

TEST_P(Schemas, AllStepsAreTakenOrNone) {
  Database database(folder_.place(), Access::write);
  std::vector<Migration> steps = migrations();
  const int now = steps.back().to;
  steps.push_back({now + 1,
                   {QStringLiteral("ALTER TABLE version ADD COLUMN weather TEXT"),
                    QStringLiteral("UPDATE version SET weather = 'fog'")}});
  steps.push_back({now + 2,
                   {QStringLiteral("CREATE TABLE tide (id {id}, height {real})"),
                    QStringLiteral("INSERT INTO nowhere VALUES (1)")}});
  EXPECT_THROW(migrate(database, steps), ArchiveFailure);
  EXPECT_EQ(versionOf(database), now);
  EXPECT_THROW(database.run(QStringLiteral("SELECT weather FROM version")), ArchiveFailure);
  EXPECT_EQ(archive_->recordCount(), 1U);

  steps.back().statements.back() = QStringLiteral("INSERT INTO tide (height) VALUES (0.5)");
  migrate(database, steps);
  EXPECT_EQ(versionOf(database), now + 2);
  EXPECT_EQ(database.value(QStringLiteral("SELECT weather FROM version")).toString(),
            QStringLiteral("fog"));
  EXPECT_FALSE(archive_->recordCount()) << "newer than this program by now";
}

TEST_P(Schemas, TablesOfAnOlderProgramAreBroughtUpToDateByWhoeverOpensThem) {
  std::ofstream(folder_ / "empty.resuslog");
  std::ignore = take(*archive_, {folder_.path()});
  change("ALTER TABLE refused DROP COLUMN said"); // as version 1 had it
  change("UPDATE archive_schema SET version = 1");
  const auto opened = Archive::open(folder_.place());
  ASSERT_TRUE(opened) << opened.error().sentence;
  EXPECT_EQ(opened->recordCount(), 1U);
  auto refused = opened->refused().value();
  ASSERT_EQ(refused.size(), 1U);
  EXPECT_THAT(refused[0].sentence, HasSubstr("empty"));
  EXPECT_TRUE(refused[0].said.empty()) << "the older program did not keep it";
  std::ignore = take(*opened, {folder_.path()});
  EXPECT_FALSE(opened->refused()->front().said.empty());
}

TEST_P(Schemas, TablesOfSomethingElseAreLeftAlone) {
  change("DROP TABLE archive_schema");
  const auto opened = Archive::openOrCreate(folder_.place());
  ASSERT_FALSE(opened);
  EXPECT_THAT(opened.error().sentence, HasSubstr("something else"));
}

TEST_P(Schemas, OldFiguresStayWhenDefinitionsChange) {
  const std::int64_t old = archive_->makings()->front().id;
  // As if a program with other definitions had been here before.
  change("UPDATE making SET definitions = 0");
  change("UPDATE figure SET value = 61 WHERE value = 60 AND measure_id = (SELECT id FROM measure "
         "WHERE name = 'power_on_to_first_shock')");
  EXPECT_EQ(takeIn(*archive_, order())->computedAgain, 0U) << "the file itself was there to read";
  const auto makings = archive_->makings().value();
  ASSERT_EQ(makings.size(), 2U);
  EXPECT_EQ(makings[0].definitions, kDefinitionsVersion);
  EXPECT_TRUE(makings[0].inUse);
  EXPECT_EQ(makings[1].id, old);
  EXPECT_FALSE(makings[1].inUse);
  EXPECT_EQ(makings[1].records, 1U);
  const auto value = [&](std::int64_t making) {
    return archive_->season(making)->column(MeasureId::powerOnToFirstShock)[0].value;
  };
  EXPECT_EQ(value(old), 61);
  EXPECT_EQ(value(0), 60);
  const auto moved = archive_->moved(old, makings[0].id).value();
  ASSERT_EQ(moved.size(), 1U);
  EXPECT_EQ(moved[0].measure, MeasureId::powerOnToFirstShock);
  EXPECT_EQ(moved[0].before.value, 61);
  EXPECT_EQ(moved[0].after.value, 60);
}

TEST_P(Schemas, NewerDefinitionsAreNotReplacedByOlderOnes) {
  change("UPDATE making SET definitions = 99");
  const auto report = takeIn(*archive_, order());
  ASSERT_FALSE(report);
  EXPECT_THAT(report.error().sentence, HasSubstr("newer definitions"));
  EXPECT_EQ(archive_->makings()->size(), 1U);
}

/// While it lives this program may do no more than anybody may; root may write everywhere.
class WithoutRights {
public:
  WithoutRights() : user_(geteuid()) {
    if (user_ == 0) {
      EXPECT_EQ(seteuid(65534), 0);
    }
  }
  ~WithoutRights() { EXPECT_EQ(seteuid(user_), 0); }
  WithoutRights(const WithoutRights&) = delete;
  WithoutRights& operator=(const WithoutRights&) = delete;

private:
  uid_t user_;
};

TEST(Rights, AnArchiveThatMayOnlyBeReadIsReadAndNotChanged) {
  const ArchiveFolder folder;
  const Archive archive = folder.openArchive();
  std::ignore = take(archive, {folder.writeLog("a.resuslog", idOf(1), 60)});
  folder.writeLog("b.resuslog", idOf(2), 70);
  fs::permissions(folder.path(), fs::perms(0555));
  fs::permissions(folder / "season.afterbeat", fs::perms(0444));
  {
    const WithoutRights without;
    const auto opened = Archive::open(folder.place());
    ASSERT_TRUE(opened) << opened.error().sentence;
    EXPECT_EQ(opened->season()->records.size(), 1U);
    TakeInOrder order;
    order.sources = {folder.path()};
    const auto report = takeIn(*opened, order);
    ASSERT_FALSE(report);
    EXPECT_THAT(report.error().sentence, HasSubstr("readonly"));
    const auto made = Archive::openOrCreate({false, (folder / "other").string()});
    ASSERT_FALSE(made);
    EXPECT_THAT(made.error().sentence, HasSubstr("cannot be opened"));
  }
  fs::permissions(folder.path(), fs::perms(0755));
  EXPECT_EQ(archive.recordCount(), 1U);
}

TEST(Rights, ADatabaseOfSomethingElseIsLeftAsItIs) {
  const ArchiveFolder folder;
  {
    Database other(folder.place(), Access::create);
    other.run(QStringLiteral("CREATE TABLE boats (name TEXT)"));
  }
  const auto made = Archive::openOrCreate(folder.place());
  ASSERT_FALSE(made);
  EXPECT_THAT(made.error().sentence, HasSubstr("something else"));
  Database other(folder.place(), Access::read);
  EXPECT_EQ(other.value(QStringLiteral("SELECT count(*) FROM sqlite_master")).toInt(), 1);
}

TEST(Rights, AnOlderArchiveThatMayOnlyBeReadSaysWhatHasToHappen) {
  const ArchiveFolder folder;
  const Archive archive = folder.openArchive();
  Database(folder.place(), Access::write)
      .run(QStringLiteral("UPDATE archive_schema SET version = 1"));
  fs::permissions(folder.path(), fs::perms(0555));
  fs::permissions(folder / "season.afterbeat", fs::perms(0444));
  {
    const WithoutRights without;
    const auto opened = Archive::open(folder.place());
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("Somebody who may write"));
  }
  fs::permissions(folder.path(), fs::perms(0755));
}

/// While it lives no file can grow beyond `bytes`, as on a full disk.
class FullDisk {
public:
  explicit FullDisk(rlim_t bytes) {
    std::signal(SIGXFSZ, SIG_IGN);
    getrlimit(RLIMIT_FSIZE, &before_);
    rlimit now = before_;
    now.rlim_cur = bytes;
    setrlimit(RLIMIT_FSIZE, &now);
  }
  ~FullDisk() {
    setrlimit(RLIMIT_FSIZE, &before_);
    std::signal(SIGXFSZ, SIG_DFL);
  }
  FullDisk(const FullDisk&) = delete;
  FullDisk& operator=(const FullDisk&) = delete;

private:
  rlimit before_{};
};

TEST(Rights, AFullDiskLeavesTheArchiveWhole) {
  const ArchiveFolder folder;
  const Archive archive = folder.openArchive();
  std::ignore = take(archive, {folder.writeLog("a.resuslog", idOf(1), 60)});
  for (int i = 2; i < 60; ++i) {
    folder.writeLog("cards/" + std::to_string(i) + ".resuslog", idOf(i), 60 + i);
  }
  TakeInOrder order;
  order.sources = {folder / "cards"};
  order.filesInStep = 5;
  {
    const FullDisk full(fs::file_size(folder / "season.afterbeat") + 40'000);
    const auto report = takeIn(archive, order);
    ASSERT_FALSE(report);
    EXPECT_THAT(report.error().sentence, HasSubstr("season.afterbeat could not be used"));
  }
  Database database(folder.place(), Access::read);
  EXPECT_EQ(database.value(QStringLiteral("PRAGMA integrity_check")).toString(),
            QStringLiteral("ok"));
  const std::size_t before = archive.recordCount().value();
  EXPECT_GT(before, 1U) << "what was committed stays";
  EXPECT_LT(before, 59U);
  const auto rest = takeIn(archive, order);
  ASSERT_TRUE(rest);
  EXPECT_EQ(rest->added + before, 59U);
}

} // namespace
} // namespace afterbeat::archive
