/// Paints a figure of the list: name and value, then its target with the verdict, then where that
/// comes from and what was left out. Long lines wrap.
#pragma once

#include "app/window/figures/targets.h"

#include <QStyledItemDelegate>

namespace afterbeat::window {

/// Roles of an item of the list of figures.
enum MeasureRole {
  kValueRole = Qt::UserRole + 1, ///< "23 %", "not recorded"
  kVerdictRole,                  ///< Verdict as an int
  kTargetRole,                   ///< "beyond the target · target at most 20 %", or the reason
  kDetailRole,                   ///< source with its mark, what was left out; may have line ends
  kRecordedRole,                 ///< whether there is a value
};

class MeasureDelegate final : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override;
};

} // namespace afterbeat::window
