#include "tests/window/window_fixture.h"

#include "app/window/finding/entry_words.h"
#include "app/window/finding/happenings.h"
#include "app/window/finding/list_text.h"
#include "app/window/look/figure_words.h"

#include <QAction>
#include <QElapsedTimer>
#include <QHeaderView>
#include <QLineEdit>
#include <QTableView>
#include <QTest>

namespace afterbeat::window {
namespace {

using Finding = WindowTest;

Time middleOf(const Interval& stretch) {
  return stretch.begin + stretch.length() / 2;
}

QAction* actionNamed(const QList<QAction*>& actions, const QString& text) {
  for (QAction* action : actions) {
    if (action->text() == text) {
      return action;
    }
  }
  return nullptr;
}

/// A drill with an entry type of nobody's, two problems, and an observer's note.
QByteArray oddDrill() {
  QByteArray log = smallDrill();
  log += R"({"t":70,"type":"heart_song","tune":"slow"})"
         "\n"
         R"({"t":75,"type":"mark","text":"changed over","source":"observer"})"
         "\n"
         R"({"t":80,"type":"shock","energy_j":200})"
         "\n"
         R"({"t":90,"type":"electrodes"})"
         "\n";
  return log;
}

/// Three hours with 20 000 compressions: runs of 30, 5 s apart.
QByteArray longDrill() {
  QByteArray log = R"({"resuslog":"1.0","recorded":"2026-04-17T19:05:00+02:00","kind":"drill"})"
                   "\n";
  double t = 0;
  for (int i = 0; i < 20'000; ++i) {
    log += QStringLiteral("{\"t\":%1,\"type\":\"compression\"}\n").arg(t, 0, 'f', 2).toUtf8();
    t += i % 30 == 29 ? 5 : 0.37;
  }
  return log;
}

TEST_F(Finding, EveryKindCanBeSteppedThroughBothWays) {
  open(fileWith("odd.resuslog", oddDrill()));
  Selection& selection = window_.selection();
  const struct {
    const char *next, *previous;
    StepKind kind;
  } kinds[] = {{"Next pause", "Previous pause", StepKind::pause},
               {"Next shock", "Previous shock", StepKind::shock},
               {"Next analysis", "Previous analysis", StepKind::analysis},
               {"Next problem in the file", "Previous problem in the file", StepKind::problem}};
  const auto& actions = page_->stepping()->actions();
  for (const auto& kind : kinds) {
    const auto stops = stopsOf(window_.session(), kind.kind);
    ASSERT_GE(stops.size(), 1u) << kind.next;
    selection.lookAt(selection.extent().begin - Duration{1'000'000});
    QAction* next = actionNamed(actions, QLatin1String(kind.next));
    QAction* previous = actionNamed(actions, QLatin1String(kind.previous));
    ASSERT_TRUE(next && previous);
    std::vector<Time> forward;
    for (std::size_t i = 0; i < stops.size(); ++i) {
      next->trigger();
      forward.push_back(middleOf(selection.stretch()));
      EXPECT_LE(std::chrono::abs(forward.back() - middleOf(stops[i].stretch)), Duration{2})
          << kind.next << i;
      EXPECT_EQ(selection.what(), stops[i].what);
    }
    for (std::size_t i = stops.size() - 1; i > 0; --i) {
      previous->trigger();
      EXPECT_LE(std::chrono::abs(middleOf(selection.stretch()) - forward[i - 1]), Duration{2})
          << kind.previous << i;
    }
  }
}

TEST_F(Finding, AStepBeyondTheLastIsSaidAndMovesNothing) {
  open(fileWith("drill.resuslog", smallDrill()));
  QSignalSpy nowhere(page_->stepping(), &Stepping::nowhere);
  // The recording was not closed: one problem, at its end.
  page_->stepping()->step(StepKind::problem, true);
  const Interval before = window_.selection().stretch();
  EXPECT_EQ(nowhere.count(), 0);
  page_->stepping()->step(StepKind::problem, true);
  ASSERT_EQ(nowhere.count(), 1);
  EXPECT_TRUE(nowhere[0][0].toString().contains("problem"));
  EXPECT_EQ(window_.selection().stretch(), before);
}

TEST_F(Finding, LGoesToTheLongestPause) {
  open(sample("ferry-terminal.resuslog"));
  const Figures& figures = window_.session().figures();
  Duration longest{};
  Interval there;
  for (const Pause& pause : figures.pauses) {
    if (pause.stretch.length() > longest) {
      longest = pause.stretch.length();
      there = pause.stretch;
    }
  }
  window_.selection().lookAt(window_.selection().extent().end);
  QTest::keyClick(page_->rows()->canvas(), Qt::Key_L);
  EXPECT_LE(std::chrono::abs(middleOf(window_.selection().stretch()) - middleOf(there)),
            Duration{2});
  EXPECT_TRUE(window_.selection().what().contains("pause"));
}

TEST_F(Finding, TheListHoldsEveryEntryWithATime) {
  open(fileWith("odd.resuslog", oddDrill()));
  const Record& record = window_.session().record();
  const auto all =
      happenings(record, window_.session().figures(), window_.session().loaded().file->problems);
  const auto holds = [&](const QString& part, Origin origin) {
    return std::any_of(all.begin(), all.end(), [&](const Happening& one) {
      return one.what.contains(part) && one.origin == origin;
    });
  };
  EXPECT_TRUE(holds("unknown to this program: “heart_song”", Origin::device));
  EXPECT_TRUE(holds("changed over", Origin::observer));
  EXPECT_TRUE(holds("shock, not recorded whether given", Origin::device));
  EXPECT_TRUE(holds("incomplete", Origin::device));
  EXPECT_TRUE(holds("pause of", Origin::computed));
  EXPECT_TRUE(holds("problem: ", Origin::reading));
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](const Happening& a, const Happening& b) {
    return a.stretch.begin < b.stretch.begin;
  }));
  // Single compressions stand in runs whose counts add up.
  int compressions = 0, others = 0;
  for (const Happening& one : all) {
    if (one.kind.contains("compression") && one.origin == Origin::device) {
      compressions += one.what.section(' ', 0, 0).toInt();
    } else if (one.origin == Origin::device || one.origin == Origin::observer) {
      ++others;
    }
  }
  int single = 0, rest = 0;
  for (const Entry& entry : record.entries) {
    (entry.complete<entry::Compression>() != nullptr ? single : rest) += 1;
  }
  EXPECT_EQ(compressions, single);
  EXPECT_EQ(others, rest);
}

TEST_F(Finding, EveryEntryTypeHasWords) {
  const auto check = [](EntryData data, const char* part) {
    Entry entry;
    entry.data = std::move(data);
    EXPECT_TRUE(entryWords(entry).contains(QLatin1String(part))) << entryWords(entry).toStdString();
    EXPECT_FALSE(entryKindWords(entry.data).isEmpty());
  };
  check(entry::Other{"tea"}, "tea");
  check(entry::PowerOn{}, "device on");
  check(entry::PowerOff{}, "device off");
  check(entry::ClockSet{"2026-01-01T00:00:00Z"}, "2026-01-01");
  check(entry::Electrodes{ElectrodeState::poorContact, {}}, "poor contact");
  check(entry::PatientMode{PatientCategory::child}, "child");
  check(entry::Analysis{Advice::inconclusive}, "inconclusive");
  check(entry::Charge{200.0}, "200 J");
  check(entry::Shock{true, 150.0, {}, ""}, "shock given, 150 J");
  check(entry::Shock{false, {}, {}, "moved"}, "moved");
  check(entry::Cpr{110.0}, "110 a minute");
  check(entry::Compression{52.0, {}, {}}, "52 mm");
  check(entry::Ventilation{500.0}, "500 ml");
  check(entry::Airway{AirwayDevice::tube}, "tube");
  check(entry::Rhythm{RhythmKind::asystole, {}, ""}, "asystole");
  check(entry::Circulation{CirculationState::lost}, "lost");
  check(entry::RescuerChange{"two"}, "two");
  check(entry::Medication{"1 mg"}, "1 mg");
  check(entry::Milestone{"call_received"}, "call received");
  check(entry::Excluded{ExclusionReason::notTrusted}, "not trusted");
  check(entry::Prompt{"", "P7"}, "P7");
  check(entry::Battery{{}, 2.0, 4.0}, "2 of 4 bars");
  check(entry::Pads{"2031-04"}, "2031-04");
  check(entry::SelfTest{false, "lamp"}, "failed");
  check(entry::Fault{"low contrast", ""}, "low contrast");
  check(entry::Mark{"here", "a colleague"}, "a colleague");
  check(entry::LostSamples{"ecg"}, "ecg");
  check(entry::Unreadable{"AAAA"}, "could not be read");
}

TEST_F(Finding, TypingFiltersAndEnterSelects) {
  open(sample("ferry-terminal.resuslog"));
  QAction* find = page_->panel()->happenings()->find();
  EXPECT_EQ(find->shortcut(), QKeySequence(Qt::CTRL | Qt::Key_F));
  find->trigger();
  HappeningsView* view = page_->panel()->happenings();
  ASSERT_EQ(page_->panel()->currentWidget(), view);
  const int all = view->table()->model()->rowCount();
  ASSERT_GT(all, 20);
  QTest::keyClicks(view->filter(), "shock given");
  const int shocks = view->table()->model()->rowCount();
  EXPECT_EQ(shocks,
            static_cast<int>(*window_.session().figures()[MeasureId::shocksDelivered].value));
  EXPECT_EQ(view->countText(), QStringLiteral("%1 of %2").arg(shocks).arg(all));
  window_.selection().lookAt(window_.selection().extent().end);
  QTest::keyClick(view->filter(), Qt::Key_Return);
  EXPECT_LE(std::chrono::abs(middleOf(window_.selection().stretch()) -
                             window_.session().figures().shocks.front().t),
            Duration{2});
  EXPECT_TRUE(window_.selection().what().contains("shock"));
  QTest::keyClick(view->filter(), Qt::Key_Escape);
  EXPECT_EQ(view->table()->model()->rowCount(), all);
  // Letters typed here are text, not steps.
  const Interval before = window_.selection().stretch();
  QTest::keyClicks(view->filter(), "l,n.");
  EXPECT_EQ(view->filter()->text(), "l,n.");
  EXPECT_EQ(window_.selection().stretch(), before);
}

TEST_F(Finding, AClickInTheListSelectsAndTheListFollowsThePicture) {
  open(sample("ferry-terminal.resuslog"));
  page_->panel()->setCurrentWidget(page_->panel()->happenings());
  QTableView* table = page_->panel()->happenings()->table();
  const QModelIndex third = table->model()->index(2, HappeningsModel::whatColumn);
  table->scrollTo(third);
  QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, table->visualRect(third).center());
  EXPECT_EQ(window_.selection().what(), third.data().toString());
  page_->stepping()->goToLongestPause();
  EXPECT_EQ(table->currentIndex().siblingAtColumn(HappeningsModel::whatColumn).data().toString(),
            window_.selection().what());
}

TEST_F(Finding, TheListIsCopiedAsTabbedText) {
  open(fileWith("odd.resuslog", oddDrill()));
  page_->panel()->setCurrentWidget(page_->panel()->happenings());
  QTableView* table = page_->panel()->happenings()->table();
  const QStringList lines = tabbedText(*table).split('\n', Qt::SkipEmptyParts);
  EXPECT_EQ(lines.size(), table->model()->rowCount() + 1);
  EXPECT_EQ(lines.front(), "clock\tsince start\twhat\tfrom");
  EXPECT_EQ(lines[1], "19:05:00.0\t0:00.0\tdevice on\tdevice");
  // Rows that were selected stand alone.
  table->setSelectionMode(QAbstractItemView::ExtendedSelection);
  table->selectRow(0);
  table->selectionModel()->select(table->model()->index(1, 0),
                                  QItemSelectionModel::Select | QItemSelectionModel::Rows);
  EXPECT_EQ(tabbedText(*table).split('\n', Qt::SkipEmptyParts).size(), 3);
}

TEST_F(Finding, AMomentIsToldTheSameWayEverywhere) {
  open(fileWith("drill.resuslog", smallDrill()));
  const Record& record = window_.session().record();
  const Moments moments(record);
  for (const double t : {-0.3, 0.0, 60.25, 3727.9}) {
    EXPECT_EQ(moments.clock(at(t)), momentWords(record, at(t), true)) << t;
  }
  Record clockless = record;
  clockless.header.clock.state = ClockState::unset;
  EXPECT_EQ(Moments::onRecord(at(187.4)), momentWords(clockless, at(187.4), true));
  EXPECT_FALSE(Moments(clockless).hasClock());
}

TEST_F(Finding, ThreeHoursAreListedWithoutHoldingUpTheWindow) {
  open(fileWith("long.resuslog", longDrill()));
  QElapsedTimer clock;
  clock.start();
  page_->panel()->setCurrentWidget(page_->panel()->happenings());
  QTest::keyClicks(page_->panel()->happenings()->filter(), "p");
  const auto took = clock.elapsed();
  // Runs and the pauses between them.
  EXPECT_GT(page_->panel()->happenings()->table()->model()->rowCount(), 1000);
  RecordProperty("list_and_filter_ms", static_cast<int>(took));
  EXPECT_LT(took, 1000); // a tenth of that where nothing else runs
}

} // namespace
} // namespace afterbeat::window
