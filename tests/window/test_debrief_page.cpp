/// The debrief's page in the window.
#include "tests/window/window_fixture.h"

#include "app/window/debrief/debrief_page.h"
#include "app/window/debrief/debrief_rows.h"
#include "app/window/debrief/deck_column.h"
#include "app/window/debrief/replay_bar.h"
#include "app/window/shell/places_page.h"
#include "app/window/shell/toast.h"

#include <QAccessible>
#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

namespace afterbeat::window {
namespace {

class DebriefPlace : public WindowTest {
protected:
  DebriefPlace() : debrief_(*window_.debriefPage()) { window_.places()->goTo(&debrief_); }
  /// Keys of the menus work in an active window only.
  void open(const QString& path) {
    WindowTest::open(path);
    window_.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
  }
  ~DebriefPlace() override { window_.places()->goTo(page_); }

  [[nodiscard]] QAction* action(const QString& text) const {
    for (QAction* a : debrief_.actions()) {
      if (QString(a->text()).remove('&') == text) {
        return a;
      }
    }
    ADD_FAILURE() << text.toStdString();
    return nullptr;
  }
  [[nodiscard]] LineCard* card(int column, int line) const {
    return debrief_.columns()[column]->cards()[line];
  }

  /// The latest moment that a line speaks of.
  void selectLast() {
    LineCard* latest = card(0, 0);
    for (const DeckColumnView* column : debrief_.columns()) {
      for (LineCard* one : column->cards()) {
        if (one->line().item &&
            one->line().item->moment.begin > latest->line().item->moment.begin) {
          latest = one;
        }
      }
    }
    debrief_.show(latest);
  }

  DebriefPage& debrief_;
};

TEST_F(DebriefPlace, EnterShowsTheMomentOfALine) {
  open(sample("ferry-terminal.resuslog"));
  LineCard* first = card(1, 0);
  const Interval moment = first->line().item->moment;
  first->setFocus();
  QTest::keyClick(first, Qt::Key_Return);
  EXPECT_TRUE(first->chosen());
  EXPECT_EQ(debrief_.rows()->canvas()->overlay().selected, moment);
  EXPECT_EQ(window_.selection().cursor(), moment.begin);
  EXPECT_TRUE(window_.selection().stretch().holds(moment.begin));
  EXPECT_EQ(debrief_.rows()->canvas()->overlay().cursor, moment.begin);
  // Another line's moment takes its place.
  QTest::mouseClick(card(0, 0), Qt::LeftButton);
  EXPECT_FALSE(first->chosen());
  EXPECT_EQ(debrief_.rows()->canvas()->overlay().selected, card(0, 0)->line().item->moment);
}

TEST_F(DebriefPlace, ItBeginsAtTheFirstLineWithItsMoment) {
  open(sample("ferry-terminal.resuslog"));
  EXPECT_EQ(debrief_.chosenCard(), card(0, 0));
  EXPECT_EQ(window_.selection().cursor(), card(0, 0)->line().item->moment.begin);
}

TEST_F(DebriefPlace, PageDownGoesFromLineToLine) {
  open(sample("ferry-terminal.resuslog"));
  QTest::keyClick(&window_, Qt::Key_PageDown);
  EXPECT_EQ(debrief_.chosenCard(), card(0, 1));
  QTest::keyClick(&window_, Qt::Key_PageUp);
  QTest::keyClick(&window_, Qt::Key_PageUp);
  EXPECT_EQ(debrief_.chosenCard(), card(0, 0));
}

TEST_F(DebriefPlace, StrikingTakesLineAfterLineOfOneColumn) {
  open(sample("ferry-terminal.resuslog"));
  ASSERT_EQ(debrief_.columns()[1]->cards().size(), 2);
  const QString second = card(1, 1)->line().id;
  const auto well = debrief_.columns()[0]->cards().size();
  QTest::mouseClick(card(1, 0), Qt::LeftButton);
  QTest::keyClick(&window_, Qt::Key_Delete);
  ASSERT_EQ(debrief_.columns()[1]->cards().size(), 1);
  EXPECT_EQ(card(1, 0)->line().id, second);
  // One look for "this line": what has the keyboard is also what is marked.
  EXPECT_TRUE(card(1, 0)->hasFocus());
  EXPECT_TRUE(card(1, 0)->chosen());
  QTest::keyClick(&window_, Qt::Key_Delete);
  EXPECT_TRUE(debrief_.columns()[1]->cards().isEmpty());
  EXPECT_EQ(debrief_.columns()[0]->cards().size(), well);
}

TEST_F(DebriefPlace, ARewordedLineKeepsTheKeyboard) {
  open(sample("ferry-terminal.resuslog"));
  const QString id = card(1, 0)->line().id;
  const auto well = debrief_.columns()[0]->cards().size();
  QTest::mouseClick(card(1, 0), Qt::LeftButton);
  QTest::keyClick(&window_, Qt::Key_F4);
  QTest::keyClicks(card(1, 0)->editor(), "Our words");
  QSignalSpy changed(&debrief_.deck(), &Deck::changed);
  QTest::keyClick(card(1, 0)->editor(), Qt::Key_Return);
  ASSERT_TRUE(changed.count() > 0 || changed.wait(kPatience));
  EXPECT_TRUE(card(1, 0)->hasFocus());
  EXPECT_EQ(card(1, 0)->line().id, id);
  QTest::keyClick(&window_, Qt::Key_Delete);
  EXPECT_NE(card(1, 0)->line().id, id);
  EXPECT_EQ(debrief_.columns()[0]->cards().size(), well);
}

TEST_F(DebriefPlace, ComingByKeyTheFirstLineIsTheOneThatKeysChange) {
  open(sample("ferry-terminal.resuslog"));
  window_.places()->goTo(page_);
  QTest::keyClick(&window_, Qt::Key_F8);
  EXPECT_TRUE(card(0, 0)->hasFocus());
  const QString first = card(0, 0)->line().id;
  QTest::keyClick(&window_, Qt::Key_Delete);
  EXPECT_NE(card(0, 0)->line().id, first);
}

TEST_F(DebriefPlace, SteppingMovesWhatTheClassSees) {
  open(sample("ferry-terminal.resuslog"));
  QTest::keyClick(&window_, Qt::Key_L);
  const auto shown = debrief_.rows()->canvas()->overlay().selected;
  ASSERT_TRUE(shown);
  EXPECT_NEAR(seconds(shown->length()), 37.5, 0.6);
  EXPECT_EQ(window_.selection().cursor(), shown->begin);
  EXPECT_EQ(debrief_.chosenCard(), nullptr);
  QTest::keyClick(&window_, Qt::Key_Period);
  EXPECT_GT(*window_.selection().cursor(), shown->begin);
}

TEST_F(DebriefPlace, TheChosenMomentStaysInViewInProjectorSize) {
  open(sample("ferry-terminal.resuslog"));
  window_.resize(1024, 640);
  selectLast();
  debrief_.projector()->trigger();
  QCoreApplication::processEvents();
  QCoreApplication::processEvents();
  const QRectF band = debrief_.rows()->canvas()->bandHolding(*window_.selection().cursor());
  const int top = -debrief_.rows()->widget()->y();
  EXPECT_GE(band.top(), top);
  EXPECT_LE(band.bottom(), top + debrief_.rows()->viewport()->height());
  debrief_.projector()->trigger();
}

TEST_F(DebriefPlace, ARecordOpenedIntoItGivesItTheKeyboard) {
  window_.setFocus();
  open(sample("ferry-terminal.resuslog"));
  EXPECT_TRUE(debrief_.isAncestorOf(QApplication::focusWidget()));
}

TEST_F(DebriefPlace, StrikingAndUndoingByKey) {
  open(sample("ferry-terminal.resuslog"));
  const auto before = debrief_.columns()[1]->cards().size();
  const QString second = card(1, 1)->line().id;
  card(1, 0)->setFocus();
  QTest::keyClick(card(1, 0), Qt::Key_Delete);
  ASSERT_EQ(debrief_.columns()[1]->cards().size(), before - 1);
  EXPECT_EQ(card(1, 0)->line().id, second);
  EXPECT_TRUE(debrief_.columns()[1]->notes().contains("Struck for this showing: 1"));
  QTest::keyClick(&window_, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(debrief_.columns()[1]->cards().size(), before);
  QTest::keyClick(&window_, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(debrief_.columns()[1]->cards().size(), before - 1);
}

TEST_F(DebriefPlace, RewordingInPlace) {
  open(sample("ferry-terminal.resuslog"));
  LineCard* line = card(0, 0);
  const QString id = line->line().id, original = line->line().text;
  line->setFocus();
  QTest::keyClick(line, Qt::Key_F4);
  ASSERT_TRUE(line->editor()->isVisible());
  QTest::keyClicks(line->editor(), "Thrown away");
  QTest::keyClick(line->editor(), Qt::Key_Escape);
  EXPECT_EQ(debrief_.columns()[0]->card(id)->line().text, original);
  QTest::keyClick(line, Qt::Key_F4);
  QSignalSpy changed(&debrief_.deck(), &Deck::changed);
  QTest::keyClicks(line->editor(), "Steady hands all along");
  QTest::keyClick(line->editor(), Qt::Key_Return);
  ASSERT_TRUE(changed.count() > 0 || changed.wait(kPatience));
  EXPECT_EQ(debrief_.columns()[0]->card(id)->line().text, "Steady hands all along");
}

TEST_F(DebriefPlace, AddingALineAndCopyingWhatIsShown) {
  open(fileWith("drill.resuslog", smallDrill()));
  action("Add a question")->trigger();
  QLineEdit* adder = debrief_.columns()[2]->adder();
  ASSERT_TRUE(adder->isVisible());
  QTest::keyClicks(adder, "Who calls the next drill?");
  QTest::keyClick(adder, Qt::Key_Return);
  EXPECT_FALSE(adder->isVisible());
  EXPECT_EQ(debrief_.columns()[2]->cards().back()->line().text, "Who calls the next drill?");
  card(2, 0)->setFocus();
  QTest::keyClick(card(2, 0), Qt::Key_Delete);
  action("Copy the debrief as text")->trigger();
  const QString text = QGuiApplication::clipboard()->text();
  EXPECT_TRUE(text.startsWith("Debrief · Friday 17 April 2026 · South boathouse · DRILL\n"))
      << text.toStdString();
  EXPECT_TRUE(text.contains("- Who calls the next drill?\n"));
  EXPECT_FALSE(text.contains("How are you feeling about it?"));
  EXPECT_TRUE(window_.toast()->text().contains("copied"));
}

TEST_F(DebriefPlace, NobodysWordsUnlessTheyAreSwitchedOn) {
  QByteArray log = smallDrill();
  log += R"({"t":62,"type":"mark","text":"A. Person hesitated"})"
         "\n";
  open(fileWith("drill.resuslog", log));
  const auto says = [this] { return debrief_.rows()->canvas()->picture()->asText(); };
  EXPECT_FALSE(says().contains("A. Person"));
  EXPECT_TRUE(says().contains("remark"));
  action("Show names and remarks of the record")->trigger();
  EXPECT_TRUE(says().contains("A. Person hesitated"));
  action("Show names and remarks of the record")->trigger();
  EXPECT_FALSE(says().contains("A. Person"));
}

TEST_F(DebriefPlace, ProjectorSizeIsOneKey) {
  open(sample("ferry-terminal.resuslog"));
  const auto size = [this] { return card(0, 0)->font().pointSizeF(); };
  const double normal = size();
  QTest::keyClick(&window_, Qt::Key_F12);
  EXPECT_NEAR(size(), normal * DebriefPage::kProjector, 0.01);
  EXPECT_NEAR(debrief_.rows()->canvas()->font().pointSizeF(), normal * 1.6, 0.01);
  QTest::keyClick(&window_, Qt::Key_F12);
  EXPECT_NEAR(size(), normal, 0.01);
}

TEST_F(DebriefPlace, ARecordWithoutARescueSaysWhatToDo) {
  open(fileWith("header.resuslog", smallDrill().left(smallDrill().indexOf('\n') + 1)));
  bool said = false;
  for (const QLabel* label : debrief_.findChildren<QLabel*>()) {
    said = said || (label->isVisible() && label->text().contains("Open a recording"));
  }
  EXPECT_TRUE(said);
  EXPECT_FALSE(debrief_.rows()->isVisible());
  EXPECT_EQ(debrief_.columns()[2]->cards().size(), 3);
}

TEST_F(DebriefPlace, ItFollowsTheSettingsAndKeepsWhatWasStruck) {
  open(sample("ferry-terminal.resuslog"));
  const QString struck = card(1, 0)->line().id;
  debrief_.deck().strike(struck);
  FigureSettings settings = window_.session().settings();
  settings.pauseThreshold = Duration{3'000'000};
  untilFiguresChange([&] { window_.session().setSettings(settings); });
  EXPECT_EQ(debrief_.columns()[1]->card(struck), nullptr);
  debrief_.deck().undo().undo();
  EXPECT_NE(debrief_.columns()[1]->card(struck), nullptr);
}

TEST_F(DebriefPlace, EverythingThatTakesTheKeyboardHasAName) {
  open(sample("ferry-terminal.resuslog"));
  int seen = 0;
  for (QWidget* widget : debrief_.findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) {
      continue;
    }
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(face, nullptr);
    EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
    ++seen;
  }
  EXPECT_GT(seen, 10);
}

TEST_F(DebriefPlace, FitsTheSmallestWindowInProjectorSize) {
  open(sample("ferry-terminal.resuslog"));
  debrief_.projector()->trigger();
  window_.resize(1024, 640);
  EXPECT_LE(window_.minimumSizeHint().width(), 1024);
  EXPECT_LE(window_.minimumSizeHint().height(), 640);
  debrief_.projector()->trigger();
}

TEST_F(DebriefPlace, ActionsOfTheLinesRestWhileThePlaceIsNotInView) {
  open(sample("ferry-terminal.resuslog"));
  debrief_.deck().strike(card(0, 0)->line().id);
  EXPECT_TRUE(action("Undo")->isEnabled());
  window_.places()->goTo(page_);
  EXPECT_FALSE(action("Undo")->isEnabled());
  EXPECT_FALSE(action("Strike the line for this showing")->isEnabled());
}

} // namespace
} // namespace afterbeat::window
