/// What is said about single moments of a record while it is replayed.
#include "app/papers/debrief_now.h"
#include "tests/papers/example_records.h"

#include <gtest/gtest.h>

namespace afterbeat::papers {
namespace {

struct Moment {
  double t;
  NowKind kind;
  const char* words;
};

void expectMoments(const Record& record, const std::vector<Moment>& moments) {
  const NowTeller teller(record, computeFigures(record), Words{});
  for (const Moment& moment : moments) {
    const Now now = teller.at(*timeFromSeconds(moment.t));
    EXPECT_EQ(now.kind, moment.kind) << moment.t;
    EXPECT_EQ(now.words.toStdString(), moment.words) << moment.t;
  }
}

TEST(DebriefNow, EveryStateOfARescue) {
  test::RecordBuilder b;
  b.at(0, entry::PowerOn{}).at(5, entry::Electrodes{ElectrodeState::attached, {}});
  b.compressions(10, 40, 120).analysis(45, 52, Advice::shock).shock(56, true, 200);
  b.from(60, 90, entry::Cpr{104.0}).from(90, 100, entry::Excluded{ExclusionReason::notRescue});
  b.from(100, 110, entry::Cpr{}).analysis(112, 118, Advice::noShock).shock(119, false, {});
  b.at(125, entry::Circulation{CirculationState::returned});
  b.at(140, entry::Circulation{CirculationState::lost}).shock(150, true, 200);
  expectMoments(b.done(), {
                              {2, NowKind::outside, "Before the first activity"},
                              {5, NowKind::handsOff, "Hands off"},
                              {5.99, NowKind::handsOff, "Hands off"},
                              {6, NowKind::handsOff, "Hands off for 1 s"},
                              {9.99, NowKind::handsOff, "Hands off for 4 s"},
                              {10, NowKind::handsOn, "Hands on"},
                              {20.2, NowKind::handsOn, "Hands on, 120 a minute"},
                              {44.5, NowKind::handsOff, "Hands off for 4 s"},
                              {45, NowKind::handsOff, "Hands off for 5 s, analysis"},
                              {52, NowKind::handsOff, "Hands off for 12 s, shock advised"},
                              {56, NowKind::shock, "Shock 1"},
                              {57.4, NowKind::shock, "Shock 1"},
                              {57.5, NowKind::handsOff, "Hands off for 17 s"},
                              {70, NowKind::handsOn, "Hands on, 104 a minute"},
                              {95, NowKind::notCounted, "Not counted"},
                              {105, NowKind::handsOn, "Hands on"},
                              {118.5, NowKind::handsOff, "Hands off for 8 s, no shock advised"},
                              {119.5, NowKind::shock, "Shock not given"},
                              {130, NowKind::circulation, "Circulation returned"},
                              {145, NowKind::handsOff, "Hands off for 5 s"},
                              {152, NowKind::outside, "After the last activity"},
                          });
}

TEST(DebriefNow, WithoutCompressionsHandsAreNotRecorded) {
  test::RecordBuilder b;
  b.analysis(0, 8, Advice::inconclusive)
      .shock(20, std::nullopt, {})
      .analysis(30, 40, Advice::shock);
  expectMoments(b.done(), {
                              {4, NowKind::unknown, "Hands not recorded, analysis"},
                              {9, NowKind::unknown, "Hands not recorded, analysis without result"},
                              {20.5, NowKind::shock, "Shock: delivery not recorded"},
                              {25, NowKind::unknown, "Hands not recorded"},
                          });
  expectMoments(test::emptyRecord(), {{3, NowKind::outside, "No activity recorded"}});
}

TEST(DebriefNow, TheClockIsTheRecordsOwnOrCountsFromPowerOn) {
  const auto clockOf = [](const Record& record) {
    return NowTeller(record, computeFigures(record), Words{}).at(*timeFromSeconds(65)).clock;
  };
  EXPECT_EQ(clockOf(test::fullRescue()), "09:13:35");
  EXPECT_EQ(clockOf(test::cutOff()), "1 min 5 s after power-on");
}

} // namespace
} // namespace afterbeat::papers
