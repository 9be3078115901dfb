#include "tests/window/window_fixture.h"

#include "app/window/compare/compare_page.h"
#include "app/window/shell/help.h"
#include "app/window/shell/places_page.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QMenu>
#include <QMenuBar>
#include <QSet>
#include <QTest>
#include <QTimer>

namespace afterbeat::window {
namespace {

class Accessible : public WindowTest {
protected:
  /// Everything below `face` that is in view and takes the keyboard.
  static void collect(QAccessibleInterface* face, QList<QAccessibleInterface*>& into) {
    for (int i = 0; i < face->childCount(); ++i) {
      QAccessibleInterface* child = face->child(i);
      if (!child || !child->isValid() || child->state().invisible || child->state().offscreen) {
        continue;
      }
      const auto* widget = qobject_cast<QWidget*>(child->object());
      // What hands the keyboard on is told by the one that gets it; text that may be copied with
      // the mouse is told as text.
      const bool takes = widget && !widget->focusProxy() && (widget->focusPolicy() & Qt::TabFocus);
      if (child->state().focusable && takes) {
        into << child;
      }
      collect(child, into);
    }
  }

  static QString describe(QAccessibleInterface* face) {
    return QStringLiteral("%1 “%2” in %3")
        .arg(QString::fromLatin1(face->object()->metaObject()->className()),
             face->text(QAccessible::Name),
             face->object()->parent()
                 ? QString::fromLatin1(face->object()->parent()->metaObject()->className())
                 : QString());
  }

  /// Name and role of every control of a window.
  static int checkNames(QWidget* window, const QString& where) {
    QList<QAccessibleInterface*> faces;
    collect(QAccessible::queryAccessibleInterface(window), faces);
    for (QAccessibleInterface* face : faces) {
      const std::string what = (where + ": " + describe(face)).toStdString();
      EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << what;
      EXPECT_NE(face->role(), QAccessible::NoRole) << what;
      // A plain surface tells nothing about what can be done with it.
      EXPECT_NE(face->role(), QAccessible::Client) << what;
    }
    return static_cast<int>(faces.size());
  }

  /// What the keyboard reaches from here with Tab, and with F6 where there is such a key.
  QSet<QWidget*> reached() {
    QSet<QWidget*> all;
    constexpr int kMost = 400;
    const auto walk = [&](int key) {
      for (int i = 0, repeated = 0; i < kMost && repeated < 20; ++i) {
        QWidget* focus = QApplication::focusWidget();
        repeated = focus && all.contains(focus) ? repeated + 1 : 0;
        if (focus) {
          all << focus;
        }
        QTest::keyClick(focus ? focus : &window_, static_cast<Qt::Key>(key));
      }
    };
    walk(Qt::Key_Tab);
    walk(Qt::Key_F6);
    walk(Qt::Key_Tab);
    return all;
  }

  void checkReach(const QString& where) {
    window_.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    const QSet<QWidget*> there = reached();
    QList<QAccessibleInterface*> faces;
    collect(QAccessible::queryAccessibleInterface(&window_), faces);
    for (QAccessibleInterface* face : faces) {
      auto* widget = qobject_cast<QWidget*>(face->object());
      // Menus have keys of their own.
      if (!widget || qobject_cast<QMenuBar*>(widget) || !widget->isVisible() ||
          !widget->isEnabled()) {
        continue;
      }
      // An exclusive group is one stop of Tab; arrows go on from there.
      const auto* button = qobject_cast<QAbstractButton*>(widget);
      const bool partOfGroup = button && button->autoExclusive() && !button->isChecked();
      EXPECT_TRUE(partOfGroup || there.contains(widget))
          << (where + ": " + describe(face)).toStdString();
    }
    EXPECT_GT(there.size(), 3) << where.toStdString();
  }

  /// Does something for every place, and in the record for every tab of the panel and under the
  /// rows.
  void inEveryPlace(const std::function<void(const QString&)>& does) {
    for (QAction* place : window_.places()->actions()) {
      place->trigger();
      QCoreApplication::processEvents();
      if (window_.places()->place() != page_) {
        does(place->iconText());
        continue;
      }
      for (auto* tabs : page_->findChildren<QTabWidget*>()) {
        for (int tab = 0; tab < tabs->count(); ++tab) {
          tabs->setCurrentIndex(tab);
          QCoreApplication::processEvents();
          does(place->iconText() + ", " + tabs->tabText(tab));
        }
        tabs->setCurrentIndex(0);
      }
    }
    window_.places()->goTo(page_);
  }
};

TEST_F(Accessible, EveryControlOfEveryPlaceHasANameAndARole) {
  EXPECT_GT(checkNames(&window_, "welcome"), 0);
  open(sample("ferry-terminal.resuslog"));
  int seen = 0;
  inEveryPlace([&](const QString& where) { seen += checkNames(&window_, where); });
  EXPECT_GT(seen, 40);
  QSignalSpy shown(window_.comparePage(), &ComparePage::shown);
  window_.comparePage()->openBeside(
      {sample("drill-evening-1.resuslog"), sample("drill-evening-2.resuslog")});
  ASSERT_TRUE(shown.wait(kPatience));
  window_.comparePage()->go()->trigger();
  QCoreApplication::processEvents();
  EXPECT_GT(checkNames(&window_, "side by side"), 5);
  open(fileWith("unknown.resuslog", "not a log\n"));
  EXPECT_GT(checkNames(&window_, "refusal"), 0);
}

TEST_F(Accessible, EveryControlIsReachedByKeys) {
  open(sample("ferry-terminal.resuslog"));
  inEveryPlace([&](const QString& where) { checkReach(where); });
  QSignalSpy shown(window_.comparePage(), &ComparePage::shown);
  window_.comparePage()->openBeside(
      {sample("drill-evening-1.resuslog"), sample("drill-evening-2.resuslog")});
  ASSERT_TRUE(shown.wait(kPatience));
  window_.comparePage()->go()->trigger();
  QCoreApplication::processEvents();
  checkReach("side by side");
}

TEST_F(Accessible, EveryControlOfEveryDialogHasANameAndARole) {
  open(sample("ferry-terminal.resuslog"));
  showKeys(window_.menuBar(), &window_);
  showAbout(&window_);
  int seen = 0;
  for (QDialog* dialog : window_.findChildren<QDialog*>()) {
    if (dialog->isVisible()) {
      EXPECT_FALSE(dialog->windowTitle().isEmpty());
      seen += checkNames(dialog, dialog->windowTitle());
      dialog->close();
    }
  }
  EXPECT_GE(seen, 3);
  // A dialog with an event loop of its own: looked at from within it.
  int inside = 0;
  QTimer::singleShot(0, &window_, [&] {
    QWidget* modal = QApplication::activeModalWidget();
    ASSERT_NE(modal, nullptr);
    inside = checkNames(modal, modal->windowTitle());
    modal->close();
  });
  for (QAction* action : window_.findChildren<QAction*>()) {
    if (action->shortcut() == QKeySequence("Ctrl+T, 0")) {
      action->trigger();
    }
  }
  EXPECT_GE(inside, 3);
}

TEST_F(Accessible, RowsAndWavesSayInWordsWhatTheyShow) {
  open(sample("ferry-terminal.resuslog"));
  for (QWidget* picture : {static_cast<QWidget*>(page_->rows()->canvas()),
                           static_cast<QWidget*>(page_->waves()->plot())}) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(picture);
    ASSERT_NE(face, nullptr);
    EXPECT_EQ(face->role(), face->childCount() > 0 ? QAccessible::List : QAccessible::Graphic);
    EXPECT_GT(face->text(QAccessible::Description).size(), 60)
        << picture->metaObject()->className();
  }
  const QString rows = page_->rows()->canvas()->asText();
  EXPECT_TRUE(rows.contains("shock 4")) << rows.toStdString();
  EXPECT_TRUE(rows.contains("circulation returned")) << rows.toStdString();
}

/// No key is the beginning of another: the window could not tell which of the two is meant.
TEST_F(Accessible, NoKeyIsTheBeginningOfAnother) {
  QList<std::pair<QKeySequence, QString>> keys;
  for (const QAction* action : window_.findChildren<QAction*>()) {
    for (const QKeySequence& key : action->shortcuts()) {
      keys.append({key, action->text()});
    }
  }
  EXPECT_GT(keys.size(), 50);
  for (const auto& [one, does] : keys) {
    for (const auto& [other, doesOther] : keys) {
      EXPECT_NE(one.matches(other), QKeySequence::PartialMatch)
          << one.toString().toStdString() << " (" << does.toStdString() << ") begins "
          << other.toString().toStdString() << " (" << doesOther.toStdString() << ")";
    }
  }
}

} // namespace
} // namespace afterbeat::window
