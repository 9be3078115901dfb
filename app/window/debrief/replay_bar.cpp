#include "app/window/debrief/replay_bar.h"

#include "app/window/debrief/replay.h"
#include "app/window/look/elided_label.h"
#include "app/window/look/look.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QToolButton>

namespace afterbeat::window {

namespace {

QToolButton* buttonFor(QAction* action, const QString& name, QWidget* parent) {
  auto* button = new QToolButton(parent);
  button->setCheckable(true);
  button->setAutoRaise(false);
  // A click leaves the keyboard where it was, so that Space goes on playing and pausing.
  button->setFocusPolicy(Qt::TabFocus);
  button->setAccessibleName(name);
  button->setToolTip(
      QStringLiteral("%1 (%2)").arg(name, action->shortcut().toString(QKeySequence::NativeText)));
  QObject::connect(button, &QToolButton::clicked, action, &QAction::trigger);
  return button;
}

QString plain(const QAction* action) {
  return QString(action->text()).remove(QLatin1Char('&'));
}

} // namespace

ReplayBar::ReplayBar(Replay& replay, QWidget* parent)
    : QWidget(parent), replay_(replay),
      play_(buttonFor(replay.playAction(), plain(replay.playAction()), this)),
      clock_(new QLabel(this)), now_(new ElidedLabel(this)) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(16, 4, 16, 4);
  layout->setSpacing(6);
  layout->addWidget(play_);
  for (QAction* action : replay_.speedActions()) {
    auto* button = buttonFor(action, plain(action), this);
    button->setText(action->iconText());
    speeds_ << button;
    connect(button, &QToolButton::toggled, this, [this, button] { markSpeed(button); });
    layout->addWidget(button);
  }
  layout->addSpacing(12);
  layout->addWidget(clock_);
  layout->addSpacing(8);
  layout->addWidget(now_, 1);
  clock_->setAccessibleName(tr("Time of the replay"));
  clock_->setTextFormat(Qt::PlainText);
  now_->setAccessibleName(tr("What is happening"));
  connect(&replay_, &Replay::changed, this, &ReplayBar::follow);
  restyle();
  follow();
}

void ReplayBar::follow() {
  const papers::Now now = replay_.now();
  clock_->setText(now.clock);
  now_->setWhole(now.words);
  play_->setChecked(replay_.playing());
  play_->setText(replay_.playing() ? tr("❚❚ Pause") : tr("▶ Play"));
  for (qsizetype i = 0; i < speeds_.size(); ++i) {
    const bool chosen = Replay::kSpeeds[static_cast<std::size_t>(i)] == replay_.speed();
    if (chosen != speeds_[i]->isChecked()) {
      speeds_[i]->setChecked(chosen);
    }
  }
}

QString ReplayBar::asText() const {
  return QStringLiteral("%1  %2").arg(clock_->text(), now_->whole());
}

/// The chosen speed is told by weight and by colour, in the dark too.
void ReplayBar::markSpeed(QToolButton* button) {
  const Look look = Look::of(palette(), font());
  QFont type = font();
  type.setBold(button->isChecked());
  button->setFont(type);
  QPalette colours = palette();
  if (button->isChecked()) {
    colours.setColor(QPalette::Button, look.accent);
    colours.setColor(QPalette::ButtonText, look.paper);
  }
  button->setPalette(colours);
}

void ReplayBar::restyle() {
  QFont large = font();
  large.setPointSizeF(large.pointSizeF() * 1.7);
  clock_->setFont(large);
  large.setBold(true);
  now_->setFont(large);
  // Room for the longer of both words: nothing moves when it starts.
  const QFontMetrics metrics(font());
  play_->setMinimumWidth(
      std::max(metrics.horizontalAdvance(tr("❚❚ Pause")), metrics.horizontalAdvance(tr("▶ Play"))) +
      24);
  play_->setFont(font());
  for (QToolButton* button : speeds_) {
    markSpeed(button);
    button->setMinimumWidth(metrics.horizontalAdvance(QStringLiteral("8×")) + 20);
  }
}

void ReplayBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) {
    restyle();
  }
}

} // namespace afterbeat::window
