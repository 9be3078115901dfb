// Where an archive is, and how safely it is reached. Rules of service files: PostgreSQL
// documentation, chapters "The Connection Service File" and "Connection Strings".
#include "app/archive/place.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <fstream>

namespace afterbeat::archive {
namespace {

TEST(Place, IsAFileOrAService) {
  EXPECT_EQ(ArchivePlace::from("a/b")->words(), "a/b");
  EXPECT_TRUE(ArchivePlace::from("service:lake_town")->shared);
  EXPECT_EQ(ArchivePlace::from("service:lake_town")->words(), "service:lake_town");
  for (const char* typed : {"", "service:", "service:a b", "service:a;sslmode=disable"}) {
    EXPECT_FALSE(ArchivePlace::from(typed)) << typed;
  }
}

bool demandsTls(const std::string& lines) {
  const auto facts = serviceIn("[lake]\n" + lines, "lake");
  EXPECT_TRUE(facts) << lines;
  return connectOptions("lake", *facts).find("sslmode=") != std::string::npos;
}

TEST(Place, DemandsTlsOffThisMachine) {
  for (const char* here :
       {"", "host=localhost\n", "host=127.0.0.1\n", "host=::1\n", "host=/run/postgresql\n",
        "host = 127.0.0.1,localhost\n", "hostaddr=127.3.2.1\nhost=archive.example\n"}) {
    EXPECT_FALSE(demandsTls(here)) << here;
  }
  for (const char* away :
       {"host=archive.example\n", "host=192.0.2.2\n", "host=localhost\nhostaddr=192.0.2.2\n",
        "host=192.0.2.2\nhost=localhost\n", "host=127.0.0.1,192.0.2.2\n", "host=127.0.0.9x\n",
        "host=127.anything.example\n", "host=127.0.0.1.example\n", "host=127.0.0.256\n",
        "host=127.0.0\n", "ldap://localhost/a\n", "host=archive.example\nsslmode=disable\n"}) {
    EXPECT_TRUE(demandsTls(away)) << away;
  }
}

TEST(Place, KeepsAStricterDemand) {
  for (const std::string mode : {"verify-ca", "verify-full"}) {
    const auto facts =
        serviceIn("[lake]\nhost=a.example\nsslmode=" + mode + "\nsslmode=disable", "lake");
    EXPECT_NE(connectOptions("lake", *facts).find("sslmode=" + mode), std::string::npos);
  }
  EXPECT_NE(connectOptions("lake", {"a.example", "", "prefer"}).find("sslmode=require"),
            std::string::npos);
}

TEST(Place, TakesFromTheEnvironmentWhatTheServiceDoesNotSay) {
  setenv("PGHOST", "a.example", 1);
  setenv("PGSSLMODE", "verify-full", 1);
  const ServiceFacts silent = completedFromEnvironment({});
  EXPECT_NE(connectOptions("lake", silent).find("sslmode=verify-full"), std::string::npos);
  EXPECT_EQ(completedFromEnvironment({"b.example", "", ""}).host, "b.example");
  setenv("PGHOSTADDR", "192.0.2.2", 1);
  EXPECT_NE(
      connectOptions("lake", completedFromEnvironment({"localhost", "", ""})).find("sslmode="),
      std::string::npos);
  for (const char* name : {"PGHOST", "PGSSLMODE", "PGHOSTADDR"}) {
    unsetenv(name);
  }
}

TEST(Place, APasswordComesFromPostgresFilesAlone) {
  const auto told = serviceIn("[other]\n[lake]\nhost=localhost\npassword=boat\n", "lake");
  ASSERT_TRUE(told);
  EXPECT_TRUE(told->password);
  EXPECT_EQ(connectOptions("lake", *told).find("password"), std::string::npos);
  const auto silent = serviceIn("[other]\npassword=boat\n[lake]\nhost=localhost\n", "lake");
  ASSERT_TRUE(silent);
  EXPECT_FALSE(silent->password);
  EXPECT_NE(connectOptions("lake", *silent).find(";password=''"), std::string::npos);
  EXPECT_FALSE(serviceIn("# [lake]\n[lakes]\nhost=localhost\n", "lake"));
  EXPECT_FALSE(ArchivePlace::from("service:lake password=boat"));
  EXPECT_FALSE(ArchivePlace::from("service:lake;password=boat"));
}

TEST(Place, KnowsWhoMayReadAFile) {
  const QTemporaryDir folder;
  const std::filesystem::path file = folder.filePath("services").toStdString();
  std::ofstream(file) << "[lake]\n";
  using std::filesystem::perms;
  for (const perms own : {perms::owner_read, perms::owner_read | perms::owner_write}) {
    std::filesystem::permissions(file, own);
    EXPECT_FALSE(othersMayRead(file));
    std::filesystem::permissions(file, own | perms::group_read);
    EXPECT_TRUE(othersMayRead(file));
    std::filesystem::permissions(file, own | perms::others_read);
    EXPECT_TRUE(othersMayRead(file));
  }
}

} // namespace
} // namespace afterbeat::archive
