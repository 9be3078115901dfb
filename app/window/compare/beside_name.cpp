#include "app/window/compare/beside_name.h"

#include "app/window/look/look.h"

#include <QPainter>

namespace afterbeat::window {

namespace {

constexpr int kAcross = 10, kDown = 5, kLeast = 120;

} // namespace

BesideName::BesideName(const QString& letter, const QString& name, const QString& marks,
                       const QString& shortMarks, QWidget* parent)
    : QAbstractButton(parent), letter_(letter), name_(name), marks_(marks),
      shortMarks_(shortMarks) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  setAttribute(Qt::WA_Hover);
  setAccessibleName(tr("Open record %1").arg(whole()));
}

QString BesideName::whole() const {
  return QStringLiteral("%1: %2, %3").arg(letter_, name_, marks_);
}

QSize BesideName::sizeHint() const {
  const int wide =
      std::max(fontMetrics().horizontalAdvance(name_), fontMetrics().horizontalAdvance(marks_));
  return {wide + 4 * kAcross + fontMetrics().height(), 2 * fontMetrics().height() + 2 * kDown};
}

QSize BesideName::minimumSizeHint() const {
  return {kLeast, sizeHint().height()};
}

void BesideName::paintEvent(QPaintEvent*) {
  const Look look = Look::of(palette(), font());
  QPainter painter(this);
  const QRect frame = rect().adjusted(1, 1, -1, -1);
  painter.setPen(QPen(hasFocus() ? look.accent : look.line, hasFocus() ? 2 : 1));
  painter.setBrush(underMouse() ? look.accentSoft : look.paper);
  painter.drawRect(frame);
  QFont large = font();
  large.setBold(true);
  large.setPointSizeF(large.pointSizeF() * 1.5);
  painter.setFont(large);
  painter.setPen(look.ink);
  const int left = kAcross + painter.fontMetrics().horizontalAdvance(QLatin1Char('M')) + kAcross;
  painter.drawText(QRect(kAcross, 0, left, height()), Qt::AlignLeft | Qt::AlignVCenter, letter_);
  const int room = width() - left - kAcross, line = fontMetrics().height();
  const auto draw = [&](const QString& text, int top, bool bold) {
    QFont used = font();
    used.setBold(bold);
    painter.setFont(used);
    painter.drawText(QRect(left, top, room, line), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, room));
  };
  draw(name_, kDown, true);
  painter.setPen(look.faintInk);
  draw(fontMetrics().horizontalAdvance(marks_) <= room ? marks_ : shortMarks_, kDown + line, false);
}

} // namespace afterbeat::window
