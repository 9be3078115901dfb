/// Paints what happened in two lines: the words, and under them when and from whom.
#pragma once

#include <QStyledItemDelegate>

namespace afterbeat::window {

/// Role of the second, fainter line of a cell.
inline constexpr int kSecondLineRole = Qt::UserRole + 78;

class HappeningDelegate final : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  /// Height of two lines in a font.
  [[nodiscard]] static int heightFor(const QFont& font);
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
};

} // namespace afterbeat::window
