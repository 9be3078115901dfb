#include "app/window/shell/toast.h"

#include "app/window/look/look.h"

#include <QApplication>
#include <QEvent>
#include <QPainter>
#include <QTimer>

#include <algorithm>

namespace afterbeat::window {

Toast::Toast(QWidget* parent) : QLabel(parent), timer_(new QTimer(this)) {
  setTextFormat(Qt::PlainText);
  setAlignment(Qt::AlignCenter);
  setContentsMargins(18, 8, 18, 8);
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAccessibleName(tr("Message"));
  timer_->setSingleShot(true);
  connect(timer_, &QTimer::timeout, this, &QWidget::hide);
  hide();
}

void Toast::say(const QString& sentence) {
  constexpr int kReadMs = 5000;
  setText(sentence);
  setAccessibleDescription(sentence);
  place();
  raise();
  show();
  timer_->start(kReadMs);
  qApp->installEventFilter(this);
}

void Toast::place() {
  constexpr int kAbove = 24;
  const QSize size = sizeHint().boundedTo(parentWidget()->size());
  setGeometry((parentWidget()->width() - size.width()) / 2,
              std::max(0, parentWidget()->height() - size.height() - kAbove), size.width(),
              size.height());
}

bool Toast::eventFilter(QObject* watched, QEvent* event) {
  const bool acted = event->type() == QEvent::KeyPress ||
                     event->type() == QEvent::ShortcutOverride ||
                     event->type() == QEvent::MouseButtonPress;
  if (acted && isVisible()) {
    hide();
  } else if (event->type() == QEvent::Resize && watched == parentWidget()) {
    place();
  }
  if (isHidden()) {
    qApp->removeEventFilter(this);
  }
  return QLabel::eventFilter(watched, event);
}

void Toast::paintEvent(QPaintEvent* event) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(look.faintInk, 1));
  painter.setBrush(look.panel);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
  painter.end();
  QLabel::paintEvent(event);
}

} // namespace afterbeat::window
