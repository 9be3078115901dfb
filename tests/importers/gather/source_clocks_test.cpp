#include "importers/gather/source_clocks.h"

#include "log_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using testing::HasSubstr;

std::string header(const std::string& recorded, const std::string& more = {}) {
  return "\"id\":\"urn:uuid:x\",\"recorded\":\"" + recorded + "\",\"kind\":\"drill\"" + more;
}

/// Where the second source lies, and what was said about it.
std::pair<Duration, std::string> placed(GatherSource a, GatherSource b) {
  std::vector<Problem> problems;
  const auto placement = place(together(std::move(a), std::move(b)), problems);
  return {placement.offsets.at(1), sentence(problems.back())};
}

TEST(SourceClocks, offsetsFromTheClocks) {
  struct Case {
    const char* name;
    GatherSource first, second;
    Duration offset;
    const char* said;
  };
  const auto log = [](const std::string& recorded, const std::string& more = {}) {
    return logSource("log", header(recorded, more), {});
  };
  const auto notes = [](const std::string& text) { return notesSource("notes", text); };
  Case cases[] = {
      {"both zones known", log("2026-03-14T14:05:00+01:00"), log("2026-03-14T13:05:30.25Z"),
       Duration{30'250'000}, "+30.25 s, found by comparing it with log: their clocks"},
      {"before", log("2026-03-14T14:05:00Z"), log("2026-03-14T14:04:00Z"), -minutes{1}, "-60 s"},
      {"a zone unknown: local readings", log("2026-03-14T14:05:00+01:00"),
       log("2026-03-14T14:06:00-00:00"), minutes{1}, "local readings"},
      {"corrected clocks",
       log("2026-03-14T14:05:00Z", ",\"clock\":{\"state\":\"set\",\"offset_s\":-90}"),
       log("2026-03-14T14:05:00Z"), std::chrono::seconds{90}, "their clocks"},
      {"time of day", log("2026-03-14T14:05:00+01:00"), notes("Uhrzeit;Was\n14:07:30;Schock\n"),
       minutes{2} + std::chrono::seconds{30}, "times of day"},
      {"time of day across midnight", log("2026-03-14T23:58:00+01:00"),
       notes("Uhrzeit;Was\n00:01:00;Schock\n"), minutes{3}, "times of day"},
      {"time of day before midnight", log("2026-03-15T00:01:00+01:00"),
       notes("Uhrzeit;Was\n23:58:00;Schock\n"), -minutes{3}, "times of day"},
      {"both times of day", notes("Uhrzeit;Was\n14:05:00;Kollaps\n"),
       notes("Uhrzeit;Was\n14:07:00;Schock\n"), minutes{2}, "times of day"},
      {"no clock", log("2026-03-14T14:05:00Z"), notes("10;shock\n"), Duration{},
       "no clock ties it"},
      {"clock never set", log("2026-03-14T14:05:00Z"),
       log("2000-01-01T00:00:00Z", ",\"clock\":{\"state\":\"unset\"}"), Duration{}, "no clock"},
      {"clocks that cannot both be right", log("2026-03-14T14:05:00Z"), log("2001-01-01T00:00:00Z"),
       Duration{}, "more than eleven days apart"},
  };
  for (auto& one : cases) {
    const auto [offset, sentence] = placed(std::move(one.first), std::move(one.second));
    EXPECT_EQ(offset, one.offset) << one.name;
    EXPECT_THAT(sentence, HasSubstr(one.said)) << one.name;
  }
}

TEST(SourceClocks, aGivenOffsetGoesFirst) {
  const auto [offset, sentence] =
      placed(logSource("log", header("2026-03-14T14:05:00Z"), {}),
             logSource("other", header("2026-03-14T14:06:00Z"), {}, Duration{-12'500'000}));
  EXPECT_EQ(offset, Duration{-12'500'000});
  EXPECT_EQ(sentence, "other lies at -12.5 s, as given.");
}

TEST(SourceClocks, aSourceIsComparedWithTheFirstThatHasAClock) {
  std::vector<GatherSource> sources;
  sources.push_back(notesSource("notes", "10;shock\n"));
  sources.push_back(logSource("a", header("2026-03-14T14:05:00Z"), {}, Duration{5'000'000}));
  sources.push_back(logSource("b", header("2026-03-14T14:05:10Z"), {}));
  std::vector<Problem> problems;
  const auto placement = place(sources, problems);
  EXPECT_THAT(placement.offsets,
              testing::ElementsAre(Duration{}, Duration{5'000'000}, Duration{15'000'000}));
  EXPECT_EQ(placement.clockSource, 1U);
}

} // namespace
} // namespace afterbeat
