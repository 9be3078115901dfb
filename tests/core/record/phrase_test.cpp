#include "core/record/phrase.h"

#include "core/record/problem.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

TEST(Phrase, placesAreFilledInAnyOrderAndInOneGo) {
  EXPECT_EQ(filled("%2 before %1, %2 again", {"a", "%1"}), "%1 before a, %1 again");
  EXPECT_EQ(filled("100 % of %1%", {"b"}), "100 % of b%");
  // A place without a value stays.
  EXPECT_EQ(filled("%1 and %2", {"c"}), "c and %2");
}

TEST(Phrase, keepsTextAndValuesApart) {
  const auto said = phrase(inEnglish("Importers", "%1 s of %2"), 3, std::string{"%1"});
  EXPECT_EQ(said.parts, (std::vector<std::string>{"%1 s of %2", "3", "%1"}));
  EXPECT_EQ(sentence(said), "3 s of %1");
  EXPECT_EQ(sentence(Phrase{}), "");
}

TEST(Phrase, ProblemsFillTheirClauses) {
  EXPECT_EQ(sentence({1, Severity::error, ProblemKind::wrongChannel, {"x", "its %1 is odd", "y"}}),
            "Channel “x” cannot be used: its y is odd; its samples are lost.");
  EXPECT_EQ(sentence({1, Severity::info, ProblemKind::importNote, {"%2, %1.", "a", "b"}}), "b, a.");
}

} // namespace
} // namespace afterbeat
