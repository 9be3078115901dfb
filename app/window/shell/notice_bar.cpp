#include "app/window/shell/notice_bar.h"

#include "app/window/look/look.h"
#include "app/window/problems/problems_model.h"

#include <QAction>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace afterbeat::window {

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent), sign_(new QLabel(this)), text_(new QLabel(this)),
      open_(new QToolButton(this)), folder_(new QToolButton(this)),
      dismiss_(new QAction(tr("Take the message away"), this)) {
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::AlternateBase);
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::PlainText);
  text_->setAccessibleName(tr("Message"));
  dismiss_->setShortcut(Qt::SHIFT | Qt::Key_Escape);
  connect(dismiss_, &QAction::triggered, this, &QWidget::hide);
  open_->setText(tr("Open it"));
  folder_->setText(tr("Show the folder"));
  connect(open_, &QToolButton::clicked, this, [this] { emit wanted(path_); });
  connect(folder_, &QToolButton::clicked, this,
          [this] { emit wanted(QFileInfo(path_).absolutePath()); });
  auto* button = new QToolButton(this);
  button->setText(tr("Understood"));
  button->setAccessibleName(dismiss_->text());
  connect(button, &QToolButton::clicked, dismiss_, &QAction::trigger);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(16, 6, 12, 6);
  layout->addWidget(sign_);
  layout->addWidget(text_, 1);
  for (QToolButton* one : {open_, folder_, button}) {
    one->setFocusPolicy(Qt::StrongFocus);
    layout->addWidget(one);
  }
  hide();
}

void NoticeBar::say(const QString& sentence, Kind kind) {
  kind_ = kind;
  path_.clear();
  open_->hide();
  folder_->hide();
  showSign();
  text_->setText(sentence);
  text_->setAccessibleDescription(sentence);
  show();
}

void NoticeBar::sayWritten(const QString& sentence, const QString& path) {
  say(sentence, Kind::done);
  path_ = path;
  open_->show();
  folder_->show();
}

QString NoticeBar::text() const {
  return text_->text();
}

void NoticeBar::showSign() {
  const Look look = Look::of(palette(), font());
  const int size = fontMetrics().height();
  if (kind_ == Kind::done) {
    sign_->setText(QStringLiteral("✓"));
    return;
  }
  const bool problem = kind_ == Kind::problem;
  sign_->setPixmap(severityIcon(problem ? Severity::warning : Severity::info,
                                problem ? look.attention : look.ink, size)
                       .pixmap(size, size));
}

void NoticeBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    showSign();
  }
}

} // namespace afterbeat::window
