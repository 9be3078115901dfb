#include "app/window/look/elided_label.h"

#include <QEvent>
#include <QFontMetrics>

namespace afterbeat::window {

ElidedLabel::ElidedLabel(QWidget* parent) : QLabel(parent) {
  setTextFormat(Qt::PlainText);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ElidedLabel::setWhole(const QString& text) {
  if (text == whole_) {
    return;
  }
  whole_ = text;
  setAccessibleName(text);
  updateGeometry();
  cut();
}

QSize ElidedLabel::minimumSizeHint() const {
  return {fontMetrics().horizontalAdvance(QStringLiteral("mmmm…")), fontMetrics().height()};
}

QSize ElidedLabel::sizeHint() const {
  return {fontMetrics().horizontalAdvance(whole_) + 2, fontMetrics().height()};
}

void ElidedLabel::resizeEvent(QResizeEvent* event) {
  QLabel::resizeEvent(event);
  cut();
}

void ElidedLabel::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    updateGeometry();
    cut();
  }
}

void ElidedLabel::cut() {
  const QString fitting = fontMetrics().elidedText(whole_, Qt::ElideRight, width());
  setText(fitting);
  setToolTip(fitting == whole_ ? QString() : whole_);
}

} // namespace afterbeat::window
