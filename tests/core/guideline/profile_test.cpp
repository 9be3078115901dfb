#include "core/guideline/profile.h"

#include <fstream>
#include <functional>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

using testing::HasSubstr;

void forEachSource(const Profile& p,
                   const std::function<void(const std::string&, const Citation&)>& see) {
  const auto one = [&](const char* what, const auto& target) {
    if (target) {
      see(what, target->source);
    }
  };
  const auto many = [&](const char* what, const auto& targets) {
    for (const auto& [category, target] : targets) {
      see(what, target.source);
    }
  };
  one("rate", p.ratePerMin);
  one("fraction least", p.fractionLeast);
  one("fraction target", p.fractionTarget);
  one("breath pause", p.breathPauseLimit);
  one("pause", p.pauseLimit);
  one("pre-shock pause", p.preShockPauseLimit);
  one("leaning", p.leaningLimitMm);
  one("cycle", p.cycleLength);
  many("depth", p.depth);
  many("ratio", p.ratio);
  many("airway breaths", p.advancedAirwayBreaths);
  for (const auto& remark : p.remarks) {
    see("remark", remark.source);
  }
}

TEST(BuiltInProfiles, AreTheFourInOrder) {
  std::vector<std::string> ids;
  for (const auto& p : builtInProfiles()) {
    ids.push_back(p.id);
    EXPECT_EQ(builtInProfile(p.id), &p);
  }
  EXPECT_THAT(ids, testing::ElementsAre("european-2021", "european-2025", "american-2020",
                                        "american-2025"));
  EXPECT_EQ(builtInProfile("lake-town"), nullptr);
  EXPECT_EQ(defaultProfile().id, "european-2021");
}

class BuiltIn : public testing::TestWithParam<const char*> {
protected:
  const Profile& profile() const { return *builtInProfile(GetParam()); }
};
INSTANTIATE_TEST_SUITE_P(Each, BuiltIn,
                         testing::Values("european-2021", "european-2025", "american-2020",
                                         "american-2025"),
                         [](const auto& one) {
                           std::string name = one.param;
                           name.erase(name.find('-'), 1);
                           return name;
                         });

// Values that all four share; from secondary publications and memory, as each file marks them.
TEST_P(BuiltIn, HoldsTheSharedValues) {
  const Profile& p = profile();
  EXPECT_EQ(p.ratePerMin->value.low, 100);
  EXPECT_EQ(p.ratePerMin->value.high, 120);
  const auto& adult = p.depth.at(PatientCategory::adult).value;
  EXPECT_EQ(adult.range->low, 50);
  EXPECT_EQ(adult.range->high, 60);
  EXPECT_EQ(p.depth.at(PatientCategory::child).value.words, "about 50 mm, a third of the chest");
  EXPECT_EQ(p.depth.at(PatientCategory::infant).value.words, "about 40 mm, a third of the chest");
  EXPECT_FALSE(p.depth.at(PatientCategory::child).value.range);
  EXPECT_FALSE(p.depth.at(PatientCategory::infant).value.range);
  EXPECT_EQ(p.fractionLeast->value, 0.6);
  EXPECT_EQ(p.fractionTarget->value, 0.8);
  EXPECT_EQ(p.breathPauseLimit->value, 10);
  EXPECT_EQ(p.pauseLimit->value, 10);
  EXPECT_EQ(p.leaningLimitMm->value, 5);
  EXPECT_EQ(p.cycleLength->value, 120);
  EXPECT_EQ(p.ratio.at(PatientCategory::adult).value, "30:2");
  EXPECT_EQ(p.ratio.at(PatientCategory::child).value, "15:2");
}

TEST_P(BuiltIn, DiffersByFamilyWhereTheFamiliesDo) {
  const bool european = profile().id.starts_with("european");
  EXPECT_EQ(profile().preShockPauseLimit->value, european ? 5 : 10);
  const auto& breaths = profile().advancedAirwayBreaths;
  EXPECT_EQ(breaths.at(PatientCategory::adult).value.low, 10);
  EXPECT_EQ(breaths.at(PatientCategory::adult).value.high, 10);
  EXPECT_EQ(breaths.at(PatientCategory::infant).value.low, european ? 25 : 20);
  EXPECT_EQ(breaths.at(PatientCategory::infant).value.high, european ? 25 : 30);
}

TEST_P(BuiltIn, GivesEveryValueASource) {
  int seen = 0;
  forEachSource(profile(), [&](const std::string& what, const Citation& source) {
    ++seen;
    EXPECT_GT(source.text.size(), 10U) << what;
  });
  EXPECT_GE(seen, 18);
}

TEST_P(BuiltIn, SaysThatALocalProtocolGoesFirst) {
  ASSERT_FALSE(profile().remarks.empty());
  EXPECT_EQ(profile().remarks.front().value, "A local protocol goes before any profile.");
}

// The texts of 2025 were not read; no value may claim that they were.
TEST_P(BuiltIn, ClaimsNoReadingOfWhatWasNotRead) {
  if (profile().id.ends_with("2025")) {
    EXPECT_THAT(profile().remarks.at(1).value, HasSubstr("was not read"));
  }
  forEachSource(profile(), [&](const std::string& what, const Citation& source) {
    if (source.text != "rule of this program") {
      EXPECT_NE(source.mark, SourceMark::read) << what;
    }
  });
}

TEST_P(BuiltIn, SurvivesWritingAndReading) {
  const std::string written = profileJson(profile());
  const auto again = parseProfile(written);
  ASSERT_TRUE(again) << sentence(again.error());
  EXPECT_EQ(profileJson(*again), written);
  EXPECT_EQ(again->remarks.size(), profile().remarks.size());
  EXPECT_EQ(again->depth.size(), 3U);
}

// What is written is the file itself, so nothing in the file is lost on the way.
TEST_P(BuiltIn, IsWrittenAsItStandsInItsFile) {
  std::ifstream file(std::string(AFTERBEAT_SOURCE_DIR) + "/resources/guidelines/" + GetParam() +
                     ".json");
  std::stringstream text;
  text << file.rdbuf();
  EXPECT_EQ(profileJson(profile()), text.str());
}

TEST(OwnProfile, NeedsOnlyIdAndName) {
  const auto p = parseProfile(R"({"id":"a","name":"b"})");
  ASSERT_TRUE(p) << sentence(p.error());
  EXPECT_FALSE(p->ratePerMin);
  EXPECT_FALSE(p->pauseLimit);
  EXPECT_TRUE(p->depth.empty());
  EXPECT_TRUE(p->remarks.empty());
  EXPECT_EQ(profileJson(*p), "{\n  \"id\": \"a\",\n  \"name\": \"b\"\n}\n");
}

TEST(OwnProfile, WithoutMarkIsFromMemory) {
  const auto p = parseProfile(
      R"({"id":"a","name":"b","pause_limit_s":{"value":7.5,"source":"own","comment":[1]}})");
  ASSERT_TRUE(p) << sentence(p.error());
  EXPECT_EQ(p->pauseLimit->value, 7.5);
  EXPECT_EQ(p->pauseLimit->source.mark, SourceMark::memory);
}

TEST(OwnProfile, IsExplainedByAnExampleThatCanBeRead) {
  std::ifstream file(std::string(AFTERBEAT_SOURCE_DIR) + "/resources/guidelines/README.md");
  std::stringstream text;
  text << file.rdbuf();
  const std::string all = text.str();
  const auto begin = all.find("```json\n") + 8;
  const auto p = parseProfile(std::string_view(all).substr(begin, all.find("```", begin) - begin));
  ASSERT_TRUE(p) << sentence(p.error());
  EXPECT_EQ(p->id, "lake-town-2026");
  EXPECT_EQ(p->ratePerMin->value.low, 105);
  EXPECT_EQ(p->ratePerMin->source.mark, SourceMark::read);
  EXPECT_EQ(p->remarks.size(), 1U);
}

struct Wrong {
  const char* inside; ///< what follows id and name
  const char* sentence;
};

class WrongProfile : public testing::TestWithParam<Wrong> {};

TEST_P(WrongProfile, IsRefusedWithASentenceThatNamesTheKey) {
  const auto p = parseProfile(R"({"id":"a","name":"b",)" + std::string(GetParam().inside) + "}");
  ASSERT_FALSE(p);
  EXPECT_EQ(sentence(p.error()), GetParam().sentence);
}

INSTANTIATE_TEST_SUITE_P(
    Cases, WrongProfile,
    testing::Values(
        Wrong{R"("rate":{})", R"("rate" is not a key of a guideline profile.)"},
        Wrong{R"("rate_per_min":[100,120])",
              R"("rate_per_min" must be an object, in braces, but is [100,120].)"},
        Wrong{R"("rate_per_min":{"low":"100","high":120,"source":"s"})",
              R"("rate_per_min.low" must be a number, but is "100".)"},
        Wrong{R"("rate_per_min":{"low":120,"high":100,"source":"s"})",
              R"("rate_per_min.low" is larger than "rate_per_min.high".)"},
        Wrong{R"("rate_per_min":{"low":0,"high":100,"source":"s"})",
              R"("rate_per_min.low" must be from 1 to 400, but is 0.)"},
        Wrong{R"("rate_per_min":{"low":100,"source":"s"})", R"("rate_per_min.high" is missing.)"},
        Wrong{R"("rate_per_min":{"low":100,"high":120})", R"("rate_per_min.source" is missing.)"},
        Wrong{R"("rate_per_min":{"low":100,"high":120,"source":" "})",
              R"("rate_per_min.source" must be a text with something in it, but is " ".)"},
        Wrong{R"("pause_limit_s":{"value":10,"source":"s","mark":"sure"})",
              R"("pause_limit_s.mark" must be "read", "secondary" or "memory", but is "sure".)"},
        Wrong{R"("pause_limit_s":{"value":10,"source":"s","mark":null})",
              R"("pause_limit_s.mark" must be "read", "secondary" or "memory", but is null.)"},
        Wrong{
            R"("pause_limit_s":{"low":10,"source":"s"})",
            R"("pause_limit_s.low" is not a known key; here there can be "value", "source", "mark".)"},
        Wrong{R"("compression_fraction_target":{"value":80,"source":"s"})",
              R"("compression_fraction_target.value" must be from 0 to 1, but is 80.)"},
        Wrong{
            R"("depth_mm":{"grown-up":{}})",
            R"("depth_mm.grown-up" is not a known key; here there can be "adult", "child", "infant".)"},
        Wrong{R"("depth_mm":{"adult":{"words":"deep","low":50,"source":"s"}})",
              R"("depth_mm.adult.high" is missing.)"},
        Wrong{R"("depth_mm":{"adult":{"low":50,"high":60,"source":"s"}})",
              R"("depth_mm.adult.words" is missing.)"},
        Wrong{R"("ratio":{"adult":{"value":"30 to 2","source":"s"}})",
              R"("ratio.adult.value" must be two numbers like "30:2", but is "30 to 2".)"},
        Wrong{R"("ratio":{"adult":{"value":"30:2:1","source":"s"}})",
              R"("ratio.adult.value" must be two numbers like "30:2", but is "30:2:1".)"},
        Wrong{R"("advanced_airway_breaths_per_min":{"child":{"low":20,"high":true,"source":"s"}})",
              R"("advanced_airway_breaths_per_min.child.high" must be a number, but is true.)"},
        Wrong{R"("remarks":"none")",
              R"("remarks" must be a list, in square brackets, but is "none".)"},
        Wrong{R"("remarks":[{"text":"a","source":"s"},{"text":"b"}])",
              R"("remarks[2].source" is missing.)"},
        Wrong{R"("pause_limit_s":{"value":1,"value":2,"source":"s"})",
              R"("value" stands twice in the same braces.)"},
        Wrong{R"("pause_limit_s":{"value":1e999,"source":"s"})",
              R"(A number in this profile is too large.)"},
        Wrong{"\n\"remarks\":[,]", "This is not valid JSON, from line 2 on."}));

TEST(OwnProfile, ThatIsNoProfileAtAllIsRefused) {
  EXPECT_EQ(sentence(parseProfile("[]").error()),
            "A guideline profile must be one JSON object, in braces.");
  EXPECT_EQ(sentence(parseProfile("").error()), "This is not valid JSON, from line 1 on.");
  EXPECT_EQ(sentence(parseProfile("{}").error()), R"("id" is missing.)");
  EXPECT_EQ(sentence(parseProfile(R"({"id":7,"name":"b"})").error()),
            R"("id" must be a text with something in it, but is 7.)");
  EXPECT_EQ(sentence(parseProfile("{\"id\":\"\xff\"}").error()),
            "This is not valid JSON, from line 1 on.");
  EXPECT_EQ(sentence(parseProfile(std::string(2 << 20, ' ')).error()),
            "This is too long for a guideline profile.");
  EXPECT_FALSE(parseProfile(std::string(100'000, '[')));
}

TEST(Marks, AreSaidInWords) {
  EXPECT_EQ(markWords(SourceMark::read), "read in the source");
  EXPECT_EQ(markWords(SourceMark::secondary), "read in a secondary publication");
  EXPECT_EQ(markWords(SourceMark::memory), "from memory, check the source");
}

} // namespace
} // namespace afterbeat
