#include "app/window/look/tour.h"

#include "app/window/compare/chart_view.h"
#include "app/window/compare/compare_page.h"
#include "app/window/compare/stand_out_view.h"
#include "app/window/handover/sheet_preview.h"
#include "app/window/session/session.h"
#include "app/window/shell/main_window.h"
#include "app/window/shell/record_page.h"
#include "app/window/signals/suppressed_ecg.h"
#include "app/window/waves/waves_view.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPixmap>
#include <QScreen>
#include <QThreadPool>

#include <algorithm>
#include <cstdio>

namespace afterbeat::window {

namespace {

constexpr int kTickMs = 15;
/// A step that takes longer than this many ticks is a failure.
constexpr int kPatience = 2000;
/// So many equal pictures in a row are a screen at rest.
constexpr int kEqualPictures = 3;
constexpr int kFailed = 4;

/// What is in front of the window: a menu or a dialog; else nothing.
QWidget* inFront() {
  if (QWidget* popup = QApplication::activePopupWidget()) {
    return popup;
  }
  for (QWidget* widget : QApplication::topLevelWidgets()) {
    if (widget->isVisible() && qobject_cast<QDialog*>(widget)) {
      return widget;
    }
  }
  return nullptr;
}

} // namespace

Tour::Tour(MainWindow& window, const QString& script, QObject* parent)
    : QObject(parent), window_(window) {
  QFile file(script);
  if (file.open(QIODevice::ReadOnly)) {
    steps_ = QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'));
  }
  // A blinking cursor never comes to rest.
  QApplication::setCursorFlashTime(0);
  connect(&window_, &MainWindow::pictureComplete, this, [this] { ++pictures_; });
  connect(&window_.session(), &Session::figuresChanged, this, [this] { ++figures_; });
  connect(&tick_, &QTimer::timeout, this, &Tour::next);
  tick_.start(kTickMs);
}

void Tour::next() {
  if (steps_.isEmpty()) {
    tick_.stop();
    QThreadPool::globalInstance()->waitForDone();
    QApplication::exit(0);
    return;
  }
  const QString line = steps_.front().trimmed();
  const QString word = line.section(QLatin1Char(' '), 0, 0);
  const QString argument = line.section(QLatin1Char(' '), 1);
  if (!word.isEmpty() && !word.startsWith(QLatin1Char('#'))) {
    if (!begun_) {
      pictures_ = figures_ = tries_ = atRest_ = 0;
      last_ = {};
    }
    const bool done = step(word, argument);
    begun_ = true;
    if (!done) {
      if (++tries_ > kPatience) {
        fail(line);
      }
      return;
    }
  }
  begun_ = false;
  steps_.removeFirst();
}

bool Tour::step(const QString& word, const QString& argument) {
  const QHash<QString, bool (Tour::*)(const QString&)> known{
      {"size", &Tour::resize},        {"open", &Tour::open},
      {"do", &Tour::trigger},         {"click", &Tour::click},
      {"press", &Tour::press},        {"figures", &Tour::triggerAndWait},
      {"focus", &Tour::focus},        {"menu", &Tour::openMenu},
      {"answer", &Tour::answer},      {"shot", &Tour::shoot},
      {"await", &Tour::await},        {"glance", &Tour::glance},
      {"season", &Tour::seasonShown}, {"latest", &Tour::latestShown},
  };
  if (word == QLatin1String("back")) {
    return goBack();
  }
  if (word == QLatin1String("start")) {
    window_.openFile(argument);
    return true;
  }
  const auto found = known.constFind(word);
  if (found == known.constEnd()) {
    fail(word);
    return true;
  }
  return (this->**found)(argument);
}

void Tour::fail(const QString& why) {
  std::fprintf(stderr, "The tour stopped at: %s\n", qUtf8Printable(why));
  tick_.stop();
  steps_.clear();
  // Dialogs that run an event loop of their own must not keep the program.
  QMetaObject::invokeMethod(
      qApp, [] { std::_Exit(kFailed); }, Qt::QueuedConnection);
}

bool Tour::resize(const QString& size) {
  const QSize wanted(size.section(QLatin1Char(' '), 0, 0).toInt(),
                     size.section(QLatin1Char(' '), 1, 1).toInt());
  window_.move(0, 0);
  window_.resize(wanted);
  return window_.size() == wanted && window_.pos() == QPoint(0, 0);
}

bool Tour::open(const QString& file) {
  if (!begun_) {
    window_.openFile(file);
  }
  return pictures_ > 0;
}

QAction* Tour::actionFor(const QString& key) const {
  const QKeySequence wanted(key);
  for (QAction* action : window_.findChildren<QAction*>()) {
    if (action->shortcuts().contains(wanted)) {
      return action;
    }
  }
  return nullptr;
}

bool Tour::await(const QString& name) {
  const QList<QWidget*> all = QApplication::allWidgets();
  return std::any_of(all.begin(), all.end(), [&](const QWidget* widget) {
    return widget->isVisible() && widget->metaObject()->className() == "afterbeat::window::" + name;
  });
}

bool Tour::trigger(const QString& key) {
  QAction* action = actionFor(key);
  if (!action || !action->isEnabled()) {
    return false;
  }
  // From the event loop, so that a dialog with a loop of its own does not hold up the steps.
  QMetaObject::invokeMethod(action, &QAction::trigger, Qt::QueuedConnection);
  return true;
}

bool Tour::triggerAndWait(const QString& key) {
  return begun_ ? figures_ > 0 : trigger(key) && figures_ > 0;
}

bool Tour::seasonShown(const QString& /*none*/) {
  const ComparePage* page = window_.comparePage();
  const SeasonDesk* desk = page->desk();
  const QWidget* view = page->current();
  const auto* chart = qobject_cast<const ChartView*>(view);
  const auto* list = qobject_cast<const StandOutView*>(view);
  return page->isVisible() && !desk->busy() && !desk->arranging() && !desk->onlyLatest() &&
         desk->arranged().source && (!chart || chart->upToDate()) && (!list || list->upToDate());
}

bool Tour::latestShown(const QString& /*none*/) {
  return window_.comparePage()->isVisible() && window_.comparePage()->desk()->onlyLatest();
}

bool Tour::click(const QString& name) {
  for (QWidget* top : QApplication::topLevelWidgets()) {
    for (QAbstractButton* button : top->findChildren<QAbstractButton*>()) {
      if (button->isVisible() && button->isEnabled() && button->accessibleName().startsWith(name)) {
        QMetaObject::invokeMethod(button, &QAbstractButton::click, Qt::QueuedConnection);
        return true;
      }
    }
  }
  return false;
}

bool Tour::press(const QString& key) {
  // On a display without a window manager no window is the active one.
  QWidget* there =
      QApplication::focusWidget() ? QApplication::focusWidget() : window_.focusWidget();
  if (!there) {
    return false;
  }
  const QKeyCombination combination = QKeySequence(key)[0];
  for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
    QApplication::postEvent(
        there, new QKeyEvent(type, combination.key(), combination.keyboardModifiers()));
  }
  return true;
}

bool Tour::focus(const QString& name) {
  for (QWidget* top : QApplication::topLevelWidgets()) {
    for (QWidget* widget : top->findChildren<QWidget*>()) {
      if (widget->isVisible() && widget->accessibleName().startsWith(name)) {
        widget->setFocus(Qt::ShortcutFocusReason);
        return true;
      }
    }
  }
  return false;
}

bool Tour::openMenu(const QString& numbers) {
  const int bar = numbers.section(QLatin1Char(' '), 0, 0).toInt() - 1;
  const int sub = numbers.section(QLatin1Char(' '), 1, 1).toInt() - 1;
  QAction* entry = window_.menuBar()->actions().value(bar);
  if (!entry) {
    return false;
  }
  if (QApplication::activePopupWidget() != entry->menu()) {
    window_.menuBar()->setActiveAction(entry);
    return sub < 0;
  }
  QList<QAction*> submenus;
  for (QAction* action : entry->menu()->actions()) {
    if (action->menu()) {
      submenus << action;
    }
  }
  if (sub >= submenus.size()) {
    return false;
  }
  const QRect place = entry->menu()->actionGeometry(submenus[sub]);
  entry->menu()->setActiveAction(submenus[sub]);
  submenus[sub]->menu()->popup(entry->menu()->mapToGlobal(place.topRight()));
  return true;
}

bool Tour::answer(const QString& file) {
  auto* dialog = qobject_cast<QFileDialog*>(inFront());
  if (!dialog) {
    return false;
  }
  auto* name = dialog->findChild<QLineEdit*>();
  if (!name) {
    return false;
  }
  name->setText(file);
  QMetaObject::invokeMethod(
      dialog, [dialog] { static_cast<QDialog*>(dialog)->accept(); }, Qt::QueuedConnection);
  return true;
}

QImage Tour::screen() const {
  const QRect frame = window_.geometry();
  return window_.screen()
      ->grabWindow(0, frame.x(), frame.y(), frame.width(), frame.height())
      .toImage();
}

bool Tour::glance(const QString& file) {
  // After the tick in which it was asked for, so that what has just been shown is painted.
  if (tries_ < 2) {
    return false;
  }
  keep(file, screen());
  return true;
}

bool Tour::shoot(const QString& file) {
  const auto drawing = [](const SheetPreview* preview) {
    return preview->isVisible() && !preview->upToDate();
  };
  const auto previews = window_.findChildren<SheetPreview*>();
  if (std::any_of(previews.begin(), previews.end(), drawing) || window_.session().hintsAwaited() ||
      window_.recordPage()->waves()->suppressed().awaited()) {
    atRest_ = 0;
    return false;
  }
  const QImage now = screen();
  atRest_ = now == last_ ? atRest_ + 1 : 0;
  last_ = now;
  if (atRest_ < kEqualPictures) {
    return false;
  }
  keep(file, now);
  return true;
}

void Tour::keep(const QString& file, const QImage& picture) {
  QThreadPool::globalInstance()->start([picture, file] {
    if (!picture.save(file, "PNG", 90)) {
      std::fprintf(stderr, "Cannot write %s\n", qUtf8Printable(file));
    }
  });
}

bool Tour::goBack() {
  QWidget* front = inFront();
  if (!front) {
    return begun_;
  }
  if (auto* dialog = qobject_cast<QDialog*>(front)) {
    dialog->reject();
  } else {
    front->close();
  }
  return false;
}

} // namespace afterbeat::window
