#include "../scratch_folder.h"
#include "importers/gather/gather.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using testing::HasSubstr;

const std::string kLog = "{\"resuslog\":\"1.0\",\"id\":\"urn:uuid:00000000-0000-4000-8000-"
                         "000000000001\",\"recorded\":\"2026-03-14T14:05:00+01:00\",\"kind\":"
                         "\"drill\"}\n{\"t\":1,\"type\":\"power_on\"}\n";

TEST(ReadAnySource, tellsFormsApartByContent) {
  const ScratchFolder folder;
  const auto read = [&](const std::string& name) {
    auto result = readAnySource(folder.path() / name);
    EXPECT_TRUE(result) << name << ": " << result.error().sentence();
    return result.value_or(Imported{});
  };
  folder.write("a.txt", kLog);
  folder.write("marked.csv", "\xEF\xBB\xBF\n" + kLog);
  for (const auto* name : {"a.txt", "marked.csv"}) {
    const auto log = read(name);
    EXPECT_EQ(log.record.header.kind, RecordKind::drill) << name;
    EXPECT_FALSE(log.kindAssumed) << name;
    EXPECT_EQ(log.problems.size(), 1U) << name; // not closed
  }
  folder.write("r.hea", "r 1 250 2\nr.dat 212\n");
  folder.write("r.dat", "{\x33\xF3"); // begins like a log
  folder.write("head.txt", "r 1 250 2\nr.dat 212\n");
  for (const auto* name : {"r.hea", "r.dat", "r", "head.txt"}) {
    EXPECT_EQ(read(name).record.channels.size(), 1U) << name;
  }
  folder.write("notes.log", "10;power on\n");
  EXPECT_EQ(read("notes.log").record.entries.size(), 1U);
}

TEST(ReadAnySource, whatCannotBeReadIsASentence) {
  const ScratchFolder folder;
  const auto refusal = [&](const std::string& name) {
    const auto result = readAnySource(folder.path() / name);
    EXPECT_FALSE(result) << name;
    return result ? std::string{} : result.error().sentence();
  };
  EXPECT_THAT(refusal("gone"), HasSubstr("no such file"));
  EXPECT_THAT(refusal("."), HasSubstr("cannot be read"));
  folder.write("empty", "");
  EXPECT_THAT(refusal("empty"), HasSubstr("empty"));
  folder.write("torn.resuslog", "garbage\n");
  EXPECT_FALSE(refusal("torn.resuslog").empty());
  folder.write("r.hea", "nonsense");
  EXPECT_THAT(refusal("r.hea"), HasSubstr("not a WFDB record"));
}

TEST(ReadAnySource, ofSeveralRecordsTheFirstIsTakenAndThatIsSaid) {
  const ScratchFolder folder;
  folder.write("two.resuslog", kLog + kLog);
  const auto result = readAnySource(folder.path() / "two.resuslog");
  ASSERT_TRUE(result);
  EXPECT_EQ(result->record.entries.size(), 1U);
  EXPECT_THAT(sentence(result->problems.back()), HasSubstr("holds 2 records"));
  EXPECT_EQ(result->problems.back().severity, Severity::error);
}

} // namespace
} // namespace afterbeat
