/// The switch between the places of a record, and that the place of the last use comes back.
#include "app/window/shell/place_button.h"
#include "app/window/shell/places_page.h"
#include "tests/window/window_fixture.h"

#include <QAction>
#include <QTest>

namespace afterbeat::window {

namespace {

class Places : public testing::Test {
protected:
  struct Page {
    explicit Page(Session& session) : page(session) {
      page.addPlace(rows = new QWidget, "places-test-rows", "Rows", "Go to the &rows", Qt::Key_F7);
      page.addPlace(paper = new QWidget, "places-test-paper", "Paper", "Go to the &paper",
                    Qt::Key_F8);
      page.resize(900, 500);
      page.show();
    }
    QWidget *rows, *paper;
    PlacesPage page;
  };
  Session session_;
};

TEST_F(Places, AClickOnTheSwitchAndTheActionShowAPlace) {
  Page shown(session_);
  const auto buttons = shown.page.findChildren<PlaceButton*>();
  ASSERT_EQ(buttons.size(), 2);
  QTest::mouseClick(buttons[1], Qt::LeftButton);
  EXPECT_EQ(shown.page.place(), shown.paper);
  EXPECT_TRUE(shown.page.actions()[1]->isChecked());
  shown.page.actions()[0]->trigger();
  EXPECT_EQ(shown.page.place(), shown.rows);
  EXPECT_TRUE(buttons[0]->isChecked());
  EXPECT_FALSE(buttons[1]->isChecked());
}

TEST_F(Places, ThePlaceOfTheLastUseIsShownAgain) {
  { Page(session_).page.actions()[1]->trigger(); }
  Page again(session_);
  EXPECT_EQ(again.page.place(), again.paper);
  EXPECT_TRUE(again.page.actions()[1]->isChecked());
  again.page.actions()[0]->trigger();
  Page third(session_);
  EXPECT_EQ(third.page.place(), third.rows);
}

TEST_F(Places, TheButtonsSayTheirNameAndKey) {
  Page shown(session_);
  for (const PlaceButton* button : shown.page.findChildren<PlaceButton*>()) {
    EXPECT_FALSE(button->accessibleName().isEmpty());
    EXPECT_TRUE(button->toolTip().contains("F7") || button->toolTip().contains("F8"));
    EXPECT_FALSE(button->toolTip().contains('&'));
  }
}

} // namespace

} // namespace afterbeat::window
