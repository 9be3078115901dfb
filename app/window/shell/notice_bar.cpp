#include "app/window/shell/notice_bar.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace afterbeat::window {

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent), text_(new QLabel(this)),
      dismiss_(new QAction(tr("Take the message away"), this)) {
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::AlternateBase);
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::PlainText);
  text_->setAccessibleName(tr("Message"));
  dismiss_->setShortcut(Qt::SHIFT | Qt::Key_Escape);
  connect(dismiss_, &QAction::triggered, this, &QWidget::hide);
  auto* button = new QToolButton(this);
  button->setText(tr("Understood"));
  button->setAccessibleName(dismiss_->text());
  connect(button, &QToolButton::clicked, dismiss_, &QAction::trigger);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(16, 6, 12, 6);
  layout->addWidget(text_, 1);
  layout->addWidget(button);
  hide();
}

void NoticeBar::say(const QString& sentence) {
  text_->setText(sentence);
  text_->setAccessibleDescription(sentence);
  show();
}

QString NoticeBar::text() const {
  return text_->text();
}

} // namespace afterbeat::window
