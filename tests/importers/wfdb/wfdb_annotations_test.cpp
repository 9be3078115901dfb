#include "importers/wfdb/wfdb_annotations.h"

#include "annotation_bytes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat {
namespace {

/// A stretch as read, short to compare.
struct Stretch {
  double from, to;
  RhythmKind is;
  std::string reason;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

std::vector<Stretch> stretches(const std::string& bytes, double end = 100) {
  std::vector<Problem> problems;
  std::vector<Stretch> found;
  for (const auto& entry :
       entriesFrom(parseAnnotations(bytes), 250, *timeFromSeconds(end), problems)) {
    if (const auto* rhythm = entry.complete<entry::Rhythm>()) {
      EXPECT_EQ(entry.source, Source::observer);
      found.push_back({seconds(entry.t), seconds(*entry.end), *rhythm->is, rhythm->reason});
    }
  }
  return found;
}

TEST(WfdbAnnotations, everyKindOfWord) {
  const auto read = parseAnnotations(word(1, 18) + word(61, 3) + word(62, 1) + word(60, 7) +
                                     aux("odd") + word(5, 1000) + skip(70000) + word(28, 2) +
                                     aux(std::string{"(VT\0", 4}) + endMark() + word(1, 1));
  ASSERT_TRUE(read.complete);
  ASSERT_EQ(read.all.size(), 3U);
  EXPECT_EQ(read.all[0].sample, 18);
  EXPECT_EQ(read.all[0].subtype, 3);
  EXPECT_EQ(read.all[0].channel, 1);
  EXPECT_EQ(read.all[0].num, 7);
  EXPECT_EQ(read.all[0].text, "odd");
  EXPECT_EQ(read.all[1].sample, 1018);
  EXPECT_EQ(read.all[1].subtype, 0); // of the current annotation only
  EXPECT_EQ(read.all[1].channel, 1); // of the current and the following
  EXPECT_EQ(read.all[1].num, 7);
  EXPECT_EQ(read.all[2].sample, 71020);
  EXPECT_EQ(read.all[2].text, "(VT");
}

// annot(5): SKIP's interval is a PDP-11 long: the high 16 bits first, then the low 16 bits, each
// with its low byte first. EC.. = 59 * 1024 = 0xEC00; 0x00011170 = 70000.
TEST(WfdbAnnotations, aLongIntervalByHand) {
  const std::string bytes{"\x00\xEC\x01\x00\x70\x11\x02\x04\x00\x00", 10};
  const auto read = parseAnnotations(bytes);
  ASSERT_EQ(read.all.size(), 1U);
  EXPECT_EQ(read.all[0].sample, 70002);
  EXPECT_EQ(read.all[0].code, 1);
  EXPECT_EQ(bytes, skip(70000) + word(1, 2) + endMark());
}

TEST(WfdbAnnotations, aFileCutAnywhereKeepsWhatIsWhole) {
  const auto whole = word(28, 18) + aux("(N") + skip(70000) + word(28, 2) + aux("(VF") + endMark();
  for (std::size_t length = 0; length < whole.size(); ++length) {
    const auto read = parseAnnotations(whole.substr(0, length));
    EXPECT_FALSE(read.complete) << length;
    EXPECT_LE(read.all.size(), 2U);
    EXPECT_EQ(read.all.size() > 0, length >= 2) << length;
  }
  EXPECT_TRUE(parseAnnotations(whole).complete);
}

TEST(WfdbAnnotations, timeStepsOfTheFilesOwn) {
  std::vector<Problem> problems;
  const auto read = parseAnnotations(word(22, 0) + aux("## time resolution: 1000") + word(28, 500) +
                                     aux("(VF") + endMark());
  EXPECT_EQ(read.frequency, 1000);
  const auto entries = entriesFrom(read, 250, *timeFromSeconds(10), problems);
  ASSERT_EQ(entries.size(), 1U);
  EXPECT_EQ(entries[0].t, *timeFromSeconds(0.5));
}

TEST(WfdbRhythms, eachMarkHoldsUntilTheNext) {
  EXPECT_THAT(
      stretches(word(28, 250) + aux("(N") + word(28, 500) + aux("(VFIB") + word(28, 1000) +
                aux("(ASYS") + word(28, 250) + aux("(NOISE") + word(28, 250) + aux("(VT") +
                endMark()),
      testing::ElementsAre(
          Stretch{1, 3, RhythmKind::organised, "N"}, Stretch{3, 7, RhythmKind::shockable, "VFIB"},
          Stretch{7, 8, RhythmKind::asystole, "ASYS"}, Stretch{8, 9, RhythmKind::unclear, "noise"},
          Stretch{9, 100, RhythmKind::organised, "VT, rate not stated by the source"}));
}

TEST(WfdbRhythms, fibrillationBetweenBrackets) {
  EXPECT_THAT(stretches(word(32, 250) + word(33, 500) + word(32, 250) + endMark()),
              testing::ElementsAre(Stretch{1, 3, RhythmKind::shockable, "VF"},
                                   Stretch{4, 100, RhythmKind::shockable, "VF"}));
}

TEST(WfdbRhythms, bracketsAndMarksTogether) {
  // The bracket right after the mark gives the begin; its end ends the stretch.
  EXPECT_THAT(stretches(word(28, 250) + aux("(VFL") + word(32, 5) + word(33, 500) + endMark()),
              testing::ElementsAre(Stretch{1.02, 3.02, RhythmKind::shockable, "VFL"}));
  // Later than a second it is another observation of the same; the begin stays.
  EXPECT_THAT(stretches(word(28, 250) + aux("(VF") + word(32, 500) + word(33, 500) + endMark()),
              testing::ElementsAre(Stretch{1, 5, RhythmKind::shockable, "VF"}));
  // Fibrillation in another rhythm ends that rhythm.
  EXPECT_THAT(stretches(word(28, 250) + aux("(N") + word(32, 500) + word(33, 500) + word(28, 250) +
                        aux("(N") + endMark()),
              testing::ElementsAre(Stretch{1, 3, RhythmKind::organised, "N"},
                                   Stretch{3, 5, RhythmKind::shockable, "VF"},
                                   Stretch{6, 100, RhythmKind::organised, "N"}));
  // A ] without [ changes nothing.
  EXPECT_THAT(stretches(word(28, 250) + aux("(N") + word(33, 500) + endMark()),
              testing::ElementsAre(Stretch{1, 100, RhythmKind::organised, "N"}));
}

TEST(WfdbRhythms, labels) {
  for (const auto* label : {"VF", "VFIB", "VFL", "vf"}) {
    EXPECT_EQ(rhythmOfLabel(label), RhythmKind::shockable) << label;
  }
  for (const auto* label : {"N", "NSR", "AFIB", "VT", "NOD", "SVTA", "HGEA", "B", "BI", "VER"}) {
    EXPECT_EQ(rhythmOfLabel(label), RhythmKind::organised) << label;
  }
  EXPECT_EQ(rhythmOfLabel("ASYS"), RhythmKind::asystole);
  EXPECT_EQ(rhythmOfLabel("NOISE"), RhythmKind::unclear);
  EXPECT_EQ(rhythmOfLabel("SOMETHING"), RhythmKind::unclear);
}

TEST(WfdbRhythms, remarksBecomeMarksAndBeatsAreCounted) {
  std::vector<Problem> problems;
  const auto entries = entriesFrom(parseAnnotations(word(1, 10) + word(5, 10) + word(22, 5) +
                                                    aux("pad moved") + word(14, 25) + endMark()),
                                   250, *timeFromSeconds(10), problems);
  ASSERT_EQ(entries.size(), 2U);
  EXPECT_EQ(std::get<entry::Mark>(entries[0].data).text, "pad moved");
  EXPECT_EQ(entries[0].t, *timeFromSeconds(0.1));
  EXPECT_EQ(std::get<entry::Mark>(entries[1].data).text, "Signal quality changes");
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(problems[0].severity, Severity::info);
  EXPECT_THAT(sentence(problems[0]), testing::StartsWith("2 marks on single heart beats"));
}

TEST(WfdbRhythms, timesNoRecordCanHoldAreReported) {
  std::vector<Problem> problems;
  const auto entries =
      entriesFrom(parseAnnotations(skip(2147483647) + word(28, 0) + aux("(VF") + endMark()), 250,
                  *timeFromSeconds(10), problems);
  EXPECT_TRUE(entries.empty());
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(problems[0].severity, Severity::error);
}

} // namespace
} // namespace afterbeat
