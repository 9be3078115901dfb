#include "tests/window/window_fixture.h"

#include "app/window/look/appearance.h"
#include "app/window/look/look.h"
#include "app/window/shell/help.h"

#include <QAccessible>
#include <QAction>
#include <QElapsedTimer>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QStatusBar>
#include <QTreeWidget>

#include <map>

namespace afterbeat::window {
namespace {

using Manners = WindowTest;

void collect(const QList<QAction*>& from, QList<QAction*>& into) {
  for (QAction* action : from) {
    if (action->menu()) {
      collect(action->menu()->actions(), into);
    } else if (!action->isSeparator()) {
      into << action;
    }
  }
}

TEST_F(Manners, EveryActionHasAMenuEntryATextAndAKeyOfItsOwn) {
  QList<QAction*> entries;
  collect(window_.menuBar()->actions(), entries);
  std::map<QString, QString> keys;
  for (QAction* action : entries) {
    EXPECT_FALSE(action->text().isEmpty());
    EXPECT_FALSE(action->shortcut().isEmpty()) << action->text().toStdString();
    for (const QKeySequence& key : action->shortcuts()) {
      const auto [there, added] = keys.emplace(key.toString(), action->text());
      EXPECT_TRUE(added) << key.toString().toStdString() << ": " << action->text().toStdString()
                         << ", " << there->second.toStdString();
    }
  }
  EXPECT_GT(entries.size(), 40);
  for (QAction* action : window_.findChildren<QAction*>()) {
    if (!action->shortcut().isEmpty()) {
      EXPECT_TRUE(entries.contains(action)) << action->text().toStdString();
    }
  }
}

TEST_F(Manners, EveryControlThatTakesTheKeyboardHasAName) {
  open(sample("ferry-terminal.resuslog"));
  int seen = 0;
  for (int tab = 0; tab < page_->panel()->count(); ++tab) {
    page_->panel()->setCurrentIndex(tab);
    for (QWidget* widget : window_.findChildren<QWidget*>()) {
      if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() ||
          widget->objectName().startsWith("qt_")) {
        continue;
      }
      QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
      ASSERT_NE(face, nullptr);
      EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
      ++seen;
    }
  }
  EXPECT_GT(seen, 20);
}

TEST_F(Manners, ColoursOfTextReachTheContrastOfTheGuidelines) {
  for (const bool dark : {false, true}) {
    const Look look = Look::of(ownPalette(dark), QFont());
    EXPECT_EQ(look.dark, dark);
    for (const QColor& ground : {look.paper, look.panel, look.accentSoft}) {
      for (const QColor& text : {look.ink, look.faintInk, look.attention}) {
        EXPECT_GE(contrast(text, ground), 4.5)
            << text.name().toStdString() << " on " << ground.name().toStdString();
      }
    }
    EXPECT_GE(contrast(look.badge, look.badgeInk), 7);
    // A frame that says what is chosen needs 3.
    EXPECT_GE(contrast(look.accent, look.panel), 3);
  }
}

TEST_F(Manners, ContrastIsAsPublished) {
  // WCAG 2.2, definition of contrast ratio: black on white is 21, equal colours are 1.
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-6);
  EXPECT_NEAR(contrast(Qt::red, Qt::red), 1, 1e-6);
}

TEST_F(Manners, NothingIsWiderThanTheSmallestWindow) {
  open(sample("ferry-terminal.resuslog"));
  window_.resize(1024, 640);
  EXPECT_LE(window_.minimumSizeHint().width(), 1024);
  EXPECT_LE(window_.minimumSizeHint().height(), 640);
  EXPECT_EQ(window_.size(), QSize(1024, 640));
}

TEST_F(Manners, TheCautionsAreAlwaysInView) {
  bool found = false;
  for (const QLabel* label : window_.statusBar()->findChildren<QLabel*>()) {
    found = found || label->text() == cautionLine();
  }
  EXPECT_TRUE(found);
  EXPECT_TRUE(cautionLine().contains("Not a medical device"));
}

TEST_F(Manners, HelpListsEveryKeyOfTheMenus) {
  showKeys(window_.menuBar(), &window_);
  const auto* list = window_.findChild<QTreeWidget*>();
  for (const QTreeWidget* tree : window_.findChildren<QTreeWidget*>()) {
    if (tree->accessibleName() == "Keys") {
      list = tree;
    }
  }
  ASSERT_NE(list, nullptr);
  EXPECT_FALSE(list->findItems("Next pause", Qt::MatchExactly | Qt::MatchRecursive).isEmpty());
  EXPECT_FALSE(list->findItems("Ctrl+E", Qt::MatchExactly | Qt::MatchRecursive, 1).isEmpty());
  showAbout(&window_);
}

TEST_F(Manners, DarkAndLightRepaintEverything) {
  open(sample("ferry-terminal.resuslog"));
  Appearance& appearance = *window_.findChild<Appearance*>();
  appearance.setMode(Appearance::Mode::dark);
  // Qt tells the widgets by an event.
  QCoreApplication::processEvents();
  EXPECT_LT(window_.grab().toImage().pixelColor(640, 500).lightnessF(), 0.3);
  EXPECT_TRUE(isDark(page_->rows()->canvas()->palette()));
  appearance.setMode(Appearance::Mode::light);
  QCoreApplication::processEvents();
  EXPECT_FALSE(isDark(page_->rows()->canvas()->palette()));
  appearance.setTypeStep(4);
  EXPECT_GT(window_.minimumSizeHint().width(), 0);
  appearance.setTypeStep(0);
  appearance.setMode(Appearance::Mode::system);
}

} // namespace
} // namespace afterbeat::window
