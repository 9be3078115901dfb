/// One table as a model, and its sorting.
#pragma once

#include "app/window/tables/table_content.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

namespace afterbeat::window {

class TableModel final : public QAbstractTableModel {
  Q_OBJECT

public:
  using QAbstractTableModel::QAbstractTableModel;

  void show(TableContent content);
  [[nodiscard]] const TableContent& content() const { return content_; }
  [[nodiscard]] const TableRow& row(int index) const {
    return content_.rows[static_cast<std::size_t>(index)];
  }
  [[nodiscard]] const TableCell& cell(const QModelIndex& index) const {
    return row(index.row()).cells[static_cast<std::size_t>(index.column())];
  }
  /// The row that belongs to a selected stretch: whose middle is nearest to its middle; -1: none.
  [[nodiscard]] int rowFor(const Interval& stretch) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

private:
  TableContent content_;
};

/// Sorts numbers as numbers and words as the language does; what is not recorded stands last,
/// whichever way is sorted.
class TableSorting final : public QSortFilterProxyModel {
  Q_OBJECT

public:
  using QSortFilterProxyModel::QSortFilterProxyModel;

protected:
  [[nodiscard]] bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;
};

} // namespace afterbeat::window
