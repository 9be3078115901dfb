#include "tests/window/window_fixture.h"

#include "app/window/look/language.h"

#include <QAction>

namespace afterbeat::window {
namespace {

TEST(Languages, TheChosenOneComesBeforeTheSystems) {
  EXPECT_EQ(spokenLanguages().front(), "en");
  EXPECT_TRUE(spokenLanguages().contains("de"));
  EXPECT_EQ(languageFor("de", {"en-GB", "en"}), "de");
  EXPECT_EQ(languageFor("en", {"de-AT", "de"}), "en");
  EXPECT_EQ(languageFor({}, {"de-AT", "de"}), "de");
  EXPECT_EQ(languageFor({}, {"de_DE"}), "de");
  // The first of the system's languages that is spoken, not merely the first.
  EXPECT_EQ(languageFor({}, {"rm-CH", "rm", "de-CH", "de", "en"}), "de");
  EXPECT_EQ(languageFor("xx", {}), "en");
  EXPECT_EQ(languageFor({}, {"C"}), "en");
}

TEST(Languages, AChoiceIsRememberedAndSaysWhenItTakesEffect) {
  LanguageActions actions;
  ASSERT_EQ(actions.actions().size(), spokenLanguages().size() + 1);
  EXPECT_EQ(LanguageActions::chosen(), QString());
  EXPECT_TRUE(actions.actions().front()->isChecked());
  QSignalSpy said(&actions, &LanguageActions::chose);
  for (QAction* action : actions.actions()) {
    if (action->text().contains("Deutsch")) {
      action->trigger();
    }
  }
  ASSERT_EQ(said.count(), 1);
  EXPECT_TRUE(said.front().front().toString().contains("started the next time"));
  EXPECT_EQ(LanguageActions::chosen(), "de");
  actions.actions().front()->trigger();
  EXPECT_EQ(LanguageActions::chosen(), QString());
}

} // namespace
} // namespace afterbeat::window
