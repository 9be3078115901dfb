/// What the window shows in another language, and in a longer one.
#include "tests/window/pseudo.h"
#include "tests/window/window_fixture.h"

#include "app/window/compare/compare_page.h"
#include "app/window/look/elided_label.h"
#include "app/window/shell/places_page.h"

#include <QAbstractButton>
#include <QAction>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTreeView>

namespace afterbeat::window {
namespace {

/// The language stands before the window is made.
struct WithPseudo {
  WithPseudo() { QCoreApplication::installTranslator(&language); }
  ~WithPseudo() { QCoreApplication::removeTranslator(&language); }
  PseudoLanguage language;
};

class LanguagesShown : public WithPseudo, public WindowTest {
protected:
  static bool isData(QString word) {
    static const QStringList data{"Afterbeat", "Ferry",   "terminal", "east",   "pier",
                                  "English",   "Deutsch", "Letter",   "Ctrl",   "Shift",
                                  "Alt",       "Esc",     "Home",     "End",    "PgUp",
                                  "PgDown",    "Left",    "Right",    "Return", "Space"};
    return data.contains(word);
  }

  /// A text of the window is in brackets but for numbers, keys and the record's own words.
  static void checkText(const QString& text, const std::string& where) {
    static const QRegularExpression words(QStringLiteral("\\p{L}{3,}"));
    static const QRegularExpression fileNames(QStringLiteral("\\S+\\.resuslog"));
    // What was published keeps its title.
    if (text.contains("et al.")) {
      return;
    }
    auto match = words.globalMatch(outsideOfBrackets(text).remove(fileNames));
    while (match.hasNext()) {
      const QString word = match.next().captured();
      EXPECT_TRUE(isData(word)) << where << ": “" << word.toStdString() << "” in “"
                                << text.toStdString() << "”";
    }
  }

  static std::string nameOf(const QWidget* widget) {
    return widget->metaObject()->className() + std::string(" in ") +
           (widget->parentWidget() ? widget->parentWidget()->metaObject()->className() : "");
  }

  void checkWords(const QString& where) {
    for (const QWidget* widget : window_.findChildren<QWidget*>()) {
      if (!widget->isVisible() || widget->objectName().startsWith("qt_")) {
        continue;
      }
      const std::string name = where.toStdString() + ": " + nameOf(widget);
      // The paths of files are data.
      if (!widget->property("path").isValid()) {
        checkText(widget->toolTip(), name + ", tooltip");
        checkText(widget->accessibleName(), name + ", accessible name");
      }
      if (const auto* elided = qobject_cast<const ElidedLabel*>(widget)) {
        checkText(elided->whole(), name);
      } else if (const auto* label = qobject_cast<const QLabel*>(widget)) {
        checkText(label->text(), name);
      } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
        checkText(button->text(), name);
      } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
        for (int i = 0; i < tabs->count(); ++i) {
          checkText(tabs->tabText(i), name);
        }
      } else if (const auto* tree = qobject_cast<const QTreeView*>(widget)) {
        const QAbstractItemModel& model = *tree->model();
        for (int group = 0; group < model.rowCount(); ++group) {
          const QModelIndex index = model.index(group, 0);
          checkText(index.data().toString(), name);
          for (int row = 0; row < model.rowCount(index); ++row) {
            checkText(model.index(row, 0, index).data().toString(), name);
          }
        }
      } else if (const auto* header = qobject_cast<const QHeaderView*>(widget)) {
        for (int i = 0; i < header->count() && header->orientation() == Qt::Horizontal; ++i) {
          checkText(header->model()->headerData(i, Qt::Horizontal).toString(), name);
        }
      }
    }
  }

  /// Labels and buttons have the room that they ask for.
  void checkRoom(const QString& where) {
    for (const QWidget* widget : window_.findChildren<QWidget*>()) {
      // What gives way by design says the whole in its tooltip.
      if (!widget->isVisible() || widget->objectName().startsWith("qt_") ||
          qobject_cast<const ElidedLabel*>(widget) || qobject_cast<const HeadlineCard*>(widget)) {
        continue;
      }
      const std::string name =
          where.toStdString() + ": " + nameOf(widget) + " “" + textOf(widget).toStdString() + "”";
      if (const auto* label = qobject_cast<const QLabel*>(widget);
          label && !label->text().isEmpty()) {
        if (label->wordWrap()) {
          const QRect needed = label->fontMetrics().boundingRect(
              QRect(0, 0, label->contentsRect().width(), QWIDGETSIZE_MAX),
              Qt::TextWordWrap | Qt::AlignLeft, label->text());
          EXPECT_GE(label->height() + 1, needed.height()) << name;
        } else {
          EXPECT_GE(label->width(), label->sizeHint().width()) << name;
        }
      } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget);
                 button && !button->text().isEmpty()) {
        EXPECT_GE(button->width() + 1, button->sizeHint().width()) << name;
        EXPECT_GE(button->height() + 1, button->sizeHint().height()) << name;
      }
      // And lie within what holds them.
      const bool isText = qobject_cast<const QLabel*>(widget) ||
                          (qobject_cast<const QAbstractButton*>(widget) &&
                           !qobject_cast<const QTabBar*>(widget->parentWidget()));
      if (isText) {
        EXPECT_TRUE(widget->parentWidget()->rect().contains(widget->geometry())) << name;
      }
    }
    EXPECT_GE(window_.width(), window_.minimumSizeHint().width()) << where.toStdString();
    EXPECT_GE(window_.height(), window_.minimumSizeHint().height()) << where.toStdString();
  }

  static QString textOf(const QWidget* widget) {
    const auto* label = qobject_cast<const QLabel*>(widget);
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    return label ? label->text() : button ? button->text() : QString();
  }

  /// Until a layout that changed another has settled as well (a scroll bar takes room from words).
  static void settle() {
    for (int i = 0; i < 4; ++i) {
      QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
      QCoreApplication::processEvents();
    }
  }

  void walk(const std::function<void(const QString&)>& does) {
    for (QAction* place : window_.places()->actions()) {
      place->trigger();
      settle();
      does(place->objectName());
      if (window_.places()->place() != page_) {
        continue;
      }
      for (auto* tabs : page_->findChildren<QTabWidget*>()) {
        for (int tab = 1; tab < tabs->count(); ++tab) {
          tabs->setCurrentIndex(tab);
          settle();
          does(place->objectName() + ", tab " + QString::number(tab));
        }
        tabs->setCurrentIndex(0);
      }
    }
    window_.places()->goTo(page_);
    QSignalSpy shown(window_.comparePage(), &ComparePage::shown);
    window_.comparePage()->openBeside(
        {sample("drill-evening-1.resuslog"), sample("drill-evening-2.resuslog")});
    ASSERT_TRUE(shown.wait(kPatience));
    window_.comparePage()->go()->trigger();
    settle();
    does("side by side");
    window_.places()->actions().front()->trigger();
  }

  static void checkMenu(const QMenu* menu) {
    for (const QAction* action : menu->actions()) {
      if (action->isSeparator()) {
        continue;
      }
      const QString text = QString(action->text()).remove('&');
      const bool ofRecord = text.contains(".resuslog");
      const bool ofLanguage = text == "English" || text == "Deutsch";
      if (!ofRecord && !ofLanguage) {
        checkText(text, "menu");
      }
      if (action->menu()) {
        checkMenu(action->menu());
      }
    }
  }
};

TEST_F(LanguagesShown, EveryWordOfTheWindowCanBeTranslated) {
  checkWords("welcome");
  open(sample("ferry-terminal.resuslog"));
  walk([this](const QString& where) { checkWords(where); });
  for (const QAction* entry : window_.menuBar()->actions()) {
    checkText(entry->text(), "menu bar");
    checkMenu(entry->menu());
  }
  open(fileWith("unknown.bin", "nothing of a log\n"));
  for (const QLabel* label : window_.refusalPage()->findChildren<QLabel*>()) {
    if (!label->text().contains('/')) {
      checkText(label->text(), "refusal");
    }
  }
}

TEST_F(LanguagesShown, NothingIsCutOffInALongerLanguage) {
  for (const QSize size : {QSize(1024, 640), QSize(1280, 720)}) {
    window_.resize(size);
    window_.session().close();
    settle();
    const QString wide = QString::number(size.width()) + " ";
    checkRoom(wide + "welcome");
    open(sample("ferry-terminal.resuslog"));
    ASSERT_EQ(window_.size(), size);
    walk([&](const QString& where) { checkRoom(wide + where); });
    open(fileWith("unknown.bin", "nothing of a log\n"));
    settle();
    checkRoom(wide + "refusal");
  }
}

} // namespace
} // namespace afterbeat::window
