/// What the toolkit's own look lacks: scroll bars whose thumb can be told from its groove, buttons
/// without foreign icons, choosers that show where their words were cut, and headings whose arrow
/// points up where the smallest comes first.
#pragma once

#include <QProxyStyle>

namespace afterbeat::window {

class OwnStyle final : public QProxyStyle {
  Q_OBJECT

public:
  int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                QStyleHintReturn* returned) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                          QPainter* painter, const QWidget* widget) const override;
  void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                   const QWidget* widget) const override;
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
};

} // namespace afterbeat::window
