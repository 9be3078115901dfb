#include "app/window/shell/place_button.h"

#include "app/window/look/look.h"

#include <QAction>
#include <QPainter>

namespace afterbeat::window {

namespace {

constexpr int kAcross = 14, kDown = 6, kBar = 3;

} // namespace

PlaceButton::PlaceButton(QAction* action, QWidget* parent) : QAbstractButton(parent) {
  setCheckable(true);
  setAutoExclusive(true);
  setText(action->iconText());
  setAccessibleName(action->iconText());
  setAccessibleDescription(action->text());
  setToolTip(QStringLiteral("%1 (%2)").arg(QString(action->text()).remove(QLatin1Char('&')),
                                           action->shortcut().toString(QKeySequence::NativeText)));
  setFocusPolicy(Qt::TabFocus);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setChecked(action->isChecked());
  connect(action, &QAction::toggled, this, &QAbstractButton::setChecked);
  connect(this, &QAbstractButton::clicked, action, &QAction::trigger);
}

QFont PlaceButton::boldFont() const {
  QFont bold = font();
  bold.setBold(true);
  return bold;
}

QSize PlaceButton::sizeHint() const {
  // The room of the bold word, so that nothing moves when the place changes.
  const QFontMetrics metrics(boldFont());
  return {metrics.horizontalAdvance(text()) + 2 * kAcross, metrics.height() + 2 * kDown};
}

void PlaceButton::paintEvent(QPaintEvent*) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  if (isChecked()) {
    painter.fillRect(rect(), look.paper);
    painter.fillRect(0, height() - kBar, width(), kBar, look.accent);
  } else if (underMouse()) {
    painter.fillRect(rect(), look.accentSoft);
  }
  painter.setFont(isChecked() ? boldFont() : font());
  painter.setPen(look.ink);
  painter.drawText(rect(), Qt::AlignCenter, text());
  if (hasFocus()) {
    painter.setPen(QPen(look.accent, 2));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
  }
}

} // namespace afterbeat::window
