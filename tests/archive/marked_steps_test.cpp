// Days from which on something was new, as a note of an archive.
#include "app/archive/marked_steps.h"
#include "tests/archive/archive_folder.h"
#include "tests/archive/server.h"

#include <gtest/gtest.h>

#include <thread>

namespace afterbeat::archive {
namespace {

using namespace testing;

MarkedStep stepOn(int year, unsigned month, unsigned day, std::string words) {
  return {std::chrono::sys_days(std::chrono::year(year) / static_cast<int>(month) /
                                static_cast<int>(day)),
          std::move(words)};
}

TEST(MarkedSteps, AreReadAsTheyWereWritten) {
  const std::vector<MarkedStep> steps{stepOn(2025, 3, 1, "new bags"), stepOn(2025, 9, 15, ""),
                                      stepOn(1999, 12, 31, "ä, “b” and  c")};
  EXPECT_EQ(stepsFromText(stepsAsText(steps)), steps);
  EXPECT_EQ(stepsFromText(stepsAsText(steps) + "\nnonsense\n"), steps);
  EXPECT_EQ(stepsFromText(stepsAsText({stepOn(2025, 3, 1, "a\nb")})),
            std::vector<MarkedStep>{stepOn(2025, 3, 1, "a b")});
  for (const char* bogus :
       {"", "\n\n", "2025-02-30 x", "2025-3-1 x", "20250301 x", "2025-03-01x"}) {
    EXPECT_TRUE(stepsFromText(bogus).empty()) << bogus;
  }
}

TEST(MarkedSteps, LeaveLinesAloneThatTheyCannotRead) {
  const std::string odd = "something of a newer program";
  const MarkedStep step = stepOn(2025, 3, 1, "new bags");
  const std::string with = withStep(odd, step);
  EXPECT_EQ(with, odd + "\n2025-03-01 new bags");
  EXPECT_EQ(withStep(with, step), with);
  EXPECT_EQ(withoutStep(with, step), odd);
  EXPECT_EQ(withoutStep(odd, step), odd);
  EXPECT_EQ(withoutStep(withStep("", step), step), "");
}

class SharedSteps : public ::testing::TestWithParam<Engine> {
protected:
  void SetUp() override {
    if (GetParam() == Engine::server && !serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
  }
  ArchiveFolder folder_{GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Both, SharedSteps, ::testing::Values(Engine::file, Engine::server),
                         [](const auto& each) { return words(each.param); });

TEST_P(SharedSteps, AreThereForAllByDay) {
  const Archive archive = folder_.openArchive();
  EXPECT_EQ(archive.mayWrite(), true);
  EXPECT_TRUE(sharedSteps(archive)->empty());
  const MarkedStep late = stepOn(2025, 9, 1, "late"), early = stepOn(2025, 3, 1, "early");
  EXPECT_EQ(shareStep(archive, late).value(), std::vector<MarkedStep>{late});
  EXPECT_EQ(shareStep(archive, early).value(), (std::vector<MarkedStep>{early, late}));
  EXPECT_EQ(sharedSteps(archive).value(), (std::vector<MarkedStep>{early, late}));
  EXPECT_EQ(unshareStep(archive, late).value(), std::vector<MarkedStep>{early});
  EXPECT_EQ(unshareStep(archive, late).value(), std::vector<MarkedStep>{early});
}

TEST_P(SharedSteps, OfTwoWhoMarkAtOnceNoneIsLost) {
  const Archive archive = folder_.openArchive();
  constexpr unsigned kEach = 20;
  const auto run = [&archive](int year) {
    for (unsigned i = 1; i <= kEach; ++i) {
      EXPECT_TRUE(shareStep(archive, stepOn(year, 5, i, "one")));
    }
  };
  std::thread left([&run] { run(2024); });
  std::thread right([&run] { run(2025); });
  left.join();
  right.join();
  EXPECT_EQ(sharedSteps(archive)->size(), 2 * kEach);
}

TEST(SharedStepsOfAReader, AreSeenAndNotChanged) {
  if (!serverInstalled()) {
    GTEST_SKIP() << "no PostgreSQL server is installed";
  }
  const ArchiveFolder folder(Engine::server);
  const Archive keeper = folder.openArchive();
  const MarkedStep step = stepOn(2025, 3, 1, "new bags");
  ASSERT_TRUE(shareStep(keeper, step));
  const auto reader = Archive::open({true, "season_reader"});
  ASSERT_TRUE(reader);
  EXPECT_EQ(reader->mayWrite(), false);
  EXPECT_EQ(sharedSteps(*reader).value(), std::vector<MarkedStep>{step});
  EXPECT_FALSE(shareStep(*reader, stepOn(2025, 4, 1, "x")));
  EXPECT_FALSE(unshareStep(*reader, step));
  EXPECT_EQ(sharedSteps(keeper).value(), std::vector<MarkedStep>{step});
}

} // namespace
} // namespace afterbeat::archive
