/// What is chosen from the findings, and how it is said.
#include "app/papers/debrief.h"
#include "app/papers/debrief_words.h"
#include "tests/papers/example_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace afterbeat::papers {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

Time at(double s) {
  return *timeFromSeconds(s);
}

Finding found(DebriefRule rule, bool within, double away, double from = 0, double to = 1) {
  Finding finding;
  finding.rule = rule;
  finding.within = within;
  finding.away = away;
  finding.moment = {at(from), at(to)};
  return finding;
}

TEST(DebriefChoice, TheFurthestThreeOfEachSide) {
  const auto choice = chooseDebrief({
      found(DebriefRule::handsOff, true, 0.2),
      found(DebriefRule::firstShock, true, 0.9),
      found(DebriefRule::rate, true, 0.5),
      found(DebriefRule::release, true, 0.5),
      found(DebriefRule::depth, false, 0.3),
      found(DebriefRule::electrodes, false, 3),
  });
  EXPECT_THAT(choice.well, ElementsAre(1, 2, 3));
  EXPECT_THAT(choice.practise, ElementsAre(5, 4));
  EXPECT_FALSE(choice.nearest);
  EXPECT_FALSE(choice.effort);
}

TEST(DebriefChoice, TheSamePauseIsSpokenOfOnce) {
  const auto choice = chooseDebrief({
      found(DebriefRule::longestPause, false, 2, 10, 40),
      found(DebriefRule::beforeShock, false, 3, 10, 30),
      found(DebriefRule::afterShock, false, 1, 70, 80),
      found(DebriefRule::handsOff, false, 0.5, 0, 60),
      found(DebriefRule::halves, false, 0.4, 0, 120),
  });
  EXPECT_THAT(choice.practise, ElementsAre(1, 2, 3));
}

TEST(DebriefChoice, LessThanATwentiethBeyondIsChosenForNeither) {
  const auto choice =
      chooseDebrief({found(DebriefRule::rate, false, 0.049), found(DebriefRule::depth, false, 0.05),
                     found(DebriefRule::release, true, 0.1)});
  EXPECT_THAT(choice.well, ElementsAre(2));
  EXPECT_THAT(choice.practise, ElementsAre(1));
  EXPECT_TRUE(choice.effort);
}

TEST(DebriefChoice, AnEffortIsNotSaidTwice) {
  EXPECT_TRUE(chooseDebrief({found(DebriefRule::rate, true, 0.5)}).effort);
  EXPECT_FALSE(chooseDebrief({found(DebriefRule::handsOff, true, 0.5)}).effort);
}

TEST(DebriefChoice, WithNothingWithinTheNearestIsNamed) {
  auto choice = chooseDebrief(
      {found(DebriefRule::handsOff, false, 2), found(DebriefRule::depth, false, 0.3)});
  EXPECT_THAT(choice.well, IsEmpty());
  EXPECT_EQ(choice.nearest, 1U);
  EXPECT_THAT(choice.practise, ElementsAre(0));
  // The only thing to practise is not turned into praise.
  choice = chooseDebrief({found(DebriefRule::handsOff, false, 2)});
  EXPECT_FALSE(choice.nearest);
  EXPECT_THAT(choice.practise, ElementsAre(0));
  EXPECT_TRUE(choice.effort);
}

Debrief debriefOf(const Record& record) {
  return makeDebrief(record, computeFigures(record), Words{});
}

std::vector<std::string> sentences(const std::vector<DebriefItem>& items) {
  std::vector<std::string> all;
  for (const DebriefItem& item : items) {
    all.push_back(item.sentence.toStdString());
  }
  return all;
}

TEST(Debrief, ChoosesAndSaysIt) {
  const Debrief debrief = debriefOf(test::fullRescue());
  EXPECT_THAT(sentences(debrief.well),
              ElementsAre("The electrodes were on 31 s after power-on.",
                          "The first shock came 53 s after power-on.",
                          "Breaths were quick: no pause for them lasted longer than 7 s."));
  EXPECT_THAT(sentences(debrief.practise),
              ElementsAre("Before shock 2 hands were off for 40 s. The device's analysis took 9 s "
                          "of it.",
                          "Hands were off the chest for 47 % of the time.",
                          "The pace changed a lot: 51 % of the compressions came within the target "
                          "rate."));
  EXPECT_EQ(debrief.practise.front().figure, "40 s");
  EXPECT_EQ(targetLine(debrief.practise.front()),
            "target below 5 s, Soar et al., Resuscitation 2021 (read in a secondary publication)");
  EXPECT_EQ(targetLine(debrief.practise.back()),
            "target at least 60 %, common practice, no source");
  EXPECT_EQ(debrief.practise.front().when, "09:14:57");
  EXPECT_THAT(debrief.questions,
              ElementsAre("How are you feeling about it?",
                          "What helped to have the electrodes on this soon?",
                          "What was happening at 09:14:57, before shock 2, while hands were off?",
                          "What took hands off the chest in the minute from 09:15:01?",
                          "What do we do the same way next time, and what do we try?"));
  EXPECT_EQ(debrief.cannotTell, "Not in the record: the depth of compressions.");
  EXPECT_TRUE(debrief.wellNote.isEmpty());
}

TEST(Debrief, AShockThatWasNotGivenIsAskedAboutFirst) {
  test::RecordBuilder b;
  b.record = test::fullRescue();
  b.shock(200, false, 200);
  const Debrief debrief = debriefOf(b.done());
  ASSERT_EQ(debrief.questions.size(), 5);
  EXPECT_EQ(debrief.questions[2],
            "09:15:50: a shock was prepared and not given. What was happening?");
}

TEST(Debrief, NothingToSpeakOfSaysWhatToDo) {
  const Debrief debrief = debriefOf(test::emptyRecord());
  EXPECT_FALSE(debrief.nothing.isEmpty());
  EXPECT_TRUE(debrief.well.empty() && debrief.practise.empty());
  EXPECT_EQ(debrief.questions.size(), 3);
}

TEST(Debrief, WhatIsMissingIsSaid) {
  EXPECT_EQ(debriefOf(test::shortRecord()).cannotTell,
            "Not in the record: hands on and off (less than a minute was recorded), the depth of "
            "compressions and breaths.");
  EXPECT_EQ(debriefOf(test::notesOnly()).cannotTell,
            "Not in the record: the depth of compressions, breaths and shocks.");
}

TEST(Debrief, AnEffortStandsWhereNothingLiesWithinATarget) {
  test::RecordBuilder b;
  b.from(0, 40, entry::Cpr{}).from(60, 85, entry::Cpr{}).from(115, 120, entry::Cpr{});
  const Debrief debrief = debriefOf(b.done());
  EXPECT_THAT(sentences(debrief.well),
              ElementsAre("Hands were off the chest for 42 % of the time.",
                          "The steadiest minute: hands were on the chest for 40 s of 1 min."));
  EXPECT_EQ(debrief.well.front().kind, DebriefKind::nearest);
  EXPECT_EQ(debrief.well.back().kind, DebriefKind::effort);
  EXPECT_FALSE(debrief.wellNote.isEmpty());
  EXPECT_THAT(sentences(debrief.practise),
              ElementsAre("The longest pause lasted 30 s: no reason recorded."));
}

TEST(Debrief, AMinuteWithoutAnyPauseIsSaidSo) {
  test::RecordBuilder b;
  b.from(0, 70, entry::Cpr{}).from(100, 130, entry::Cpr{});
  const Debrief debrief = debriefOf(b.done());
  EXPECT_EQ(debrief.well.back().sentence,
            "The steadiest minute: hands were on the chest all the time.");
}

TEST(Debrief, AFigureIsNeverRoundedOntoTheOtherSideOfItsTarget) {
  test::RecordBuilder b;
  b.from(0, 60, entry::Cpr{}).from(70.4, 140, entry::Cpr{}).shock(75, true, 200);
  const Record record = b.done();
  const Debrief debrief = debriefOf(record);
  const auto findings = debriefFindings(record, computeFigures(record));
  const auto pause = std::find_if(findings.begin(), findings.end(), [](const Finding& finding) {
    return finding.rule == DebriefRule::longestPause;
  });
  ASSERT_NE(pause, findings.end());
  EXPECT_FALSE(pause->within);
  EXPECT_EQ(debrief::figureFor(*pause, Words{}), "10.4 s");
}

TEST(Debrief, AsText) {
  DebriefShown shown;
  shown.well = {{"Good pace.", "110/min", "target 100–120 a minute, somewhere", "09:13:00"}};
  shown.practise = {{"Said by the trainer.", {}, {}, {}}};
  shown.questions = QStringList{"How was it?"};
  shown.cannotTell = "Not in the record: breaths.";
  const Record record = test::drill();
  EXPECT_EQ(debriefText(shown, record, computeFigures(record), Words{}).toStdString(),
            "Debrief · Saturday 14 March 2026 · Boathouse, training room · DRILL · SYNTHETIC\n"
            "\nWent well\n"
            "- Good pace. (target 100–120 a minute, somewhere; to be seen from 09:13:00)\n"
            "\nTo practise\n- Said by the trainer.\n"
            "\nTo talk about\n- How was it?\n"
            "\nNot in the record: breaths.\n"
            "\nPauses longer than 1.5 s count. Targets: European guidelines 2021. Local protocol "
            "and licensed practice go first.\n");
}

TEST(Debrief, WordsOfPeopleAreLeftOut) {
  test::RecordBuilder b;
  b.remark(3, "A. Person was slow").at(4, entry::RescuerChange{"B. Person"});
  b.at(5, entry::Medication{"C. Person gave it"}).at(6, entry::Milestone{"D. Person arrived"});
  b.at(7, entry::Milestone{"crew_arrived"}).shock(8, true, 200);
  b.record.entries.front().note = "E. Person";
  const Record plain = withoutOwnWords(b.done());
  ASSERT_EQ(plain.entries.size(), 6U);
  for (const Entry& entry : plain.entries) {
    EXPECT_TRUE(entry.note.empty());
    if (const auto* mark = std::get_if<entry::Mark>(&entry.data)) {
      EXPECT_TRUE(mark->text.empty());
    }
  }
  EXPECT_TRUE(std::get<entry::RescuerChange>(plain.entries[1].data).text.empty());
  EXPECT_TRUE(std::get<entry::Medication>(plain.entries[2].data).text.empty());
  EXPECT_TRUE(std::holds_alternative<entry::Mark>(plain.entries[3].data));
  EXPECT_EQ(std::get<entry::Milestone>(plain.entries[4].data).what, "crew_arrived");
  EXPECT_EQ(plain.entries[5].t, at(8));
}

} // namespace
} // namespace afterbeat::papers
