#include "app/window/figures/measure_delegate.h"

#include "app/window/look/look.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QPainter>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kPad = 4;

QFont smaller(const QFont& font, bool bold = false) {
  QFont result = font;
  result.setPointSizeF(font.pointSizeF() * 0.9);
  result.setBold(bold);
  return result;
}

QFont boldOf(const QFont& font) {
  QFont result = font;
  result.setBold(true);
  return result;
}

int heightOf(const QString& text, const QFont& font, int width) {
  if (text.isEmpty()) {
    return 0;
  }
  return QFontMetrics(font)
      .boundingRect(QRect(0, 0, width, 10'000), Qt::TextWordWrap | Qt::AlignLeft, text)
      .height();
}

/// A tick for within, a triangle for below or beyond: told apart by shape, not by colour.
void paintMark(QPainter& painter, Verdict verdict, const QRectF& area, const QColor& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF at = area.topLeft();
  const double size = area.width();
  if (verdict == Verdict::within) {
    painter.setPen(QPen(ink, size / 6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(
        QPolygonF({at + QPointF(size * 0.1, size * 0.55), at + QPointF(size * 0.4, size * 0.85),
                   at + QPointF(size * 0.9, size * 0.15)}));
  } else {
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    const bool up = verdict == Verdict::above;
    const double tip = up ? 0.05 : 0.95, base = up ? 0.9 : 0.1;
    painter.drawPolygon(
        QPolygonF({at + QPointF(size * 0.5, size * tip), at + QPointF(size * 0.95, size * base),
                   at + QPointF(size * 0.05, size * base)}));
  }
  painter.restore();
}

/// The width that an item has for its text.
int widthFor(const QStyleOptionViewItem& option) {
  int width = option.rect.width();
  if (const auto* view = qobject_cast<const QAbstractItemView*>(option.widget)) {
    constexpr int kIndentation = 12;
    width = view->viewport()->width() - kIndentation;
  }
  return std::max(80, width - 2 * kPad);
}

struct Item {
  explicit Item(const QModelIndex& index)
      : title(index.data().toString()), value(index.data(kValueRole).toString()),
        target(index.data(kTargetRole).toString()), detail(index.data(kDetailRole).toString()),
        verdict(static_cast<Verdict>(index.data(kVerdictRole).toInt())),
        recorded(index.data(kRecordedRole).toBool()) {}
  QString title, value, target, detail;
  Verdict verdict;
  bool recorded;
};

} // namespace

QSize MeasureDelegate::sizeHint(const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
  if (!index.parent().isValid()) {
    return {0, QFontMetrics(option.font).height() + 3 * kPad};
  }
  const Item item(index);
  const int width = widthFor(option);
  const int valueWidth = QFontMetrics(boldOf(option.font)).horizontalAdvance(item.value);
  const int markWidth = item.verdict == Verdict::none ? 0 : QFontMetrics(option.font).height();
  return {0, heightOf(item.title, option.font, width - valueWidth - 2 * kPad) +
                 heightOf(item.target, smaller(option.font, item.verdict > Verdict::within),
                          width - markWidth) +
                 heightOf(item.detail, smaller(option.font), width) + 2 * kPad};
}

void MeasureDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
  if (!index.parent().isValid()) {
    QStyledItemDelegate::paint(painter, option, index);
    return;
  }
  const Item item(index);
  const Look look = Look::of(option.palette, option.font);
  QStyleOptionViewItem ground = option;
  const QWidget* widget = option.widget;
  const bool selected = (option.state & QStyle::State_Selected) != 0;
  // A soft ground keeps all colours of text readable.
  ground.state &= ~QStyle::State_Selected;
  QStyle* style = widget != nullptr ? widget->style() : QApplication::style();
  style->drawPrimitive(QStyle::PE_PanelItemViewItem, &ground, painter, widget);
  painter->save();
  if (selected) {
    painter->fillRect(option.rect, look.accentSoft);
    painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()),
                      look.accent);
  }
  const int left = option.rect.left() + kPad, width = widthFor(option);
  const int flags = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;
  int top = option.rect.top() + kPad;
  const auto text = [&](const QString& words, const QFont& font, const QColor& ink, int from,
                        int room) {
    const int height = heightOf(words, font, room);
    painter->setFont(font);
    painter->setPen(ink);
    painter->drawText(QRect(from, top, room, height), flags, words);
    return height;
  };
  const QFont bold = boldOf(option.font);
  const int valueWidth = QFontMetrics(bold).horizontalAdvance(item.value);
  const bool beyond = item.verdict > Verdict::within;
  text(item.value, item.recorded ? bold : option.font,
       beyond          ? look.attention
       : item.recorded ? look.ink
                       : look.faintInk,
       left + width - valueWidth, valueWidth + kPad);
  top += text(item.title, option.font, item.recorded ? look.ink : look.faintInk, left,
              width - valueWidth - 2 * kPad);
  int markWidth = 0;
  if (item.verdict != Verdict::none) {
    const double size = QFontMetrics(smaller(option.font)).ascent() * 0.85;
    paintMark(*painter, item.verdict, {double(left), top + 3.0, size, size},
              beyond ? look.attention : look.ink);
    markWidth = QFontMetrics(option.font).height();
  }
  top += text(item.target, smaller(option.font, beyond), beyond ? look.attention : look.faintInk,
              left + markWidth, width - markWidth);
  text(item.detail, smaller(option.font), look.faintInk, left, width);
  painter->restore();
}

} // namespace afterbeat::window
