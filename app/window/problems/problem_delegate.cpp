#include "app/window/problems/problem_delegate.h"

#include "app/window/look/look.h"
#include "app/window/problems/problems_model.h"

#include <QApplication>
#include <QPainter>
#include <QTreeView>

#include <algorithm>

namespace afterbeat::window {

namespace {

constexpr int kPad = 5;
constexpr int kWrapped = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

QFont smaller(QFont font) {
  font.setPointSizeF(font.pointSizeF() * 0.9);
  return font;
}

/// What stands over several is heavier than they are.
QFont wordsFont(const QFont& font, const QModelIndex& index) {
  QFont result = font;
  result.setBold(index.model()->hasChildren(index));
  return result;
}

int iconSize(const QFont& font) {
  return QFontMetrics(font).ascent();
}

int heightOf(const QString& text, const QFont& font, int width) {
  return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10'000), kWrapped, text).height();
}

/// Long words of a source are told whole under the list.
int wordsHeight(const QString& text, const QFont& font, int width) {
  constexpr int kMostLines = 5;
  return std::min(heightOf(text, font, width), kMostLines * QFontMetrics(font).lineSpacing());
}

/// The width that the words have beside the shape.
int widthFor(const QStyleOptionViewItem& option, const QModelIndex& index) {
  int width = option.rect.width();
  if (const auto* tree = qobject_cast<const QTreeView*>(option.widget)) {
    const int depth = (index.parent().isValid() ? 1 : 0) + (tree->rootIsDecorated() ? 1 : 0);
    width = tree->viewport()->width() - depth * tree->indentation();
  }
  return std::max(80, width - iconSize(option.font) - 3 * kPad);
}

} // namespace

QSize ProblemDelegate::sizeHint(const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
  const int width = widthFor(option, index);
  const int words = wordsHeight(index.data().toString(), wordsFont(option.font, index), width);
  const int place = heightOf(index.data(kProblemPlaceRole).toString(), smaller(option.font), width);
  return {0, words + place + 2 * kPad};
}

void ProblemDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
  const Look look = Look::of(option.palette, option.font);
  const bool selected = (option.state & QStyle::State_Selected) != 0;
  QStyleOptionViewItem ground = option;
  // A soft ground keeps all colours of text readable.
  ground.state &= ~QStyle::State_Selected;
  const QWidget* widget = option.widget;
  QStyle* style = widget != nullptr ? widget->style() : QApplication::style();
  style->drawPrimitive(QStyle::PE_PanelItemViewItem, &ground, painter, widget);
  painter->save();
  if (selected) {
    painter->fillRect(option.rect, look.accentSoft);
    painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()),
                      look.accent);
  }
  const int size = iconSize(option.font), width = widthFor(option, index);
  const int left = option.rect.left() + 2 * kPad + size;
  int top = option.rect.top() + kPad;
  const auto severity = static_cast<Severity>(index.data(kProblemSeverityRole).toInt());
  severityIcon(severity, look.ink, size)
      .paint(painter, QRect(option.rect.left() + kPad, top + 2, size, size));
  const auto text = [&](const QString& words, const QFont& font, const QColor& ink, int height) {
    painter->setFont(font);
    painter->setPen(ink);
    painter->drawText(QRect(left, top, width, height), kWrapped, words);
    top += height;
  };
  const QString words = index.data().toString(), place = index.data(kProblemPlaceRole).toString();
  const QFont font = wordsFont(option.font, index), small = smaller(option.font);
  text(words, font, look.ink, wordsHeight(words, font, width));
  text(place, small, look.faintInk, heightOf(place, small, width));
  painter->restore();
}

} // namespace afterbeat::window
