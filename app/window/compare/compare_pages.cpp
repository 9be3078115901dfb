#include "app/window/compare/compare_pages.h"

#include "app/window/look/progress_line.h"

#include <QAction>
#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

namespace afterbeat::window {

CompareEmpty::CompareEmpty(QAction* beside, const QList<QAction*>& ways,
                           const QList<QAction*>& recent, QWidget* parent)
    : Page(parent), recentActions_(recent) {
  addHeading(tr("Compare"));
  addSentence(tr("Lay two to eight recordings side by side: two drills of one evening, or the same "
                 "team a year apart. Choose their files, or mark them in the list of a folder."));
  column_->addWidget(buttonFor(beside, this), 0, Qt::AlignLeft);
  addSentence(tr("Or look at a whole season of them: where time is lost, whether it is getting "
                 "better, and which record to look at next. Files are only read, never changed; "
                 "an archive keeps their figures for the next time. Recordings "
                 "and folders can also be dropped here."));
  for (QAction* way : ways) {
    column_->addWidget(buttonFor(way, this), 0, Qt::AlignLeft);
  }
  recentHeading_ = addSentence(tr("Archives opened lately:"));
  for (QAction* action : recentActions_) {
    auto* button = new QPushButton(this);
    column_->addWidget(button, 0, Qt::AlignLeft);
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    recent_ << button;
  }
  showRecent();
}

void CompareEmpty::showRecent() {
  bool any = false;
  for (qsizetype i = 0; i < recent_.size(); ++i) {
    const QAction* action = recentActions_[i];
    recent_[i]->setText(action->text());
    recent_[i]->setToolTip(action->toolTip());
    recent_[i]->setAccessibleName(tr("Open %1").arg(action->toolTip()));
    recent_[i]->setProperty("path", action->toolTip());
    recent_[i]->setVisible(action->isEnabled());
    any = any || action->isEnabled();
  }
  recentHeading_->setVisible(any);
}

void CompareEmpty::showEvent(QShowEvent* event) {
  showRecent();
  Page::showEvent(event);
}

BesideEmpty::BesideEmpty(QWidget* parent) : Page(parent), latest_(new QPushButton(this)) {
  addHeading(tr("Nothing lies side by side yet"));
  addSentence(tr("In Records, mark two to eight lines (Ctrl or Shift and a click, or Shift and the "
                 "arrows), then press Shift+C."));
  latest_->setText(tr("Lay the two latest of the same kind and site side by side"));
  latest_->setAccessibleName(latest_->text());
  column_->addWidget(latest_, 0, Qt::AlignLeft);
  setFocusProxy(latest_);
  connect(latest_, &QPushButton::clicked, this, &BesideEmpty::latestWanted);
}

CompareBusy::CompareBusy(QAction* stop, QWidget* parent)
    : Page(parent), bar_(new ProgressLine(this)), tick_(new QTimer(this)) {
  addHeading(tr("Reading"));
  sentence_ = addSentence({});
  bar_->setRange(0, 1000);
  bar_->setTextVisible(false);
  bar_->setAccessibleName(tr("How much was read"));
  column_->addWidget(bar_);
  column_->addWidget(buttonFor(stop, this), 0, Qt::AlignLeft);
  tick_->setInterval(50);
  connect(tick_, &QTimer::timeout, this, &CompareBusy::refresh);
}

void CompareBusy::refresh() {
  if (state_) {
    const State state = state_();
    sentence_->setText(state.sentence);
    bar_->setValue(static_cast<int>(state.share * 1000));
  }
}

void CompareBusy::showEvent(QShowEvent* event) {
  Page::showEvent(event);
  refresh();
  tick_->start();
}

void CompareBusy::hideEvent(QHideEvent* event) {
  Page::hideEvent(event);
  tick_->stop();
}

} // namespace afterbeat::window
