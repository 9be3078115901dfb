#include "core/record/problem.h"

#include <set>

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

constexpr int kKinds = static_cast<int>(ProblemKind::importNote) + 1;

TEST(Problem, everyKindHasItsOwnSentence) {
  std::set<std::string> sentences;
  for (int kind = 0; kind < kKinds; ++kind) {
    const Problem problem{
        1, Severity::warning, static_cast<ProblemKind>(kind), {"first", "second"}};
    const std::string text = sentence(problem);
    EXPECT_TRUE(sentences.insert(text).second) << text;
    if (problem.kind != ProblemKind::importNote) {
      EXPECT_GE(text.size(), 20U) << kind;
      EXPECT_EQ(text.back(), '.') << text;
      EXPECT_NE(text, "Something in this file could not be understood.") << kind;
    }
  }
}

TEST(Problem, argumentsMayBeMissing) {
  for (int kind = 0; kind < kKinds; ++kind) {
    EXPECT_NO_THROW(
        static_cast<void>(sentence({0, Severity::info, static_cast<ProblemKind>(kind), {}})));
  }
}

TEST(Problem, argumentsAreSaid) {
  const Problem problem{7, Severity::error, ProblemKind::missingKey, {"shock", "t"}};
  const std::string text = sentence(problem);
  EXPECT_NE(text.find("shock"), std::string::npos) << text;
  EXPECT_NE(text.find("“t”"), std::string::npos) << text;
}

TEST(Problem, longValuesAreShortenedBetweenCharacters) {
  std::string value = "x";
  for (int i = 0; i < 200; ++i) {
    value += "é";
  }
  const std::string text =
      sentence({1, Severity::warning, ProblemKind::wrongValue, {"note", value}});
  EXPECT_LT(text.size(), 250U);
  EXPECT_NE(text.find("é…"), std::string::npos) << text;
}

TEST(Problem, checksumIsNeverSpokenOfAsProof) {
  const std::string text = sentence({1, Severity::error, ProblemKind::checksumDiffers, {}});
  EXPECT_NE(text.find("damaged or edited"), std::string::npos);
  EXPECT_EQ(text.find("authentic"), std::string::npos);
  EXPECT_EQ(text.find("forge"), std::string::npos);
}

TEST(Problem, severitiesHaveNames) {
  EXPECT_STREQ(severityName(Severity::error), "error");
  EXPECT_STREQ(severityName(Severity::warning), "warning");
  EXPECT_STREQ(severityName(Severity::info), "info");
}

} // namespace
} // namespace afterbeat
