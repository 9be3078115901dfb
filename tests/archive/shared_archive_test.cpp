// What only a shared archive has: roles, a way to reach it, and a server that may not be there.
#include "tests/archive/archive_folder.h"
#include "tests/archive/server.h"

#include "app/archive/database.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

namespace afterbeat::archive {
namespace {

using namespace testing;
using ::testing::HasSubstr;

class Shared : public ::testing::Test {
protected:
  void SetUp() override {
    if (!serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
    server_ = &Server::running();
  }
  static std::string whyNot(const std::string& service) {
    const auto archive = Archive::open({true, service});
    return archive ? "" : archive.error().sentence;
  }
  Server* server_ = nullptr;
  ArchiveFolder folder_{Engine::server};
};

TEST_F(Shared, AReaderReadsAndCannotWrite) {
  const Archive keeper = folder_.openArchive();
  std::ignore = take(keeper, {folder_.writeLog("a.resuslog", idOf(1), 60)}, true);
  const auto reader = Archive::open({true, "season_reader"});
  ASSERT_TRUE(reader) << reader.error().sentence;
  const Season season = reader->season().value();
  ASSERT_EQ(season.records.size(), 1U);
  EXPECT_EQ(season.column(MeasureId::powerOnToFirstShock)[0].value, 60);
  const std::int64_t number = season.records[0].number;
  EXPECT_TRUE(reader->bytes(number)->has_value());
  EXPECT_EQ(reader->sketches({number})->size(), 1U);
  EXPECT_EQ(reader->makings()->size(), 1U);
  EXPECT_EQ(reader->note("anything"), "");

  TakeInOrder order;
  order.sources = {folder_.writeLog("b.resuslog", idOf(2), 70)};
  const auto taken = takeIn(*reader, order);
  ASSERT_FALSE(taken);
  EXPECT_THAT(taken.error().sentence, HasSubstr("permission denied"));
  EXPECT_FALSE(reader->use({}));
  EXPECT_FALSE(reader->setNote("steps", "x"));
  EXPECT_FALSE(reader->stopUsing(1));
  EXPECT_ANY_THROW(runAs("season_reader", "DELETE FROM figure"));
  EXPECT_ANY_THROW(runAs("season_reader", "CREATE TABLE own (a INTEGER)"));
  EXPECT_EQ(keeper.recordCount(), 1U);
}

TEST_F(Shared, ReadingNeedsNoRightToWriteEvenForTheKeeper) {
  server_->empty();
  EXPECT_THAT(whyNot("season_keeper"), HasSubstr("no archive of Afterbeat in this database yet"));
}

TEST_F(Shared, WithoutTlsNothingIsSentOffThisMachine) {
  if (!server_->outerAddress()) {
    GTEST_SKIP() << "this machine has no address but loopback";
  }
  const Archive archive = folder_.openArchive();
  // By hand the same address answers; the program asks for encryption, which this server lacks.
  server_->addService(fmt::format("[away]\nhost={}\nport={}\ndbname=season\nuser=season_keeper\n"
                                  "sslmode=disable\n",
                                  *server_->outerAddress(), server_->port()));
  EXPECT_THAT(whyNot("away"), HasSubstr("server does not support SSL"));
}

TEST_F(Shared, WhatIsWrongWithAServiceIsSaid) {
  server_->addService(
      "[silent]\nhost=127.0.0.1\nport=1\ndbname=season\nuser=season_keeper\n" +
      fmt::format("[stranger]\nhost=127.0.0.1\nport={}\ndbname=season\nuser=x\n", server_->port()));
  EXPECT_THAT(whyNot("silent"), HasSubstr("The archive service:silent cannot be opened"));
  EXPECT_THAT(whyNot("stranger"), HasSubstr("authentication failed"));
  EXPECT_THAT(whyNot("none"), HasSubstr("There is no service “none”"));
}

TEST_F(Shared, APasswordComesFromPostgresFilesAlone) {
  const Archive archive = folder_.openArchive();
  const std::string there =
      fmt::format("host=127.0.0.1\nport={}\ndbname=season\nuser=season_keeper\n", server_->port());
  server_->addService("[told]\n" + there + "password=quay lantern\n[mistaken]\n" + there +
                      "password=lantern\n[untold]\n" + there);
  const std::string passwords = getenv("PGPASSFILE");
  EXPECT_EQ(whyNot("untold"), "") << "by the password file";
  setenv("PGPASSWORD", "wrong", 1);
  setenv("PGUSER", "nobody", 1);
  EXPECT_EQ(whyNot("untold"), "") << "neither the user nor the password of the environment";
  setenv("PGPASSFILE", "/nonexistent", 1);
  EXPECT_EQ(whyNot("told"), "") << "by the service file";
  setenv("PGPASSWORD", "quay lantern", 1);
  EXPECT_THAT(whyNot("untold"), HasSubstr("no password supplied"));
  EXPECT_THAT(whyNot("mistaken"), HasSubstr("authentication failed"));
  unsetenv("PGPASSWORD");
  unsetenv("PGUSER");
  setenv("PGPASSFILE", passwords.c_str(), 1);
}

TEST_F(Shared, IsReachedByTls) {
  const Archive archive = folder_.openArchive();
  server_->addService(fmt::format("[sealed]\nhost=127.0.0.1\nport={}\ndbname=season\n"
                                  "user=season_keeper\nsslmode=require\n",
                                  server_->port()));
  EXPECT_THAT(whyNot("sealed"), HasSubstr("server does not support SSL"));
  server_->useTls(true);
  EXPECT_EQ(whyNot("sealed"), "");
  {
    Database database({true, "sealed"}, Access::read);
    EXPECT_TRUE(
        database.value(QStringLiteral("SELECT ssl FROM pg_stat_ssl WHERE pid = pg_backend_pid()"))
            .toBool());
  }
  if (server_->outerAddress()) {
    // Off this machine it is asked for, whatever the service says.
    server_->addService(fmt::format("[far]\nhost={}\nport={}\ndbname=season\n"
                                    "user=season_keeper\nsslmode=disable\n",
                                    *server_->outerAddress(), server_->port()));
    Database database({true, "far"}, Access::read);
    EXPECT_TRUE(
        database.value(QStringLiteral("SELECT ssl FROM pg_stat_ssl WHERE pid = pg_backend_pid()"))
            .toBool());
  }
  server_->useTls(false);
}

} // namespace
} // namespace afterbeat::archive
