/// What the toolkit's own look lacks: scroll bars whose thumb can be told from its groove, and
/// buttons without foreign icons.
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
};

} // namespace afterbeat::window
