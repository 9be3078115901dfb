#include "app/window/shell/incomplete_strip.h"

#include "app/window/figures/incomplete.h"
#include "app/window/look/look.h"
#include "app/window/problems/problem_words.h"
#include "app/window/problems/problems_model.h"
#include "app/window/session/session.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>

namespace afterbeat::window {

IncompleteStrip::IncompleteStrip(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), sign_(new QLabel(this)), text_(new QLabel(this)) {
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::Base);
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::PlainText);
  text_->setAccessibleName(tr("The recording is not whole"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(16, 5, 16, 5);
  layout->addWidget(sign_);
  layout->addWidget(text_, 1);
  connect(&session_, &Session::figuresChanged, this, &IncompleteStrip::refresh);
  restyle();
  hide();
}

QString IncompleteStrip::text() const {
  return text_->text();
}

void IncompleteStrip::refresh() {
  const Incomplete what = incompleteOf(session_.record(), session_.figures());
  text_->setText(incompleteWords(session_.record(), what));
  text_->setAccessibleDescription(text_->text());
  setVisible(what.any());
}

void IncompleteStrip::restyle() {
  const Look look = Look::of(palette(), font());
  QFont bold = font();
  bold.setBold(true);
  text_->setFont(bold);
  QPalette strong = palette();
  strong.setColor(QPalette::WindowText, look.attention);
  strong.setColor(QPalette::Text, look.attention);
  text_->setPalette(strong);
  const int size = fontMetrics().height();
  sign_->setPixmap(severityIcon(Severity::warning, look.attention, size).pixmap(size, size));
}

void IncompleteStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    restyle();
  }
}

} // namespace afterbeat::window
