#include "app/window/debrief/replay.h"

#include "app/window/look/look.h"
#include "app/window/session/selection.h"
#include "app/window/session/session.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QKeyEvent>
#include <QTimer>

#include <algorithm>
#include <cmath>

namespace afterbeat::window {

namespace {

constexpr int kFrameMs = 33;

} // namespace

Replay::Replay(Session& session, Selection& selection, QObject* parent, Clock clock)
    : QObject(parent), session_(session), selection_(selection), clock_(std::move(clock)),
      timer_(new QTimer(this)) {
  if (!clock_) {
    clock_ = [] { return std::chrono::steady_clock::now().time_since_epoch(); };
  }
  timer_->setInterval(kFrameMs);
  timer_->setTimerType(Qt::PreciseTimer);
  connect(timer_, &QTimer::timeout, this, &Replay::tick);
  makeActions();
  connect(&session_, &Session::recordChanged, this, [this] {
    last_.reset();
    selection_.setCursor(std::nullopt);
    setPlaying(false);
  });
  connect(&session_, &Session::figuresChanged, this, [this] {
    teller_ = std::make_unique<papers::NowTeller>(session_.record(), session_.figures(), words());
    emit changed();
  });
  connect(&session_, &Session::stateChanged, this, [this] {
    if (!session_.hasRecord()) {
      setPlaying(false);
    }
  });
  connect(&selection_, &Selection::cursorChanged, this, &Replay::follow);
  qApp->installEventFilter(this);
}

Replay::~Replay() = default;

void Replay::makeActions() {
  const auto add = [this](const QString& text, const QKeySequence& key) {
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    actions_ << action;
    return action;
  };
  QAction* play = add(tr("&Play or pause the replay"), Qt::Key_Space);
  play->setCheckable(true);
  connect(play, &QAction::triggered, this, &Replay::setPlaying);
  auto* group = new QActionGroup(this);
  for (const int speed : kSpeeds) {
    QAction* action = add(speed == 1 ? tr("Replay at the speed of the record")
                                     : tr("Replay %1 times as fast").arg(speed),
                          QKeySequence(QStringLiteral("Alt+%1").arg(speed)));
    action->setIconText(tr("%1×").arg(speed));
    action->setCheckable(true);
    action->setChecked(speed == speed_);
    group->addAction(action);
    connect(action, &QAction::triggered, this, [this, speed] { setSpeed(speed); });
  }
  connect(add(tr("&Next item of the debrief, or next pause"), Qt::Key_PageDown),
          &QAction::triggered, this, [this] { step(true); });
  connect(add(tr("Pre&vious item of the debrief, or previous pause"), Qt::Key_PageUp),
          &QAction::triggered, this, [this] { step(false); });
}

Time Replay::begin() const {
  return session_.hasRecord() && session_.figures().window ? session_.figures().window->begin
                                                           : selection_.extent().begin;
}

/// The end of the resuscitation window; from there on, of the record.
Time Replay::end() const {
  const bool inWindow = session_.hasRecord() && session_.figures().window &&
                        position() < session_.figures().window->end;
  return inWindow ? session_.figures().window->end : selection_.extent().end;
}

Time Replay::position() const {
  return selection_.cursor().value_or(last_.value_or(begin()));
}

papers::Now Replay::now() const {
  return teller_ && session_.hasRecord() ? teller_->at(position()) : papers::Now{};
}

void Replay::anchor() {
  anchorClock_ = clock_();
  anchorTime_ = position();
}

void Replay::setPlaying(bool playing) {
  const bool can = playing && session_.hasRecord();
  if (can && !playing_) {
    moving_ = true;
    selection_.setCursor(position() >= selection_.extent().end ? begin() : position());
    moving_ = false;
    keepInView(position());
    anchor();
    timer_->start();
  } else if (!can) {
    timer_->stop();
  }
  playing_ = can;
  playAction()->setChecked(playing_);
  emit changed();
}

void Replay::setSpeed(int speed) {
  if (playing_) {
    tick();
    anchor();
  }
  speed_ = speed;
  for (std::size_t i = 0; i < kSpeeds.size(); ++i) {
    actions_[static_cast<qsizetype>(i) + 1]->setChecked(kSpeeds[i] == speed);
  }
  emit changed();
}

void Replay::tick() {
  if (!playing_) {
    return;
  }
  const auto passed = std::chrono::duration_cast<Duration>(clock_() - anchorClock_) * speed_;
  const Time last = end();
  const Time t = std::min(anchorTime_ + passed, last);
  moving_ = true;
  selection_.setCursor(t);
  moving_ = false;
  keepInView(t);
  if (t == last) {
    setPlaying(false);
  } else {
    emit changed();
  }
}

/// Somebody else moved the cursor: go on from there.
void Replay::follow() {
  if (selection_.cursor()) {
    last_ = selection_.cursor();
  }
  if (moving_) {
    return;
  }
  if (playing_ && selection_.cursor()) {
    anchor();
  }
  emit changed();
}

void Replay::keepInView(Time t) {
  const Interval& shown = selection_.stretch();
  const Duration length = shown.length();
  if (t < shown.begin + length / 20 || t > shown.begin + length * 9 / 10) {
    // A page further: less unrest than waves that run all the time.
    const Time from = t - length / 10;
    selection_.setStretch({from, from + length});
  }
}

void Replay::step(bool forward) {
  if (!session_.hasRecord() || (steps_ && steps_(forward))) {
    return;
  }
  const std::vector<Pause>& pauses = session_.figures().pauses;
  const Time here = position();
  const auto after = [](const Pause& pause, Time t) { return pause.stretch.begin > t; };
  const Pause* target = nullptr;
  if (forward) {
    const auto next = std::find_if(pauses.begin(), pauses.end(),
                                   [&](const Pause& pause) { return after(pause, here); });
    target = next == pauses.end() ? nullptr : &*next;
  } else {
    const auto before = std::find_if(pauses.rbegin(), pauses.rend(), [&](const Pause& pause) {
      return pause.stretch.begin < here;
    });
    target = before == pauses.rend() ? nullptr : &*before;
  }
  if (target != nullptr) {
    selection_.lookAtAll(target->stretch);
    selection_.setCursor(target->stretch.begin);
  }
}

bool Replay::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    // A button that has the keyboard is pressed by Space, a list scrolls by its own keys.
    // A choice that is made already has no use for Space.
    const auto key = static_cast<QKeyEvent*>(event)->key();
    const auto* button = qobject_cast<QAbstractButton*>(watched);
    const bool own = (key == Qt::Key_Space && button != nullptr &&
                      !(button->autoExclusive() && button->isChecked())) ||
                     ((key == Qt::Key_PageDown || key == Qt::Key_PageUp) &&
                      static_cast<QKeyEvent*>(event)->modifiers() == Qt::NoModifier &&
                      qobject_cast<QAbstractItemView*>(watched));
    if (own) {
      event->accept();
      return true;
    }
  }
  return QObject::eventFilter(watched, event);
}

} // namespace afterbeat::window
