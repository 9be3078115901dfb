/// What the trainer does to the debrief of this evening, and undoing it.
#include "app/window/debrief/deck.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat::window {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

papers::DebriefItem item(papers::DebriefRule rule, const char* sentence) {
  papers::DebriefItem made;
  made.rule = rule;
  made.sentence = QString::fromUtf8(sentence);
  made.figure = "7 s";
  made.target = "target at most 10 s";
  made.source = "somewhere";
  made.when = "09:00:00";
  return made;
}

papers::Debrief debrief(const char* firstSentence = "Good pace.") {
  papers::Debrief made;
  made.well = {item(papers::DebriefRule::rate, firstSentence),
               item(papers::DebriefRule::depth, "Deep enough.")};
  made.practise = {item(papers::DebriefRule::rate, "A pause.")};
  made.questions = QStringList{"How was it?", "What next?"};
  return made;
}

std::vector<std::string> texts(const Deck& deck, DeckColumn column) {
  std::vector<std::string> all;
  for (const DeckLine& line : deck.lines(column)) {
    all.push_back(line.text.toStdString());
  }
  return all;
}

class DeckTest : public testing::Test {
protected:
  DeckTest() { deck_.setDebrief(debrief(), true); }
  [[nodiscard]] QString id(DeckColumn column, int line) const {
    return deck_.lines(column)[line].id;
  }
  Deck deck_;
};

TEST_F(DeckTest, StrikingLeavesALineOutUntilItIsUndone) {
  deck_.strike(id(DeckColumn::well, 0));
  EXPECT_THAT(texts(deck_, DeckColumn::well), ElementsAre("Deep enough."));
  EXPECT_EQ(deck_.struck(DeckColumn::well), 1);
  // The same rule in the other column is another line.
  EXPECT_THAT(texts(deck_, DeckColumn::practise), ElementsAre("A pause."));
  deck_.undo().undo();
  EXPECT_THAT(texts(deck_, DeckColumn::well), ElementsAre("Good pace.", "Deep enough."));
  deck_.undo().redo();
  EXPECT_THAT(texts(deck_, DeckColumn::well), ElementsAre("Deep enough."));
}

TEST_F(DeckTest, EveryStepCanBeUndoneAndDoneAgain) {
  deck_.reword(id(DeckColumn::well, 1), "  Nice   and deep. ");
  deck_.strike(id(DeckColumn::questions, 0));
  deck_.add(DeckColumn::practise, "Talk louder.");
  deck_.reword(id(DeckColumn::practise, 1), "Talk a little louder.");
  const auto all = [this] {
    return std::tuple(texts(deck_, DeckColumn::well), texts(deck_, DeckColumn::practise),
                      texts(deck_, DeckColumn::questions));
  };
  const auto after = all();
  EXPECT_THAT(std::get<0>(after), ElementsAre("Good pace.", "Nice and deep."));
  EXPECT_THAT(std::get<1>(after), ElementsAre("A pause.", "Talk a little louder."));
  EXPECT_THAT(std::get<2>(after), ElementsAre("What next?"));
  while (deck_.undo().canUndo()) {
    deck_.undo().undo();
  }
  EXPECT_THAT(texts(deck_, DeckColumn::well), ElementsAre("Good pace.", "Deep enough."));
  EXPECT_THAT(texts(deck_, DeckColumn::practise), ElementsAre("A pause."));
  EXPECT_THAT(texts(deck_, DeckColumn::questions), ElementsAre("How was it?", "What next?"));
  while (deck_.undo().canRedo()) {
    deck_.undo().redo();
  }
  EXPECT_EQ(all(), after);
}

TEST_F(DeckTest, ARewordingIsDroppedWhenTheFiguresSaySomethingElse) {
  deck_.reword(id(DeckColumn::well, 0), "Lovely pace.");
  deck_.reword(id(DeckColumn::well, 0), "A lovely pace.");
  deck_.setDebrief(debrief(), false);
  EXPECT_THAT(texts(deck_, DeckColumn::well), ElementsAre("A lovely pace.", "Deep enough."));
  deck_.setDebrief(debrief("Good pace, other figure."), false);
  EXPECT_EQ(texts(deck_, DeckColumn::well).front(), "Good pace, other figure.");
}

TEST_F(DeckTest, NothingIsLeftOfItInAnotherRecord) {
  deck_.strike(id(DeckColumn::well, 0));
  deck_.add(DeckColumn::well, "Well done.");
  deck_.setDebrief(debrief(), true);
  EXPECT_THAT(texts(deck_, DeckColumn::well), ElementsAre("Good pace.", "Deep enough."));
  EXPECT_FALSE(deck_.undo().canUndo());
}

TEST_F(DeckTest, NothingIsAddedFromNothing) {
  EXPECT_EQ(deck_.add(DeckColumn::well, "   "), QString());
  deck_.reword(id(DeckColumn::well, 0), "");
  deck_.reword(id(DeckColumn::well, 0), "Good pace.");
  EXPECT_FALSE(deck_.undo().canUndo());
}

TEST_F(DeckTest, WhatIsShownIsWhatIsCopied) {
  deck_.strike(id(DeckColumn::questions, 1));
  deck_.reword(id(DeckColumn::practise, 0), "One pause.");
  deck_.add(DeckColumn::well, "Calm voices.");
  const papers::DebriefShown shown = deck_.shown();
  ASSERT_EQ(shown.well.size(), 3U);
  EXPECT_EQ(shown.well[0].target, "target at most 10 s, somewhere");
  EXPECT_EQ(shown.well[2].text, "Calm voices.");
  EXPECT_TRUE(shown.well[2].target.isEmpty());
  EXPECT_EQ(shown.practise.front().text, "One pause.");
  EXPECT_EQ(shown.questions, QStringList{"How was it?"});
}

} // namespace
} // namespace afterbeat::window
