#include "app/window/look/progress_line.h"

#include "app/window/look/look.h"

#include <QPainter>

namespace afterbeat::window {

void ProgressLine::paintEvent(QPaintEvent*) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  const QRectF frame = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  painter.setPen(QPen(look.faintInk, 1));
  painter.setBrush(look.panel);
  painter.drawRect(frame);
  const double share = maximum() > 0 ? static_cast<double>(value()) / maximum() : 0;
  painter.fillRect(QRectF(2, 2, (width() - 4) * share, height() - 4), look.accent);
}

} // namespace afterbeat::window
