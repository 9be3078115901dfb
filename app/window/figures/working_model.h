/// The working of a figure as a table: from, length, what was going on.
#pragma once

#include "core/measures/figures.h"

#include <QAbstractTableModel>

#include <memory>

namespace afterbeat::window {

class WorkingModel final : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column { fromColumn, lengthColumn, whatColumn, columnCount_ };

  using QAbstractTableModel::QAbstractTableModel;

  /// A row for each part; `record` gives the clock.
  void show(const Record& record, std::shared_ptr<const Figures> figures, MeasureId measure);
  void clear();
  [[nodiscard]] const WorkingPart& part(int row) const { return rows_[std::size_t(row)].part; }
  [[nodiscard]] QString what(int row) const { return rows_[std::size_t(row)].what; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

private:
  struct Row {
    WorkingPart part;
    QString from, length, what;
    /// A pause beyond the profile's limit: set in bold.
    bool beyondLimit = false;
  };
  std::vector<Row> rows_;
};

} // namespace afterbeat::window
