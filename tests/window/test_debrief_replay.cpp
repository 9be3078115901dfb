/// The replay, driven by a clock of the test's own.
#include "tests/window/window_fixture.h"

#include "app/window/debrief/replay.h"
#include "app/window/debrief/replay_bar.h"
#include "app/window/shell/place_button.h"

#include <QAction>
#include <QTest>
#include <QToolButton>

namespace afterbeat::window {
namespace {

using namespace std::chrono_literals;

class ReplayTest : public WindowTest {
protected:
  ReplayTest()
      : replay_(window_.session(), window_.selection(), nullptr, [this] { return clock_; }) {}

  void after(std::chrono::nanoseconds passed) {
    clock_ += passed;
    replay_.tick();
  }
  [[nodiscard]] Time cursor() const { return *window_.selection().cursor(); }
  [[nodiscard]] const Interval& rescue() { return *window_.session().figures().window; }

  std::chrono::nanoseconds clock_{1h};
  Replay replay_;
};

TEST_F(ReplayTest, TheCursorMovesWithTheClock) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_FALSE(window_.selection().cursor());
  replay_.setPlaying(true);
  EXPECT_TRUE(replay_.playing());
  EXPECT_EQ(cursor(), rescue().begin);
  after(2500ms);
  EXPECT_EQ(cursor(), rescue().begin + Duration{2'500'000});
  after(1ms);
  EXPECT_EQ(cursor(), rescue().begin + Duration{2'501'000});
  replay_.setPlaying(false);
  after(10s);
  EXPECT_EQ(cursor(), rescue().begin + Duration{2'501'000});
  replay_.setPlaying(true);
  after(1s);
  EXPECT_EQ(cursor(), rescue().begin + Duration{3'501'000});
}

TEST_F(ReplayTest, TheSpeedMayChangeOnTheWay) {
  open(sample("ferry-terminal.resuslog"));
  replay_.setPlaying(true);
  after(1s);
  clock_ += 1s; // played at the old speed until the new one is chosen
  replay_.setSpeed(8);
  EXPECT_EQ(cursor(), rescue().begin + Duration{2'000'000});
  after(3s);
  EXPECT_EQ(cursor(), rescue().begin + Duration{26'000'000});
  replay_.setSpeed(1);
  after(1s);
  EXPECT_EQ(cursor(), rescue().begin + Duration{27'000'000});
  EXPECT_TRUE(replay_.speedActions().front()->isChecked());
}

TEST_F(ReplayTest, ItStopsAtTheEndAndBeginsAgain) {
  open(fileWith("drill.resuslog", smallDrill()));
  replay_.setPlaying(true);
  after(1h);
  EXPECT_FALSE(replay_.playing());
  EXPECT_EQ(cursor(), rescue().end);
  // From there on to the end of the record, and then from the begin.
  replay_.setPlaying(true);
  after(1h);
  EXPECT_EQ(cursor(), window_.selection().extent().end);
  replay_.setPlaying(true);
  EXPECT_EQ(cursor(), rescue().begin);
}

TEST_F(ReplayTest, AClickOnTheWayIsWhereItGoesOn) {
  open(sample("ferry-terminal.resuslog"));
  replay_.setPlaying(true);
  after(5s);
  window_.selection().setCursor(at(400));
  EXPECT_TRUE(replay_.playing());
  after(2s);
  EXPECT_EQ(cursor(), at(402));
  // Who takes the cursor away does not send the replay back.
  window_.selection().setCursor(std::nullopt);
  after(1s);
  EXPECT_EQ(cursor(), at(403));
}

TEST_F(ReplayTest, TheWavesFollowSoThatTheCursorStaysInView) {
  open(sample("ferry-terminal.resuslog"));
  replay_.setSpeed(8);
  replay_.setPlaying(true);
  for (int second = 0; second < 160; ++second) {
    after(1s);
    ASSERT_TRUE(window_.selection().stretch().holds(cursor())) << seconds(cursor());
  }
}

TEST_F(ReplayTest, AnotherRecordStopsIt) {
  open(sample("ferry-terminal.resuslog"));
  replay_.setPlaying(true);
  after(5s);
  open(fileWith("drill.resuslog", smallDrill()));
  EXPECT_FALSE(replay_.playing());
  EXPECT_FALSE(window_.selection().cursor());
  EXPECT_EQ(replay_.position(), rescue().begin);
}

TEST_F(ReplayTest, NothingPlaysWithoutARecord) {
  replay_.setPlaying(true);
  EXPECT_FALSE(replay_.playing());
}

TEST_F(ReplayTest, StepsGoFromPauseToPause) {
  open(sample("ferry-terminal.resuslog"));
  const auto& pauses = window_.session().figures().pauses;
  QAction* next = replay_.actions()[5];
  QAction* previous = replay_.actions()[6];
  Time last = replay_.position();
  for (std::size_t i = 0; i < 5; ++i) {
    next->trigger();
    EXPECT_GT(cursor(), last);
    last = cursor();
    EXPECT_TRUE(std::any_of(pauses.begin(), pauses.end(),
                            [&](const Pause& pause) { return pause.stretch.begin == cursor(); }));
    EXPECT_TRUE(window_.selection().stretch().holds(cursor()));
  }
  previous->trigger();
  EXPECT_LT(cursor(), last);
}

TEST_F(ReplayTest, TheStripSaysWhatIsHappening) {
  ReplayBar bar(replay_);
  open(sample("ferry-terminal.resuslog"));
  const ShockFigures& shock = window_.session().figures().shocks.front();
  window_.selection().setCursor(shock.t);
  EXPECT_TRUE(bar.asText().endsWith("Shock 1")) << bar.asText().toStdString();
  const Pause& pause = window_.session().figures().pauses.front();
  window_.selection().setCursor(pause.stretch.begin + Duration{2'300'000});
  EXPECT_TRUE(bar.asText().contains("Hands off for 2 s")) << bar.asText().toStdString();
}

TEST_F(ReplayTest, SpacePlaysAndSpeedsHaveKeys) {
  open(sample("ferry-terminal.resuslog"));
  window_.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
  Replay& own = window_.replay();
  QTest::keyClick(page_->rows()->canvas(), Qt::Key_Space);
  EXPECT_TRUE(own.playing());
  QTest::keyClick(page_->rows()->canvas(), Qt::Key_8, Qt::AltModifier);
  EXPECT_EQ(own.speed(), 8);
  QTest::keyClick(page_->rows()->canvas(), Qt::Key_Space);
  EXPECT_FALSE(own.playing());
  // The place in view is chosen already: Space plays.
  for (auto* place : window_.findChildren<PlaceButton*>()) {
    if (place->isChecked()) {
      QTest::keyClick(place, Qt::Key_Space);
      EXPECT_TRUE(own.playing());
      QTest::keyClick(place, Qt::Key_Space);
      EXPECT_FALSE(own.playing());
    }
  }
  // A button that has the keyboard is pressed by Space, and nothing else.
  auto* button = page_->findChild<ReplayBar*>()->findChild<QToolButton*>();
  ASSERT_TRUE(button->isVisible());
  QTest::keyClick(button, Qt::Key_Space);
  EXPECT_TRUE(own.playing());
}

} // namespace
} // namespace afterbeat::window
