/// Paints a problem: the shape of its severity, its words, and under them how bad, where and when.
#pragma once

#include <QStyledItemDelegate>

namespace afterbeat::window {

/// Words wrap to the width of the view.
class ProblemDelegate final : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
};

} // namespace afterbeat::window
