#include "app/window/shell/pages.h"

#include "app/window/look/progress_line.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

namespace afterbeat::window {

namespace {

constexpr int kRecentShown = 4;

} // namespace

QPushButton* buttonFor(QAction* action, QWidget* parent) {
  const QString key = action->shortcut().toString(QKeySequence::NativeText);
  auto* button = new QPushButton(
      key.isEmpty() ? action->text() : QStringLiteral("%1   (%2)").arg(action->text(), key),
      parent);
  button->setAccessibleName(action->text());
  QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
  return button;
}

Page::Page(QWidget* parent, int columnWidth) : QWidget(parent) {
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  auto* holder = new QWidget(this);
  holder->setMaximumWidth(columnWidth);
  auto* column = new QVBoxLayout(holder);
  column->setSpacing(12);
  column_ = column;
  auto* across = new QHBoxLayout;
  across->addStretch(1);
  across->addWidget(holder, 8);
  across->addStretch(1);
  auto* down = new QVBoxLayout(this);
  down->addStretch(2);
  down->addLayout(across);
  down->addStretch(3);
}

QLabel* Page::addHeading(const QString& text) {
  heading_ = addSentence(text);
  restyle();
  return heading_;
}

QLabel* Page::addSentence(const QString& text) {
  auto* label = new QLabel(text, this);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  column_->addWidget(label);
  return label;
}

void Page::restyle() {
  if (heading_) {
    QFont large = font();
    large.setBold(true);
    large.setPointSizeF(large.pointSizeF() * 1.6);
    heading_->setFont(large);
  }
}

void Page::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    restyle();
  }
}

WelcomePage::WelcomePage(QAction* open, QAction* openFolder, QAction* withoutRecording,
                         QAction* compare, QWidget* parent)
    : Page(parent) {
  addHeading(tr("Open a recording"));
  addSentence(tr("Drop a file or the device's card folder on this window, or open one: an event "
                 "log (.resuslog), a WFDB record "
                 "(.hea), or an observer's notes (.csv)."));
  column_->addWidget(buttonFor(open, this), 0, Qt::AlignLeft);
  column_->addWidget(buttonFor(openFolder, this), 0, Qt::AlignLeft);
  addSentence(tr("The file is only read, never changed. You then see the whole rescue, its figures "
                 "with their working, and the handover sheet is one key away."));
  addSentence(tr("There is no recording? Type what the device or people said and print the same "
                 "sheet."));
  column_->addWidget(buttonFor(withoutRecording, this), 0, Qt::AlignLeft);
  addSentence(tr("There are many? Lay some side by side, or look at a whole season of them."));
  column_->addWidget(buttonFor(compare, this), 0, Qt::AlignLeft);
  recentHeading_ = addSentence(tr("Opened lately:"));
  for (int i = 0; i < kRecentShown; ++i) {
    auto* button = new QPushButton(this);
    column_->addWidget(button, 0, Qt::AlignLeft);
    connect(button, &QPushButton::clicked, this,
            [this, button] { emit openRecent(button->property("path").toString()); });
    recent_ << button;
  }
  showRecent({});
}

void WelcomePage::showRecent(const QStringList& paths) {
  recentHeading_->setVisible(!paths.isEmpty());
  for (qsizetype i = 0; i < recent_.size(); ++i) {
    recent_[i]->setVisible(i < paths.size());
    if (i < paths.size()) {
      QString name = QFileInfo(paths[i]).fileName();
      recent_[i]->setText(name.replace(QLatin1Char('&'), QStringLiteral("&&")));
      recent_[i]->setAccessibleName(tr("Open %1").arg(paths[i]));
      recent_[i]->setToolTip(paths[i]);
      recent_[i]->setProperty("path", paths[i]);
    }
  }
}

LoadingPage::LoadingPage(Session& session, QAction* stop, QWidget* parent)
    : Page(parent), session_(session), bar_(new ProgressLine(this)), tick_(new QTimer(this)) {
  addHeading(tr("Reading"));
  name_ = addSentence({});
  bar_->setRange(0, 1000);
  bar_->setTextVisible(false);
  bar_->setAccessibleName(tr("How much of the file was read"));
  column_->addWidget(bar_);
  share_ = addSentence({});
  column_->addWidget(buttonFor(stop, this), 0, Qt::AlignLeft);
  tick_->setInterval(50);
  connect(tick_, &QTimer::timeout, this, [this] {
    bar_->setValue(static_cast<int>(session_.progress() * 1000));
    const auto size = static_cast<double>(QFileInfo(session_.path()).size());
    share_->setText(
        tr("%1 of %2 were read")
            .arg(locale().formattedDataSize(static_cast<qint64>(size * session_.progress())),
                 locale().formattedDataSize(static_cast<qint64>(size))));
  });
}

void LoadingPage::showEvent(QShowEvent* event) {
  Page::showEvent(event);
  name_->setText(QFileInfo(session_.path()).fileName());
  tick_->start();
}

void LoadingPage::hideEvent(QHideEvent* event) {
  Page::hideEvent(event);
  tick_->stop();
}

RefusalPage::RefusalPage(Session& session, const QList<QAction*>& madeUp,
                         const QList<QAction*>& instead, QWidget* parent)
    : Page(parent), session_(session) {
  addHeading(tr("This file cannot be shown"));
  name_ = addSentence({});
  happened_ = addSentence({});
  kept_ = addSentence({});
  next_ = addSentence({});
  for (QAction* action : madeUp) {
    anyway_ << buttonFor(action, this);
    column_->addWidget(anyway_.back(), 0, Qt::AlignLeft);
  }
  for (QAction* action : instead) {
    column_->addWidget(buttonFor(action, this), 0, Qt::AlignLeft);
  }
  connect(&session_, &Session::stateChanged, this, &RefusalPage::refresh);
}

void RefusalPage::refresh() {
  if (session_.state() != Session::State::refused) {
    return;
  }
  const Refused& refused = session_.refused();
  name_->setText(session_.path());
  happened_->setText(refused.happened);
  kept_->setText(refused.kept);
  next_->setText(refused.next);
  for (QPushButton* button : anyway_) {
    button->setVisible(refused.mayMakeUpHeader);
  }
}

QString RefusalPage::asText() const {
  return QStringList{name_->text(), happened_->text(), kept_->text(), next_->text()}.join(
      QLatin1Char('\n'));
}

} // namespace afterbeat::window
