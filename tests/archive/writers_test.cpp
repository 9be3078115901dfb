// Two that take in at once: nothing twice, nothing lost.
#include "tests/archive/archive_folder.h"
#include "tests/archive/server.h"

#include <gtest/gtest.h>

#include <set>
#include <thread>

#include <fmt/format.h>

namespace afterbeat::archive {
namespace {

using namespace testing;

class TwoWriters : public ::testing::TestWithParam<Engine> {
protected:
  void SetUp() override {
    if (GetParam() == Engine::server && !serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
  }
  ArchiveFolder folder_{GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Both, TwoWriters, ::testing::Values(Engine::file, Engine::server),
                         [](const auto& each) { return words(each.param); });

TEST_P(TwoWriters, OfOverlappingFoldersLoseNothingAndStoreNothingTwice) {
  constexpr int kEach = 60, kBoth = 40;
  for (int i = 0; i < 2 * kEach + kBoth; ++i) {
    const char* folder = i < kEach ? "left" : i < 2 * kEach ? "right" : "both";
    folder_.writeLog(fmt::format("{}/{}.resuslog", folder, i), idOf(i), 60 + i);
  }
  const Archive archive = folder_.openArchive();
  std::vector<Expected<TakeInReport>> reports(2);
  const auto run = [&](std::size_t who, const char* own) {
    TakeInOrder order;
    order.sources = {folder_ / own, folder_ / "both"};
    order.threads = 1;
    order.filesInStep = 5;
    reports[who] = takeIn(archive, order);
  };
  std::thread left([&run] { run(0, "left"); });
  std::thread right([&run] { run(1, "right"); });
  left.join();
  right.join();
  ASSERT_TRUE(reports[0]) << reports[0].error().sentence;
  ASSERT_TRUE(reports[1]) << reports[1].error().sentence;
  EXPECT_EQ(reports[0]->added + reports[1]->added, std::size_t{2 * kEach + kBoth});
  EXPECT_EQ(reports[0]->known + reports[1]->known, std::size_t{kBoth});
  EXPECT_EQ(reports[0]->changed + reports[1]->changed, 0U);

  const Season season = archive.season().value();
  std::set<std::string> ids;
  for (std::size_t i = 0; i < season.records.size(); ++i) {
    EXPECT_TRUE(ids.insert(season.records[i].id).second) << season.records[i].id;
    const FigureCell& cell = season.column(MeasureId::powerOnToFirstShock)[i];
    EXPECT_EQ(idOf(static_cast<int>(cell.value) - 60), season.records[i].id);
  }
  EXPECT_EQ(ids.size(), std::size_t{2 * kEach + kBoth});
  EXPECT_EQ(archive.makings()->size(), 1U) << "settings of both are one making";
  EXPECT_EQ(archive.makings()->front().records, ids.size());
}

TEST_P(TwoWriters, MayBothMakeTheTables) {
  if (GetParam() == Engine::server) {
    Server::running().empty();
  }
  std::vector<Expected<void>> made(4);
  std::vector<std::thread> threads;
  for (Expected<void>& one : made) {
    threads.emplace_back([this, &one] {
      if (auto archive = Archive::openOrCreate(folder_.place()); !archive) {
        one = tl::unexpected(archive.error());
      }
    });
  }
  for (std::thread& thread : threads) {
    thread.join();
  }
  for (const Expected<void>& one : made) {
    EXPECT_TRUE(one) << one.error().sentence;
  }
}

} // namespace
} // namespace afterbeat::archive
