#include "app/window/look/own_style.h"

#include "app/window/look/look.h"

#include <QPainter>
#include <QPolygonF>
#include <QStyleOption>

#include <algorithm>

namespace afterbeat::window {

namespace {

/// A small triangle that points up, or left; turned for the other end.
void drawArrow(QPainter& painter, const QRect& box, bool along, bool back) {
  constexpr double kSize = 3.5;
  const double side = back ? -kSize : kSize;
  const QPointF c = QRectF(box).center();
  const QPolygonF arrow = along ? QPolygonF{{c.x() + side / 2, c.y()},
                                            {c.x() - side / 2, c.y() - kSize},
                                            {c.x() - side / 2, c.y() + kSize}}
                                : QPolygonF{{c.x(), c.y() + side / 2},
                                            {c.x() - kSize, c.y() - side / 2},
                                            {c.x() + kSize, c.y() - side / 2}};
  painter.drawPolygon(arrow);
}

} // namespace

int OwnStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                        QStyleHintReturn* returned) const {
  return hint == SH_DialogButtonBox_ButtonsHaveIcons
             ? 0
             : QProxyStyle::styleHint(hint, option, widget, returned);
}

void OwnStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                  QPainter* painter, const QWidget* widget) const {
  const auto* bar =
      control == CC_ScrollBar ? qstyleoption_cast<const QStyleOptionSlider*>(option) : nullptr;
  if (bar == nullptr) {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    return;
  }
  const Look look = Look::of(option->palette, QFont());
  const auto part = [&](SubControl which) {
    return proxy()->subControlRect(CC_ScrollBar, option, which, widget);
  };
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->fillRect(option->rect, look.panel);
  if (bar->maximum > bar->minimum) {
    const bool along = bar->orientation == Qt::Horizontal;
    const bool held = (bar->activeSubControls & SC_ScrollBarSlider) != 0;
    painter->setPen(Qt::NoPen);
    painter->setBrush(held ? look.accent : look.faintInk);
    constexpr double kAround = 3;
    QRectF thumb = QRectF(part(SC_ScrollBarSlider));
    thumb =
        along ? thumb.adjusted(1, kAround, -1, -kAround) : thumb.adjusted(kAround, 1, -kAround, -1);
    const double round = std::min(thumb.width(), thumb.height()) / 2;
    painter->drawRoundedRect(thumb, round, round);
    const bool mirrored = along && bar->direction == Qt::RightToLeft;
    drawArrow(*painter, part(SC_ScrollBarSubLine), along, !mirrored);
    drawArrow(*painter, part(SC_ScrollBarAddLine), along, mirrored);
  }
  painter->restore();
}

void OwnStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                           const QWidget* widget) const {
  if (element == CE_ComboBoxLabel) {
    if (const auto* box = qstyleoption_cast<const QStyleOptionComboBox*>(option)) {
      QStyleOptionComboBox cut = *box;
      const int room =
          proxy()->subControlRect(CC_ComboBox, box, SC_ComboBoxEditField, widget).width() - 2;
      cut.currentText = box->fontMetrics.elidedText(box->currentText, Qt::ElideRight, room);
      QProxyStyle::drawControl(element, &cut, painter, widget);
      return;
    }
  }
  QProxyStyle::drawControl(element, option, painter, widget);
}

void OwnStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                             QPainter* painter, const QWidget* widget) const {
  const auto* heading = element == PE_IndicatorHeaderArrow
                            ? qstyleoption_cast<const QStyleOptionHeader*>(option)
                            : nullptr;
  if (heading == nullptr) {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    return;
  }
  QStyleOptionHeader turned = *heading;
  turned.sortIndicator = heading->sortIndicator == QStyleOptionHeader::SortDown
                             ? QStyleOptionHeader::SortUp
                             : QStyleOptionHeader::SortDown;
  QProxyStyle::drawPrimitive(element, &turned, painter, widget);
}

} // namespace afterbeat::window
