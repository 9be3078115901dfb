#include "app/window/finding/happening_delegate.h"

#include "app/window/look/look.h"

#include <QApplication>
#include <QPainter>

namespace afterbeat::window {

namespace {

QFont smaller(QFont font) {
  font.setPointSizeF(font.pointSizeF() * 0.9);
  return font;
}

} // namespace

int HappeningDelegate::heightFor(const QFont& font) {
  return QFontMetrics(font).height() + QFontMetrics(smaller(font)).height() + 7;
}

void HappeningDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
  QStyleOptionViewItem ground = option;
  initStyleOption(&ground, index);
  ground.text.clear();
  QStyle* style = option.widget != nullptr ? option.widget->style() : QApplication::style();
  style->drawControl(QStyle::CE_ItemViewItem, &ground, painter, option.widget);
  const Look look = Look::of(option.palette, option.font);
  const bool selected = (option.state & QStyle::State_Selected) != 0;
  const QColor chosen = option.palette.color(QPalette::HighlightedText);
  const QRect inner = option.rect.adjusted(6, 3, -6, -3);
  const auto line = [&](const QString& text, const QFont& font, const QColor& ink, int flags) {
    painter->setFont(font);
    painter->setPen(selected ? chosen : ink);
    painter->drawText(inner, flags | Qt::AlignLeft,
                      QFontMetrics(font).elidedText(text, Qt::ElideRight, inner.width()));
  };
  painter->save();
  line(index.data().toString(), option.font, look.ink, Qt::AlignTop);
  line(index.data(kSecondLineRole).toString(), smaller(option.font), look.faintInk,
       Qt::AlignBottom);
  painter->restore();
}

} // namespace afterbeat::window
